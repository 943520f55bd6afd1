package spangle.plan.bound;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.Brief;
import spangle.plan.Goals;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/**
 * What no plan that holds the same lots can go under. A plan that leaves other lots out is another
 * question; so is the order in which several floors could be reached at once.
 *
 * @param lines by line, in the brief's order
 * @param loads carriers filled
 * @param ovenBatches batches in ovens
 * @param dips batches in kettles
 * @param machineMinutes minutes ovens and kettles of the shop hold batches
 * @param settingMinutes minutes of setting changes
 * @param settingCost cost of setting changes, in the set-up tables' unit
 * @param colourChanges colour changes with minutes or cost above zero
 * @param colourCost cost of colour changes, in the set-up tables' unit
 * @param lateLots weighted lots of last legs that are late whatever the order
 * @param lateMinutes weighted minutes those are late at least
 * @param lateKits weighted kits that are late whatever the order
 * @param setMinutes weighted minutes until the average set of each kit is whole, whatever the order
 * @param goal the brief's goals at all these floors together; lots left out count as in the plan
 */
public record WeekBounds(
    List<LineBounds> lines,
    int loads,
    int ovenBatches,
    int dips,
    long machineMinutes,
    long settingMinutes,
    long settingCost,
    int colourChanges,
    long colourCost,
    long lateLots,
    long lateMinutes,
    long lateKits,
    long setMinutes,
    long goal) {
  /** Copies the list. */
  public WeekBounds {
    lines = List.copyOf(lines);
  }

  /** Floors for plans that hold the lots this plan holds. */
  public static WeekBounds of(Brief brief, Plan plan) {
    Set<String> lots = new HashSet<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        lots.addAll(load.lotIds());
      }
    }
    return of(brief, lots);
  }

  /** Floors for plans that hold exactly these lots. */
  public static WeekBounds of(Brief brief, Set<String> lotIds) {
    EarliestEnds ends = new EarliestEnds(brief, lotIds);
    List<LineBounds> lines =
        brief.lines().stream()
            .map(line -> LineFloor.of(new LineWork(brief, line, lotIds), ends))
            .toList();
    LateFloor late = new LateFloor(brief, lotIds, ends);
    long leftOut = 0;
    for (Lot lot : brief.lots()) {
      leftOut += lotIds.contains(lot.id()) ? 0 : lot.weight();
    }
    long trips =
        lines.stream()
            .filter(line -> brief.outside(line.lineId()))
            .mapToLong(LineBounds::batches)
            .sum();
    return sum(brief.goals(), lines, late.minutes(), late.kits(), trips, leftOut);
  }

  private static WeekBounds sum(
      Goals goals,
      List<LineBounds> lines,
      long lateMinutes,
      LateFloor.KitFloor kits,
      long trips,
      long leftOut) {
    int loads = lines.stream().mapToInt(LineBounds::loads).sum();
    int batches = lines.stream().mapToInt(LineBounds::batches).sum();
    int dips = lines.stream().filter(LineBounds::kettle).mapToInt(LineBounds::batches).sum();
    long run = lines.stream().mapToLong(LineBounds::machineMinutes).sum();
    long settingMinutes = lines.stream().mapToLong(LineBounds::settingMinutes).sum();
    long settingCost = lines.stream().mapToLong(LineBounds::settingCost).sum();
    int colours = lines.stream().mapToInt(LineBounds::colourChanges).sum();
    long colourCost = lines.stream().mapToLong(LineBounds::colourCost).sum();
    long lateLots = lines.stream().mapToLong(LineBounds::lateLots).sum();
    long goal =
        goals.runMinute() * run
            + goals.lateLot() * lateLots
            + goals.lateMinute() * lateMinutes
            + goals.settingCost() * settingCost
            + goals.settingMinute() * settingMinutes
            + goals.colourCost() * colourCost
            + (long) goals.load() * loads
            + goals.lateKit() * kits.late()
            + goals.setMinute() * kits.setMinutes()
            + goals.trip() * trips
            + goals.leftOut() * leftOut;
    return new WeekBounds(
        lines,
        loads,
        batches - dips,
        dips,
        run,
        settingMinutes,
        settingCost,
        colours,
        colourCost,
        lateLots,
        lateMinutes,
        kits.late(),
        kits.setMinutes(),
        goal);
  }
}
