package spangle.coating.zinc;

import java.util.List;
import spangle.measure.Limits;
import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

/**
 * Zinc on the work and zinc to buy for it: a planning range, not limits; before stock, whole ingots
 * and the kettle's own level. It goes by area, because a percentage of steel mass is wrong by a
 * factor of two on sheet.
 *
 * @param areaM2 coated surface
 * @param steelKg black steel before dipping
 * @param minimumKg coating on the work at the standard's least mean
 * @param growth growth factor used
 * @param yield zinc on the work over zinc bought; ash, dross and splash are inside it
 */
public record ZincBudget(
    double areaM2, double steelKg, double minimumKg, LowLikelyHigh growth, double yield) {
  /** Usual yield (planning split of the trade, from memory: 70-80 % stays on the work). */
  public static final double USUAL_YIELD = 0.75;

  /** Best and worst yields the buying range reckons with (0.65-0.82). */
  private static final double BEST_YIELD = 0.82;

  private static final double WORST_YIELD = 0.65;

  /** Extra growth of work blasted before dipping (common practice). */
  private static final LowLikelyHigh BLASTED = new LowLikelyHigh(1.3, 1.5, 1.7);

  /** Gross zinc of a structural mix, per cent of steel (published surveys: 5.2-5.5). */
  private static final double FLAT_PCT = 5.5;

  /** Ash skimmed, kg per m2 dipped (published trade figure, about 200 g). */
  private static final double ASH_KG_M2 = 0.2;

  /** Shares of the loss: middle of 8-15 % ash, 8-15 % dross, 1-5 % splash and jigs (memory). */
  private static final double ASH_SHARE = 11.5 / 26;

  private static final double DROSS_SHARE = 11.5 / 26;

  /** Checks the numbers. */
  public ZincBudget {
    Limits.above(areaM2, 0, "an area", "m2");
    Limits.above(steelKg, 0, "a steel mass", "kg");
    Limits.share(yield, "a zinc yield");
  }

  /**
   * The budget of some work.
   *
   * @param skins all coated surface, by row
   * @param steelKg black steel before dipping
   * @param steelClass what the certificate says
   * @param blasted whether it is blasted before dipping
   * @param yield usually {@link #USUAL_YIELD}
   */
  public static ZincBudget of(
      List<ZincSkin> skins, double steelKg, SteelClass steelClass, boolean blasted, double yield) {
    if (skins.isEmpty()) {
      throw new MeasureException("", "work for the kettle", "name at least one surface");
    }
    LowLikelyHigh plain = steelClass.growth();
    LowLikelyHigh growth =
        blasted
            ? new LowLikelyHigh(
                plain.low() * BLASTED.low(),
                plain.likely() * BLASTED.likely(),
                plain.high() * BLASTED.high())
            : plain;
    return new ZincBudget(
        skins.stream().mapToDouble(ZincSkin::areaM2).sum(),
        steelKg,
        skins.stream().mapToDouble(ZincSkin::minimumKg).sum(),
        growth,
        yield);
  }

  /** Coating on the work, likely, kg. */
  public double likelyKg() {
    return minimumKg * growth.likely();
  }

  /** Least coating mass, per cent of steel: net on the work, never zinc bought. */
  public double minimumPickupPct() {
    return 100 * minimumKg / steelKg;
  }

  /** Likely coating mass, per cent of steel. */
  public double likelyPickupPct() {
    return 100 * likelyKg() / steelKg;
  }

  /** Zinc to buy, kg. */
  public LowLikelyHigh toBuyKg() {
    return toBuyKg(minimumKg, growth, yield);
  }

  /**
   * Zinc to buy, kg.
   *
   * @param minimumKg coating on the work at the standard's least mean
   * @param growth growth over it
   * @param yield zinc on the work over zinc bought
   */
  public static LowLikelyHigh toBuyKg(double minimumKg, LowLikelyHigh growth, double yield) {
    return new LowLikelyHigh(
        minimumKg * growth.low() / Math.max(BEST_YIELD, yield),
        minimumKg * growth.likely() / yield,
        minimumKg * growth.high() / Math.min(WORST_YIELD, yield));
  }

  /** Where the likely purchase goes that does not stay on the work. */
  public ZincLosses losses() {
    return losses(likelyKg(), areaM2, yield);
  }

  /**
   * Where a purchase goes that does not stay on the work.
   *
   * @param onWorkKg zinc on the work
   * @param areaM2 coated surface
   * @param yield zinc on the work over zinc bought
   */
  public static ZincLosses losses(double onWorkKg, double areaM2, double yield) {
    double lost = onWorkKg / yield - onWorkKg;
    return new ZincLosses(
        lost * ASH_SHARE,
        lost * DROSS_SHARE,
        lost * (1 - ASH_SHARE - DROSS_SHARE),
        areaM2 * ASH_KG_M2);
  }

  /** What a flat 5.5 % of steel mass would say, kg bought: shown only beside the real figure. */
  public double flatPercentKg() {
    return steelKg * FLAT_PCT / 100;
  }

  /** How far the flat percentage is off the likely purchase, per cent of that purchase. */
  public double flatPercentOffPct() {
    return 100 * (flatPercentKg() - toBuyKg().likely()) / toBuyKg().likely();
  }
}
