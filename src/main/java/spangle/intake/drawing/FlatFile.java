package spangle.intake.drawing;

import java.util.List;
import java.util.Optional;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.UnreadableException;
import spangle.measure.Box;
import spangle.measure.Figures;
import spangle.part.FlatPattern;
import spangle.part.Folded;
import spangle.part.Measured;
import spangle.part.ShapeException;
import spangle.part.flat.Affine;
import spangle.part.flat.Bend;
import spangle.part.flat.BendLine;
import spangle.part.flat.Extent;
import spangle.part.flat.FlatLayout;
import spangle.part.flat.FlatSize;
import spangle.part.flat.Folding;
import spangle.part.flat.LayoutBuilder;
import spangle.part.flat.Stroke;

/** From the bytes of a DXF file to a flat pattern, with everything a person should look at. */
public final class FlatFile {
  /** Longest and widest sheet there is in stock anywhere, mm; common practice. */
  private static final double LONGEST_MM = 6_300;

  private static final double WIDEST_MM = 2_600;

  /** A part narrower than this many thicknesses is no sheet part, or is in another unit. */
  private static final double LEAST_WIDTH = 3;

  private final String file;
  private final Asked asked;
  private final Problems problems;

  private FlatFile(String file, Asked asked, Problems problems) {
    this.file = file;
    this.asked = asked;
    this.problems = problems;
  }

  /**
   * Reads a drawing; never throws for what is in it.
   *
   * @param file name for the places of problems
   * @return empty when it cannot be read at all, with the reason among the problems
   */
  public static Optional<FlatRead> read(String file, byte[] bytes, Asked asked, Problems problems) {
    FlatFile reader = new FlatFile(file, asked, problems);
    try {
      return Optional.of(reader.read(DxfReader.read(file, bytes, problems)));
    } catch (UnreadableException broken) {
      Unreadable.note(broken, problems);
    } catch (ShapeException impossible) {
      Unreadable.note(file, impossible, problems);
    }
    return Optional.empty();
  }

  private FlatRead read(Drawing drawing) {
    FlatLayout asDrawn = LayoutBuilder.of(drawing.strokes());
    Optional<FlatPattern> inMm = possible(asDrawn);
    if (inMm.isEmpty()) {
      DrawingUnit unit = asked.unit().or(drawing::unit).orElse(DrawingUnit.MM);
      FlatLayout layout = layout(drawing, unit);
      DefectWords.say(layout, file, problems);
      problems.add(
          ProblemCode.DRAWING_UNREADABLE,
          Place.file(file),
          "drawing",
          "",
          "",
          asDrawn.measurable()
              ? "the outline crosses itself so often, or is so small or large, that it has no area"
              : "no closed outline was found" + found(layout),
          "close the outline, or put it on a layer for cuts; look at the picture");
      return new FlatRead(Optional.empty(), layout, unit, List.of(), false);
    }
    UnitChoice choice = new UnitChoice(file, problems, inMm.get(), asked, this::likely);
    UnitChoice.Chosen chosen = choice.choose(drawing.unit(), drawing.metricHint());
    FlatLayout layout = chosen.unit() == DrawingUnit.MM ? asDrawn : layout(drawing, chosen.unit());
    DefectWords.say(layout, file, problems);
    Optional<Folded> folded = folded(layout, drawing, chosen.unit());
    boolean reckoned = asked.foldedMm().isEmpty() && folded.isPresent();
    return new FlatRead(
        Optional.of(shape(layout, folded)), layout, chosen.unit(), chosen.readings(), reckoned);
  }

  /** The shape as drawn; a tangle of lines may have none. */
  private Optional<FlatPattern> possible(FlatLayout layout) {
    try {
      return layout.measurable() ? Optional.of(shape(layout, Optional.empty())) : Optional.empty();
    } catch (ShapeException impossible) {
      return Optional.empty();
    }
  }

  private static String found(FlatLayout layout) {
    return layout.open().isEmpty()
        ? ": there are no lines to be cut"
        : " among " + layout.open().size() + " lines that do not close";
  }

  private static FlatLayout layout(Drawing drawing, DrawingUnit unit) {
    Affine scale = Affine.scale(unit.mm(), unit.mm());
    List<Stroke> strokes = drawing.strokes();
    return LayoutBuilder.of(
        unit == DrawingUnit.MM
            ? strokes
            : strokes.stream().map(s -> s.transformed(scale)).toList());
  }

  private FlatPattern shape(FlatLayout layout, Optional<Folded> folded) {
    FlatSize size = FlatSize.of(layout.outers());
    return new FlatPattern(
        layout.netAreaMm2(),
        layout.cutEdgeMm(),
        asked.thicknessMm(),
        size.lengthMm(),
        size.widthMm(),
        layout.bends().size(),
        folded);
  }

  private boolean likely(Measured measured) {
    Box box = measured.envelopeMm();
    return box.lengthMm() <= LONGEST_MM
        && box.widthMm() <= WIDEST_MM
        && box.widthMm() >= LEAST_WIDTH * asked.thicknessMm();
  }

  private Optional<Folded> folded(FlatLayout layout, Drawing drawing, DrawingUnit unit) {
    List<BendLine> lines = layout.bends();
    if (lines.isEmpty() || asked.foldedMm().isPresent()) {
      return lines.isEmpty() ? Optional.empty() : asked.foldedMm().map(Folded::sizeOnly);
    }
    List<Drawing.Note> notes =
        drawing.words().stream()
            .map(n -> new Drawing.Note(n.words(), n.at().times(unit.mm())))
            .toList();
    double diagonal = layout.extent().map(Extent::diagonal).orElse(0.0);
    List<Bend> bends = BendWords.bends(lines, notes, diagonal, unit.mm(), asked);
    if (bends.size() < lines.size()) {
      missing(
          lines.size()
              + " bend line(s), "
              + (lines.size() - bends.size())
              + " without an angle: the size after bending is not known");
      return Optional.empty();
    }
    Optional<Folded> folded = bent(layout, bends);
    if (folded.isEmpty()) {
      missing(
          "the "
              + lines.size()
              + " bend line(s) do not cut the sheet into faces that can turn: the size after"
              + " bending is not known");
      return folded;
    }
    Box box = folded.get().sizeMm();
    problems.add(
        ProblemCode.DRAWING_NOTE,
        Place.file(file),
        "length",
        "",
        "",
        "the size after bending, "
            + Figures.upTo(box.lengthMm(), 1)
            + " x "
            + Figures.upTo(box.widthMm(), 1)
            + " x "
            + Figures.upTo(box.heightMm(), 1)
            + " mm, is reckoned from "
            + lines.size()
            + " bend line(s) with their angles",
        "give the size by hand where it must be sure");
    return folded;
  }

  private Optional<Folded> bent(FlatLayout layout, List<Bend> bends) {
    if (layout.outers().size() != 1) {
      return Optional.empty();
    }
    try {
      return Folding.of(layout.outers().get(0), bends, asked.thicknessMm());
    } catch (ShapeException impossible) {
      return Optional.empty();
    }
  }

  private void missing(String why) {
    problems.add(
        ProblemCode.FOLDED_SIZE_MISSING,
        Place.file(file),
        "length",
        "",
        "length, width and height as bent",
        why + "; it must not be taken from the flat size",
        "give length, width and height after bending, or the angle of the bends");
  }
}
