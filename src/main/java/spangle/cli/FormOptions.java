package spangle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.measure.Box;
import spangle.measure.Quantities;
import spangle.part.Bar;
import spangle.part.ClosedBox;
import spangle.part.OpenBox;
import spangle.part.Plate;
import spangle.part.RectTube;
import spangle.part.RoundTube;
import spangle.part.Section;
import spangle.part.Shape;
import spangle.part.section.SectionProfile;
import spangle.part.section.SectionTable;

/** The form of a piece; exactly one of these. */
final class FormOptions {
  @Option(names = "--plate", paramLabel = "LxW", description = "A flat plate, e.g. 500x400mm.")
  private @Nullable String plate;

  @Option(
      names = "--box",
      paramLabel = "LxWxH",
      description = "A box of six sheet faces by outside size; with --open front, of five.")
  private @Nullable String box;

  @Option(
      names = "--tube",
      paramLabel = "WxHxL",
      description = "A rectangular tube with sharp corners, open at both ends.")
  private @Nullable String tube;

  @Option(
      names = "--pipe",
      paramLabel = "DxL",
      description = "A round tube by outside diameter, open at both ends.")
  private @Nullable String pipe;

  @Option(names = "--bar", paramLabel = "DxL", description = "A solid round bar.")
  private @Nullable String bar;

  @Option(
      names = "--section",
      paramLabel = "NAME",
      description = "A standard section such as L50x50x5, UPN100, UPE100, SHS40x3, CHS48.3x3.2.")
  private @Nullable String section;

  @Option(
      names = "--flat",
      paramLabel = "FILE.dxf",
      description = "A flat pattern drawn in DXF; its outline, holes and bend lines are found.")
  private @Nullable Path flat;

  @Option(
      names = "--solid",
      paramLabel = "FILE.stl",
      description = "A closed body in STL, ASCII or binary; its mass is by volume.")
  private @Nullable Path solid;

  /** The drawing of a body, where that is the form. */
  Optional<Path> solid() {
    return Optional.ofNullable(solid);
  }

  /** The drawing of a flat pattern, where that is the form. */
  Optional<Path> flat() {
    return Optional.ofNullable(flat);
  }

  /** Complains when no form was given, or more than one. */
  void requireOne() {
    if (given() != 1) {
      throw ExitException.usage(
          "Give the piece in one form: --plate, --box, --tube, --pipe, --bar, --section, --flat or"
              + " --solid");
    }
  }

  /** How many forms were given. */
  long given() {
    return Stream.of(plate, box, tube, pipe, bar, section, flat, solid)
        .flatMap(Stream::ofNullable)
        .count();
  }

  /** The form; complains in one sentence about what is missing or does not belong to it. */
  Shape shape(FormDetails details) {
    requireOne();
    details.refuseStrays(plate != null, box != null, section != null, bar != null);
    if (plate != null) {
      List<Double> size = Quantities.sizesMm(plate, 2);
      return new Plate(size.get(0), size.get(1), details.thicknessMm(), details.holes());
    }
    if (box != null) {
      Box size = Quantities.box(box);
      double thickness = details.thicknessMm();
      return details.openFront()
          ? OpenBox.openFront(size.lengthMm(), size.widthMm(), size.heightMm(), thickness)
          : new ClosedBox(size.lengthMm(), size.widthMm(), size.heightMm(), thickness);
    }
    if (tube != null) {
      List<Double> size = Quantities.sizesMm(tube, 3);
      return new RectTube(size.get(0), size.get(1), size.get(2), details.thicknessMm());
    }
    if (pipe != null) {
      List<Double> size = Quantities.sizesMm(pipe, 2);
      return new RoundTube(size.get(0), size.get(1), details.thicknessMm());
    }
    if (bar != null) {
      List<Double> size = Quantities.sizesMm(bar, 2);
      return Bar.round(size.get(0), size.get(1));
    }
    return new Section(profile(section == null ? "" : section), details.lengthMm());
  }

  /** Where area and mass of the form come from, in words. */
  String source() {
    if (section != null) {
      return profile(section).source();
    }
    if (flat != null) {
      return "the outline of the drawing, curves as drawn";
    }
    return solid != null
        ? "the triangles of the drawing"
        : "plane geometry on outside sizes, sharp corners";
  }

  private static SectionProfile profile(String name) {
    SectionTable table = SectionTable.standard();
    return table
        .find(name)
        .orElseThrow(
            () -> {
              List<String> near = table.near(name);
              return ExitException.usage(
                  "--section '"
                      + name
                      + "' is not in the table: "
                      + (near.isEmpty()
                          ? "write it like L50x50x5, UPN100, UPE100, SHS40x3, RHS60x40x3,"
                              + " CHS48.3x3.2"
                          : "the nearest are " + String.join(", ", near)));
            });
  }
}
