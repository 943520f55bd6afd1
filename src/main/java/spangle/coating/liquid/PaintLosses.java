package spangle.coating.liquid;

import java.util.List;
import java.util.Locale;
import spangle.measure.Limits;
import spangle.measure.LowLikelyHigh;

/** What does not stay on the work, as shares of all litres mixed (published coating tech notes). */
public final class PaintLosses {
  private PaintLosses() {}

  /** How the paint is put on. */
  public enum Method {
    /** Brush or roller. */
    BRUSH(0.10, 0.125, 0.15),
    /** Airless; the range about the published 30 % is common practice. */
    AIRLESS(0.20, 0.30, 0.40),
    /** Conventional air spray, published as up to 50 %. */
    AIR_SPRAY(0.30, 0.40, 0.50);

    @SuppressWarnings("ImmutableEnumChecker") // a record of three numbers
    private final LowLikelyHigh loss;

    Method(double low, double likely, double high) {
      this.loss = new LowLikelyHigh(low, likely, high);
    }

    /** Share lost. */
    public LowLikelyHigh loss() {
      return loss;
    }

    /** The method as people write it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Several losses one after the other: 1 - (1 - a)(1 - b)... */
  public static double together(List<Double> losses) {
    double kept = 1;
    for (double loss : losses) {
      Limits.between(loss, 0, 0.99, "a share lost", "");
      kept *= 1 - loss;
    }
    return 1 - kept;
  }

  /**
   * Paint that fills the valleys of a blasted surface, as um of dry film on the first coat: 10 um
   * for a profile up to 50 um, 35 up to 100, 60 up to 150, 125 on pitted steel up to 300.
   */
  public static double deadFilmUm(double profileUm) {
    Limits.between(profileUm, 0, 300, "a blast profile", "um");
    if (profileUm == 0) {
      return 0;
    }
    if (profileUm <= 50) {
      return 10;
    }
    if (profileUm <= 100) {
      return 35;
    }
    return profileUm <= 150 ? 60 : 125;
  }
}
