package spangle.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spangle.coating.heat.Cooling;
import spangle.coating.heat.HeatedPart;
import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenEnergy;
import spangle.equipment.OvenProfile;
import spangle.intake.brief.OvenTimes;
import spangle.intake.week.Coating;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.intake.week.WeekInput;
import spangle.part.Material;
import spangle.plan.CarrierSpec;
import spangle.plan.Dwell;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.PlannedBatch;
import spangle.report.BatchNote;

/**
 * What the oven hand must know of a batch: which part to probe, when its clock starts.
 *
 * @param index lots, parts and lines of the week
 * @param input its shop and coatings
 * @param carriers what its loads hang on
 */
record BatchFacts(WeekIndex index, WeekInput input, List<CarrierSpec> carriers) {

  BatchNote note(PlannedBatch batch) {
    List<Lot> inside =
        batch.loads().stream().flatMap(l -> l.lotIds().stream()).map(index::lot).toList();
    Lot slow =
        inside.stream().max(Comparator.comparingInt(l -> dwell(l, batch).minMin())).orElseThrow();
    Lot quick =
        inside.stream().min(Comparator.comparingInt(l -> dwell(l, batch).maxMin())).orElseThrow();
    int longest = dwell(quick, batch).maxMin();
    PartFacts part = index.part(slow);
    if (slow.finish().kind() == FinishKind.DEGAS) {
      Optional<OvenTimes> bake =
          input
              .shop()
              .line(batch.lineId())
              .map(line -> OvenTimes.degassing(input, line, part, celsius(batch)));
      return new BatchNote(
          batch.id(),
          slow.id(),
          quick.id(),
          bake.map(OvenTimes::heatUpMin).orElse(batch.dwellMin()),
          bake.map(OvenTimes::minutesAtHeat).orElse(batch.dwellMin()),
          longest,
          celsius(batch),
          true,
          "degassing bake: until the metal is at oven temperature, never shorter than "
              + dwell(slow, batch).minMin()
              + " min from the doors shut; powder right after"
              + cooling(part, celsius(batch), Cooling.BEFORE_POWDER_C)
              + energy(batch));
    }
    Optional<OvenTimes> times = times(batch, slow, part);
    int heatUp = times.map(OvenTimes::heatUpMin).orElse(0);
    int atHeat = times.map(OvenTimes::minutesAtHeat).orElse(batch.dwellMin());
    double partC = times.map(OvenTimes::partCelsius).orElse(celsius(batch));
    return new BatchNote(
        batch.id(),
        slow.id(),
        quick.id(),
        heatUp,
        atHeat,
        longest,
        partC,
        false,
        String.format(
                Locale.ROOT,
                "heaviest %s, %.1f mm: at least %d min; lightest %s, %.1f mm: at most %d min",
                slow.partId(),
                part.thickestMm(),
                dwell(slow, batch).minMin(),
                quick.partId(),
                index.part(quick).thicknessMm(),
                longest)
            + cooling(part, celsius(batch), Cooling.BEFORE_HANDLING_C)
            + energy(batch));
  }

  /** How long the heaviest wall takes to cool in still air of the hall. */
  private static String cooling(PartFacts part, double ovenC, double toC) {
    Metal metal = part.material() == Material.ALUMINIUM ? Metal.ALUMINIUM : Metal.STEEL;
    double minutes =
        Cooling.minutes(
            HeatedPart.bothSides(metal, part.thickestMm()),
            ovenC,
            toC,
            OvenEnergy.HALL_C,
            Cooling.STILL_AIR_U_WM2K);
    return String.format(Locale.ROOT, "; cools below %.0f C in %.0f min", toC, minutes);
  }

  /** Energy of the batch; nothing where its oven is not known. */
  private String energy(PlannedBatch batch) {
    return input.shop().line(batch.lineId()).stream()
        .flatMap(line -> line.machines().stream())
        .filter(use -> use.id().equals(batch.machineId()))
        .map(StationUse::profile)
        .filter(OvenProfile.class::isInstance)
        .map(OvenProfile.class::cast)
        .findFirst()
        .map(
            oven ->
                String.format(
                    Locale.ROOT,
                    "; about %.0f kWh",
                    BatchEnergy.kWh(batch, oven, celsius(batch), index, carriers)))
        .orElse("");
  }

  private Optional<OvenTimes> times(PlannedBatch batch, Lot lot, PartFacts part) {
    Optional<ShopLine> line = input.shop().line(batch.lineId());
    return line.flatMap(
        l ->
            input
                .catalogue()
                .coating(lot.finish().materialId())
                .flatMap(Coating::cure)
                .map(cure -> OvenTimes.of(input, l, part, cure, celsius(batch))));
  }

  private double celsius(PlannedBatch batch) {
    return index.line(batch.lineId()).settings().get(batch.setting()).celsius();
  }

  private static Dwell dwell(Lot lot, PlannedBatch batch) {
    return lot.dwells().stream()
        .filter(d -> d.setting() == batch.setting())
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException(lot.id() + " cannot run at the batch's setting"));
  }
}
