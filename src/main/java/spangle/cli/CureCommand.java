package spangle.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.coating.heat.ConstantU;
import spangle.coating.heat.ConvectionRadiation;
import spangle.coating.heat.CureRun;
import spangle.coating.heat.CureWindow;
import spangle.coating.heat.DegassingBake;
import spangle.coating.heat.HeatPath;
import spangle.coating.heat.HeatTransfer;
import spangle.coating.heat.HeatUpTable;
import spangle.coating.heat.HeatedPart;
import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenEnergy;
import spangle.measure.MeasureException;
import spangle.measure.QuantityKind;

/** How long a part stays in the oven. */
@Command(
    name = "cure",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Heat-up and dwell of a part against its cure window; what may share the oven.",
    footer = {
      "",
      "Examples:",
      "  spangle calc cure --steel 6mm --oven 200C --from 20C --window \"10@190,max 20\"",
      "  spangle calc cure --steel 6mm --oven 392F --window \"10@190, max 20\" --with \"steel"
          + " 1mm\"",
      "  spangle calc cure --window \"12@190 10@200\" --curve \"0:20 6:150 12:195 24:200\""
    })
final class CureCommand implements Callable<Integer> {
  private static final List<String> WITH_A_CURVE = List.of("--curve", "--window", "--json");
  private static final Pattern BLANKS = Pattern.compile("[\\s,]+");
  private static final String CLOCK =
      "starts when the oven air is back at its setting; recovery after loading is added by the"
          + " plan";

  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Option(names = "--steel", paramLabel = "THICKNESS", description = "Steel, full thickness.")
  private @Nullable String steel;

  @Option(names = "--aluminium", paramLabel = "THICKNESS", description = "Aluminium.")
  private @Nullable String aluminium;

  @Option(names = "--oven", paramLabel = "TEMP", description = "Oven setting.")
  private @Nullable String oven;

  @Option(names = "--from", paramLabel = "TEMP", description = "Metal at the start.")
  private String from = "20C";

  @Option(
      names = "--window",
      required = true,
      paramLabel = "WINDOW",
      description = "Minutes@metal temperature, several separated by spaces, and max minutes.")
  @SuppressWarnings("NullAway.Init")
  private String window;

  @Option(names = "--h", paramLabel = "N", description = "Convection, W/m2 K. Default: 20.")
  private @Nullable Double convection;

  @Option(names = "--emissivity", paramLabel = "N", description = "Default: 0.9.")
  private @Nullable Double emissivity;

  @Option(names = "--bare", description = "Bare zinc or bare aluminium: emissivity 0.25.")
  private boolean bare;

  @Option(names = "--u", paramLabel = "N", description = "Constant U in place of both, W/m2 K.")
  private @Nullable Double constantU;

  @Option(
      names = "--table",
      paramLabel = "\"T:TIME ...\"",
      description =
          "The shop's measured minutes to cure temperature, e.g. \"2mm:5min 6mm:14min\"; overrides"
              + " the model.")
  private @Nullable String table;

  @Option(names = "--one-side", description = "Heated from one side only.")
  private boolean oneSide;

  @Mixin private final CureBatchOptions batch = new CureBatchOptions();

  @Mixin private final OvenOptions around = new OvenOptions();

  @Mixin private final CurveOptions curve = new CurveOptions();

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  private record Sum(
      CureWindow window,
      CureRun run,
      HeatTransfer transfer,
      boolean measured,
      Optional<CureBatchOptions.Batch> batch,
      Optional<OvenOptions.Cool> cool,
      Optional<DegassingBake> degas,
      Optional<OvenEnergy> energy) {
    boolean reached() {
      return Double.isFinite(run.minDwellMin());
    }
  }

  @Override
  public Integer call() {
    CureWindow cure = window("--window", window);
    PrintWriter out = spec.commandLine().getOut();
    if (curve.given()) {
      curveAlone(cure, out);
      return ExitCode.DONE;
    }
    Sum sum = sum(cure);
    if (json) {
      json(sum).print(out);
    } else {
      say(sum, out);
    }
    return ExitCode.DONE;
  }

  static CureWindow window(String option, String text) {
    try {
      return CureWindow.parse(text);
    } catch (MeasureException unreadable) {
      throw ExitException.usage(option + ": " + unreadable.getMessage());
    }
  }

  private void curveAlone(CureWindow cure, PrintWriter out) {
    for (Model.OptionSpec said : spec.commandLine().getParseResult().matchedOptions()) {
      if (!WITH_A_CURVE.contains(said.longestName())) {
        throw ExitException.usage(
            "--curve is what the probe saw and needs only --window: leave out "
                + said.longestName()
                + ", or leave out --curve");
      }
    }
    curve
        .read()
        .ifPresent(
            readings -> {
              if (json) {
                CurveOptions.json(readings, cure).print(out);
              } else {
                CurveOptions.say(new Answer(out), readings, cure);
              }
            });
  }

  private Sum sum(CureWindow cure) {
    HeatedPart part = part();
    if (oven == null) {
      throw ExitException.usage("--oven is missing: give the setting, like --oven 200C");
    }
    double ovenC = Ask.ovenC("--oven", oven);
    double startC = Ask.read(QuantityKind.TEMPERATURE, "--from", from, -30, 260);
    if (startC > ovenC) {
      throw ExitException.usage(
          "--from '" + from + "' is hotter than --oven '" + oven + "': nothing heats up there");
    }
    HeatTransfer transfer = transfer();
    HeatPath path = HeatPath.of(part, transfer, startC, ovenC);
    Optional<HeatUpTable> measured = table(part.metal());
    if (measured.isPresent()) {
      path = path.through(cure.lowestC(), measured.get().minutes(part));
    }
    CureRun run = CureRun.of(path, cure);
    HeatUpTable forPlan = measured.orElse(HeatUpTable.RULE_OF_THUMB);
    boolean reached = Double.isFinite(run.minDwellMin());
    return new Sum(
        cure,
        run,
        transfer,
        measured.isPresent(),
        batch.batch(part, transfer, cure, startC, ovenC, forPlan),
        reached ? Optional.of(around.cool(part, run.metalCAtMinDwell())) : Optional.empty(),
        around.degassing(part, startC, ovenC, forPlan),
        around.energy(part.metal(), ovenC, reached ? run.minDwellMin() : 0));
  }

  private HeatedPart part() {
    if ((steel == null) == (aluminium == null)) {
      throw ExitException.usage("Give either --steel or --aluminium with the thickness");
    }
    return steel != null
        ? new HeatedPart(Metal.STEEL, Ask.thicknessMm("--steel", steel), oneSide)
        : new HeatedPart(
            Metal.ALUMINIUM, Ask.thicknessMm("--aluminium", String.valueOf(aluminium)), oneSide);
  }

  private HeatTransfer transfer() {
    if (constantU != null) {
      if (convection != null || emissivity != null || bare) {
        throw ExitException.usage("--u stands in place of --h and --emissivity: give one or both");
      }
      return new ConstantU(Ask.number("--u", constantU, 0.1, 1000));
    }
    if (bare && emissivity != null) {
      throw ExitException.usage("--bare is an emissivity of 0.25: leave out --emissivity");
    }
    double face =
        bare ? ConvectionRadiation.BARE_EMISSIVITY : ConvectionRadiation.COATED_EMISSIVITY;
    return new ConvectionRadiation(
        convection == null
            ? ConvectionRadiation.USUAL_H_WM2K
            : Ask.number("--h", convection, 0, 500),
        emissivity == null ? face : Ask.number("--emissivity", emissivity, 0, 1));
  }

  private Optional<HeatUpTable> table(Metal metal) {
    if (table == null) {
      return Optional.empty();
    }
    if (constantU != null || convection != null || emissivity != null || bare) {
      throw ExitException.usage(
          "--table is measured and overrides --u, --h, --emissivity and --bare: give one or the"
              + " other");
    }
    List<HeatUpTable.Row> rows = new ArrayList<>();
    for (String row : BLANKS.split(table.strip(), -1)) {
      String[] halves = row.split(":", -1);
      if (halves.length != 2) {
        throw ExitException.usage(
            "--table '" + row + "' is no row: write thickness and time like 2mm:5min");
      }
      rows.add(
          new HeatUpTable.Row(
              metal,
              Ask.thicknessMm("--table", halves[0]),
              Ask.read(QuantityKind.DURATION, "--table", halves[1], 0.01, 1440)));
    }
    return Optional.of(new HeatUpTable(rows));
  }

  private static String verdict(Sum sum) {
    return sum.run().cures() ? "cures" : "cannot cure";
  }

  private JsonOut json(Sum sum) {
    CureRun run = sum.run();
    JsonOut out =
        new JsonOut()
            .put("heat_up_min", run.heatUpMin())
            .put(
                "dwell_min",
                new JsonOut().put("min", run.minDwellMin()).put("max", run.maxDwellMin()))
            .put("metal_c_at_min_dwell", sum.reached() ? run.metalCAtMinDwell() : null)
            .put("verdict", verdict(sum))
            .put("max_assumed", sum.window().maxIsAssumed())
            .put("max_by_heat", sum.reached() && run.limitedByHeat())
            .put("heat_up", heatUp(sum))
            .put("note", CLOCK);
    sum.cool()
        .ifPresent(
            c ->
                out.put(
                    "cooling_min",
                    new JsonOut()
                        .put("to_handle_50_c", c.toHandleMin())
                        .put("to_powder_38_c", c.toPowderMin())));
    sum.batch().ifPresent(b -> out.put("batch", CureBatchOptions.json(b)));
    sum.degas().ifPresent(d -> out.put("degassing", OvenOptions.json(d)));
    sum.energy().ifPresent(e -> out.put("energy_kwh", OvenOptions.json(e)));
    return out;
  }

  private static String heatUp(Sum sum) {
    if (sum.measured()) {
      return "the shop's measured table";
    }
    return sum.transfer() instanceof ConstantU
        ? "constant U and c"
        : "convection and radiation, c(T)";
  }

  private void say(Sum sum, PrintWriter out) {
    CureRun run = sum.run();
    Answer answer = new Answer(out);
    answer.say("verdict", verdict(sum));
    if (sum.reached()) {
      answer.line(
          "heat-up",
          "%.2f min to %.0f C (%.0f F), the window's lowest",
          run.heatUpMin(),
          sum.window().lowestC(),
          Answer.fahrenheit(sum.window().lowestC()));
      answer.line(
          "dwell",
          "at least %.2f min, at most %.2f min%s; metal at %.0f C at the least",
          run.minDwellMin(),
          run.maxDwellMin(),
          run.cures() ? "" : ": there is nothing between",
          run.metalCAtMinDwell());
    } else {
      answer.line(
          "why",
          "the metal never reaches %.0f C, the window's lowest: below it nothing cures",
          sum.window().lowestC());
    }
    if (sum.reached() && run.limitedByHeat()) {
      answer.line(
          "",
          "the most is when the metal passes %.0f C: above it nothing is known",
          sum.window().unknownAboveC());
    }
    answer.say("clock", CLOCK);
    if (sum.window().maxIsAssumed()) {
      answer.say("assumed", "twice the longest listed time as the most: the data sheet says none");
    }
    sum.batch().ifPresent(b -> CureBatchOptions.say(answer, b));
    sum.degas().ifPresent(d -> OvenOptions.say(answer, d));
    sum.cool().ifPresent(c -> OvenOptions.say(answer, c));
    sum.energy().ifPresent(e -> OvenOptions.say(answer, e));
    answer.say(
        "working",
        "lumped part by "
            + heatUp(sum)
            + "; steel c(T) of EN 1993-1-2; window "
            + sum.window().text()
            + "; probe the heaviest part");
    answer.say(
        "source",
        "EN 1993-1-2 (steel), EN 1999-1-2 (aluminium, from memory); the window is the data"
            + " sheet's");
    answer.end();
  }
}
