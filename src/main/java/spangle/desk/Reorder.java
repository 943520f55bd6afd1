package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import spangle.intake.week.Coating;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.Supply;

/**
 * What is lacking for some lots, ordered at once: whole packs, in the shop at six in the morning
 * after the supplier's lead time.
 *
 * @param coating what is ordered
 * @param amount kilograms, litres of paint
 * @param unit of the amount
 * @param fromMin when it is ordered
 * @param atMin when it can be here
 */
record Reorder(Coating coating, double amount, String unit, int fromMin, int atMin) {
  /**
   * All that is to be ordered for them.
   *
   * @param plan a plan that draws on the store too
   * @param lots what else is to draw on it
   * @param fromMin now, minute of the week
   */
  static List<Reorder> of(WeekInput input, Brief brief, Plan plan, List<Lot> lots, int fromMin) {
    Conditions stock = new Conditions(brief);
    Set<String> materials = new TreeSet<>();
    lots.forEach(l -> materials.add(l.finish().materialId()));
    List<Reorder> orders = new ArrayList<>();
    for (Coating coating : input.catalogue().coatings().toList()) {
      double lacks = materials.contains(coating.id()) ? stock.shortBy(plan, lots, coating.id()) : 0;
      if (lacks > 0) {
        double pack = coating.stock().pack();
        double amount = pack > 0 ? Math.ceil(lacks / pack - 1e-9) * pack : lacks;
        int at =
            LaterWeek.workingDaysAfter(
                brief.monday(), fromMin, coating.stock().lead().workingDays());
        orders.add(new Reorder(coating, amount, stock.unit(coating.id()), fromMin, at));
      }
    }
    return orders;
  }

  /** The delivery; it goes by the coating's name, as no lot number is known yet. */
  Supply.Arrival arrival() {
    return new Supply.Arrival(atMin, amount, coating.id());
  }

  /** The supplies with what is ordered; nothing of it is kept for a kit. */
  static List<Supply> with(List<Reorder> orders, List<Supply> supplies) {
    List<Supply> more = new ArrayList<>();
    for (Supply supply : supplies) {
      List<Supply.Arrival> arrivals = new ArrayList<>(supply.arrivals());
      orders.stream()
          .filter(o -> supply.keptLot().isEmpty() && o.coating.id().equals(supply.materialId()))
          .map(Reorder::arrival)
          .forEach(arrivals::add);
      more.add(supply.with(arrivals));
    }
    return more;
  }

  /** Whom it is for, where the job that makes it needed is finished before it comes. */
  String forOthers(int endMin) {
    return atMin < endMin ? "" : ", for announced work whose " + coating.name() + " this takes";
  }

  /** As a condition: "if 20.0 kg more of buoy yellow, ordered Monday, arrive by Friday 06:00". */
  String words() {
    return String.format(
        Locale.ROOT,
        "if %.1f %s more of %s, ordered %s, arrive by %s (%s)",
        amount,
        unit,
        coating.name(),
        DayWords.of(fromMin).replaceFirst(" [0-9:]+$", ""),
        DayWords.of(atMin),
        coating.stock().lead().words());
  }
}
