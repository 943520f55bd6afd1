package spangle.intake.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.measure.Box;
import spangle.part.Bar;
import spangle.part.ClosedBox;
import spangle.part.FoldedBlank;
import spangle.part.Hole;
import spangle.part.OpenBox;
import spangle.part.Plate;
import spangle.part.RectTube;
import spangle.part.RoundTube;
import spangle.part.Section;
import spangle.part.Shape;
import spangle.part.section.SectionTable;

/** Turns shapes in words into shapes that can be measured. */
public final class Shapes {
  private Shapes() {}

  /**
   * The shape of a piece.
   *
   * @param words form and sizes
   * @param thicknessMm sheet or wall, mm
   * @param foldedMm outside size of a folded blank, where given
   * @return empty where a drawing, an unknown section or a folded size is wanting
   * @throws spangle.part.ShapeException for sizes no piece can have
   */
  public static Optional<Shape> of(ShapeWords words, double thicknessMm, Optional<Box> foldedMm) {
    List<Double> s = words.sizesMm();
    return switch (words.form()) {
      case PLATE -> Optional.of(new Plate(s.get(0), s.get(1), thicknessMm, holes(words)));
      case BLANK ->
          foldedMm.map(box -> FoldedBlank.rectangle(s.get(0), s.get(1), thicknessMm, 1, box));
      case ANGLE -> Optional.of(FoldedBlank.angle(s.get(0), s.get(1), s.get(2), thicknessMm));
      case CHANNEL -> Optional.of(channel(s, thicknessMm));
      case BOX ->
          Optional.of(
              words.open()
                  ? OpenBox.openFront(s.get(0), s.get(1), s.get(2), thicknessMm)
                  : new ClosedBox(s.get(0), s.get(1), s.get(2), thicknessMm));
      case TUBE -> Optional.of(new RectTube(s.get(0), s.get(1), s.get(2), thicknessMm));
      case PIPE -> Optional.of(new RoundTube(s.get(0), s.get(1), thicknessMm));
      case BAR -> Optional.of(Bar.round(s.get(0), s.get(1)));
      case SECTION -> SectionTable.standard().find(words.file()).map(p -> new Section(p, s.get(0)));
      case FLAT, SOLID -> Optional.empty();
    };
  }

  /** A channel of unequal flanges has the area of one with their mean. */
  private static Shape channel(List<Double> s, double thicknessMm) {
    double flangeMm = (s.get(0) + s.get(2)) / 2;
    return FoldedBlank.channel(s.get(1), flangeMm, s.get(3), thicknessMm);
  }

  private static List<Hole> holes(ShapeWords words) {
    List<Hole> holes = new ArrayList<>();
    for (ShapeWords.RoundHoles hole : words.holes()) {
      holes.add(Hole.round(hole.count(), hole.diameterMm()));
    }
    return holes;
  }
}
