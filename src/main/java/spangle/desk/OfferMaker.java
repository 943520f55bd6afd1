package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import spangle.audit.Audit;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.PlanFile;
import spangle.solve.Freedom;
import spangle.solve.Inserted;

/**
 * Turns a plan that holds the new lots into an offer: its date, what it rests on, whom it costs.
 */
final class OfferMaker {
  private static final String NOT_EXACT =
      "the announced plan leaves work out in the middle of a row and cannot be timed again to the"
          + " minute: loads that move and slips that come from this alone are among those named;"
          + " plan or replan with more time for a gentler answer";

  /** When and where a load runs, as far as others have been told. */
  private record Timing(int startMin, String machineId, List<Integer> visitMin) {
    static Timing of(PlannedBatch batch, PlannedLoad load) {
      return new Timing(
          batch.startMin(),
          batch.machineId(),
          load.visits().stream().map(PlannedLoad.PlannedVisit::startMin).toList());
    }
  }

  private final WeekInput input;
  private final PlanFile kept;
  private final List<String> notes;

  OfferMaker(WeekInput input, PlanFile kept, List<String> notes) {
    this.input = input;
    this.kept = kept;
    this.notes = notes;
  }

  Promise.Offer offer(
      Freedom freedom,
      Brief brief,
      Inserted made,
      List<String> lotIds,
      Set<String> jobs,
      List<Reorder> ordered) {
    PlanFile after = kept.with(brief, made.plan());
    Map<String, PartFate> fates = new TreeMap<>(PartFate.of(after));
    List<String> slips =
        PartChange.of(PartFate.of(kept), fates, 1).stream()
            .filter(c -> !jobs.contains(c.jobId()) && c.kind().equals("later") && c.lateNow())
            .map(PartChange::words)
            .toList();
    List<String> conditions = new ArrayList<>();
    ordered.forEach(o -> conditions.add(o.words() + o.forOthers(made.endMin())));
    new Conditions(brief)
        .of(made.plan(), Set.copyOf(lotIds)).stream()
            .filter(c -> ordered.isEmpty() || kept(c))
            .forEach(conditions::add);
    int moved = moved(made.plan());
    if (freedom == Freedom.NOTHING_MOVES && moved > 0 && !notes.contains(NOT_EXACT)) {
      notes.add(NOT_EXACT);
    }
    List<String> lateKits = KitDelay.of(kept, after).stream().map(KitDelay::words).toList();
    return new Promise.Offer(
        honest(freedom, moved, slips.isEmpty() && lateKits.isEmpty()),
        made.endMin(),
        moved,
        slips,
        lateKits,
        where(brief, made.plan(), Set.copyOf(lotIds)),
        conditions,
        made.plan(),
        Audit.of(brief, made.plan()));
  }

  /**
   * What an offer really leaves alone: a plan whose files or program changed since cannot always be
   * timed again to the minute.
   */
  private static Freedom honest(Freedom asked, int moved, boolean allInTime) {
    if (!allInTime) {
      return Freedom.DATES_MAY_SLIP;
    }
    return asked == Freedom.NOTHING_MOVES && moved > 0 ? Freedom.DATES_KEPT : asked;
  }

  /** What is ordered for it is said once, as an order, not again as a delivery. */
  private boolean kept(String condition) {
    return input.catalogue().coatings().noneMatch(c -> condition.contains("(lot " + c.id() + ")"));
  }

  /** Announced loads that are not where and when they were announced. */
  private int moved(Plan plan) {
    Map<String, Timing> now = new TreeMap<>();
    plan.batches()
        .forEach(
            b -> b.loads().forEach(l -> l.lotIds().forEach(id -> now.put(id, Timing.of(b, l)))));
    int moved = 0;
    for (PlannedBatch batch : kept.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        Timing announced = Timing.of(batch, load);
        boolean same = load.lotIds().stream().allMatch(id -> announced.equals(now.get(id)));
        moved += same ? 0 : 1;
      }
    }
    return moved;
  }

  private static List<String> where(Brief brief, Plan plan, Set<String> lotIds) {
    Map<String, Lot> lots = new TreeMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    List<String> where = new ArrayList<>();
    List<PlannedBatch> inTime = new ArrayList<>(plan.batches());
    inTime.sort(Comparator.comparingInt(PlannedBatch::startMin));
    for (PlannedBatch batch : inTime) {
      for (PlannedLoad load : batch.loads()) {
        List<Lot> ours = load.lotIds().stream().filter(lotIds::contains).map(lots::get).toList();
        if (!ours.isEmpty()) {
          OptionalInt hung =
              load.visits().stream().mapToInt(PlannedLoad.PlannedVisit::startMin).min();
          where.add(
              String.format(
                  Locale.ROOT,
                  "%d x %s, %s: load %s%s from %s, in %s %s",
                  ours.stream().mapToInt(Lot::pieces).sum(),
                  ours.get(0).label(),
                  ours.get(0).finish().name(),
                  load.id(),
                  ours.size() < load.lotIds().size() ? " (shared)" : "",
                  DayWords.of(hung.orElse(batch.startMin())),
                  machine(brief, batch),
                  DayWords.of(batch.startMin())));
        }
      }
    }
    return where;
  }

  private static String machine(Brief brief, PlannedBatch batch) {
    return brief.lines().stream()
        .flatMap(l -> l.machines().stream())
        .filter(m -> m.id().equals(batch.machineId()))
        .map(m -> m.name())
        .findFirst()
        .orElse(batch.machineId());
  }
}
