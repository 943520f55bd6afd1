package spangle.coating.powder;

import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

/**
 * Powder for one colour. Film is the mean sprayed, not the least: mass per area in g/m2 is specific
 * gravity times film in um (a powder maker's yield note; the imperial form is 192.3 ft2 mil/lb).
 *
 * @param areaM2 work to coat
 * @param hooksM2 hooks and bars that take powder too
 * @param filmUm mean film sprayed
 * @param specificGravity powder density / 1000 kg/m3
 * @param use share of sprayed powder that stays, above 0 to 1
 * @param colourLossKg left in hoses, pump and box at each colour
 */
public record PowderNeed(
    double areaM2,
    double hooksM2,
    double filmUm,
    double specificGravity,
    double use,
    double colourLossKg) {
  /** ft2 that a lb of specific gravity 1 covers 1 mil thick: 12000 / 62.4. */
  public static final double FT2_MIL_LB = 12_000 / 62.4;

  /** m2 that a kg of specific gravity 1 covers 1 mil thick: 1000 / 25.4. */
  public static final double M2_MIL_KG = 1000 / 25.4;

  /** Spread of what is sprayed about the likely figure (common practice). */
  public static final LowLikelyHigh SPREAD = new LowLikelyHigh(0.85, 1, 1.25);

  private static final double UM_PER_MIL = 25.4;

  /** Checks the limits. */
  public PowderNeed {
    above(areaM2, "an area", "m2");
    above(filmUm, "a film", "um");
    above(specificGravity, "a specific gravity", "");
    if (!(use > 0 && use <= 1)) {
      throw new MeasureException(
          Double.toString(use), "a use above 0 and up to 1", "0.6 means 60 % stays on the work");
    }
    if (!(hooksM2 >= 0) || !(colourLossKg >= 0)) {
      throw new MeasureException(
          hooksM2 + ", " + colourLossKg, "hooks and colour loss of 0 or more", "give 0 for none");
    }
  }

  private static void above(double value, String what, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new MeasureException(
          Double.toString(value), what + " above 0 " + unit, "check the figure");
    }
  }

  /** Theoretical coverage, m2/kg. */
  public double coverageM2Kg() {
    return 1000 / (specificGravity * filmUm);
  }

  /** Theoretical coverage in ft2/lb: 12000 / 62.4 / (SG x mil). */
  public double coverageFt2Lb() {
    return FT2_MIL_LB / (specificGravity * filmUm / UM_PER_MIL);
  }

  /** Film on the work, g/m2. */
  public double filmGM2() {
    return specificGravity * filmUm;
  }

  /** Powder to draw as a planning range about the use that was given. */
  public LowLikelyHigh toDrawRangeKg() {
    return SPREAD.map(factor -> factor * sprayedKg() + colourLossKg);
  }

  /**
   * Powder to draw as a planning range.
   *
   * @param uses share that stays, low to high; the least use draws the most
   */
  public LowLikelyHigh toDrawRangeKg(LowLikelyHigh uses) {
    return new LowLikelyHigh(
        filmKg() / uses.high() + colourLossKg,
        filmKg() / uses.likely() + colourLossKg,
        filmKg() / uses.low() + colourLossKg);
  }

  /** Powder that stays as film, hooks counted, kg. */
  public double filmKg() {
    return (areaM2 + hooksM2) * specificGravity * filmUm / 1000;
  }

  /** Powder sprayed, kg. */
  public double sprayedKg() {
    return filmKg() / use;
  }

  /** Powder to draw from the store, kg. */
  public double toDrawKg() {
    return sprayedKg() + colourLossKg;
  }

  /** Whole packs. */
  public int packs(double packKg) {
    above(packKg, "a pack", "kg");
    return (int) Math.ceil(toDrawKg() / packKg - 1e-9);
  }
}
