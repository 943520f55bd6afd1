package spangle.fit.vent;

import spangle.measure.Figures;

/** Figures as people write them. */
final class Text {
  private Text() {}

  static String mm(double value) {
    return Figures.upTo(value, 1) + " mm";
  }

  static String number(double value) {
    return Figures.upTo(value, 2);
  }

  static String mm2(double value) {
    return Figures.fixed(value, 0) + " mm2";
  }
}
