package spangle.coating.zinc;

import java.util.OptionalDouble;
import spangle.measure.Limits;

/**
 * ISO 1461:2009, Table 3 (not centrifuged) and Table 4 (centrifuged). The steel rows of Table 3
 * stand unchanged in the 2022 edition. The 1999 edition put exactly 1.5, 3 and 6 mm into the
 * thicker row; here they belong to the thinner one.
 */
public final class Iso1461 {
  /** Nominal density of the coating, 7.2 g/cm3: 7.2 g on 1 m2 for every um. */
  public static final double GRAMS_PER_UM = 7.2;

  private static final double EDGE_SLACK_MM = 1e-9;
  private static final String TABLE_3 = "ISO 1461:2009 Table 3, ";
  private static final String TABLE_4 = "ISO 1461:2009 Table 4, centrifuged, ";

  private Iso1461() {}

  /** Steel that is hung, not centrifuged. */
  public static ZincRow steel(double thicknessMm) {
    requireThickness(thicknessMm);
    if (thicknessMm > 6 + EDGE_SLACK_MM) {
      return hung(70, 85, 610, "steel over 6 mm");
    }
    if (thicknessMm > 3 + EDGE_SLACK_MM) {
      return hung(55, 70, 505, "steel over 3 up to 6 mm");
    }
    if (thicknessMm >= 1.5 - EDGE_SLACK_MM) {
      return hung(45, 55, 395, "steel 1.5 up to 3 mm");
    }
    return hung(35, 45, 325, "steel under 1.5 mm");
  }

  /** A casting that is hung, not centrifuged. */
  public static ZincRow casting(double thicknessMm) {
    requireThickness(thicknessMm);
    return thicknessMm >= 6 - EDGE_SLACK_MM
        ? hung(70, 80, 575, "casting 6 mm and over")
        : hung(60, 70, 505, "casting under 6 mm");
  }

  /** Threaded work, centrifuged, by thread diameter. */
  public static ZincRow threaded(double diameterMm) {
    Limits.above(diameterMm, 0, "a thread diameter", "mm");
    return diameterMm > 6 + EDGE_SLACK_MM
        ? spun(40, 50, 360, "thread over 6 mm")
        : spun(20, 25, 180, "thread up to 6 mm");
  }

  /** Other work, castings too, centrifuged. */
  public static ZincRow spun(double thicknessMm) {
    requireThickness(thicknessMm);
    return thicknessMm >= 3 - EDGE_SLACK_MM
        ? spun(45, 55, 395, "other work 3 mm and over")
        : spun(35, 45, 325, "other work under 3 mm");
  }

  private static void requireThickness(double thicknessMm) {
    Limits.above(thicknessMm, 0, "a thickness", "mm");
  }

  private static ZincRow hung(double localUm, double meanUm, double tableGM2, String row) {
    return new ZincRow(
        localUm, meanUm, GRAMS_PER_UM, OptionalDouble.of(tableGM2), TABLE_3 + row, false);
  }

  private static ZincRow spun(double localUm, double meanUm, double tableGM2, String row) {
    return new ZincRow(
        localUm, meanUm, GRAMS_PER_UM, OptionalDouble.of(tableGM2), TABLE_4 + row, true);
  }
}
