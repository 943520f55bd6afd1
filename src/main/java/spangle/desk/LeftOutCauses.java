package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.intake.brief.PreparedWeek;
import spangle.plan.Brief;
import spangle.plan.Chain;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.Supply;
import spangle.plan.clock.Loss;
import spangle.solve.Freedom;
import spangle.solve.Inserter;

/**
 * Why a lot is left out, where "no room" is not the whole of it: the oven it needs is out of use,
 * or its powder comes too late.
 */
final class LeftOutCauses {
  private static final String NO_TIME = Loss.NO_TIME.code();

  /** More kilograms or litres than any week draws. */
  private static final double PLENTY = 1e6;

  private final Brief brief;
  private final Plan plan;
  private final int atMin;
  private final OutOfUse out;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, Boolean> tooLate = new HashMap<>();

  private LeftOutCauses(PreparedWeek week, Plan plan, int atMin) {
    this.brief = week.brief();
    this.plan = plan;
    this.atMin = atMin;
    this.out = new OutOfUse(week.input().shop(), brief, atMin);
    brief.lots().forEach(l -> lots.put(l.id(), l));
  }

  /**
   * The same plan; what it leaves out is said with what really holds it.
   *
   * @param atMin now, minute of the week
   */
  static Plan in(PreparedWeek week, Plan plan, int atMin) {
    if (plan.leftOut().isEmpty()) {
      return plan;
    }
    return new LeftOutCauses(week, plan, atMin).said();
  }

  private Plan said() {
    List<LeftOut> said = new ArrayList<>();
    for (LeftOut left : plan.leftOut()) {
      Lot lot = lots.get(left.lotId());
      said.add(lot == null || left.code().equals(LeftOut.NO_PLACE) ? left : cause(left, lot));
    }
    return new Plan(plan.batches(), said, plan.figures(), plan.solve());
  }

  private LeftOut cause(LeftOut left, Lot lot) {
    Optional<String> held = out.holds(lot);
    if (held.isPresent()) {
      boolean more =
          left.code().equals(Loss.NO_SUPPLY.code())
              || left.code().equals(Loss.NO_ZINC_OVER_IT.code());
      String words = "held by " + held.get() + (more ? "; besides, " + left.reason() : "");
      return new LeftOut(left.lotId(), LeftOut.OUT_OF_USE, words, left.earliestMin());
    }
    if (left.code().equals(LeftOut.HALF_ROUTE) || left.code().equals(NO_TIME)) {
      Optional<LeftOut> half = next(lot).flatMap(n -> half(left, n));
      return half.orElseGet(() -> left.code().equals(NO_TIME) ? late(left, lot) : left);
    }
    return left;
  }

  /** The step after it, where that is left out too and it is not begun without that. */
  private Optional<Lot> next(Lot lot) {
    return plan.leftOut().stream()
        .map(l -> lots.get(l.lotId()))
        .filter(
            l ->
                l != null
                    && l.after().filter(c -> c.lotId().equals(lot.id()) && c.both()).isPresent())
        .findFirst();
  }

  /** An earlier step left out because a station of a later one is out of use. */
  private Optional<LeftOut> half(LeftOut left, Lot next) {
    Lot at = next;
    Optional<String> held = out.holds(at);
    for (Optional<Lot> more = next(at); held.isEmpty() && more.isPresent(); more = next(at)) {
      at = more.get();
      held = out.holds(at);
    }
    String step = at.finish().name();
    return held.map(
        words ->
            new LeftOut(
                left.lotId(),
                LeftOut.OUT_OF_USE,
                "\"" + step + "\" after it is held by " + words + keeps(next),
                left.earliestMin()));
  }

  private static String keeps(Lot next) {
    return next.after()
        .map(Chain::maxGapMin)
        .filter(gap -> gap != Integer.MAX_VALUE)
        .map(
            gap ->
                "; done without it, it waits longer than the "
                    + DayWords.hours(gap)
                    + " its surface keeps")
        .orElse("");
  }

  /** What found no room in what is left of the week once its powder is here and its oven works. */
  private LeftOut late(LeftOut left, Lot lot) {
    Optional<Supply.Arrival> awaited = awaited(lot);
    int powder = awaited.map(Supply.Arrival::atMin).orElse(0);
    OptionalInt works = out.from(lot);
    int from = Math.max(powder, works.orElse(0));
    if (powder > 0 && (powder >= brief.horizonMin() || (powder == from && tooLate(lot, powder)))) {
      return new LeftOut(
          left.lotId(),
          Loss.NO_SUPPLY.code(),
          lot.drawWords() + " is not in the shop in time",
          left.earliestMin());
    }
    String narrow = out.narrows(lot).map(words -> " without " + words).orElse("");
    if (from <= Math.max(atMin, lot.readyMin())) {
      return narrow.isEmpty() ? left : reworded(left, left.reason() + narrow);
    }
    String then =
        powder == from
            ? "when " + lot.finish().name() + " comes for it"
            : "when " + out.works(lot, from) + " works again";
    return reworded(
        left, "no room is left in the calendar after " + DayWords.of(from) + ", " + then + narrow);
  }

  private static LeftOut reworded(LeftOut left, String words) {
    return new LeftOut(left.lotId(), left.code(), words, left.earliestMin());
  }

  /**
   * The delivery from which on there is enough for it beside all the plan draws; empty where there
   * is enough already, or never.
   */
  private Optional<Supply.Arrival> awaited(Lot lot) {
    Optional<Supply> supply = brief.supplyOf(lot.finish());
    if (supply.isEmpty()) {
      return Optional.empty();
    }
    List<Supply.Arrival> arrivals =
        supply.get().arrivals().stream()
            .sorted(Comparator.comparingInt(Supply.Arrival::atMin))
            .toList();
    double there = 0;
    int last = -1;
    for (int i = 0; i < arrivals.size(); i++) {
      there += arrivals.get(i).amount();
      int until = i + 1 < arrivals.size() ? arrivals.get(i + 1).atMin() : Integer.MAX_VALUE;
      if (there - drawn(supply.get(), until) < lot.materialKg() - 1e-9) {
        last = i;
      }
    }
    boolean enough = last + 1 < arrivals.size();
    int now = Math.max(atMin, lot.readyMin());
    return enough && arrivals.get(last + 1).atMin() > now
        ? Optional.of(arrivals.get(last + 1))
        : Optional.empty();
  }

  /** What the plan draws on a supply before a minute. */
  private double drawn(Supply supply, int untilMin) {
    double drawn = 0;
    for (PlannedBatch batch : plan.batches()) {
      if (batch.startMin() < untilMin) {
        drawn +=
            batch.loads().stream()
                .flatMap(load -> load.lotIds().stream())
                .map(lots::get)
                .filter(l -> l != null)
                .filter(l -> brief.supplyOf(l.finish()).equals(Optional.of(supply)))
                .mapToDouble(Lot::materialKg)
                .sum();
      }
    }
    return drawn;
  }

  /** Whether even alone in the shop it finds no time this week, but would with its powder here. */
  private boolean tooLate(Lot lot, int fromMin) {
    return tooLate.computeIfAbsent(
        lot.likeness(), like -> !fitsAlone(lot, fromMin) && fitsAlone(lot, 0));
  }

  /** Whether it finds a time in an empty shop, with all it draws there from a minute on. */
  private boolean fitsAlone(Lot lot, int fromMin) {
    Optional<Supply> own = brief.supplyOf(lot.finish());
    List<Supply.Arrival> come = List.of(new Supply.Arrival(fromMin, PLENTY, ""));
    Brief empty =
        BriefChange.of(brief)
            .supplies(
                brief.supplies().stream()
                    .map(s -> Optional.of(s).equals(own) ? s.with(come) : s)
                    .toList())
            .frozen(List.of())
            .announced(List.of())
            .made();
    Plan nothing = new Plan(List.of(), List.of(), plan.figures(), plan.solve());
    List<String> legs = new ArrayList<>(List.of(lot.id()));
    for (Optional<Chain> before = lot.after(); before.isPresent(); ) {
      String id = before.get().lotId();
      legs.add(0, id);
      before = Optional.ofNullable(lots.get(id)).flatMap(Lot::after);
    }
    return new Inserter(empty, nothing).insert(legs, Freedom.NOTHING_MOVES).isPresent();
  }
}
