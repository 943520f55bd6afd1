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
   * @param parts mix ratio by volume, base first
   */
  public List<Double> componentsL(List<Double> parts) {
    double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
    check(!parts.isEmpty() && parts.stream().allMatch(p -> p > 0), sum, "a mix such as 4:1");
    double unthinned = litres() / (1 + thinnerPct / 100);
    List<Double> components = new ArrayList<>();
    parts.forEach(p -> components.add(unthinned * p / sum));
    if (thinnerPct > 0) {
      components.add(litres() - unthinned);
    }
    return components;
  }
}
