package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spangle.coating.zinc.ZincInspection;
import spangle.intake.brief.Draws;
import spangle.measure.Figures;
import spangle.part.WallArea;
import spangle.plan.PartFacts;

/**
 * Where the inspector measures a galvanized part, in one sentence for the sheet; the limits stand
 * beside the boxes for the readings.
 */
final class InspectionWords {
  private InspectionWords() {}

  /** Every thickness of an article is inspected by itself (ISO 1461, several thicknesses). */
  static String of(Draws draws, PartFacts part) {
    List<String> walls = new ArrayList<>();
    for (WallArea skin : part.skins()) {
      ZincInspection check =
          ZincInspection.of(part.pieces(), skin.areaM2(), draws.row(part, skin.thicknessMm()));
      String head = part.skins().size() > 1 ? Figures.upTo(skin.thicknessMm(), 2) + " mm: " : "";
      walls.add(head + areas(check) + ", " + check.readingsPerArea() + " readings in it");
    }
    return String.format(
        Locale.ROOT,
        "%s: measure %d of %d, %s.",
        part.description(),
        ZincInspection.sample(part.pieces()),
        part.pieces(),
        String.join("; ", walls));
  }

  private static String areas(ZincInspection check) {
    return check.areasPerArticle() == 0
        ? "in groups of " + check.groupedArticles() + " pieces, 10 cm2 together"
        : check.areasPerArticle() == 1
            ? "1 area of 10 cm2 on each"
            : check.areasPerArticle() + " areas of 10 cm2 on each";
  }
}
