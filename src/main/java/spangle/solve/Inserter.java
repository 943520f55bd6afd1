package spangle.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.SolveNote;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.LinePlan;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.MachineFacts;
import spangle.plan.clock.Row;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekEdit;
import spangle.plan.clock.WeekPlan;
import spangle.solve.move.Hanging;

/**
 * Puts new lots into a plan that is kept: every place in every row and in every load is tried with
 * the same clock the plan was made with, and the place that finishes the new work first is taken.
 * No chance is in it: the same plan and the same lots give the same answer.
 */
public final class Inserter {
  /** Ends within the same half hour count as the same; the lighter plan is then taken. */
  private static final int SAME_MIN = 30;

  /** Places tried for the legs that follow, best first, before a chain of legs is given up. */
  private static final int WAYS = 3;

  private final Floor floor;
  private final WeekClock clock;
  private final Hanging hanging;
  private final WeekEdit edit = new WeekEdit();
  private final KeptRows rows;
  private final List<LeftOut> leftOut;
  private final WeekPlan kept;
  private int soonEnough;

  /**
   * For a brief that knows the lots of the plan and the new ones.
   *
   * @throws IllegalArgumentException when the plan names what the brief does not know
   */
  public Inserter(Brief brief, Plan plan) {
    this.floor = Floor.of(brief);
    this.clock = new WeekClock(floor);
    this.hanging = new Hanging(floor);
    this.rows = new KeptRows(floor);
    this.leftOut = plan.leftOut();
    this.kept = Recovered.of(clock.plan(rows.of(plan)));
  }

  /** For a plan that is not written yet. */
  Inserter(WeekPlan week) {
    this.floor = week.floor;
    this.clock = new WeekClock(floor);
    this.hanging = new Hanging(floor);
    this.rows = new KeptRows(floor);
    this.leftOut = List.of();
    this.kept = week;
  }

  /** The same plan with these lots where they are finished soonest and nobody else is later. */
  Optional<WeekPlan> into(List<String> lotIds) {
    return placed(lotIds, new Pledges(kept, Freedom.DATES_KEPT), 0);
  }

  /**
   * The plan with the new lots in it, finished as early as the freedom allows.
   *
   * @param lotIds all legs of the new lots
   * @return empty where there is no such place before the horizon
   */
  public Optional<Inserted> insert(List<String> lotIds, Freedom freedom) {
    return insert(lotIds, freedom, 0);
  }

  /**
   * The same in a plan that has run for a while.
   *
   * @param nowMin what is hung before this minute stays as it is, whatever the freedom
   * @return empty where there is no such place before the horizon
   */
  public Optional<Inserted> insert(List<String> lotIds, Freedom freedom, int nowMin) {
    Pledges pledges = new Pledges(kept, freedom, nowMin);
    Optional<Inserted> soonest = insert(lotIds, pledges, 0);
    if (soonest.isEmpty() || freedom == Freedom.NOTHING_MOVES) {
      return soonest;
    }
    Optional<Inserted> gentler = insert(lotIds, pledges, soonest.get().endMin());
    boolean gentle =
        gentler
            .filter(g -> g.endMin() <= soonest.get().endMin())
            .filter(g -> g.plan().figures().goal() < soonest.get().plan().figures().goal())
            .isPresent();
    return gentle ? gentler : soonest;
  }

  /**
   * The plan with lots that were taken out of it put anew as soon as can be, with every date that
   * plan gave to others kept.
   *
   * @param written the plan with the lots still in it
   * @param lotIds all legs of the lots
   * @return empty where there is no such place before the horizon
   */
  public Optional<Inserted> soonest(Plan written, List<String> lotIds) {
    return insert(lotIds, new Pledges(floor, written, Set.copyOf(lotIds)), 0);
  }

  /**
   * The plan with as many chains in it as find a place, one after the other, and every date kept
   * that it comes to by this brief's hours.
   *
   * @param chains all legs of a lot each, the most urgent first; where one finds no place, those of
   *     the same part, step and count are not tried either
   * @return empty where the plan cannot run as it is by this brief's hours
   */
  public Optional<Filled> fill(List<List<String>> chains) {
    if (kept.left() != 0 || kept.broken() != 0) {
      return Optional.empty();
    }
    soonEnough = 0;
    WeekPlan week = kept;
    List<List<String>> in = new ArrayList<>();
    Set<String> noRoom = new HashSet<>();
    for (List<String> legs : chains) {
      String alike = floor.lots[rows.lot(legs.get(0))].lot.likeness();
      if (noRoom.contains(alike)) {
        continue;
      }
      Optional<WeekPlan> with = placed(week, legs, new Pledges(week, Freedom.DATES_KEPT));
      if (with.isPresent()) {
        week = with.get();
        in.add(legs);
      } else {
        noRoom.add(alike);
      }
    }
    return Optional.of(new Filled(written(week), in));
  }

  /** When the last of the pieces are finished. */
  private int end(WeekPlan week, List<String> lotIds) {
    List<String> finished =
        lotIds.stream().filter(id -> floor.lots[rows.lot(id)].lot.lastLeg()).toList();
    int end = 0;
    for (String id : finished.isEmpty() ? lotIds : finished) {
      end = Math.max(end, week.lotEnd(rows.lot(id)));
    }
    return end;
  }

  /**
   * Once more, knowing when the last lot can be finished: the others need not be any sooner.
   *
   * @param enough a lot finished by then is soon enough, and only what it costs others counts
   */
  private Optional<Inserted> insert(List<String> lotIds, Pledges pledges, int enough) {
    return placed(lotIds, pledges, enough).map(w -> new Inserted(written(w), end(w, lotIds)));
  }

  private Optional<WeekPlan> placed(List<String> lotIds, Pledges pledges, int enough) {
    soonEnough = enough;
    return placed(kept, lotIds, pledges);
  }

  private Optional<WeekPlan> placed(WeekPlan from, List<String> lotIds, Pledges pledges) {
    WeekPlan week = from;
    for (List<LotFacts> chain : chains(lotIds)) {
      Way way = place(week, chain, 0, pledges);
      if (way == null) {
        return Optional.empty();
      }
      week = way.plan;
    }
    return Optional.of(week);
  }

  private Plan written(WeekPlan week) {
    Map<String, LeftOut> outside = new HashMap<>();
    leftOut.forEach(left -> outside.put(left.lotId(), left));
    return new PlanWriter(week, outside)
        .write(new SolveNote(0, 0, "new lots put into a plan that is kept"));
  }

  /** Lots with all their legs, in the order in which their pieces come. */
  private List<List<LotFacts>> chains(List<String> lotIds) {
    Set<String> wanted = new LinkedHashSet<>(lotIds);
    Map<String, String> next = new HashMap<>();
    List<List<LotFacts>> chains = new ArrayList<>();
    for (String id : wanted) {
      Lot lot = floor.lots[rows.lot(id)].lot;
      lot.after().filter(c -> wanted.contains(c.lotId())).ifPresent(c -> next.put(c.lotId(), id));
    }
    Set<String> later = new HashSet<>(next.values());
    for (String id : wanted) {
      if (!later.contains(id)) {
        List<LotFacts> chain = new ArrayList<>();
        for (String at = id; at != null; at = next.get(at)) {
          chain.add(floor.lots[rows.lot(at)]);
        }
        chains.add(chain);
      }
    }
    chains.sort(
        Comparator.comparingInt((List<LotFacts> c) -> c.get(0).lot.readyMin())
            .thenComparingInt(c -> -c.get(0).lot.pieces())
            .thenComparingInt(c -> c.get(0).index));
    return chains;
  }

  /** A plan with one more lot in it and when that lot is finished. */
  private record Way(WeekPlan plan, int end) {}

  private @Nullable Way place(WeekPlan week, List<LotFacts> chain, int leg, Pledges pledges) {
    List<Way> ways = ways(week, chain.get(leg), pledges);
    if (leg + 1 == chain.size()) {
      return ways.isEmpty() ? null : ways.get(0);
    }
    Way best = null;
    for (Way way : ways.subList(0, Math.min(WAYS, ways.size()))) {
      Way whole = place(way.plan, chain, leg + 1, pledges);
      if (whole != null && (best == null || order(whole, best) < 0)) {
        best = whole;
      }
    }
    return best;
  }

  private int order(Way a, Way b) {
    int byEnd =
        Integer.compare(
            Math.max(soonEnough, a.end) / SAME_MIN, Math.max(soonEnough, b.end) / SAME_MIN);
    int byWeight = byEnd != 0 ? byEnd : Long.compare(a.plan.weighed(), b.plan.weighed());
    return byWeight != 0 ? byWeight : Integer.compare(a.end, b.end);
  }

  /** All ways to add one leg that keep the pledges, best first. */
  private List<Way> ways(WeekPlan week, LotFacts lot, Pledges pledges) {
    List<Way> ways = new ArrayList<>();
    if (!lot.hasPlace()) {
      return ways;
    }
    LineFacts line = floor.lines[lot.line];
    LinePlan rowsNow = week.line(lot.line);
    int there = there(week, lot);
    for (int m = 0; m < rowsNow.size(); m++) {
      if ((lot.machines >>> m & 1) != 0) {
        OneRow row = new OneRow(week, lot, line.machines[m], rowsNow.row(m), pledges, ways);
        row.tryAll(there);
      }
    }
    ways.sort(this::order);
    return ways;
  }

  private int there(WeekPlan week, LotFacts lot) {
    int ready = lot.lot.readyMin();
    if (lot.after >= 0) {
      ready = Math.max(ready, week.lotEnd(lot.after));
    }
    return ready + floor.single(lot.index, 0).travel();
  }

  /** Every place in the row of one machine. */
  private final class OneRow {
    private final WeekPlan week;
    private final LotFacts lot;
    private final MachineFacts machine;
    private final Row row;
    private final LotSeats seats;
    private final Pledges pledges;
    private final List<Way> ways;
    private int bestEnd = Integer.MAX_VALUE;

    OneRow(
        WeekPlan week,
        LotFacts lot,
        MachineFacts machine,
        Row row,
        Pledges pledges,
        List<Way> ways) {
      this.week = week;
      this.lot = lot;
      this.machine = machine;
      this.row = row;
      this.seats = new LotSeats(floor, hanging, lot, machine);
      this.pledges = pledges;
      this.ways = ways;
    }

    void tryAll(int there) {
      for (int k = row.front; k <= row.size(); k++) {
        int before = k > row.front && row.runs(k - 1) ? row.end(k - 1) : 0;
        if (before / SAME_MIN > Math.max(soonEnough, bestEnd) / SAME_MIN) {
          break;
        }
        if (k < row.size() && row.runs(k) && row.end(k) >= there) {
          for (Batch batch : seats.joining(row.batch(k))) {
            attempt(k, 1, batch);
          }
        }
        // A batch that would be over before the lot is there need not wait behind it.
        boolean room = k == row.size() || !row.runs(k) || row.end(k) > there;
        if (room) {
          for (Batch batch : seats.alone(row, k)) {
            attempt(k, 0, batch);
          }
        }
      }
    }

    private void attempt(int k, int goes, Batch batch) {
      edit.reset(lot.line);
      edit.put(machine.index, k, goes, batch);
      clock.attempt(week, edit);
      // Nobody loses a place for it, nor a lot of the same job that was put in before.
      if (clock.broken() != 0 || clock.left() > week.left()) {
        return;
      }
      WeekPlan made = clock.made();
      int end = made.lotEnd(lot.index);
      if (end >= 0 && pledges.kept(made)) {
        ways.add(new Way(made, end));
        bestEnd = Math.min(bestEnd, end);
      }
    }
  }
}
