package spangle.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import spangle.plan.Chain;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;

/**
 * Takes steps out of a plan that would be done for nothing: the step after them finds no place in
 * it, and what they make does not keep. Galvanized work that waits past its window has to be made
 * ready again.
 */
final class HalfDone {
  private final Floor floor;
  private final WeekClock clock;
  private final Map<String, LeftOut> outside;
  private WeekPlan plan;

  private HalfDone(WeekPlan plan, Map<String, LeftOut> outside) {
    this.floor = plan.floor;
    this.clock = new WeekClock(floor);
    this.plan = plan;
    this.outside = new HashMap<>(outside);
  }

  /** A plan and what stands in no row of it, by lot. */
  record Rest(WeekPlan plan, Map<String, LeftOut> outside) {}

  /** The same plan without such steps. */
  static Rest without(WeekPlan plan, Map<String, LeftOut> outside) {
    HalfDone half = new HalfDone(plan, outside);
    for (Set<Integer> vain = half.vain(); !vain.isEmpty(); vain = half.vain()) {
      half.takeOut(vain);
    }
    return new Rest(half.plan, half.outside);
  }

  /** Lots done for nothing; each is noted with its reason. */
  private Set<Integer> vain() {
    Map<String, LeftOut> left = new HashMap<>();
    boolean[] frozen = floor.frozenLots();
    Set<Integer> vain = new HashSet<>();
    for (LeftOut each : new LeftOuts(plan, outside).list()) {
      left.put(each.lotId(), each);
    }
    for (LotFacts lot : floor.lots) {
      Optional<Chain> after = lot.lot.after();
      LeftOut why = left.get(lot.lot.id());
      if (why == null || after.isEmpty() || lot.after < 0 || frozen[lot.after]) {
        continue;
      }
      Chain chain = after.get();
      if (plan.lotEnd(lot.after) >= 0 && chain.both()) {
        vain.add(lot.after);
        String id = chain.lotId();
        outside.put(
            id,
            new LeftOut(id, LeftOut.HALF_ROUTE, words(lot.lot, chain, why), OptionalInt.empty()));
        outside.putIfAbsent(lot.lot.id(), why);
      }
    }
    return vain;
  }

  private static String words(Lot next, Chain chain, LeftOut why) {
    String own = "\"" + next.finish().name() + "\" after it finds no place in the plan";
    return why.code().equals(LeftOut.HALF_ROUTE)
        ? own + ", nor what comes after that"
        : own
            + " ("
            + why.reason()
            + "); done without it, it waits longer than the "
            + hours(chain.maxGapMin())
            + " its surface keeps and has to be made ready again";
  }

  private static String hours(int minutes) {
    return minutes % 60 == 0 ? minutes / 60 + " h" : minutes + " min";
  }

  private void takeOut(Set<Integer> vain) {
    Batch[][][] rows = plan.batches();
    for (Batch[][] line : rows) {
      for (int m = 0; m < line.length; m++) {
        List<Batch> kept = new ArrayList<>();
        for (Batch batch : line[m]) {
          without(batch, vain).ifPresent(kept::add);
        }
        line[m] = kept.toArray(Batch[]::new);
      }
    }
    plan = clock.plan(rows);
  }

  private Optional<Batch> without(Batch batch, Set<Integer> vain) {
    if (batch.frozen.isPresent()) {
      return Optional.of(batch);
    }
    List<Load> loads = new ArrayList<>();
    boolean same = true;
    for (Load load : batch.loads) {
      List<Integer> lots = new ArrayList<>();
      for (int lot : load.lots) {
        if (!vain.contains(lot)) {
          lots.add(lot);
        }
      }
      same &= lots.size() == load.lots.length;
      if (lots.size() == load.lots.length) {
        loads.add(load);
      } else if (!lots.isEmpty()) {
        loads.add(floor.load(load.carrier, lots.stream().mapToInt(i -> i).toArray()));
      }
    }
    if (same) {
      return Optional.of(batch);
    }
    return loads.isEmpty()
        ? Optional.empty()
        : Optional.of(Batch.of(batch.setting, loads.toArray(Load[]::new)));
  }
}
