package spangle.intake.drawing;

import java.util.Locale;
import java.util.Optional;

/** Units a drawing may be in; codes are those of the header variable $INSUNITS of DXF. */
public enum DrawingUnit {
  /** Millimetres. */
  MM(4, 1, "mm", "millimetres"),
  /** Inches. */
  IN(1, 25.4, "in", "inches"),
  /** Centimetres. */
  CM(5, 10, "cm", "centimetres"),
  /** Metres. */
  M(6, 1000, "m", "metres"),
  /** Feet. */
  FT(2, 304.8, "ft", "feet"),
  /** Decimetres. */
  DM(14, 100, "dm", "decimetres"),
  /** Yards. */
  YD(10, 914.4, "yd", "yards"),
  /** Thousandths of an inch. */
  MIL(9, 0.0254, "mil", "mils"),
  /** Micrometres. */
  UM(13, 0.001, "um", "micrometres");

  private final int code;
  private final double mm;
  private final String symbol;
  private final String words;

  DrawingUnit(int code, double mm, String symbol, String words) {
    this.code = code;
    this.mm = mm;
    this.symbol = symbol;
    this.words = words;
  }

  /** The unit of a header's code; empty for a unit no part is drawn in. */
  static Optional<DrawingUnit> ofCode(int code) {
    for (DrawingUnit unit : values()) {
      if (unit.code == code) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** The unit a person names; empty when it is none of these. */
  public static Optional<DrawingUnit> parse(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    for (DrawingUnit unit : values()) {
      boolean inch = unit == IN && (word.equals("inch") || word.equals("\""));
      if (unit.symbol.equals(word) || unit.words.equals(word) || inch) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** One of it in mm. */
  public double mm() {
    return mm;
  }

  /** As it stands behind a number. */
  public String symbol() {
    return symbol;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
