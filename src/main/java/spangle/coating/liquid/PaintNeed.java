package spangle.coating.liquid;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.MeasureException;

/**
 * Liquid paint for one coat. Spreading rate in m2/l is ten times the solids in per cent by volume
 * over the dry film in um; thinner lowers the solids (published coating tech notes).
 *
 * @param areaM2 work to coat
 * @param filmUm dry film
 * @param solidsPct solids by volume of the unthinned paint, per cent
 * @param thinnerPct thinner per 100 of unthinned paint, by volume
 * @param loss share of all litres mixed that is lost, 0 to under 1
 */
public record PaintNeed(
    double areaM2, double filmUm, double solidsPct, double thinnerPct, double loss) {
  /** ft2 that a US gallon of nothing but solids covers 1 mil thick: 231 in3 / 144 in2 / 0.001. */
  public static final double FT2_MIL_GAL = 231 / 144.0 * 1000;

  private static final double UM_PER_MIL = 25.4;

  /** Checks the limits. */
  public PaintNeed {
    check(areaM2 > 0, areaM2, "an area above 0 m2");
    check(filmUm > 0, filmUm, "a film above 0 um");
    check(solidsPct > 0 && solidsPct <= 100, solidsPct, "solids above 0 and up to 100 per cent");
    check(thinnerPct >= 0 && thinnerPct <= 200, thinnerPct, "thinner of 0 to 200 per cent");
    check(loss >= 0 && loss < 1, loss, "a loss of 0 to under 1");
  }

  private static void check(boolean good, double value, String expected) {
    if (!good) {
      throw new MeasureException(Double.toString(value), expected, "check the figure");
    }
  }

  /** Solids of the thinned paint by volume, per cent. */
  public double thinnedSolidsPct() {
    return solidsPct / (1 + thinnerPct / 100);
  }

  /** Wet film of the thinned paint, um. */
  public double wetFilmUm() {
    return filmUm * 100 / thinnedSolidsPct();
  }

  /** Spreading rate of the thinned paint without loss, m2/l. */
  public double spreadingM2L() {
    return 10 * thinnedSolidsPct() / filmUm;
  }

  /** Litres of mixture on the work without loss. */
  public double litresTheoretical() {
    return areaM2 / spreadingM2L();
  }

  /** Litres of ready mixture to make, thinner included. */
  public double litres() {
    return litresTheoretical() / (1 - loss);
  }

  /**
   * Litres of each component in mix order, thinner last.
   *
   * @param ratio base first
   */
  public List<Double> componentsL(MixRatio ratio) {
    double unthinned = unthinnedL();
    List<Double> components = new ArrayList<>();
    ratio.volumeShares().forEach(share -> components.add(unthinned * share));
    if (thinnerPct > 0) {
      components.add(litres() - unthinned);
    }
    return components;
  }

  /** Litres of mixture before thinner. */
  public double unthinnedL() {
    return litres() / (1 + thinnerPct / 100);
  }

  /** Spreading rate of the thinned paint without loss, ft2 per US gallon: 1604 solids / mil. */
  public double spreadingFt2Gal() {
    return FT2_MIL_GAL * thinnedSolidsPct() / 100 / (filmUm / UM_PER_MIL);
  }
}
