package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spangle.equipment.OvenProfile;
import spangle.estimate.HeatUse;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.part.Material;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Kit;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlanFigures;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.bound.WeekBounds;
import spangle.plan.json.PlanYardstick;
import spangle.report.Bound;
import spangle.report.Comparison;
import spangle.report.Yardstick;
import spangle.solve.ByHand;

/** Says how good a plan is: beside its floors, and beside the same week planned by hand. */
final class YardstickDesk {
  private static final String HOURS = "hours in ovens and kettles";

  private static final String SETS =
      "hours from Monday 0:00 until a set of a kit is whole, in the mean";

  private final WeekIndex index;
  private final Map<String, CarrierSpec> carriers = new HashMap<>();
  private final Map<String, OvenProfile> ovens = new HashMap<>();

  private YardstickDesk(PreparedWeek week) {
    this.index = new WeekIndex(week.brief(), week.parts());
    week.brief().carriers().forEach(carrier -> carriers.put(carrier.id(), carrier));
    for (ShopLine line : week.input().shop().lines()) {
      for (StationUse use : line.machines()) {
        if (use.profile() instanceof OvenProfile oven) {
          ovens.put(use.id(), oven);
        }
      }
    }
  }

  /** Floors and the plan by hand for a plan of this week. */
  static PlanYardstick of(PreparedWeek week, Plan plan) {
    YardstickDesk desk = new YardstickDesk(week);
    Plan byHand = ByHand.plan(week.brief());
    return new PlanYardstick(
        WeekBounds.of(week.brief(), plan),
        byHand.figures(),
        byHand.leftOut().size(),
        tenths(desk.heatKWh(byHand)),
        tenths(desk.workKg(byHand)),
        tenths(desk.heatKWh(plan)),
        tenths(desk.workKg(plan)));
  }

  private static double tenths(double value) {
    return Math.rint(value * 10) / 10;
  }

  /** What the sheets show of it. */
  static Yardstick sheet(Brief brief, Plan plan, PlanYardstick yardstick) {
    PlanFigures ours = plan.figures();
    PlanFigures hand = yardstick.byHand();
    WeekBounds floor = yardstick.noPlanUnder();
    List<Bound> bounds = new ArrayList<>();
    bounds.add(new Bound("loads", ours.loads(), floor.loads()));
    bounds.add(
        new Bound(
            "oven batches and dips", ours.batches(), (double) floor.ovenBatches() + floor.dips()));
    bounds.add(new Bound(HOURS, ours.runMinutes() / 60.0, floor.machineMinutes() / 60.0));
    bounds.add(new Bound("colour changes", ours.colourChanges(), floor.colourChanges()));
    bounds.add(new Bound("late lots, weighted", ours.lateLots(), floor.lateLots()));
    List<Comparison> comparisons = new ArrayList<>();
    comparisons.add(new Comparison("loads", hand.loads(), ours.loads()));
    comparisons.add(new Comparison("oven batches and dips", hand.batches(), ours.batches()));
    comparisons.add(new Comparison(HOURS, hand.runMinutes() / 60.0, ours.runMinutes() / 60.0));
    comparisons.add(new Comparison("colour changes", hand.colourChanges(), ours.colourChanges()));
    comparisons.add(new Comparison("late lots, weighted", hand.lateLots(), ours.lateLots()));
    if (!brief.kits().isEmpty()) {
      double weight = 60.0 * brief.kits().stream().mapToInt(Kit::weight).sum();
      bounds.add(new Bound(SETS, ours.setMinutes() / weight, floor.setMinutes() / weight));
      comparisons.add(new Comparison(SETS, hand.setMinutes() / weight, ours.setMinutes() / weight));
    }
    comparisons.add(
        new Comparison("lots left out", yardstick.byHandLotsLeftOut(), plan.leftOut().size()));
    comparisons.add(new Comparison("kWh", yardstick.byHandHeatKwh(), yardstick.heatKwh()));
    comparisons.add(
        new Comparison(
            "kWh a tonne of work", yardstick.byHandKwhPerTonne(), yardstick.kwhPerTonne()));
    return new Yardstick(bounds, comparisons, List.of());
  }

  private double workKg(Plan plan) {
    double sum = 0;
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          sum += index.lot(id).massKg();
        }
      }
    }
    return sum;
  }

  private double heatKWh(Plan plan) {
    double sum = 0;
    for (PlannedBatch batch : plan.batches()) {
      sum += heatKWh(batch);
    }
    return sum;
  }

  private double heatKWh(PlannedBatch batch) {
    double steelKg = 0;
    double aluminiumKg = 0;
    double zincKg = 0;
    for (PlannedLoad load : batch.loads()) {
      CarrierSpec carrier = carriers.get(load.carrierId());
      steelKg += carrier == null ? 0 : carrier.ownMassKg();
      for (String id : load.lotIds()) {
        Lot lot = index.lot(id);
        boolean aluminium = index.part(lot).material() == Material.ALUMINIUM;
        steelKg += aluminium ? 0 : lot.massKg();
        aluminiumKg += aluminium ? lot.massKg() : 0;
        zincKg += lot.materialKg();
      }
    }
    LineSpec line = index.line(batch.lineId());
    double celsius = line.settings().get(batch.setting()).celsius();
    if (line.kind() == LineKind.OUTSIDE) {
      return 0;
    }
    if (line.kind() == LineKind.ZINC) {
      return HeatUse.dipKWh(steelKg, zincKg, celsius);
    }
    OvenProfile oven = ovens.get(batch.machineId());
    return HeatUse.ovenKWh(
        steelKg,
        aluminiumKg,
        oven == null ? 0 : oven.wallWM2K(),
        oven == null ? 0 : oven.wallM2(),
        celsius,
        batch.dwellMin());
  }
}
