package spangle.coating.liquid;

import spangle.measure.Limits;

/**
 * Solvent in the exhaust while painting. A figure to show, never a certificate: the local code and
 * the maker of the booth decide.
 *
 * @param litresPerHour ready mixture through the guns
 * @param solidsPct solids of that mixture by volume; the rest is taken as solvent
 * @param exhaustM3H exhaust
 */
public record SolventAir(double litresPerHour, double solidsPct, double exhaustM3H) {
  /** Lower explosion limit of a solvent nobody knows, g/m3 (published, about). */
  public static final double UNKNOWN_LEL_G_M3 = 40;

  /** Usual limit as a share of the lower explosion limit (published, without a monitor). */
  public static final double USUAL_SHARE = 0.25;

  /** Density of paint solvents, kg/l (from memory, middle of 0.80-0.90). */
  public static final double SOLVENT_KG_L = 0.87;

  /** Fresh air of a continuous oven for each litre of solvent, m3 (published: 10 000 ft3/gal). */
  public static final double CONTINUOUS_OVEN_M3_PER_L = 74.8;

  /** Fresh air of a batch oven for each litre of solvent in the charge, m3/min (published). */
  public static final double BATCH_OVEN_M3_MIN_PER_L = 3;

  /**
   * Oven volumes of air before a burner is lit (published: at least 4; 5 from memory in Europe).
   */
  public static final int PURGE_VOLUMES = 5;

  /** Checks the limits. */
  public SolventAir {
    Limits.above(litresPerHour, 0, "a spray rate", "l/h");
    Limits.between(solidsPct, 0, 100, "solids by volume", "%");
    Limits.above(exhaustM3H, 0, "an exhaust flow", "m3/h");
  }

  /** Solvent in the exhaust when all of it goes there, g/m3. */
  public double gramsM3() {
    return litresPerHour * (1 - solidsPct / 100) * SOLVENT_KG_L * 1000 / exhaustM3H;
  }

  /** The same as a share of the lower explosion limit of an unknown solvent, per cent. */
  public double pctOfLel() {
    return 100 * gramsM3() / UNKNOWN_LEL_G_M3;
  }

  /** Whether the usual quarter is kept. */
  public boolean withinUsualLimit() {
    return pctOfLel() <= 100 * USUAL_SHARE;
  }
}
