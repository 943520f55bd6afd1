package spangle.cli;

import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import spangle.measure.Figures;
import spangle.measure.MeasureException;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/**
 * Reads an argument of the phone call's questions and holds it against what a shop can have. What
 * lies outside is a slip of the unit or the finger, so it is refused in one sentence.
 */
final class Ask {
  private Ask() {}

  /** Sheet, wall or section, mm. */
  static double thicknessMm(String option, String text) {
    return read(QuantityKind.LENGTH, option, text, 0.1, 250);
  }

  /** Any other length of work, mm. */
  static double lengthMm(String option, String text) {
    return read(QuantityKind.LENGTH, option, text, 0.1, 60_000);
  }

  /** Powder or dry paint film, um. */
  static double filmUm(String option, String text) {
    return read(QuantityKind.FILM, option, text, 1, 2000);
  }

  /** Area of work, m2. */
  static double areaM2(String option, String text) {
    return read(QuantityKind.AREA, option, text, 1e-6, 1e6);
  }

  /** Area of a hook or bar, m2. */
  static double hookM2(String option, String text) {
    return read(QuantityKind.AREA, option, text, 0, 10);
  }

  /** Mass of work, kg. */
  static double massKg(String option, String text) {
    return read(QuantityKind.MASS, option, text, 1e-6, 1e7);
  }

  /** Mass that may be none, kg. */
  static double massOrNoneKg(String option, String text) {
    return read(QuantityKind.MASS, option, text, 0, 1e7);
  }

  /** Oven air or metal in an oven, C: above 260 C it was meant in F. */
  static double ovenC(String option, String text) {
    return read(QuantityKind.TEMPERATURE, option, text, 40, 260);
  }

  /** Air or work in a hall, C. */
  static double hallC(String option, String text) {
    return read(QuantityKind.TEMPERATURE, option, text, -30, 60);
  }

  /** Minutes. */
  static double minutes(String option, String text) {
    return read(QuantityKind.DURATION, option, text, 0, 43_200);
  }

  /** A quantity with its unit inside its limits, in the house unit of its kind. */
  static double read(QuantityKind kind, String option, String text, double min, double max) {
    double value;
    try {
      value = Quantities.read(kind, text);
    } catch (MeasureException unreadable) {
      throw ExitException.usage(option + ": " + unreadable.getMessage());
    }
    if (!(value >= min && value <= max)) {
      throw ExitException.usage(
          option + " '" + text + "' is out of range: " + range(min, max, kind.houseUnit()));
    }
    return value;
  }

  /** A plain number inside its limits. */
  static double number(String option, double value, double min, double max) {
    if (!(value >= min && value <= max)) {
      throw ExitException.usage(
          option + " " + plain(value) + " is out of range: " + range(min, max, ""));
    }
    return value;
  }

  /** A count of at least one. */
  static int count(String option, int value) {
    if (value < 1 || value > 10_000_000) {
      throw ExitException.usage(option + " is " + value + ": 1 or more, up to 10 million");
    }
    return value;
  }

  /** A share such as a yield: above 0 to 1. */
  static double share(String option, double value) {
    if (!(value > 0 && value <= 1)) {
      throw ExitException.usage(
          option + " is " + plain(value) + ": above 0 and at most 1 (60 % is 0.6)");
    }
    return value;
  }

  /** A picture is an SVG: another ending would promise another kind of file. */
  static Path svg(String option, Path file) {
    if (!String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".svg")) {
      throw ExitException.usage(option + " '" + file + "' must end in .svg: the picture is one");
    }
    return file;
  }

  /** Refuses an option that has nothing to go with. */
  static void goesWith(@Nullable Object value, String option, boolean there, String other) {
    if (value != null && !there) {
      throw ExitException.usage(option + " goes with " + other + ": leave it out or give both");
    }
  }

  private static String range(double min, double max, String unit) {
    return (plain(min) + " to " + plain(max) + " " + unit).strip();
  }

  private static String plain(double value) {
    return Double.isFinite(value)
        ? Figures.significant(value, 6)
        : String.format(Locale.ROOT, "%s", value);
  }
}
