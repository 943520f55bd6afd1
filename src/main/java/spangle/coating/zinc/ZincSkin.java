package spangle.coating.zinc;

import spangle.measure.Limits;

/**
 * Part of an article's surface that falls under one row of the standard. An article of several
 * thicknesses is several skins; insides, bores and edges are counted with the skin they belong to.
 *
 * @param areaM2 all of its surface that gets zinc, m2
 * @param row the standard's row for its thickness
 */
public record ZincSkin(double areaM2, ZincRow row) {
  /** Checks the area. */
  public ZincSkin {
    Limits.above(areaM2, 0, "an area", "m2");
  }

  /** Least coating mass on it, kg. */
  public double minimumKg() {
    return areaM2 * row.coatingGM2() / 1000;
  }
}
