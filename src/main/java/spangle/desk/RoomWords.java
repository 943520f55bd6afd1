package spangle.desk;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/**
 * Why a load moves that no event forced: whose room in the machine it takes, or who is in it where
 * it stood. Only what the two plans show is said; where they show nothing, nothing is.
 */
final class RoomWords {
  /** So many loads are named; of more it is said how many. */
  private static final int NAMED = 3;

  private final Plan before;
  private final Plan after;
  private final Brief brief;

  RoomWords(Plan before, Plan after, Brief brief) {
    this.before = before;
    this.after = after;
    this.brief = brief;
  }

  /** Why it stands elsewhere than it did; empty where the plans do not show it. */
  String of(LoadMatch.Spot was, LoadMatch.Spot is) {
    if (is.batch().startMin() < was.batch().startMin()) {
      Set<String> left = in(before, is.batch());
      left.removeAll(in(after, is.batch()));
      left.remove(was.id());
      if (!left.isEmpty()) {
        return "the room of " + named(left) + " came free";
      }
    } else {
      Set<String> there = in(after, was.batch());
      there.removeAll(ids(was.batch()));
      there.removeAll(ids(is.batch()));
      there.remove(is.id());
      if (!there.isEmpty()) {
        String machine = was.batch().machineId();
        return named(there)
            + (there.size() == 1 ? " is in " : " are in ")
            + brief.placeName(machine)
            + " then";
      }
    }
    Set<String> with = ids(is.batch());
    with.removeAll(ids(was.batch()));
    with.remove(is.id());
    return with.isEmpty() ? "" : "it goes in with " + named(with);
  }

  /** Loads of a plan that are in that batch's machine during its time. */
  private static Set<String> in(Plan plan, PlannedBatch batch) {
    Set<String> loads = new TreeSet<>();
    for (PlannedBatch other : plan.batches()) {
      if (other.machineId().equals(batch.machineId())
          && other.startMin() < batch.endMin()
          && batch.startMin() < other.endMin()) {
        loads.addAll(ids(other));
      }
    }
    return loads;
  }

  private static Set<String> ids(PlannedBatch batch) {
    return batch.loads().stream()
        .map(PlannedLoad::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String named(Set<String> loads) {
    List<String> first = loads.stream().limit(NAMED).toList();
    int more = loads.size() - first.size();
    return String.join(", ", first) + (more > 0 ? " and " + more + " more" : "");
  }
}
