package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import spangle.coating.powder.Reclaim;
import spangle.coating.powder.ReclaimAdvice;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Powder;
import spangle.plan.Lot;
import spangle.plan.PartFacts;

/**
 * All work of one powder in a week.
 *
 * @param name the powder in words
 * @param areaM2 work and hooks
 * @param gramsM2 film on it
 * @param firstPass share that stays on the first pass
 * @param pricePerKg price; 0 where it is not given
 */
public record ColourWork(
    String name, double areaM2, double gramsM2, double firstPass, double pricePerKg) {

  /** Powders that are sprayed this week, in the order of the coatings file. */
  static List<ColourWork> of(PreparedWeek week) {
    WeekIndex index = new WeekIndex(week.brief(), week.parts());
    double hookM2 = week.input().shop().defaults().hookAreaM2();
    List<ColourWork> colours = new ArrayList<>();
    for (Powder powder : week.input().catalogue().powders()) {
      double areaM2 = 0;
      double filmKg = 0;
      for (Lot lot : week.brief().lots()) {
        if (lot.finish().materialId().equals(powder.id())) {
          PartFacts part = index.part(lot);
          areaM2 += lot.areaM2() + lot.pieces() * part.hooks() * hookM2;
          filmKg += lot.materialKg() * powder.use();
        }
      }
      if (filmKg > 0) {
        colours.add(
            new ColourWork(
                powder.name(),
                areaM2,
                1000 * filmKg / areaM2,
                powder.use(),
                powder.stock().price()));
      }
    }
    return colours;
  }

  /**
   * Spray to waste or reclaim.
   *
   * @param capture share of the overspray sprayed again
   * @param labourPerHour cost of a person's hour
   */
  public ReclaimAdvice advice(double capture, double labourPerHour) {
    return ReclaimAdvice.of(
        areaM2,
        gramsM2,
        new Reclaim(firstPass, capture),
        new ReclaimAdvice.Costs(
            pricePerKg,
            labourPerHour,
            ReclaimAdvice.USUAL_EXTRA_MIN,
            ReclaimAdvice.USUAL_PEOPLE,
            0));
  }
}
