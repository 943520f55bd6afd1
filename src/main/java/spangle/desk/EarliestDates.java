package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spangle.intake.brief.PreparedWeek;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.clock.Loss;
import spangle.solve.Freedom;
import spangle.solve.Inserted;
import spangle.solve.Inserter;

/**
 * When what does not fit into a week can be had: lots left out are put behind it, one after the
 * other, in the order they are due, into the hours of the weeks that follow. A lot that lacks
 * material is put where that can be here, ordered now with its lead time where nobody has.
 */
final class EarliestDates {
  private static final String NO_SUPPLY = Loss.NO_SUPPLY.code();

  /** Lots left out times all lots: beyond this the dates would cost more than the plan. */
  private static final long MOST = 50_000;

  private EarliestDates() {}

  /**
   * The same plan; what it leaves out is said with what holds it and has its earliest date where
   * there is one: what stands still with no end known brings none. All dates hold together. What
   * waits for material has it with the delivery that brings it, on order or ordered at once, and
   * names it.
   *
   * @param atMin now, minute of the week
   */
  static Plan in(PreparedWeek week, Plan made, int atMin) {
    Plan plan = LeftOutCauses.in(week, made, atMin);
    if (plan.leftOut().isEmpty()
        || (long) plan.leftOut().size() * week.brief().lots().size() > MOST) {
      return plan;
    }
    int end = week.brief().horizonMin();
    Map<String, LeftOut> left = new HashMap<>();
    plan.leftOut().forEach(l -> left.put(l.lotId(), l));
    List<Lot> waiting = week.brief().lots().stream().filter(l -> left.containsKey(l.id())).toList();
    List<Reorder> orders = Reorder.of(week.input(), week.brief(), plan, waiting, atMin);
    List<Lot> lots =
        week.brief().lots().stream()
            .map(l -> waits(left.get(l.id())) ? LaterWeek.notBefore(l, end) : l)
            .toList();
    Brief stocked =
        BriefChange.supplies(week.brief(), Reorder.with(orders, week.brief().supplies()));
    Brief longer = LaterWeek.behind(stocked, LaterWeek.of(week.input()).brief(), lots);
    Map<String, Integer> ends = new HashMap<>();
    Plan filled = filled(longer, plan, left, ends);
    List<LeftOut> dated = new ArrayList<>();
    for (LeftOut l : plan.leftOut()) {
      Integer at = ends.get(l.lotId());
      boolean lacks = l.code().equals(NO_SUPPLY);
      dated.add(
          new LeftOut(
              l.lotId(),
              l.code(),
              l.reason() + (lacks && at != null ? delivery(longer, filled, orders, l) : ""),
              at == null ? l.earliestMin() : OptionalInt.of(at)));
    }
    return new Plan(plan.batches(), dated, plan.figures(), plan.solve());
  }

  /** What found no room waits for the week after; what lacks material only for that. */
  private static boolean waits(@Nullable LeftOut left) {
    return left != null && !left.code().equals(NO_SUPPLY);
  }

  /** Which delivery lets it run. */
  private static String delivery(Brief longer, Plan filled, List<Reorder> orders, LeftOut left) {
    Lot lot =
        longer.lots().stream().filter(l -> l.id().equals(left.lotId())).findFirst().orElseThrow();
    Optional<Reorder> ordered =
        orders.stream().filter(o -> o.coating().id().equals(lot.finish().materialId())).findFirst();
    return ordered
        .map(Reorder::words)
        .or(() -> new Conditions(longer).of(filled, Set.of(lot.id())).stream().findFirst())
        .map(words -> "; it can be done " + words)
        .orElse("");
  }

  private static Plan filled(
      Brief longer, Plan plan, Map<String, LeftOut> left, Map<String, Integer> ends) {
    Plan base = plan;
    for (List<String> chain : WaitingChains.of(longer.lots(), left.keySet())) {
      Optional<Inserted> made = new Inserter(longer, base).insert(chain, Freedom.NOTHING_MOVES);
      if (made.isPresent()) {
        base = made.get().plan();
        chain.forEach(id -> ends.put(id, made.get().endMin()));
      }
    }
    return base;
  }
}
