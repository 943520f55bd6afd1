package spangle.intake.read;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Sheet gauge numbers. The same number is another thickness for another metal and another table, so
 * a table must be named before a gauge is read. Values from memory, inch values of the tables as
 * commonly printed; a mill certificate or a calliper wins.
 */
final class Gauges {
  private static final double INCH_MM = 25.4;

  /** Manufacturers' Standard Gage for uncoated sheet steel, inches. */
  private static final Map<Integer, Double> STEEL =
      table(
          7, 0.1793, 8, 0.1644, 9, 0.1495, 10, 0.1345, 11, 0.1196, 12, 0.1046, 13, 0.0897, 14,
          0.0747, 15, 0.0673, 16, 0.0598, 17, 0.0538, 18, 0.0478, 19, 0.0418, 20, 0.0359, 21,
          0.0329, 22, 0.0299, 23, 0.0269, 24, 0.0239, 25, 0.0209, 26, 0.0179, 28, 0.0149);

  /** Galvanized Sheet Gage, inches, zinc included. */
  private static final Map<Integer, Double> GALVANIZED =
      table(
          10, 0.1382, 11, 0.1233, 12, 0.1084, 13, 0.0934, 14, 0.0785, 15, 0.0710, 16, 0.0635, 17,
          0.0575, 18, 0.0516, 19, 0.0456, 20, 0.0396, 21, 0.0366, 22, 0.0336, 23, 0.0306, 24,
          0.0276, 25, 0.0247, 26, 0.0217, 28, 0.0187);

  /** Brown and Sharpe (American Wire Gauge), used for aluminium sheet, inches. */
  private static final Map<Integer, Double> ALUMINIUM =
      table(
          8, 0.1285, 9, 0.1144, 10, 0.1019, 11, 0.0907, 12, 0.0808, 13, 0.0720, 14, 0.0641, 15,
          0.0571, 16, 0.0508, 17, 0.0453, 18, 0.0403, 19, 0.0359, 20, 0.0320, 21, 0.0285, 22,
          0.0253, 23, 0.0226, 24, 0.0201);

  private static final Map<String, Map<Integer, Double>> TABLES = tables();

  private Gauges() {}

  /** Names of the tables, each to itself, for reading a word. */
  static Map<String, String> names() {
    Map<String, String> names = new LinkedHashMap<>();
    TABLES.keySet().forEach(name -> names.put(name, name));
    return names;
  }

  /** Thickness in mm of a gauge number. */
  static OptionalDouble thicknessMm(String table, int gauge) {
    Double inches = TABLES.getOrDefault(table, Map.of()).get(gauge);
    return inches == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.round(inches * INCH_MM * 1000) / 1000.0);
  }

  private static Map<String, Map<Integer, Double>> tables() {
    Map<String, Map<Integer, Double>> tables = new LinkedHashMap<>();
    tables.put("manufacturers-standard", STEEL);
    tables.put("galvanized-sheet", GALVANIZED);
    tables.put("brown-and-sharpe", ALUMINIUM);
    return tables;
  }

  private static Map<Integer, Double> table(double... pairs) {
    Map<Integer, Double> table = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      table.put((int) pairs[i], pairs[i + 1]);
    }
    return table;
  }
}
