package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spangle.intake.week.Hauling;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;

/** What stands on the sheet of a load that goes to another firm. */
final class SentOut {
  private SentOut() {}

  /**
   * Words for the sheet.
   *
   * @param kg mass of the work on the load
   * @param first any lot of it
   */
  static List<String> words(Hauling hauling, PlannedBatch trip, double kg, Lot first) {
    List<String> words = new ArrayList<>();
    String firm = hauling.firm().isEmpty() ? "the galvanizer" : hauling.firm();
    words.add(
        String.format(
            Locale.ROOT,
            "Goes to %s with the truck %s, back %s: %.0f kg%s.",
            firm,
            DayWords.of(trip.startMin()),
            DayWords.of(trip.endMin()),
            kg,
            hauling.chargePerKg() > 0
                ? String.format(
                    Locale.ROOT,
                    " at %.2f a kg, %.2f in all",
                    hauling.chargePerKg(),
                    kg * hauling.chargePerKg())
                : ""));
    words.add(
        "Vent and drain holes seen by two people before it leaves; the holes go with the papers:"
            + " the galvanizer decides whether it is dipped.");
    if (first.finish().name().contains("powder")) {
      words.add(
          "On the order: no quench, no chromate, no oil; powder follows. Back in the shop: look,"
              + " fettle, clean, then the degassing bake.");
    }
    return words;
  }
}
