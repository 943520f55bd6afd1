package spangle.measure;

/**
 * How a unit turns into the house unit of its kind: {@code (number - zero) x times / over}. A
 * factor stands as a fraction of whole numbers, so that a value that is exact on paper is the
 * nearest double: 1/8 in is 3.175 mm and lies on the edge of its row, not a hair beside it.
 *
 * @param zero the unit's reading where the house unit reads zero
 * @param times the factor's numerator
 * @param over the factor's denominator
 */
record UnitScale(double zero, double times, double over) {
  /** The house unit itself. */
  static final UnitScale SAME = new UnitScale(0, 1, 1);

  // International yard and pound agreement of 1959, exact: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg.
  static final UnitScale INCH_TO_MM = of(254, 10);
  static final UnitScale FOOT_TO_MM = of(3048, 10);
  static final UnitScale MIL_TO_UM = of(254, 10);
  static final UnitScale SQUARE_FOOT_TO_M2 = of(9_290_304, 1e8);
  static final UnitScale SQUARE_INCH_TO_M2 = of(64_516, 1e8);
  static final UnitScale CUBIC_FOOT_TO_LITRE = of(28_316_846_592.0, 1e9);
  static final UnitScale CUBIC_FOOT_TO_M3_A_MINUTE = of(28_316_846_592.0 * 60, 1e12);
  static final UnitScale POUND_TO_KG = of(45_359_237, 1e8);
  static final UnitScale OUNCE_TO_KG = of(45_359_237, 16e8);

  /** 1 US gal = 231 in3, NIST Handbook 44, exact. */
  static final UnitScale GALLON_TO_LITRE = of(3_785_411_784.0, 1e9);

  /** Water freezes at 32 F; 9 F are 5 K, NIST SP 811, exact. */
  static final UnitScale FAHRENHEIT_TO_CELSIUS = new UnitScale(32, 5, 9);

  static final UnitScale FAHRENHEIT_STEP_TO_KELVIN = of(5, 9);

  /** Zero of the Celsius scale, exact. */
  static final UnitScale KELVIN_TO_CELSIUS = new UnitScale(273.15, 1, 1);

  static UnitScale of(double times, double over) {
    return new UnitScale(0, times, over);
  }

  static UnitScale times(double factor) {
    return new UnitScale(0, factor, 1);
  }

  static UnitScale over(double divisor) {
    return new UnitScale(0, 1, divisor);
  }

  double toHouseUnit(double number) {
    return (number - zero) * times / over;
  }
}
