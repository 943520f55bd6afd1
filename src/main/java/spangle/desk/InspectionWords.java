package spangle.desk;

import java.util.Locale;
import spangle.coating.zinc.ZincInspection;
import spangle.coating.zinc.ZincRow;
import spangle.plan.PartFacts;

/** What the inspector measures of a galvanized part, in one sentence for the sheet. */
final class InspectionWords {
  private InspectionWords() {}

  static String of(PartFacts part, ZincRow row) {
    ZincInspection check = ZincInspection.of(part.pieces(), part.areaM2(), row);
    String areas =
        check.areasPerArticle() == 0
            ? "in groups of " + check.groupedArticles() + " pieces, 10 cm2 together"
            : check.areasPerArticle() == 1
                ? "1 area of 10 cm2 on each"
                : check.areasPerArticle() + " areas of 10 cm2 on each";
    return String.format(
        Locale.ROOT,
        "%s: measure %d of %d, %s, %d readings in it; no area under %.0f um, mean not under %.0f.",
        part.description(),
        check.articles(),
        part.pieces(),
        areas,
        check.readingsPerArea(),
        check.localUm(),
        check.meanUm());
  }
}
