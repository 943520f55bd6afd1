package spangle.intake.brief;

import java.util.List;
import spangle.coating.zinc.AstmA123;
import spangle.coating.zinc.Iso1461;
import spangle.coating.zinc.SteelChemistry;
import spangle.coating.zinc.SteelReactivity;
import spangle.coating.zinc.ZincRow;
import spangle.coating.zinc.ZincSkin;
import spangle.intake.week.Coating;
import spangle.intake.week.Paint;
import spangle.intake.week.Powder;
import spangle.intake.week.WeekInput;
import spangle.intake.week.ZincStandard;
import spangle.part.Material;
import spangle.plan.PartFacts;

/** What one piece draws from the stores: powder sprayed, paint mixed, zinc taken up, all likely. */
public final class Draws {
  private final WeekInput input;

  /** For the coatings, hooks and standard of a week. */
  public Draws(WeekInput input) {
    this.input = input;
  }

  /** Powder in kg sprayed, hooks counted, or liquid paint in litres of mixture. */
  public double coating(PartFacts part, Coating coating) {
    double filmUm = part.filmUm() > 0 ? part.filmUm() : coating.film().aimUm();
    if (!coating.id().equals(part.coatingIds().get(part.coatingIds().size() - 1))) {
      filmUm = coating.film().aimUm();
    }
    double hooksM2 = part.hooks() * input.shop().defaults().hookAreaM2();
    double areaM2 = part.areaM2() + hooksM2;
    if (coating instanceof Powder powder) {
      return areaM2 * powder.specificGravity() * filmUm / 1000 / powder.use();
    }
    Paint paint = (Paint) coating;
    double solids = paint.solidsPct() / (1 + paint.thinnerPct() / 100);
    return areaM2 * filmUm / (10 * solids) / (1 - paint.loss());
  }

  /** Zinc on one piece in kg: the standard's mean mass times the likely growth of its steel. */
  public double zincKg(PartFacts part) {
    return minimumKg(part) * steel(part).steelClass().growth().likely();
  }

  /** Least coating on one piece in kg: each skin at its own row. */
  public double minimumKg(PartFacts part) {
    return skins(part).stream().mapToDouble(ZincSkin::minimumKg).sum();
  }

  /** The skins of one piece, thinnest first, each with the row that judges it. */
  public List<ZincSkin> skins(PartFacts part) {
    return part.skins().stream()
        .map(skin -> new ZincSkin(skin.areaM2(), row(part, skin.thicknessMm())))
        .toList();
  }

  /**
   * The row of the standard that judges one wall of a part.
   *
   * @param thicknessMm the wall, mm
   */
  public ZincRow row(PartFacts part, double thicknessMm) {
    if (part.spun()) {
      return Iso1461.spun(thicknessMm);
    }
    if (part.material() == Material.CAST_IRON) {
      return Iso1461.casting(thicknessMm);
    }
    return input.shop().standard() == ZincStandard.ASTM_A123
        ? AstmA123.row(AstmA123.Category.PLATE, thicknessMm)
        : Iso1461.steel(thicknessMm);
  }

  /** What the certificate says of the steel. */
  public SteelReactivity steel(PartFacts part) {
    return SteelReactivity.of(new SteelChemistry(part.siPct(), part.pPct(), part.alPct()));
  }
}
