package spangle.measure;

import java.util.Optional;
import java.util.Set;

/** What kind of thing a number measures; each kind has one house unit and the units it accepts. */
public enum QuantityKind {
  /** Length, house unit mm. */
  LENGTH("a length", "mm", "120mm or 4.72in", false),
  /** Film or coating thickness, house unit um. */
  FILM("a film thickness", "um", "80um or 3.1mil", false),
  /** Mass, house unit kg. */
  MASS("a mass", "kg", "90kg or 198lb", false),
  /** Area, house unit m2. */
  AREA("an area", "m2", "12.5m2 or 135ft2", false),
  /** Volume of a liquid or a vessel, house unit l. */
  VOLUME("a volume", "l", "20l or 5gal", false),
  /** Temperature, house unit C. */
  TEMPERATURE("a temperature", "C", "200C or 392F", true),
  /** Difference of two temperatures, house unit K. */
  TEMPERATURE_DIFFERENCE("a temperature difference", "K", "30K or 54F", true),
  /** Duration, house unit minutes. */
  DURATION("a duration", "min", "25min or 1.5h", false),
  /** Air flow of a booth or an oven exhaust, house unit m3/h. */
  AIR_FLOW("an air flow", "m3/h", "6000m3/h or 3500cfm", false),
  /** Powder through a gun, house unit kg/h. */
  MASS_FLOW("a mass flow", "kg/h", "12kg/h or 200g/min", false),
  /** Paint through a gun, house unit l/h. */
  VOLUME_FLOW("a volume flow", "l/h", "9l/h or 150ml/min", false);

  private final String noun;
  private final String houseUnit;
  private final String example;
  private final boolean signed;

  QuantityKind(String noun, String houseUnit, String example, boolean signed) {
    this.noun = noun;
    this.houseUnit = houseUnit;
    this.example = example;
    this.signed = signed;
  }

  /** The kind with its article, for messages. */
  public String noun() {
    return noun;
  }

  /** Symbol of the unit the program works in. */
  public String houseUnit() {
    return houseUnit;
  }

  /** Two ways to write such a quantity. */
  public String example() {
    return example;
  }

  /** Whether a value below zero makes sense. */
  public boolean signed() {
    return signed;
  }

  /** Symbols accepted, in the order they are shown to people. */
  public Set<String> symbols() {
    return Units.of(this).keySet();
  }

  /**
   * Turns a number in a named unit into the house unit.
   *
   * @return empty when this kind does not know the unit
   */
  public Optional<Double> toHouseUnit(double number, String symbol) {
    return Units.find(this, symbol).map(scale -> scale.toHouseUnit(number));
  }
}
