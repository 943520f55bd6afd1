package spangle.part;

import spangle.measure.Box;

/** Checks that dimensions belong to this world, and scales them. */
final class Require {
  /** Nothing a shop handles is longer than a kilometre; beyond it a unit was mistaken. */
  private static final double LONGEST_MM = 1_000_000;

  private Require() {}

  static void length(double mm, String what) {
    if (!(mm > 0) || mm > LONGEST_MM) {
      throw new ShapeException(
          what, mm, "between 0 and 1000000 mm", "check the number and its unit");
    }
  }

  static void notNegative(double value, String what) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new ShapeException(what, value, "zero or more", "check the number");
    }
  }

  static void positive(double value, String what) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new ShapeException(what, value, "above zero", "check the number");
    }
  }

  static void wall(double wallMm, double smallestSideMm) {
    length(wallMm, "thickness");
    if (2 * wallMm >= smallestSideMm) {
      throw new ShapeException(
          "thickness",
          wallMm,
          "less than half the smallest outside size, " + smallestSideMm / 2 + " mm",
          "check the unit, or give the piece as a solid bar or a plate");
    }
  }

  static Box times(Box box, double factor) {
    return new Box(box.lengthMm() * factor, box.widthMm() * factor, box.heightMm() * factor);
  }

  static void density(double kgM3) {
    if (!(kgM3 >= 100 && kgM3 <= 25_000)) {
      throw new ShapeException(
          "density", kgM3, "between 100 and 25000 kg/m3", "give it in kg/m3, steel is 7850");
    }
  }
}
