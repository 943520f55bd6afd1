package spangle.desk;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.PlanFile;

/**
 * What holds each late part, as {@code why} finds it, for the sheets. Where many are late the week
 * is too full or was searched too briefly to be worth it, and {@code why} is asked for each.
 */
final class LateCauses {
  /** Parts looked at; each takes one to two seconds on a week of 130 lots. */
  private static final int MOST = 3;

  private LateCauses() {}

  /** By job/part, in words; empty where nothing or too much is late. */
  static Map<String, String> of(Brief brief, Plan plan) {
    Set<String> late = late(brief, plan);
    if (late.size() > MOST) {
      return Map.of();
    }
    PlanFile file =
        new PlanFile(
            PlanFile.FORMAT,
            PlanHistory.FIRST,
            ".",
            List.of(),
            Optional.empty(),
            List.of(),
            brief,
            plan,
            List.of(),
            Optional.empty());
    Map<String, String> causes = new TreeMap<>();
    for (String part : late) {
      for (Why why : WhyDesk.why(file, part)) {
        cause(why).ifPresent(words -> causes.put(part, words));
      }
    }
    return causes;
  }

  private static Set<String> late(Brief brief, Plan plan) {
    Map<String, Lot> lots = new HashMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    Set<String> late = new LinkedHashSet<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          Lot lot = lots.get(id);
          if (lot != null && lot.lastLeg() && LoadTimes.last(batch, load) > lot.dueMin()) {
            late.add(WeekIndex.key(lot.jobId(), lot.partId()));
          }
        }
      }
    }
    return late;
  }

  /** Where some pieces are left out, {@code why} speaks of those, and their reason stands. */
  private static Optional<String> cause(Why why) {
    return why.endMin().isEmpty()
        ? Optional.empty()
        : why.holds().stream().findFirst().map(Why.Hold::words);
  }
}
