package spangle.intake.read;

import spangle.measure.Figures;

/**
 * Numbers that make sense for a field, both ends included.
 *
 * @param min least
 * @param max most
 */
record Range(double min, double max) {
  static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  static Range of(double min, double max) {
    return new Range(min, max);
  }

  boolean holds(double value) {
    return value >= min && value <= max;
  }

  String words(String unit) {
    String tail = unit.isEmpty() ? "" : " " + unit;
    return Figures.significant(min, 6) + " to " + Figures.significant(max, 6) + tail;
  }
}
