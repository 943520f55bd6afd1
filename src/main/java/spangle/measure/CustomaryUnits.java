package spangle.measure;

import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.SQUARE_METRE;

import javax.measure.UnitConverter;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/**
 * United States customary units, from the unit library's exact definitions (1959 yard and pound
 * agreement: 1 in = 25.4 mm, 1 lb = 0.45359237 kg; 1 US gal = 231 in3).
 */
final class CustomaryUnits {
  private static final UnitConverter INCH_TO_MM = USCustomary.INCH.getConverterTo(MILLI(METRE));
  private static final UnitConverter INCH_TO_UM = USCustomary.INCH.getConverterTo(MICRO(METRE));
  private static final UnitConverter FOOT_TO_MM = USCustomary.FOOT.getConverterTo(MILLI(METRE));
  private static final UnitConverter POUND_TO_KG = USCustomary.POUND.getConverterTo(KILOGRAM);
  private static final UnitConverter OUNCE_TO_KG = USCustomary.OUNCE.getConverterTo(KILOGRAM);
  private static final UnitConverter SQUARE_FOOT_TO_M2 =
      USCustomary.SQUARE_FOOT.getConverterTo(SQUARE_METRE);
  private static final UnitConverter GALLON_TO_LITRE =
      USCustomary.GALLON_LIQUID.getConverterTo(Units.LITRE);
  private static final UnitConverter CUBIC_FOOT_TO_LITRE =
      USCustomary.CUBIC_FOOT.getConverterTo(Units.LITRE);
  private static final UnitConverter FAHRENHEIT_TO_CELSIUS =
      USCustomary.FAHRENHEIT.getConverterTo(CELSIUS);
  private static final UnitConverter RANKINE_TO_KELVIN = USCustomary.RANKINE.getConverterTo(KELVIN);

  private CustomaryUnits() {}

  static double inchToMm(double inches) {
    return INCH_TO_MM.convert(inches);
  }

  static double milToUm(double mils) {
    return INCH_TO_UM.convert(mils) / 1000;
  }

  static double footToMm(double feet) {
    return FOOT_TO_MM.convert(feet);
  }

  static double poundToKg(double pounds) {
    return POUND_TO_KG.convert(pounds);
  }

  static double ounceToKg(double ounces) {
    return OUNCE_TO_KG.convert(ounces);
  }

  static double squareFootToM2(double squareFeet) {
    return SQUARE_FOOT_TO_M2.convert(squareFeet);
  }

  static double squareInchToM2(double squareInches) {
    return squareFootToM2(squareInches) / 144;
  }

  static double gallonToLitre(double gallons) {
    return GALLON_TO_LITRE.convert(gallons);
  }

  static double cubicFootToLitre(double cubicFeet) {
    return CUBIC_FOOT_TO_LITRE.convert(cubicFeet);
  }

  static double fahrenheitToCelsius(double fahrenheit) {
    return FAHRENHEIT_TO_CELSIUS.convert(fahrenheit);
  }

  static double fahrenheitStepToKelvin(double degrees) {
    return RANKINE_TO_KELVIN.convert(degrees);
  }
}
