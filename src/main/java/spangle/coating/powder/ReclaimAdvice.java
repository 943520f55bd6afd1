package spangle.coating.powder;

import spangle.measure.Limits;

/**
 * Spray a colour to waste or reclaim it: what reclaiming saves in powder against what the longer
 * clean-out costs.
 *
 * @param savedKgM2 powder saved by reclaiming, per m2 of work
 * @param cleaningCost what the longer colour change costs, labour and lost powder, in money
 * @param breakEvenM2 work of the colour from which reclaiming pays; infinite when it saves nothing
 * @param areaM2 work of the colour
 */
public record ReclaimAdvice(
    double savedKgM2, double cleaningCost, double breakEvenM2, double areaM2) {
  /** Longer change of a reclaim booth than of spraying to waste (published 30 min against 10). */
  public static final double USUAL_EXTRA_MIN = 20;

  /** People at a colour change (published). */
  public static final int USUAL_PEOPLE = 2;

  /** Within a quarter of the break-even area nobody can tell. */
  private static final double MARGIN = 0.25;

  /** What it comes to. */
  public enum Verdict {
    /** Too little work of this colour. */
    SPRAY_TO_WASTE("spray to waste"),
    /** Near the break-even: as it suits the day. */
    EITHER("either: near the break-even"),
    /** Enough work of this colour. */
    RECLAIM("reclaim");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /**
   * Money side of a colour change.
   *
   * @param powderPerKg price of the powder
   * @param labourPerHour cost of a person's hour
   * @param extraMinutes how much longer the change takes with reclaim
   * @param people who clean
   * @param extraLossKg powder lost more in the longer way
   */
  public record Costs(
      double powderPerKg,
      double labourPerHour,
      double extraMinutes,
      int people,
      double extraLossKg) {
    /** Checks the limits. */
    public Costs {
      Limits.above(powderPerKg, 0, "a powder price", "per kg");
      Limits.between(labourPerHour, 0, 10_000, "a labour cost", "per h");
      Limits.between(extraMinutes, 0, 1440, "a cleaning time", "min");
      Limits.between(people, 1, 20, "a number of people", "");
      Limits.between(extraLossKg, 0, 1000, "a loss of powder", "kg");
    }

    double cleaning() {
      return extraMinutes / 60 * people * labourPerHour + extraLossKg * powderPerKg;
    }
  }

  /**
   * The advice for one colour.
   *
   * @param areaM2 work of the colour, hooks counted
   * @param gramsM2 film on it, g/m2
   * @param reclaim first pass and capture
   * @param costs money
   */
  public static ReclaimAdvice of(double areaM2, double gramsM2, Reclaim reclaim, Costs costs) {
    Limits.above(areaM2, 0, "an area", "m2");
    Limits.above(gramsM2, 0, "a film mass", "g/m2");
    double savedKgM2 = gramsM2 / 1000 * (1 / reclaim.firstPass() - 1 / reclaim.use());
    double saving = savedKgM2 * costs.powderPerKg();
    double breakEven = saving > 0 ? costs.cleaning() / saving : Double.POSITIVE_INFINITY;
    return new ReclaimAdvice(savedKgM2, costs.cleaning(), breakEven, areaM2);
  }

  /** What to do. */
  public Verdict verdict() {
    if (areaM2 < breakEvenM2 * (1 - MARGIN)) {
      return Verdict.SPRAY_TO_WASTE;
    }
    return areaM2 <= breakEvenM2 * (1 + MARGIN) ? Verdict.EITHER : Verdict.RECLAIM;
  }
}
