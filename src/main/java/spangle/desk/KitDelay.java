package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spangle.plan.json.PlanFile;
import spangle.report.week.KitStatus;

/**
 * A kit that was complete in one plan and is complete later, and late, in another.
 *
 * @param name the kit
 * @param nowMin when all its sets are whole now
 * @param laterMin so many minutes later than before
 * @param lateMin so many minutes after it is due
 */
record KitDelay(String name, int nowMin, int laterMin, int lateMin) {
  static List<KitDelay> of(PlanFile before, PlanFile after) {
    Map<String, Integer> was = new TreeMap<>();
    for (KitStatus kit : Balance.kits(before)) {
      kit.completeMin().ifPresent(m -> was.put(kit.kit().id(), m));
    }
    List<KitDelay> delays = new ArrayList<>();
    for (KitStatus kit : Balance.kits(after)) {
      Integer then = was.get(kit.kit().id());
      int now = kit.completeMin().orElse(-1);
      if (then != null && now > then && now > kit.kit().dueMin()) {
        delays.add(new KitDelay(kit.kit().name(), now, now - then, now - kit.kit().dueMin()));
      }
    }
    return delays;
  }

  String words() {
    return name
        + ": complete "
        + DayWords.of(nowMin)
        + ", "
        + DayWords.length(laterMin)
        + " later; late by "
        + DayWords.length(lateMin);
  }
}
