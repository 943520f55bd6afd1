package spangle.coating.zinc;

import spangle.measure.Limits;

/**
 * What ISO 1461 asks the inspector of a lot.
 *
 * @param articles articles in the control sample (1999 and 2009 text, from memory)
 * @param areasPerArticle reference areas on each article of the sample; 0 when articles are grouped
 * @param groupedArticles articles put together until they give 10 cm2; 1 when each stands alone
 * @param readingsPerArea magnetic readings in each reference area, at least
 * @param localUm no area's mean below this, um
 * @param meanUm mean of all areas not below this, um
 */
public record ZincInspection(
    int articles,
    int areasPerArticle,
    int groupedArticles,
    int readingsPerArea,
    double localUm,
    double meanUm) {
  /** Bare spots that may be repaired, together, share of the article's surface. */
  public static final double REPAIRABLE_SHARE = 0.005;

  /** Largest single bare spot that may be repaired, cm2 (from memory). */
  public static final double REPAIRABLE_SPOT_CM2 = 10;

  private static final int READINGS = 5;
  private static final double LARGE_M2 = 2;
  private static final double REFERENCE_AREA_M2 = 0.001;

  /**
   * The inspection of a lot.
   *
   * @param lotArticles articles in the lot
   * @param significantM2 significant surface of one article
   * @param row the standard's row for its thickness
   */
  public static ZincInspection of(int lotArticles, double significantM2, ZincRow row) {
    Limits.between(lotArticles, 1, 1e7, "a lot", "articles");
    Limits.above(significantM2, 0, "a significant surface", "m2");
    boolean small = significantM2 < REFERENCE_AREA_M2 - 1e-12;
    int grouped = small ? (int) Math.ceil(REFERENCE_AREA_M2 / significantM2 - 1e-9) : 1;
    return new ZincInspection(
        sample(lotArticles),
        small ? 0 : significantM2 > LARGE_M2 + 1e-12 ? 3 : 1,
        grouped,
        READINGS,
        row.localUm(),
        row.meanUm());
  }

  /**
   * Articles in the control sample of a lot (ISO 1461, the table of the 1999 and 2009 text, from
   * memory).
   *
   * @param lot articles in the lot
   */
  public static int sample(int lot) {
    if (lot <= 3) {
      return lot;
    }
    if (lot <= 500) {
      return 3;
    }
    if (lot <= 1200) {
      return 5;
    }
    if (lot <= 3200) {
      return 8;
    }
    return lot <= 10_000 ? 13 : 20;
  }
}
