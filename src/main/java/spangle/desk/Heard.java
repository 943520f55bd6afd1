package spangle.desk;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.event.Event;
import spangle.plan.event.EventLog;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFile;

/**
 * What the log says of the week of a plan up to a minute.
 *
 * @param state how far everything has come
 * @param events those that count: none that the state of the week refuses
 */
record Heard(WeekState state, List<Event> events) {
  Heard {
    events = List.copyOf(events);
  }

  static Heard of(PlanFile plan, EventLog log, int atMin) {
    WeekState state = WeekState.of(plan.brief(), plan.plan(), log, known(plan, log), atMin);
    Set<Integer> refused = new HashSet<>();
    state.refused().forEach(r -> refused.add(r.event().number()));
    return new Heard(
        state, log.until(atMin).stream().filter(e -> !refused.contains(e.number())).toList());
  }

  /** Number of the last event that speaks of loads of the plan before this one. */
  static int known(PlanFile plan, EventLog log) {
    return plan.replanned().map(r -> r.known(log)).orElse(0);
  }
}
