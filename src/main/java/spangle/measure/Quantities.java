package spangle.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people write them ({@code 2.5 in}, {@code 80um}, {@code 400F}) into the house
 * unit. A number without a unit is refused, unless the caller names the unit its column carries.
 */
public final class Quantities {
  private static final int LONGEST_TEXT = 200;
  private static final Pattern NUMBER_THEN_UNIT =
      Pattern.compile("([-+0-9.,/ ]*[0-9.,](?:[eE][+-]?[0-9]+)?)\\s*(\\S.*)?", Pattern.DOTALL);
  private static final Pattern INCH =
      Pattern.compile("in|inch|inches|\"|\u2033", Pattern.CASE_INSENSITIVE);
  private static final Pattern TIMES = Pattern.compile("\\s*[xX×*]\\s*");

  private Quantities() {}

  /** Length in mm. */
  public static double lengthMm(String text) {
    return read(QuantityKind.LENGTH, text);
  }

  /** Film or coating thickness in um. */
  public static double filmUm(String text) {
    return read(QuantityKind.FILM, text);
  }

  /** Mass in kg. */
  public static double massKg(String text) {
    return read(QuantityKind.MASS, text);
  }

  /** Area in m2. */
  public static double areaM2(String text) {
    return read(QuantityKind.AREA, text);
  }

  /** Volume in litres. */
  public static double litres(String text) {
    return read(QuantityKind.VOLUME, text);
  }

  /** Temperature in C. */
  public static double celsius(String text) {
    return read(QuantityKind.TEMPERATURE, text);
  }

  /** Duration in minutes. */
  public static double minutes(String text) {
    return read(QuantityKind.DURATION, text);
  }

  /**
   * Reads a quantity that must carry its unit.
   *
   * @return the value in the kind's house unit
   * @throws MeasureException when there is no number, no unit, an unknown unit, or a value below
   *     zero (absolute zero for temperatures)
   */
  public static double read(QuantityKind kind, String text) {
    return read(kind, text, Optional.empty());
  }

  /**
   * Reads a quantity whose column names a unit: a bare number takes it, a value may carry its own.
   *
   * @param columnUnit symbol used when the text has none, for example {@code mm} for the column
   *     {@code length_mm}
   * @return the value in the kind's house unit
   * @throws MeasureException as {@link #read(QuantityKind, String)}
   */
  public static double read(QuantityKind kind, String text, String columnUnit) {
    return read(kind, text, Optional.of(columnUnit));
  }

  private static double read(QuantityKind kind, String text, Optional<String> columnUnit) {
    Matcher parts = split(kind, text);
    String symbol = Optional.ofNullable(parts.group(2)).or(() -> columnUnit).orElse("");
    if (symbol.isBlank()) {
      throw new MeasureException(
          text, kind.noun() + " with its unit", "add the unit, for example " + kind.example());
    }
    return inHouseUnit(kind, text, Numbers.parse(parts.group(1)), symbol);
  }

  /**
   * Reads sizes such as {@code 1000x500mm}, {@code 3.7 x 1.1 x 1.9 m} or {@code 4ft x 30in}: every
   * side may carry its unit, a bare one takes the unit of the next side that has one.
   *
   * @param count how many sides there must be
   * @return the sides in mm, in the order written
   */
  public static List<Double> sizesMm(String text, int count) {
    String[] sides = text.length() > LONGEST_TEXT ? new String[0] : TIMES.split(text.strip(), -1);
    if (sides.length != count) {
      throw notSides(text, count);
    }
    List<Double> sizes = new ArrayList<>();
    String unit = "";
    for (int i = count - 1; i >= 0; i--) {
      Matcher parts = NUMBER_THEN_UNIT.matcher(sides[i].strip());
      if (!parts.matches()) {
        throw notSides(text, count);
      }
      unit = Optional.ofNullable(parts.group(2)).orElse(unit);
      if (unit.isBlank()) {
        throw new MeasureException(
            text, "a size with its unit", "put mm, cm, m, in or ft after the last side");
      }
      sizes.add(0, inHouseUnit(QuantityKind.LENGTH, text, Numbers.parse(parts.group(1)), unit));
    }
    return List.copyOf(sizes);
  }

  private static MeasureException notSides(String text, int count) {
    String example = count == 2 ? "1000x500mm" : count == 3 ? "3.7x1.1x1.9m" : "120mm";
    String sides = count == 1 ? "a length" : "a size of " + count + " sides";
    return new MeasureException(text, sides, "write it like " + example);
  }

  /**
   * The number of inches, when a length was written in inches: some standards have rows of their
   * own for inch sizes, which lie a hair beside the metric ones.
   *
   * @return empty when the text is in another unit or is no length
   */
  public static OptionalDouble inches(String text) {
    Matcher parts = NUMBER_THEN_UNIT.matcher(text.strip());
    if (text.length() > LONGEST_TEXT || !parts.matches() || parts.group(2) == null) {
      return OptionalDouble.empty();
    }
    boolean inch = INCH.matcher(parts.group(2).strip()).matches();
    return inch ? OptionalDouble.of(Numbers.parse(parts.group(1))) : OptionalDouble.empty();
  }

  /** Reads {@code LxWxH} with unit as a box. */
  public static Box box(String text) {
    List<Double> sides = sizesMm(text, 3);
    return new Box(sides.get(0), sides.get(1), sides.get(2));
  }

  private static Matcher split(QuantityKind kind, String text) {
    Matcher parts = NUMBER_THEN_UNIT.matcher(text.strip());
    if (text.length() > LONGEST_TEXT || !parts.matches()) {
      throw new MeasureException(text, kind.noun(), "write it like " + kind.example());
    }
    return parts;
  }

  private static double inHouseUnit(QuantityKind kind, String text, double number, String symbol) {
    double value =
        kind.toHouseUnit(number, symbol)
            .orElseThrow(
                () ->
                    new MeasureException(
                        text,
                        kind.noun(),
                        "the unit '"
                            + symbol.strip()
                            + "' is not one of "
                            + String.join(", ", kind.symbols())));
    if (Double.isInfinite(value)) {
      throw new MeasureException(text, kind.noun(), "check the exponent");
    }
    if (value < 0 && !kind.signed()) {
      throw new MeasureException(text, kind.noun(), "it cannot be below zero");
    }
    if (kind == QuantityKind.TEMPERATURE && value < -273.15) {
      throw new MeasureException(text, kind.noun(), "nothing is colder than -273.15 C");
    }
    return value;
  }
}
