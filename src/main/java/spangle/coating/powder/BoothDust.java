package spangle.coating.powder;

import spangle.measure.Limits;

/**
 * Powder in the air of a booth with all guns open and nothing landing, which is the cautious sum. A
 * figure to show, never a certificate: the local code and the maker of the booth decide.
 *
 * @param kgPerHour powder through all guns
 * @param airM3H exhaust
 */
public record BoothDust(double kgPerHour, double airM3H) {
  /** Usual limit, g/m3: half the lower explosion limit of 20 g/m3 (published). */
  public static final double LIMIT_G_M3 = 10;

  /** Share of the lower explosion limit that may not be passed. */
  public static final double SHARE_OF_LEL = 0.5;

  /** Checks the limits. */
  public BoothDust {
    Limits.above(kgPerHour, 0, "powder through the guns", "kg/h");
    Limits.above(airM3H, 0, "an exhaust flow", "m3/h");
  }

  /** Powder in the air, g/m3. */
  public double gramsM3() {
    return 1000 * kgPerHour / airM3H;
  }

  /** Whether the usual limit is kept. */
  public boolean withinUsualLimit() {
    return gramsM3() <= LIMIT_G_M3;
  }

  /** Whether half of a powder's own lower explosion limit is kept. */
  public boolean withinLel(double lelGM3) {
    return gramsM3() <= SHARE_OF_LEL * Limits.above(lelGM3, 0, "an explosion limit", "g/m3");
  }

  /** Air that keeps the usual limit, m3/h. */
  public double airNeededM3H() {
    return 1000 * kgPerHour / LIMIT_G_M3;
  }
}
