package spangle.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.LeftOut;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.WeekPlan;

/**
 * Fills room that became free when the search was over: what is left out is tried in it, whole
 * routes only, most weight first, with every date of the others kept. No chance is in it.
 */
final class Refill {
  /** Routes tried at most: each costs a look at every place of its lines. */
  private static final int MOST = 40;

  private final Floor floor;
  private final Map<String, LeftOut> outside;
  private WeekPlan plan;

  private Refill(HalfDone.Rest rest) {
    this.floor = rest.plan().floor;
    this.outside = new HashMap<>(rest.outside());
    this.plan = rest.plan();
  }

  static HalfDone.Rest of(HalfDone.Rest rest) {
    Refill refill = new Refill(rest);
    refill.routes().stream().limit(MOST).forEach(refill::insert);
    return new HalfDone.Rest(refill.plan, refill.outside);
  }

  /** What stands in no row, each route from the first step that is left out to its end. */
  private List<List<LotFacts>> routes() {
    boolean[] in = new LeftOuts(plan, outside).inRows();
    Map<Integer, LotFacts> next = new HashMap<>();
    Set<Integer> out = new HashSet<>();
    for (LotFacts lot : floor.lots) {
      if (!in[lot.index]) {
        out.add(lot.index);
      }
      if (lot.after >= 0) {
        next.put(lot.after, lot);
      }
    }
    List<List<LotFacts>> routes = new ArrayList<>();
    for (LotFacts lot : floor.lots) {
      boolean first = out.contains(lot.index) && !out.contains(lot.after);
      if (first) {
        List<LotFacts> route = new ArrayList<>();
        for (LotFacts at = lot; at != null; at = next.get(at.index)) {
          route.add(at);
        }
        boolean whole = route.stream().allMatch(l -> out.contains(l.index) && l.hasPlace());
        boolean begun = lot.after < 0 || plan.lotEnd(lot.after) >= 0;
        if (whole && begun) {
          routes.add(route);
        }
      }
    }
    routes.sort(
        Comparator.comparingInt((List<LotFacts> r) -> -weight(r))
            .thenComparingInt(r -> r.get(r.size() - 1).lot.dueMin())
            .thenComparingInt(r -> r.get(0).index));
    return routes;
  }

  private static int weight(List<LotFacts> route) {
    return route.stream().mapToInt(l -> l.lot.weight()).sum();
  }

  private void insert(List<LotFacts> route) {
    List<String> ids = route.stream().map(l -> l.lot.id()).toList();
    Optional<WeekPlan> made = new Inserter(plan).into(ids);
    long worth = (long) floor.goals.leftOut() * weight(route);
    if (made.isPresent() && made.get().weighed() - plan.weighed() < worth) {
      plan = made.get();
      ids.forEach(outside::remove);
    }
  }
}
