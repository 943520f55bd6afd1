package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.LoadState;
import spangle.plan.event.WeekState;

/**
 * Loads that were in a machine when it broke down: who decides about them and what they look at. It
 * is common practice to hold them, to prove the cure on the part that heats up last, and to count
 * them as good only then.
 */
final class SuspectLoads {
  private SuspectLoads() {}

  /** All of them, in the order of their numbers. */
  static List<HeldLoad> of(WeekState state, Brief brief, Plan plan) {
    Map<String, Lot> lots = new HashMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    Map<String, PlannedLoad> loads = new HashMap<>();
    for (PlannedBatch batch : plan.batches()) {
      batch.loads().forEach(l -> loads.put(l.id(), l));
    }
    List<HeldLoad> suspects = new ArrayList<>();
    for (LoadState each : state.loads().values()) {
      PlannedLoad load = loads.get(each.load());
      if (!each.suspect().isEmpty()) {
        List<Lot> on =
            load == null
                ? List.of()
                : load.lotIds().stream().filter(lots::containsKey).map(lots::get).toList();
        FinishKind kind = on.isEmpty() ? FinishKind.POWDER : on.get(0).finish().kind();
        suspects.add(
            new HeldLoad(
                each.load(),
                HeldLoad.Kind.SUSPECT,
                each.suspect(),
                who(kind),
                look(kind, each, on),
                on));
      }
    }
    return suspects;
  }

  private static String who(FinishKind kind) {
    return kind == FinishKind.ZINC ? "The kettle lead" : "The inspector";
  }

  /** Only finished pieces can be rejected; before that they are put right, or they stay. */
  private static String look(FinishKind kind, LoadState state, List<Lot> lots) {
    boolean finished = lots.stream().allMatch(Lot::lastLeg);
    String then =
        "; good: inspected load="
            + state.load()
            + (finished
                ? ", not good: the same, then rejected with a count"
                : ", not good: it stays held and its next step waits until it is put right");
    return switch (kind) {
          case POWDER ->
              "how hot the parts were and for how long (probe or oven recorder), solvent rub on the"
                  + " heaviest part, colour and gloss beside the first-off piece";
          case LIQUID ->
              "through-dry and solvent rub on the heaviest part, runs, dirt and marks in the film";
          case DEGAS ->
              "how long the parts stood at the bake's temperature; short of it they are baked anew"
                  + " before powder, and never outside their window after zinc";
          case ZINC ->
              "nobody near until the kettle is safe by the local code; then bare spots, ash in the"
                  + " coating, thickness in five places";
        }
        + then;
  }
}
