package spangle.intake.brief;

import spangle.intake.week.Coating;
import spangle.intake.week.Paint;

/** How soon and how late the next coat may follow. */
final class Recoat {
  /** Two coats of powder go on within a day, before dust and oil settle (common practice). */
  private static final int POWDER_MAX_MIN = 24 * 60;

  private Recoat() {}

  static int minMin(Coating coating) {
    return coating instanceof Paint paint ? paint.recoatMinMin() : 0;
  }

  static int maxMin(Coating coating) {
    return coating instanceof Paint paint ? paint.recoatMaxMin() : POWDER_MAX_MIN;
  }
}
