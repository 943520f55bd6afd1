package spangle.desk;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import spangle.coating.zinc.ZincBath;
import spangle.equipment.KettleProfile;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.plan.BathSpec;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.ZincLevel;

/** How high the zinc must stand for a load that hangs deep, and how high it stands by the plan. */
final class LevelWords {
  private final PreparedWeek week;
  private final ZincLevel level;
  private final Map<String, KettleProfile> kettles = new HashMap<>();

  LevelWords(PreparedWeek week, Plan plan) {
    this.week = week;
    this.level = new ZincLevel(week.brief());
    plan.batches().forEach(level::dipped);
    for (ShopLine line : week.input().shop().lines()) {
      for (StationUse use : line.stations()) {
        if (use.profile() instanceof KettleProfile kettle) {
          kettles.put(use.id(), kettle);
        }
      }
    }
  }

  /** Words for the dip sheet; empty where the load does not hang deep. */
  String of(PlannedBatch batch, PlannedLoad load) {
    KettleProfile kettle = kettles.get(batch.machineId());
    return week.brief().baths().stream()
        .filter(b -> b.machineId().equals(batch.machineId()) && kettle != null)
        .findFirst()
        .map(bath -> words(bath, kettle == null ? 0 : kettle.zincDepthMm(), batch, load))
        .orElse("");
  }

  private String words(BathSpec bath, double depthMm, PlannedBatch batch, PlannedLoad load) {
    double spare =
        load.lotIds().stream()
            .mapToDouble(id -> bath.spareMm(id).orElse(Double.MAX_VALUE))
            .min()
            .orElse(Double.MAX_VALUE);
    if (spare > ZincBath.DEEP_MM) {
      return "";
    }
    double down = level.downMm(bath, batch.startMin());
    OptionalInt filled =
        bath.marks().stream()
            .filter(m -> m.filled() && m.atMin() > batch.startMin())
            .mapToInt(BathSpec.Mark::atMin)
            .min();
    return String.format(
            Locale.ROOT,
            "at least %.2f m of zinc over the floor of the kettle, no more than %.0f mm under its"
                + " mark; by the plan %.2f m, ",
            Math.ceil((depthMm - spare) / 10) / 100,
            Math.floor(spare),
            Math.floor((depthMm - down) / 10) / 100)
        + (down < 1
            ? "at its mark"
            : String.format(Locale.ROOT, "%.0f mm under it", Math.ceil(down)))
        + (filled.isPresent() ? "; filled up next by " + DayWords.of(filled.getAsInt()) : "");
  }
}
