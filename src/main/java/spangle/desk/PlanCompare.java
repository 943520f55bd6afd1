package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.PlanFile;
import spangle.report.Change;

/** What moved between two plans of the same shop, lot by lot, in words. */
public final class PlanCompare {
  private PlanCompare() {}

  /**
   * The difference.
   *
   * @param changes one per lot that is elsewhere, new or dropped
   * @param loadsMoved loads of the new plan with a lot that moved
   * @param minutesMoved minutes all moved lots are shifted by, taken together
   */
  public record Difference(List<Change> changes, int loadsMoved, long minutesMoved) {
    /** Copies the list. */
    public Difference {
      changes = List.copyOf(changes);
    }
  }

  private record Spot(String machine, int startMin, int endMin, String load) {
    String words() {
      return machine + " " + DayWords.of(startMin) + " to " + DayWords.of(endMin);
    }
  }

  /** Compares an old plan with a new one. */
  public static Difference of(PlanFile before, PlanFile after) {
    Map<String, Spot> old = spots(before.plan());
    Map<String, Spot> now = spots(after.plan());
    Map<String, Lot> lots = new TreeMap<>();
    before.brief().lots().forEach(l -> lots.put(l.id(), l));
    after.brief().lots().forEach(l -> lots.put(l.id(), l));
    List<Change> changes = new ArrayList<>();
    TreeMap<String, Boolean> moved = new TreeMap<>();
    long minutes = 0;
    for (Lot lot : lots.values()) {
      Spot was = old.get(lot.id());
      Spot is = now.get(lot.id());
      if (was == null && is == null) {
        continue;
      }
      if (was == null || is == null) {
        boolean added = is != null;
        String there = is != null ? is.words() : was != null ? was.words() : "";
        changes.add(
            new Change(
                added ? "new" : "dropped",
                lot.id(),
                added ? missing(before, lot) : there,
                added ? there : missing(after, lot),
                tell(lot)));
      } else if (!was.machine().equals(is.machine()) || was.startMin() != is.startMin()) {
        minutes += Math.abs(is.startMin() - was.startMin());
        moved.put(is.load(), true);
        changes.add(new Change("moved", lot.id(), was.words(), is.words(), tell(lot)));
      }
    }
    return new Difference(changes, moved.size(), minutes);
  }

  private static String missing(PlanFile file, Lot lot) {
    Brief brief = file.brief();
    if (brief.lots().stream().noneMatch(l -> l.id().equals(lot.id()))) {
      return "not in the week";
    }
    return file.plan().leftOut().stream()
        .filter(l -> l.lotId().equals(lot.id()))
        .map(LeftOut::reason)
        .findFirst()
        .orElse("not planned");
  }

  private static String tell(Lot lot) {
    return lot.kitIds().isEmpty()
        ? "hangers"
        : "hangers, assembly " + String.join(" ", lot.kitIds());
  }

  private static Map<String, Spot> spots(Plan plan) {
    Map<String, Spot> spots = new TreeMap<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        Spot spot = new Spot(batch.machineId(), batch.startMin(), batch.endMin(), load.id());
        load.lotIds().forEach(id -> spots.put(id, spot));
      }
    }
    return spots;
  }
}
