package spangle.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import spangle.plan.Brief;
import spangle.plan.Kit;
import spangle.plan.Kit.KitLine;
import spangle.plan.Lot;
import spangle.plan.event.LotNames;

/**
 * When the sets of the kits are whole, piece by piece. Every finished piece of a part lies in one
 * heap in the order in which it is finished; what was rejected is taken off the front of it, for it
 * is there once more as rework. The kit due first takes what it still wants, then the next.
 */
final class KitSets {
  private final Map<List<String>, List<Integer>> heaps = new HashMap<>();

  private KitSets(Brief brief, Map<String, Integer> ends) {
    Map<List<String>, Integer> rejected = new HashMap<>();
    for (Lot lot : brief.lots()) {
      Integer end = ends.get(lot.id());
      if (lot.lastLeg() && end != null) {
        List<Integer> heap = heaps.computeIfAbsent(key(lot), k -> new ArrayList<>());
        for (int piece = 0; piece < lot.pieces(); piece++) {
          heap.add(end);
        }
      }
      if (lot.lastLeg() && LotNames.rework(lot)) {
        rejected.merge(key(lot), lot.pieces(), Integer::sum);
      }
    }
    heaps
        .keySet()
        .forEach(
            part ->
                rejected.merge(
                    part, brief.rejectedWithoutLot(part.get(0), part.get(1)), Integer::sum));
    heaps.forEach(
        (part, heap) -> {
          heap.sort(Comparator.naturalOrder());
          heap.subList(0, Math.min(heap.size(), rejected.getOrDefault(part, 0))).clear();
        });
  }

  /**
   * What one kit comes to.
   *
   * @param weight how much it counts
   * @param late whether the last set the plan makes is whole past the kit's due time
   * @param spreadMinutes minutes the average set waits from its first finished line to its last
   * @param wholeMinutes minutes until the average set is whole, times the weight
   * @param completeDay on which day the last wanted set is whole; none where one is missing
   */
  record Count(
      int weight, boolean late, long spreadMinutes, long wholeMinutes, OptionalInt completeDay) {}

  static List<Count> of(PlanView view) {
    Map<String, Integer> ends = new HashMap<>();
    view.loads().forEach(load -> load.lots().forEach(lot -> ends.put(lot.id(), load.endMin())));
    return of(view.brief(), ends);
  }

  /** The same if what hangs and what was announced runs as it stands in the brief. */
  static List<Count> announced(Brief brief) {
    return of(brief, brief.announcedEnds());
  }

  private static List<Count> of(Brief brief, Map<String, Integer> ends) {
    KitSets sets = new KitSets(brief, ends);
    return brief.kits().stream()
        .sorted(Comparator.comparingInt(Kit::dueMin).thenComparing(Kit::id))
        .map(kit -> sets.count(kit, brief.horizonMin()))
        .toList();
  }

  private Count count(Kit kit, int horizonMin) {
    List<List<Integer>> lines = new ArrayList<>();
    for (KitLine line : kit.lines()) {
      if (line.perSet() > 0) {
        lines.add(setTimes(line, kit.sets()));
      }
    }
    if (lines.isEmpty() || kit.sets() <= 0) {
      return new Count(kit.weight(), false, 0, 0, OptionalInt.empty());
    }
    long spread = 0;
    long whole = 0;
    boolean late = false;
    boolean complete = true;
    int end = 0;
    for (int set = 0; set < kit.sets(); set++) {
      int nth = set;
      if (lines.stream().anyMatch(times -> times.size() <= nth)) {
        whole += horizonMin;
        complete = false;
        continue;
      }
      int last = lines.stream().mapToInt(times -> times.get(nth)).max().orElse(0);
      int first =
          lines.stream().mapToInt(times -> times.get(nth)).filter(t -> t >= 0).min().orElse(-1);
      whole += Math.max(0, last);
      spread += last - first;
      late |= last > kit.dueMin();
      end = Math.max(end, last);
    }
    return new Count(
        kit.weight(),
        late,
        spread / kit.sets(),
        whole / kit.sets() * kit.weight(),
        complete ? OptionalInt.of(end / Brief.DAY_MIN) : OptionalInt.empty());
  }

  /** When each set has all its pieces of this line; -1 where they lie in the store already. */
  private List<Integer> setTimes(KitLine line, int sets) {
    List<Integer> pieces = new ArrayList<>();
    for (int k = 0; k < line.onHand() && pieces.size() < sets * line.perSet(); k++) {
      pieces.add(-1);
    }
    List<Integer> heap =
        heaps.getOrDefault(List.of(line.jobId(), line.partId()), new ArrayList<>());
    while (pieces.size() < sets * line.perSet() && !heap.isEmpty()) {
      pieces.add(heap.remove(0));
    }
    List<Integer> times = new ArrayList<>();
    for (int set = 1; set * line.perSet() <= pieces.size(); set++) {
      times.add(pieces.get(set * line.perSet() - 1));
    }
    return times;
  }

  private static List<String> key(Lot lot) {
    return List.of(lot.jobId(), lot.partId());
  }
}
