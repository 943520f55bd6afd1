package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Supply;

/** What must come true for a plan to hold: deliveries that lots draw on before they are here. */
final class Conditions {
  private final Brief brief;
  private final Map<String, Lot> lots = new HashMap<>();

  Conditions(Brief brief) {
    this.brief = brief;
    brief.lots().forEach(lot -> lots.put(lot.id(), lot));
  }

  private record Draw(int atMin, double amount, boolean ours) {}

  /** Deliveries on which some lots of a plan rest, in words. */
  List<String> of(Plan plan, Set<String> lotIds) {
    List<String> words = new ArrayList<>();
    Set<Supply> drawnOn = new HashSet<>();
    lotIds.stream()
        .map(lots::get)
        .forEach(lot -> brief.supplyOf(lot.finish()).ifPresent(drawnOn::add));
    for (Supply supply : brief.supplies()) {
      if (drawnOn.contains(supply)) {
        Set<String> ours = new HashSet<>(lotIds);
        delivery(supply, draws(plan, supply, ours), words);
      }
    }
    return words;
  }

  private List<Draw> draws(Plan plan, Supply supply, Set<String> ours) {
    List<Draw> draws = new ArrayList<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          Lot lot = lots.get(id);
          if (lot != null && brief.supplyOf(lot.finish()).equals(Optional.of(supply))) {
            draws.add(new Draw(batch.startMin(), lot.materialKg(), ours.contains(id)));
          }
        }
      }
    }
    draws.sort(Comparator.comparingInt(Draw::atMin).thenComparing(Draw::ours));
    return draws;
  }

  private void delivery(Supply supply, List<Draw> draws, List<String> words) {
    double drawn = 0;
    double needed = 0;
    for (Draw draw : draws) {
      drawn += draw.amount();
      if (draw.ours()) {
        needed = drawn;
      }
    }
    double there = 0;
    for (Supply.Arrival arrival : supply.arrivals()) {
      if (arrival.atMin() > 0 && there < needed - 1e-9) {
        words.add(
            String.format(
                Locale.ROOT,
                "if %.1f %s of %s%s arrive %s",
                arrival.amount(),
                unit(supply.materialId()),
                supply.name(),
                arrival.lot().isEmpty() ? "" : " (lot " + arrival.lot() + ")",
                DayWords.of(arrival.atMin())));
      }
      there += arrival.amount();
    }
  }

  /** Kilograms, litres of paint. */
  String unit(String materialId) {
    boolean paint =
        brief.lots().stream()
            .anyMatch(
                l ->
                    l.finish().materialId().equals(materialId)
                        && l.finish().kind() == FinishKind.LIQUID);
    return paint ? "l" : "kg";
  }

  /** How much more than all that comes a plan and some further lots would draw; 0 where enough. */
  double shortBy(Plan plan, List<Lot> more, String materialId) {
    double there =
        brief.supplies().stream()
            .filter(s -> s.materialId().equals(materialId))
            .flatMap(s -> s.arrivals().stream())
            .mapToDouble(Supply.Arrival::amount)
            .sum();
    double drawn =
        plan.batches().stream()
            .flatMap(b -> b.loads().stream())
            .flatMap(l -> l.lotIds().stream())
            .map(lots::get)
            .filter(l -> l != null && l.finish().materialId().equals(materialId))
            .mapToDouble(Lot::materialKg)
            .sum();
    double wanted =
        more.stream()
            .filter(l -> l.finish().materialId().equals(materialId))
            .mapToDouble(Lot::materialKg)
            .sum();
    return Math.max(0, drawn + wanted - there);
  }
}
