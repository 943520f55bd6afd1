package spangle.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.heat.Cooling;
import spangle.coating.heat.DegassingBake;
import spangle.coating.heat.HeatUpTable;
import spangle.coating.heat.HeatedPart;
import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenEnergy;
import spangle.coating.heat.OvenPanel;
import spangle.coating.liquid.SolventAir;
import spangle.measure.QuantityKind;

/** What happens before and after the cure, and what the oven burns for it. */
final class OvenOptions {
  @Option(names = "--hall", paramLabel = "TEMP", description = "Hall air. Default: 20C.")
  private String hall = "20C";

  @Option(names = "--fan", description = "Fans on the work while it cools.")
  private boolean fan;

  @Option(
      names = "--degas",
      description = "Galvanized: the bake before powder, 30 C over the setting of --oven.")
  private boolean degas;

  @Option(
      names = "--proven",
      paramLabel = "TIME",
      description = "Degassing time the shop has proven. Default: 60min.")
  private @Nullable String proven;

  @Option(
      names = "--work",
      paramLabel = "MASS",
      description = "Work in the batch: shows the oven's energy.")
  private @Nullable String work;

  @Option(names = "--carriers", paramLabel = "MASS", description = "Steel racks, carts, hooks.")
  private @Nullable String carriers;

  @Option(
      names = "--panel-area",
      paramLabel = "AREA",
      description = "Oven walls, floor, roof and doors.")
  private @Nullable String panelArea;

  @Option(
      names = "--panel",
      paramLabel = "T",
      description = "Insulation, 75mm (3in) to 200mm (8in). Default: 100mm.")
  private @Nullable String panel;

  @Option(names = "--oven-exhaust", paramLabel = "FLOW", description = "E.g. 400m3/h.")
  private @Nullable String exhaust;

  /** Minutes until hands and until powder may touch it. */
  record Cool(double toHandleMin, double toPowderMin) {}

  Cool cool(HeatedPart part, double metalC) {
    double hallC = Ask.hallC("--hall", hall);
    double u = fan ? Cooling.FAN_U_WM2K : Cooling.STILL_AIR_U_WM2K;
    return new Cool(
        Cooling.minutes(part, metalC, Cooling.BEFORE_HANDLING_C, hallC, u),
        Cooling.minutes(part, metalC, Cooling.BEFORE_POWDER_C, hallC, u));
  }

  Optional<DegassingBake> degassing(
      HeatedPart part, double startC, double ovenC, HeatUpTable table) {
    Ask.goesWith(proven, "--proven", degas, "--degas");
    if (!degas) {
      return Optional.empty();
    }
    if (part.metal() != Metal.STEEL) {
      throw ExitException.usage("--degas is for galvanized steel: give --steel");
    }
    double minutes =
        proven == null
            ? DegassingBake.UNPROVEN_MINUTES
            : Ask.read(QuantityKind.DURATION, "--proven", proven, 1, 1440);
    return Optional.of(
        DegassingBake.of(part, startC, DegassingBake.settingC(ovenC), minutes, table));
  }

  Optional<OvenEnergy> energy(Metal metal, double ovenC, double minutes) {
    boolean asked = work != null;
    Ask.goesWith(carriers, "--carriers", asked, "--work");
    Ask.goesWith(panelArea, "--panel-area", asked, "--work");
    Ask.goesWith(panel, "--panel", panelArea != null, "--panel-area");
    Ask.goesWith(exhaust, "--oven-exhaust", asked, "--work");
    if (work == null) {
      return Optional.empty();
    }
    OvenEnergy.Oven oven =
        new OvenEnergy.Oven(
            wallWM2K(),
            panelArea == null ? 0 : Ask.areaM2("--panel-area", panelArea),
            exhaust == null
                ? 0
                : Ask.read(QuantityKind.AIR_FLOW, "--oven-exhaust", exhaust, 0, 200_000),
            1);
    return Optional.of(
        OvenEnergy.of(
            oven,
            metal,
            Ask.massKg("--work", work),
            carriers == null ? 0 : Ask.massOrNoneKg("--carriers", carriers),
            Ask.hallC("--hall", hall),
            ovenC,
            minutes));
  }

  private double wallWM2K() {
    return panel == null
        ? OvenPanel.USUAL.uWM2K()
        : OvenPanel.uWM2K(
            Ask.read(
                QuantityKind.LENGTH,
                "--panel",
                panel,
                OvenPanel.THINNEST_MM,
                OvenPanel.THICKEST_MM));
  }

  static JsonOut json(OvenEnergy energy) {
    return new JsonOut()
        .put("parts", energy.partsKWh())
        .put("carriers", energy.carriersKWh())
        .put("panels", energy.panelsKWh())
        .put("exhaust", energy.exhaustKWh())
        .put("total", energy.totalKWh());
  }

  static JsonOut json(DegassingBake bake) {
    return new JsonOut()
        .put("oven_c", bake.ovenC())
        .put("heat_up_min", bake.heatUpMin())
        .put("min_minutes", bake.minMinutes());
  }

  static void say(Answer answer, OvenEnergy energy) {
    answer.line(
        "energy",
        "%.1f kWh into the oven: parts %.1f, carriers %.1f, panels %.1f, exhaust %.1f",
        energy.totalKWh(),
        energy.partsKWh(),
        energy.carriersKWh(),
        energy.panelsKWh(),
        energy.exhaustKWh());
    answer.line(
        "SAFETY",
        "at least %d oven volumes of air before the burner is lit; no solvent without its exhaust",
        SolventAir.PURGE_VOLUMES);
    answer.say("", Answer.AUTHORITY);
  }

  static void say(Answer answer, DegassingBake bake) {
    answer.line(
        "degas",
        "%.0f C for at least %.0f min: the metal is at the setting after %.1f min; then below 38 C,"
            + " coat the same day",
        bake.ovenC(),
        bake.minMinutes(),
        bake.heatUpMin());
  }

  static void say(Answer answer, Cool cool) {
    answer.line(
        "cooling",
        "%.0f min to handle (50 C), %.0f min before powder (38 C)",
        cool.toHandleMin(),
        cool.toPowderMin());
  }
}
