package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.coating.zinc.DipHeat;
import spangle.coating.zinc.ZincBath;
import spangle.coating.zinc.ZincBudget;
import spangle.coating.zinc.ZincLosses;
import spangle.equipment.KettleProfile;
import spangle.estimate.BathWeek;
import spangle.intake.brief.BathMaker;
import spangle.intake.brief.PartGates;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.intake.week.Zinc;
import spangle.plan.BathSpec;
import spangle.plan.CarrierSpec;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** What a planned week does to each kettle's bath. */
public final class BathDesk {
  private static final double USUAL_INGOT_KG = 25;

  private final PreparedWeek week;
  private final Plan plan;
  private final WeekIndex index;

  BathDesk(PreparedWeek week, Plan plan) {
    this.week = week;
    this.plan = plan;
    this.index = new WeekIndex(week.brief(), week.parts());
  }

  /**
   * One kettle in the week.
   *
   * @param machineId the kettle
   * @param steelKg black steel dipped in it
   * @param zincKg zinc on the work, likely
   * @param losses parts of what is bought for it and does not stay on the work
   * @param level what it does to the level
   * @param ingotKg one ingot
   * @param heaviest the dip that takes most heat; empty where nothing is dipped
   */
  public record Bath(
      String machineId,
      double steelKg,
      double zincKg,
      ZincLosses losses,
      BathWeek level,
      double ingotKg,
      Optional<HeavyDip> heaviest) {}

  /**
   * The dip that takes most heat.
   *
   * @param batchId the batch
   * @param heatKWh heat of work, carriers and zinc made up
   * @param dropK fall of the bath's temperature with the burners off
   * @param sharePct its steel over the zinc in the bath
   */
  public record HeavyDip(String batchId, double heatKWh, double dropK, double sharePct) {}

  /** All kettles in which something is dipped. */
  List<Bath> baths() {
    List<Bath> baths = new ArrayList<>();
    for (ShopLine line : week.input().shop().lines()) {
      for (StationUse use : line.stations()) {
        if (use.profile() instanceof KettleProfile kettle) {
          bath(use, kettle).ifPresent(baths::add);
        }
      }
    }
    return baths;
  }

  private Optional<Bath> bath(StationUse use, KettleProfile kettle) {
    List<PlannedBatch> dips =
        plan.batches().stream()
            .filter(b -> b.machineId().equals(use.id()))
            .filter(b -> !week.brief().isBeyond(b.startMin()))
            .toList();
    if (dips.isEmpty()) {
      return Optional.empty();
    }
    ZincBath zinc =
        new ZincBath(
            kettle.inside().lengthMm(),
            kettle.inside().widthMm(),
            kettle.zincKg() > 0 ? depthMm(kettle) : kettle.inside().heightMm() - kettle.rimMm(),
            kettle.bathC());
    double ingotKg =
        week.input().catalogue().zinc().map(z -> z.stock().pack()).orElse(USUAL_INGOT_KG);
    BathWeek level =
        BathWeek.of(
            zinc,
            dips.stream().flatMap(b -> lots(b).stream().map(l -> dip(b, l))).toList(),
            marks(use),
            week.input().shop().horizonDays(),
            ingotKg);
    List<Lot> dipped = dips.stream().flatMap(b -> lots(b).stream()).toList();
    double onWorkKg = dipped.stream().mapToDouble(Lot::materialKg).sum();
    return Optional.of(
        new Bath(
            use.id(),
            dipped.stream().mapToDouble(Lot::massKg).sum(),
            onWorkKg,
            ZincBudget.losses(
                onWorkKg, dipped.stream().mapToDouble(Lot::areaM2).sum(), zincYield()),
            level,
            ingotKg,
            dips.stream()
                .map(b -> heavy(b, zinc))
                .max(Comparator.comparingDouble(HeavyDip::heatKWh))));
  }

  /** What the plan was made with; the shop's own where the plan need not follow the level. */
  private List<BathWeek.Mark> marks(StationUse use) {
    return week.brief().baths().stream()
        .filter(b -> b.machineId().equals(use.id()))
        .map(BathSpec::marks)
        .findFirst()
        .orElseGet(() -> BathMaker.marks(week.input().shop(), use))
        .stream()
        .map(m -> new BathWeek.Mark(m.atMin(), m.downMm(), m.filled()))
        .toList();
  }

  /** Depth at which the kettle holds the zinc its profile names. */
  private static double depthMm(KettleProfile kettle) {
    ZincBath oneMetre =
        new ZincBath(kettle.inside().lengthMm(), kettle.inside().widthMm(), 1000, kettle.bathC());
    return Math.min(kettle.inside().heightMm(), 1000 * kettle.zincKg() / oneMetre.massKg());
  }

  private double zincYield() {
    return week.input().catalogue().zinc().map(Zinc::yield).orElse(ZincBudget.USUAL_YIELD);
  }

  private List<Lot> lots(PlannedBatch batch) {
    return batch.loads().stream().flatMap(l -> l.lotIds().stream()).map(index::lot).toList();
  }

  private BathWeek.Dip dip(PlannedBatch batch, Lot lot) {
    return new BathWeek.Dip(
        batch.startMin(), lot.materialKg() / zincYield(), spare(lot), lot.label());
  }

  /** Zinc over the part in the attitude it is dipped in; nothing known for a basket. */
  private OptionalDouble spare(Lot lot) {
    PartFacts part = index.part(lot);
    if (part.spun()) {
      return OptionalDouble.empty();
    }
    return week.gates(part.jobId(), part.partId())
        .flatMap(PartGates::fit)
        .map(answer -> OptionalDouble.of(Math.max(0, answer.margin().depthMm())))
        .orElseGet(OptionalDouble::empty);
  }

  private HeavyDip heavy(PlannedBatch batch, ZincBath bath) {
    double steel = lots(batch).stream().mapToDouble(Lot::massKg).sum();
    for (PlannedLoad load : batch.loads()) {
      steel +=
          week.brief().carriers().stream()
              .filter(c -> c.id().equals(load.carrierId()))
              .mapToDouble(CarrierSpec::ownMassKg)
              .findFirst()
              .orElse(0);
    }
    double zinc = lots(batch).stream().mapToDouble(Lot::materialKg).sum();
    DipHeat heat = DipHeat.of(steel, zinc, 20, 20, bath.celsius());
    return new HeavyDip(batch.id(), heat.totalKWh(), bath.dropK(heat), 100 * steel / bath.massKg());
  }
}
