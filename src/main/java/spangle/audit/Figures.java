package spangle.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import spangle.plan.Brief;
import spangle.plan.Goals;
import spangle.plan.LeftOut;
import spangle.plan.LineKind;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.PlanFigures;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.SetupTable;

/** Counts what a plan comes to from its batches. */
final class Figures {
  private final PlanView view;
  private long runMinutes;
  private long lateLots;
  private long lateMinutes;
  private long settingCost;
  private long settingMinutes;
  private long colourCost;
  private int colourChanges;
  private long lateKits;
  private long kitMinutes;
  private long setMinutes;
  private int trips;

  private Figures(PlanView view) {
    this.view = view;
  }

  static PlanFigures of(PlanView view) {
    Figures figures = new Figures(view);
    figures.countMachines();
    figures.countColours();
    figures.countLots();
    figures.countKits();
    return figures.sum();
  }

  private void countMachines() {
    for (List<BatchView> row : view.byMachine().values()) {
      int setting = row.get(0).machine().initialSetting();
      for (BatchView batch : row) {
        if (!batch.waits(view.brief().horizonMin())) {
          SetupTable table = batch.line().settingChange();
          settingCost += table.cost(setting, batch.batch().setting());
          settingMinutes += table.minutes(setting, batch.batch().setting());
        }
        if (batch.line().kind() == LineKind.OUTSIDE) {
          trips++;
        } else {
          runMinutes += (long) batch.batch().endMin() - batch.batch().startMin();
        }
        setting = batch.batch().setting();
      }
    }
  }

  private void countColours() {
    for (List<VisitView> row : view.byPlace().values()) {
      SetupTable table = row.get(0).station().setups();
      int state = row.get(0).station().initialState();
      for (VisitView visit : row) {
        if (visit.load().frozen() && visit.visit().startMin() >= view.brief().horizonMin()) {
          continue;
        }
        int cost = table.cost(state, visit.state());
        colourCost += cost;
        if (cost > 0 || table.minutes(state, visit.state()) > 0) {
          colourChanges++;
        }
        state = visit.state();
      }
    }
  }

  private void countLots() {
    for (LoadView load : view.loads()) {
      for (Lot lot : load.lots()) {
        long late = (long) load.endMin() - lot.dueMin();
        if (lot.lastLeg() && late > 0) {
          lateLots += lot.weight();
          lateMinutes += late * lot.weight();
        }
      }
    }
  }

  private void countKits() {
    for (KitSets.Count kit : KitSets.of(view)) {
      kitMinutes += kit.spreadMinutes();
      setMinutes += kit.wholeMinutes();
      lateKits += kit.late() ? kit.weight() : 0;
    }
  }

  private long leftOut() {
    long sum = 0;
    for (LeftOut left : view.plan().leftOut()) {
      sum += view.lot(left.lotId()).map(Lot::weight).orElse(0);
    }
    return sum;
  }

  /** Loads of announced work that travel otherwise now, elsewhere, or at quite another time. */
  private int moved() {
    Map<String, String> likeness = new HashMap<>();
    view.brief().lots().forEach(lot -> likeness.put(lot.id(), lot.likeness()));
    int today =
        view.brief().announced().stream().mapToInt(PlannedBatch::startMin).min().orElse(0)
            / Brief.DAY_MIN;
    Map<String, Integer> weights = new HashMap<>();
    Map<List<String>, List<Place>> announced = new HashMap<>();
    for (PlannedBatch batch : view.brief().announced()) {
      int weight = batch.startMin() / Brief.DAY_MIN == today ? Goals.STICKY : 1;
      for (PlannedLoad load : batch.loads()) {
        List<String> work = work(load, likeness);
        announced.computeIfAbsent(work, w -> new ArrayList<>()).add(new Place(batch, load));
        work.forEach(each -> weights.merge(each, weight, Math::max));
      }
    }
    int moved = 0;
    for (LoadView load : view.openLoads()) {
      List<String> work = work(load.load(), likeness);
      boolean stayed =
          announced.getOrDefault(work, List.of()).stream()
              .anyMatch(was -> was.same(new Place(load.batch(), load.load())));
      if (!stayed) {
        moved += work.stream().mapToInt(w -> weights.getOrDefault(w, 0)).max().orElse(0);
      }
    }
    return moved + Goals.KIT_DAY * kitsOnALaterDay();
  }

  private int kitsOnALaterDay() {
    if (view.brief().announced().isEmpty()) {
      return 0;
    }
    List<KitSets.Count> before = KitSets.announced(view.brief());
    List<KitSets.Count> now = KitSets.of(view);
    int later = 0;
    for (int k = 0; k < before.size(); k++) {
      OptionalInt day = before.get(k).completeDay();
      if (day.isPresent() && now.get(k).completeDay().orElse(Integer.MAX_VALUE) > day.getAsInt()) {
        later++;
      }
    }
    return later;
  }

  /** A load in its batch: where and how it stands. */
  private record Place(PlannedBatch batch, PlannedLoad load) {
    boolean same(Place is) {
      return batch.machineId().equals(is.batch.machineId())
          && batch.setting() == is.batch.setting()
          && load.carrierId().equals(is.load.carrierId())
          && Math.abs(batch.startMin() - is.batch.startMin()) <= Goals.SWING_MIN
          && Math.abs(LoadTimes.first(batch, load) - LoadTimes.first(is.batch, is.load))
              <= Goals.HANG_SWING_MIN;
    }
  }

  private static List<String> work(PlannedLoad load, Map<String, String> likeness) {
    return load.lotIds().stream().map(id -> likeness.getOrDefault(id, id)).sorted().toList();
  }

  private PlanFigures sum() {
    Goals goals = view.brief().goals();
    int loads = view.loads().size();
    long leftOut = leftOut();
    int moved = moved();
    long goal =
        goals.runMinute() * runMinutes
            + goals.lateLot() * lateLots
            + goals.lateMinute() * lateMinutes
            + goals.settingCost() * settingCost
            + goals.settingMinute() * settingMinutes
            + goals.colourCost() * colourCost
            + (long) goals.load() * loads
            + goals.lateKit() * lateKits
            + goals.kitMinute() * kitMinutes
            + goals.setMinute() * setMinutes
            + (long) goals.trip() * trips
            + goals.leftOut() * leftOut
            + (long) goals.moved() * moved;
    return new PlanFigures(
        runMinutes,
        lateLots,
        lateMinutes,
        settingCost,
        settingMinutes,
        colourCost,
        colourChanges,
        loads,
        view.batches().size(),
        lateKits,
        kitMinutes,
        setMinutes,
        trips,
        leftOut,
        moved,
        goal);
  }
}
