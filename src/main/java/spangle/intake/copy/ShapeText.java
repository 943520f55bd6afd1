package spangle.intake.copy;

import java.util.stream.Collectors;
import spangle.intake.week.ShapeWords;

/** A shape in the program's own words, all sizes in mm. */
final class ShapeText {
  private ShapeText() {}

  static String of(ShapeWords shape) {
    String form = shape.form().word();
    return switch (shape.form()) {
      case FLAT, SOLID -> form + " " + shape.file();
      case SECTION ->
          form + " " + shape.file() + " x " + Plain.number(shape.sizesMm().get(0)) + " mm";
      default -> form + " " + sizes(shape) + " mm" + open(shape) + holes(shape);
    };
  }

  private static String sizes(ShapeWords shape) {
    return shape.sizesMm().stream().map(Plain::number).collect(Collectors.joining("x"));
  }

  private static String open(ShapeWords shape) {
    return shape.open() ? " open front" : "";
  }

  private static String holes(ShapeWords shape) {
    return shape.holes().isEmpty()
        ? ""
        : shape.holes().stream()
            .map(h -> h.count() + "x" + Plain.number(h.diameterMm()) + "mm")
            .collect(Collectors.joining(", ", " holes ", ""));
  }
}
