package spangle.measure;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The units people write, per kind. Decimal multiples are plain powers of ten; everything customary
 * goes through {@link CustomaryUnits}, which is loaded only when such a unit is really read, so
 * that a metric question is answered at once.
 */
final class Units {
  private static final DoubleUnaryOperator SAME = DoubleUnaryOperator.identity();
  private static final Map<QuantityKind, Map<String, DoubleUnaryOperator>> TABLE = table();

  private Units() {}

  static Map<String, DoubleUnaryOperator> of(QuantityKind kind) {
    return TABLE.getOrDefault(kind, Map.of());
  }

  static Optional<DoubleUnaryOperator> find(QuantityKind kind, String symbol) {
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

  private static Map<QuantityKind, Map<String, DoubleUnaryOperator>> table() {
    Map<QuantityKind, Map<String, DoubleUnaryOperator>> table = new EnumMap<>(QuantityKind.class);
    table.put(
        QuantityKind.LENGTH,
        new Symbols()
            .add(SAME, "mm")
            .add(x -> x * 10, "cm")
            .add(x -> x * 100, "dm")
            .add(x -> x * 1000, "m")
            .add(CustomaryUnits::inchToMm, "in", "inch", "inches", "\"")
            .add(CustomaryUnits::footToMm, "ft", "foot", "feet", "'")
            .done());
    table.put(
        QuantityKind.FILM,
        new Symbols()
            .add(SAME, "um", "micron", "microns")
            .add(x -> x * 1000, "mm")
            .add(CustomaryUnits::milToUm, "mil", "mils", "thou")
            .done());
    table.put(
        QuantityKind.MASS,
        new Symbols()
            .add(SAME, "kg")
            .add(x -> x / 1000, "g")
            .add(x -> x * 1000, "t", "tonne", "tonnes")
            .add(CustomaryUnits::poundToKg, "lb", "lbs", "pound", "pounds")
            .add(CustomaryUnits::ounceToKg, "oz")
            .done());
    table.put(
        QuantityKind.AREA,
        new Symbols()
            .add(SAME, "m2", "sqm")
            .add(x -> x / 1e6, "mm2")
            .add(x -> x / 1e4, "cm2")
            .add(x -> x / 100, "dm2")
            .add(CustomaryUnits::squareFootToM2, "ft2", "sqft")
            .add(CustomaryUnits::squareInchToM2, "in2", "sqin")
            .done());
    table.put(
        QuantityKind.VOLUME,
        new Symbols()
            .add(SAME, "l", "litre", "litres", "liter", "liters", "dm3")
            .add(x -> x / 1000, "ml", "cm3")
            .add(x -> x * 1000, "m3")
            .add(CustomaryUnits::gallonToLitre, "gal", "usgal")
            .add(CustomaryUnits::cubicFootToLitre, "ft3")
            .done());
    table.put(
        QuantityKind.TEMPERATURE,
        new Symbols()
            .add(SAME, "c", "degc")
            .add(CustomaryUnits::fahrenheitToCelsius, "f", "degf")
            .add(x -> x - 273.15, "k")
            .done());
    table.put(
        QuantityKind.TEMPERATURE_DIFFERENCE,
        new Symbols()
            .add(SAME, "k", "c", "degc")
            .add(CustomaryUnits::fahrenheitStepToKelvin, "f", "degf")
            .done());
    table.put(
        QuantityKind.DURATION,
        new Symbols()
            .add(SAME, "min", "mins", "minute", "minutes")
            .add(x -> x / 60, "s", "sec", "second", "seconds")
            .add(x -> x * 60, "h", "hr", "hrs", "hour", "hours")
            .add(x -> x * 1440, "d", "day", "days")
            .done());
    flows(table);
    return table;
  }

  private static void flows(Map<QuantityKind, Map<String, DoubleUnaryOperator>> table) {
    table.put(
        QuantityKind.AIR_FLOW,
        new Symbols()
            .add(SAME, "m3/h")
            .add(x -> x * 60, "m3/min")
            .add(x -> x * 3600, "m3/s")
            .add(x -> CustomaryUnits.cubicFootToLitre(x) * 60 / 1000, "cfm", "ft3/min")
            .done());
    table.put(
        QuantityKind.MASS_FLOW,
        new Symbols()
            .add(SAME, "kg/h")
            .add(x -> x * 60 / 1000, "g/min")
            .add(CustomaryUnits::poundToKg, "lb/h")
            .done());
    table.put(
        QuantityKind.VOLUME_FLOW,
        new Symbols()
            .add(SAME, "l/h")
            .add(x -> x * 60 / 1000, "ml/min")
            .add(x -> x * 60, "l/min")
            .add(CustomaryUnits::gallonToLitre, "gal/h")
            .done());
  }

  private static final class Symbols {
    private final Map<String, DoubleUnaryOperator> map = new LinkedHashMap<>();

    Symbols add(DoubleUnaryOperator scale, String... symbols) {
      for (String symbol : symbols) {
        map.put(symbol, scale);
      }
      return this;
    }

    Map<String, DoubleUnaryOperator> done() {
      return Collections.unmodifiableMap(map);
    }
  }
}
