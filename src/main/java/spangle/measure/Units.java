package spangle.measure;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The units people write, per kind. */
final class Units {
  private static final Map<QuantityKind, Map<String, UnitScale>> TABLE = table();

  private Units() {}

  static Map<String, UnitScale> of(QuantityKind kind) {
    return TABLE.getOrDefault(kind, Map.of());
  }

  static Optional<UnitScale> find(QuantityKind kind, String symbol) {
    return Optional.ofNullable(of(kind).get(normal(symbol)));
  }

  private static String normal(String symbol) {
    return symbol
        .strip()
        .toLowerCase(Locale.ROOT)
        .replace(" ", "")
        .replace("°", "")
        .replace("\u03bc", "u")
        .replace("\u00b5", "u")
        .replace("²", "2")
        .replace("³", "3")
        .replace("^", "")
        .replace("″", "\"")
        .replace("′", "'");
  }

  private static Map<QuantityKind, Map<String, UnitScale>> table() {
    Map<QuantityKind, Map<String, UnitScale>> table = new EnumMap<>(QuantityKind.class);
    table.put(
        QuantityKind.LENGTH,
        new Symbols()
            .add(UnitScale.SAME, "mm")
            .add(UnitScale.times(10), "cm")
            .add(UnitScale.times(100), "dm")
            .add(UnitScale.times(1000), "m")
            .add(UnitScale.INCH_TO_MM, "in", "inch", "inches", "\"")
            .add(UnitScale.FOOT_TO_MM, "ft", "foot", "feet", "'")
            .done());
    table.put(
        QuantityKind.FILM,
        new Symbols()
            .add(UnitScale.SAME, "um", "micron", "microns")
            .add(UnitScale.times(1000), "mm")
            .add(UnitScale.MIL_TO_UM, "mil", "mils", "thou")
            .done());
    table.put(
        QuantityKind.MASS,
        new Symbols()
            .add(UnitScale.SAME, "kg")
            .add(UnitScale.over(1000), "g")
            .add(UnitScale.times(1000), "t", "tonne", "tonnes")
            .add(UnitScale.POUND_TO_KG, "lb", "lbs", "pound", "pounds")
            .add(UnitScale.OUNCE_TO_KG, "oz")
            .done());
    table.put(
        QuantityKind.AREA,
        new Symbols()
            .add(UnitScale.SAME, "m2", "sqm")
            .add(UnitScale.over(1e6), "mm2")
            .add(UnitScale.over(1e4), "cm2")
            .add(UnitScale.over(100), "dm2")
            .add(UnitScale.SQUARE_FOOT_TO_M2, "ft2", "sqft")
            .add(UnitScale.SQUARE_INCH_TO_M2, "in2", "sqin")
            .done());
    table.put(
        QuantityKind.VOLUME,
        new Symbols()
            .add(UnitScale.SAME, "l", "litre", "litres", "liter", "liters", "dm3")
            .add(UnitScale.over(1000), "ml", "cm3")
            .add(UnitScale.times(1000), "m3")
            .add(UnitScale.GALLON_TO_LITRE, "gal", "usgal")
            .add(UnitScale.CUBIC_FOOT_TO_LITRE, "ft3")
            .done());
    table.put(
        QuantityKind.TEMPERATURE,
        new Symbols()
            .add(UnitScale.SAME, "c", "degc")
            .add(UnitScale.FAHRENHEIT_TO_CELSIUS, "f", "degf")
            .add(UnitScale.KELVIN_TO_CELSIUS, "k")
            .done());
    table.put(
        QuantityKind.TEMPERATURE_DIFFERENCE,
        new Symbols()
            .add(UnitScale.SAME, "k", "c", "degc")
            .add(UnitScale.FAHRENHEIT_STEP_TO_KELVIN, "f", "degf")
            .done());
    table.put(
        QuantityKind.DURATION,
        new Symbols()
            .add(UnitScale.SAME, "min", "mins", "minute", "minutes")
            .add(UnitScale.over(60), "s", "sec", "second", "seconds")
            .add(UnitScale.times(60), "h", "hr", "hrs", "hour", "hours")
            .add(UnitScale.times(1440), "d", "day", "days")
            .done());
    flows(table);
    return table;
  }

  private static void flows(Map<QuantityKind, Map<String, UnitScale>> table) {
    table.put(
        QuantityKind.AIR_FLOW,
        new Symbols()
            .add(UnitScale.SAME, "m3/h")
            .add(UnitScale.times(60), "m3/min")
            .add(UnitScale.times(3600), "m3/s")
            .add(UnitScale.CUBIC_FOOT_TO_M3_A_MINUTE, "cfm", "ft3/min")
            .done());
    table.put(
        QuantityKind.MASS_FLOW,
        new Symbols()
            .add(UnitScale.SAME, "kg/h")
            .add(UnitScale.of(60, 1000), "g/min")
            .add(UnitScale.POUND_TO_KG, "lb/h")
            .done());
    table.put(
        QuantityKind.VOLUME_FLOW,
        new Symbols()
            .add(UnitScale.SAME, "l/h")
            .add(UnitScale.of(60, 1000), "ml/min")
            .add(UnitScale.times(60), "l/min")
            .add(UnitScale.GALLON_TO_LITRE, "gal/h")
            .done());
  }

  private static final class Symbols {
    private final Map<String, UnitScale> map = new LinkedHashMap<>();

    Symbols add(UnitScale scale, String... symbols) {
      for (String symbol : symbols) {
        map.put(symbol, scale);
      }
      return this;
    }

    Map<String, UnitScale> done() {
      return Collections.unmodifiableMap(map);
    }
  }
}
