package spangle.coating.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.measure.Limits;

/**
 * Minutes a shop's own oven takes to bring work of each thickness to cure temperature, measured
 * with a probe. Between two thicknesses it is a straight line; below the thinnest and above the
 * thickest the time goes with the thickness.
 *
 * @param rows what was measured; empty means the rule of thumb
 */
public record HeatUpTable(List<Row> rows) {
  /** Common practice: three minutes per mm of steel in moving air on both faces. */
  public static final double RULE_MIN_PER_MM_STEEL = 3;

  /** No measurements: three minutes per mm of steel, aluminium by its heat content. */
  public static final HeatUpTable RULE_OF_THUMB = new HeatUpTable(List.of());

  /**
   * One measurement.
   *
   * @param metal what the part was made of
   * @param thicknessMm its thickness, both faces in moving air
   * @param minutes from the oven being back at its setting to cure temperature
   */
  public record Row(Metal metal, double thicknessMm, double minutes) {
    /** Checks the limits. */
    public Row {
      Limits.above(thicknessMm, 0, "a thickness", "mm");
      Limits.above(minutes, 0, "a heat-up time", "min");
    }
  }

  /** Sorts by thickness. */
  public HeatUpTable {
    List<Row> sorted = new ArrayList<>(rows);
    sorted.sort(Comparator.comparingDouble(Row::thicknessMm));
    rows = List.copyOf(sorted);
  }

  /** Minutes to cure temperature; a part heated from one side counts as twice its thickness. */
  public double minutes(HeatedPart part) {
    double thicknessMm = part.heatLengthM() * 2000;
    List<Row> own = rows.stream().filter(row -> row.metal() == part.metal()).toList();
    if (own.isEmpty()) {
      return ruleMinPerMm(part.metal()) * thicknessMm;
    }
    Row first = own.get(0);
    if (thicknessMm <= first.thicknessMm()) {
      return first.minutes() * thicknessMm / first.thicknessMm();
    }
    for (int i = 1; i < own.size(); i++) {
      if (thicknessMm <= own.get(i).thicknessMm()) {
        return between(own.get(i - 1), own.get(i), thicknessMm);
      }
    }
    Row last = own.get(own.size() - 1);
    return last.minutes() * thicknessMm / last.thicknessMm();
  }

  private static double ruleMinPerMm(Metal metal) {
    return RULE_MIN_PER_MM_STEEL
        * (metal.densityKgM3() * metal.constantHeatJKgK())
        / (Metal.STEEL.densityKgM3() * Metal.STEEL.constantHeatJKgK());
  }

  private static double between(Row thinner, Row thicker, double thicknessMm) {
    double span = thicker.thicknessMm() - thinner.thicknessMm();
    return span == 0
        ? Math.max(thinner.minutes(), thicker.minutes())
        : thinner.minutes()
            + (thicker.minutes() - thinner.minutes())
                * (thicknessMm - thinner.thicknessMm())
                / span;
  }
}
