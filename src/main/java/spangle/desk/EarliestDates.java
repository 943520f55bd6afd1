package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.intake.brief.PreparedWeek;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.solve.Freedom;
import spangle.solve.Inserted;
import spangle.solve.Inserter;

/**
 * When what does not fit into a week can be had: lots left out are put behind it, one after the
 * other, in the order they are due, into the hours of the weeks that follow. A lot that lacks
 * material which nobody has ordered gets no date.
 */
final class EarliestDates {
  private static final int MORE_DAYS = 14;

  /** Lots left out times all lots: beyond this the dates would cost more than the plan. */
  private static final long MOST = 50_000;

  private EarliestDates() {}

  /** The same plan; what it leaves out has its earliest date where there is one. */
  static Plan in(PreparedWeek week, Plan plan) {
    if (plan.leftOut().isEmpty()
        || (long) plan.leftOut().size() * week.brief().lots().size() > MOST) {
      return plan;
    }
    int end = week.brief().horizonMin();
    Map<String, LeftOut> left = new HashMap<>();
    plan.leftOut().forEach(l -> left.put(l.lotId(), l));
    List<Lot> lots =
        week.brief().lots().stream()
            .map(l -> left.containsKey(l.id()) ? LaterWeek.notBefore(l, end) : l)
            .toList();
    Brief longer =
        LaterWeek.behind(week.brief(), LaterWeek.of(week.input(), MORE_DAYS).brief(), lots);
    Map<String, Integer> ends = ends(longer, plan, left);
    List<LeftOut> dated = new ArrayList<>();
    for (LeftOut l : plan.leftOut()) {
      Integer at = ends.get(l.lotId());
      dated.add(
          new LeftOut(
              l.lotId(), l.code(), l.reason(), at == null ? l.earliestMin() : OptionalInt.of(at)));
    }
    return new Plan(plan.batches(), dated, plan.figures(), plan.solve());
  }

  private static Map<String, Integer> ends(Brief longer, Plan plan, Map<String, LeftOut> left) {
    Map<String, Integer> ends = new HashMap<>();
    Plan base = plan;
    for (List<String> chain : WaitingChains.of(longer.lots(), left.keySet())) {
      Optional<Inserted> made = new Inserter(longer, base).insert(chain, Freedom.NOTHING_MOVES);
      if (made.isPresent()) {
        base = made.get().plan();
        chain.forEach(id -> ends.put(id, made.get().endMin()));
      }
    }
    return ends;
  }
}
