package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spangle.audit.Audit;
import spangle.desk.OvertimeHours.Stretch;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Shop;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.clock.Loss;
import spangle.report.Overtime;
import spangle.solve.Filled;
import spangle.solve.Inserter;

/**
 * Says what overtime would buy: the plan runs again, in its own order, by the longer hours, and
 * what it leaves out is put into it with every date kept. Each stretch the shop allows is tried
 * alone, then all of them together; an offer is said with no more hours than it uses, and only when
 * its whole plan passes the audit. Nothing is searched: the same plan gives the same answer.
 */
final class OvertimeDesk {
  /** Reasons no hours help against. */
  private static final Set<String> BEYOND_HOURS =
      Set.of(
          Loss.NO_SUPPLY.code(), Loss.NO_ZINC_OVER_IT.code(), LeftOut.NO_PLACE, LeftOut.OUT_OF_USE);

  /** Lots tried times ways times all lots: beyond this trying would take longer than the plan. */
  private static final int MOST = 12_000;

  private static final int QUARTER_MIN = 15;
  private static final int MOST_OFFERS = 4;

  private final Brief brief;
  private final Plan plan;
  private final OvertimeHours hours;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, LeftOut> left = new HashMap<>();
  private final Set<String> late;
  private List<List<String>> chains;

  private OvertimeDesk(PreparedWeek week, Plan plan) {
    this.brief = week.brief();
    this.plan = plan;
    this.hours = new OvertimeHours(week.input().shop(), brief);
    brief.lots().forEach(l -> lots.put(l.id(), l));
    plan.leftOut().forEach(l -> left.put(l.lotId(), l));
    this.late = late(plan);
    Set<String> wanted = new HashSet<>(left.keySet());
    left.values().stream()
        .filter(l -> BEYOND_HOURS.contains(l.code()))
        .forEach(l -> wanted.remove(l.lotId()));
    this.chains = WaitingChains.of(brief.lots(), wanted);
  }

  /**
   * The answer for a plan.
   *
   * @param fromMin minute of the week from which hours can still be worked
   */
  static Overtime of(PreparedWeek week, Plan plan, int fromMin) {
    OvertimeDesk desk = new OvertimeDesk(week, plan);
    if (desk.late.isEmpty()) {
      return Overtime.NONE;
    }
    List<Stretch> allowed = desk.hours.allowed(fromMin);
    if (allowed.isEmpty()) {
      return desk.answer(Overtime.State.NOT_ALLOWED, 0, List.of());
    }
    return desk.tried(allowed);
  }

  private Overtime answer(Overtime.State state, int tried, List<Overtime.Offer> offers) {
    int beyond = (int) left.values().stream().filter(l -> BEYOND_HOURS.contains(l.code())).count();
    return new Overtime(
        state,
        tried,
        left.size(),
        tried == 0 ? 0 : chains.stream().mapToInt(List::size).sum(),
        beyond,
        late.size(),
        offers);
  }

  private Overtime tried(List<Stretch> allowed) {
    List<List<Stretch>> choices = new ArrayList<>();
    allowed.forEach(stretch -> choices.add(List.of(stretch)));
    if (allowed.size() > 1) {
      choices.add(allowed);
    }
    int most = MOST / Math.max(1, choices.size() * brief.lots().size());
    if (most < 1) {
      return answer(Overtime.State.TOO_MUCH_OUT, 0, List.of());
    }
    chains = chains.subList(0, Math.min(most, chains.size()));
    // Each way is tried by itself, so they share the cores; the answers keep their order.
    List<Overtime.Offer> offers =
        choices.parallelStream().map(this::offer).flatMap(Optional::stream).toList();
    return answer(Overtime.State.TRIED, choices.size(), worthSaying(offers));
  }

  /**
   * Single stretches first, then what takes several, each by how much it helps. What another offer
   * does as well for no more is left unsaid; of many, the best.
   */
  private static List<Overtime.Offer> worthSaying(List<Overtime.Offer> offers) {
    List<Overtime.Offer> sorted = new ArrayList<>(offers);
    sorted.sort(
        Comparator.comparingInt((Overtime.Offer o) -> -helps(o))
            .thenComparingLong(Overtime.Offer::costMin)
            .thenComparingInt(o -> o.hours().get(0).startMin()));
    List<Overtime.Offer> said = new ArrayList<>();
    for (Overtime.Offer each : sorted) {
      boolean better =
          said.stream()
              .anyMatch(
                  o ->
                      o.lotsIn() >= each.lotsIn()
                          && o.jobsInTime().size() >= each.jobsInTime().size()
                          && o.costMin() <= each.costMin());
      if (!better && said.size() < MOST_OFFERS) {
        said.add(each);
      }
    }
    said.sort(
        Comparator.comparingInt((Overtime.Offer o) -> Math.min(2, o.hours().size()))
            .thenComparingInt(o -> -helps(o)));
    return said;
  }

  private static int helps(Overtime.Offer offer) {
    return offer.lotsIn() + offer.jobsInTime().size();
  }

  private Optional<Overtime.Offer> offer(List<Stretch> stretches) {
    int horizonMin = hours.horizonMin(stretches);
    Brief longer = hours.worked(stretches, horizonMin);
    int from = stretches.stream().mapToInt(s -> s.date().day()).min().orElse(0) * Shop.DAY_MIN;
    Set<String> wanted = new HashSet<>();
    chains.forEach(wanted::addAll);
    Brief asked =
        BriefChange.lots(longer, l -> wanted.contains(l.id()) ? LaterWeek.notBefore(l, from) : l);
    Optional<Filled> filled = new Inserter(asked, plan).fill(chains);
    if (filled.isEmpty()) {
      return Optional.empty();
    }
    Plan made = filled.get().plan();
    List<Stretch> used = used(stretches, made);
    Set<String> stillLate = late(made);
    boolean othersLate =
        !late.containsAll(stillLate) || made.figures().lateKits() > plan.figures().lateKits();
    int lotsIn = filled.get().in().stream().mapToInt(List::size).sum();
    List<String> inTime = late.stream().filter(job -> !stillLate.contains(job)).toList();
    if (used.isEmpty() || othersLate || lotsIn + inTime.size() == 0) {
      return Optional.empty();
    }
    Brief proven = hours.worked(used, horizonMin);
    return Audit.of(proven, made).isEmpty()
        ? Optional.of(
            new Overtime.Offer(
                used.stream().map(this::said).toList(),
                lotsIn,
                gains(made, filled.get().in()),
                inTime))
        : Optional.empty();
  }

  /** The stretches with work in them, each no longer than its work, in full quarters of an hour. */
  private List<Stretch> used(List<Stretch> stretches, Plan made) {
    List<Stretch> used = new ArrayList<>();
    for (Stretch stretch : stretches) {
      Set<String> manned = new HashSet<>();
      hours.opened(stretch).forEach(manned::add);
      int last = stretch.startMin();
      for (PlannedBatch batch : made.batches()) {
        if (manned.contains(batch.machineId())) {
          last = later(last, stretch, batch.startMin(), batch.endMin());
        }
        for (PlannedLoad load : batch.loads()) {
          for (PlannedLoad.PlannedVisit visit : load.visits()) {
            if (manned.contains(visit.stationId())) {
              last = later(last, stretch, visit.startMin(), visit.endMin());
            }
          }
        }
      }
      if (last > stretch.startMin()) {
        int full = (last + QUARTER_MIN - 1) / QUARTER_MIN * QUARTER_MIN;
        used.add(stretch.until(Math.min(full, stretch.endMin())));
      }
    }
    return used;
  }

  private static int later(int last, Stretch stretch, int startMin, int endMin) {
    boolean inside = startMin < stretch.endMin() && endMin > stretch.startMin();
    return inside ? Math.max(last, Math.min(endMin, stretch.endMin())) : last;
  }

  private Overtime.Hours said(Stretch stretch) {
    List<String> names =
        brief.lines().stream()
            .filter(l -> stretch.date().lines().contains(l.id()))
            .map(LineSpec::name)
            .toList();
    return new Overtime.Hours(stretch.startMin(), stretch.endMin(), names, stretch.people());
  }

  private List<Overtime.Gain> gains(Plan made, List<List<String>> in) {
    Map<String, Integer> ends = made.lotEnds();
    Map<String, Overtime.Gain> gains = new LinkedHashMap<>();
    for (List<String> chain : in) {
      Lot last = lots.get(chain.get(chain.size() - 1));
      if (last == null) {
        continue;
      }
      int end = ends.getOrDefault(last.id(), 0);
      gains.merge(
          WeekIndex.key(last.jobId(), last.partId()),
          new Overtime.Gain(last.jobId(), last.label(), last.pieces(), end, end <= last.dueMin()),
          (a, b) ->
              new Overtime.Gain(
                  a.jobId(),
                  a.label(),
                  a.pieces() + b.pieces(),
                  Math.max(a.endMin(), b.endMin()),
                  a.inTime() && b.inTime()));
    }
    return List.copyOf(gains.values());
  }

  /** Jobs of which a lot is late or left out. */
  private Set<String> late(Plan of) {
    Set<String> jobs = new TreeSet<>();
    Map<String, Integer> ends = of.lotEnds();
    for (Lot lot : lots.values()) {
      Integer end = ends.get(lot.id());
      boolean out = end == null && of.leftOut().stream().anyMatch(l -> l.lotId().equals(lot.id()));
      if (out || (lot.lastLeg() && end != null && end > lot.dueMin())) {
        jobs.add(lot.jobId());
      }
    }
    return jobs;
  }
}
