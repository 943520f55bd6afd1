package spangle.coating.zinc;

import java.util.OptionalDouble;

/**
 * The minimum one row of a standard asks for.
 *
 * @param localUm least thickness at one place, um
 * @param meanUm least mean thickness, um
 * @param gramsPerUm the standard's own mass of 1 um on 1 m2, g
 * @param tableMassGM2 mass the standard prints beside the mean, rounded by it; empty where it
 *     prints none
 * @param rule standard, table and row in words
 * @param fromMemory true when the row was not seen in print by whoever entered it
 */
public record ZincRow(
    double localUm,
    double meanUm,
    double gramsPerUm,
    OptionalDouble tableMassGM2,
    String rule,
    boolean fromMemory) {
  /** Least coating mass per m2 of coated surface, from the mean thickness, g/m2. */
  public double coatingGM2() {
    return meanUm * gramsPerUm;
  }
}
