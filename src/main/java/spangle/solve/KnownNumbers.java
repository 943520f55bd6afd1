package spangle.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import spangle.plan.Goals;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;
import spangle.plan.event.LotNames;

/**
 * Numbers loads had in an earlier plan: a load of the same work keeps the number people know, and
 * so does one that has fewer pieces, or more, than were announced.
 */
final class KnownNumbers {
  private final Floor floor;
  private final Map<String, Lot> lots = new HashMap<>();
  private final List<Before> open = new ArrayList<>();
  private final Set<String> all = new HashSet<>();

  /** A load of the earlier plan whose number is free. */
  private record Before(
      String number,
      String lineId,
      String machineId,
      String carrierId,
      int startMin,
      int firstMin,
      List<String> likeness,
      Set<String> work) {}

  /** A load of the plan that is written: its machine, its start there, when it hangs. */
  record Wanted(Load load, String machineId, int startMin, int firstMin) {}

  KnownNumbers(Floor floor, List<PlannedBatch> earlier) {
    this.floor = floor;
    for (LotFacts lot : floor.lots) {
      lots.put(lot.lot.id(), lot.lot);
    }
    List<PlannedBatch> inTime = new ArrayList<>(earlier);
    inTime.sort(Comparator.comparingInt(PlannedBatch::startMin).thenComparing(PlannedBatch::id));
    for (PlannedBatch batch : inTime) {
      for (PlannedLoad load : batch.loads()) {
        Set<String> work = new HashSet<>();
        load.lotIds().forEach(id -> work.add(LotNames.work(id)));
        all.add(load.id());
        if (floor.brief.retired().contains(load.id())) {
          continue;
        }
        open.add(
            new Before(
                load.id(),
                batch.lineId(),
                batch.machineId(),
                load.carrierId(),
                batch.startMin(),
                LoadTimes.first(batch, load),
                Lot.likeness(load.lotIds(), lots),
                work));
      }
    }
  }

  private List<String> ids(Load load) {
    List<String> ids = new ArrayList<>();
    for (int lot : load.lots) {
      ids.add(floor.lots[lot].lot.id());
    }
    return ids;
  }

  /**
   * Numbers of the loads of one line, in their order; empty where a load gets a new one. First
   * those that stand where the same work stood, on the same kind of carrier before others, then the
   * same work elsewhere, first in time first, then what shares pieces of a part with a load that is
   * gone, nearest in time first.
   */
  List<Optional<String>> of(String lineId, List<Wanted> wanted) {
    @Nullable String[] numbers = new @Nullable String[wanted.size()];
    List<List<String>> likeness =
        wanted.stream().map(w -> Lot.likeness(ids(w.load()), lots)).toList();
    BiPredicate<Integer, Before> there =
        (w, b) -> same(likeness.get(w), b) && stood(wanted.get(w), b);
    give(wanted, numbers, (w, b) -> there.test(w, b) && carried(wanted.get(w), b));
    give(wanted, numbers, there);
    give(wanted, numbers, (w, b) -> same(likeness.get(w), b));
    List<Set<String>> work = new ArrayList<>();
    for (Wanted each : wanted) {
      Set<String> own = new HashSet<>();
      ids(each.load()).forEach(id -> own.add(LotNames.work(id)));
      work.add(own);
    }
    nearest(wanted, numbers, work, lineId);
    List<Optional<String>> known = new ArrayList<>();
    for (String number : numbers) {
      known.add(Optional.ofNullable(number));
    }
    return known;
  }

  private void give(
      List<Wanted> wanted, @Nullable String[] numbers, BiPredicate<Integer, Before> takes) {
    for (int w = 0; w < wanted.size(); w++) {
      if (numbers[w] != null) {
        continue;
      }
      int at = w;
      Optional<Before> before = open.stream().filter(b -> takes.test(at, b)).findFirst();
      if (before.isPresent()) {
        numbers[w] = before.get().number();
        open.remove(before.get());
      }
    }
  }

  private static boolean same(List<String> likeness, Before before) {
    return likeness.equals(before.likeness());
  }

  private boolean carried(Wanted wanted, Before before) {
    return floor.carriers[wanted.load().carrier].spec.id().equals(before.carrierId());
  }

  private static boolean stood(Wanted wanted, Before before) {
    return wanted.machineId().equals(before.machineId())
        && Math.abs(wanted.startMin() - before.startMin()) <= Goals.SWING_MIN;
  }

  private static int apart(Wanted wanted, Before before) {
    return Math.abs(wanted.firstMin() - before.firstMin());
  }

  private void nearest(
      List<Wanted> wanted, @Nullable String[] numbers, List<Set<String>> work, String lineId) {
    record Match(int wanted, Before before, int shared, int apart) {}
    List<Match> matches = new ArrayList<>();
    for (int w = 0; w < wanted.size(); w++) {
      for (Before before : numbers[w] == null ? open : List.<Before>of()) {
        Set<String> shared = new HashSet<>(before.work());
        shared.retainAll(work.get(w));
        if (!shared.isEmpty() && before.lineId().equals(lineId)) {
          matches.add(new Match(w, before, shared.size(), apart(wanted.get(w), before)));
        }
      }
    }
    matches.sort(
        Comparator.comparingInt((Match m) -> -m.shared())
            .thenComparingInt(Match::apart)
            .thenComparingInt(Match::wanted)
            .thenComparing(m -> m.before().number()));
    for (Match match : matches) {
      if (numbers[match.wanted()] == null && open.remove(match.before())) {
        numbers[match.wanted()] = match.before().number();
      }
    }
  }

  /** All numbers, whether their work is still there or not: none is given to other work. */
  Set<String> all() {
    return Set.copyOf(all);
  }
}
