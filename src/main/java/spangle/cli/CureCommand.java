package spangle.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.coating.heat.ConstantU;
import spangle.coating.heat.ConvectionRadiation;
import spangle.coating.heat.CureRun;
import spangle.coating.heat.CureWindow;
import spangle.coating.heat.HeatPath;
import spangle.coating.heat.HeatTransfer;
import spangle.coating.heat.HeatedPart;
import spangle.coating.heat.Metal;
import spangle.measure.Interval;
import spangle.measure.Quantities;

/** How long a part stays in the oven. */
@Command(
    name = "cure",
    mixinStandardHelpOptions = true,
    description = "Heat-up and dwell of a part against its cure window.",
    footer = {
      "",
      "Example:",
      "  spangle calc cure --steel 6mm --oven 200C --from 20C --window \"10@190,max 20\""
    })
final class CureCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Option(names = "--steel", paramLabel = "THICKNESS", description = "Steel, full thickness.")
  private @Nullable String steel;

  @Option(names = "--aluminium", paramLabel = "THICKNESS", description = "Aluminium.")
  private @Nullable String aluminium;

  @Option(names = "--oven", required = true, paramLabel = "TEMP", description = "Oven setting.")
  @SuppressWarnings("NullAway.Init")
  private String oven;

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

  @Option(names = "--u", paramLabel = "N", description = "Constant U in place of both, W/m2 K.")
  private @Nullable Double constantU;

  @Option(names = "--one-side", description = "Heated from one side only.")
  private boolean oneSide;

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  @Override
  public Integer call() {
    CureWindow cure = CureWindow.parse(window);
    double ovenC = Quantities.celsius(oven);
    HeatPath path = HeatPath.of(part(), transfer(), Quantities.celsius(from), ovenC);
    CureRun run = CureRun.of(path, cure);
    print(run, cure);
    return ExitCode.DONE;
  }

  private HeatedPart part() {
    if ((steel == null) == (aluminium == null)) {
      throw ExitException.usage("Give either --steel or --aluminium with the thickness");
    }
    Metal metal = steel != null ? Metal.STEEL : Metal.ALUMINIUM;
    String thickness = steel != null ? steel : aluminium;
    return new HeatedPart(metal, Quantities.lengthMm(String.valueOf(thickness)), oneSide);
  }

  private HeatTransfer transfer() {
    if (constantU != null) {
      if (convection != null || emissivity != null) {
        throw ExitException.usage("--u stands in place of --h and --emissivity: give one or both");
      }
      return new ConstantU(constantU);
    }
    return new ConvectionRadiation(
        convection == null ? ConvectionRadiation.USUAL_H_WM2K : convection,
        emissivity == null ? ConvectionRadiation.COATED_EMISSIVITY : emissivity);
  }

  private void print(CureRun run, CureWindow cure) {
    boolean reached = Double.isFinite(run.minDwellMin());
    PrintWriter out = spec.commandLine().getOut();
    String verdict = run.cures() ? "cures" : "cannot cure";
    if (json) {
      new JsonOut()
          .put("heat_up_min", Double.isFinite(run.heatUpMin()) ? run.heatUpMin() : null)
          .put("dwell_min", reached ? dwell(run) : null)
          .put("metal_c_at_min_dwell", reached ? run.metalCAtMinDwell() : null)
          .put("verdict", verdict)
          .put("max_assumed", cure.maxIsAssumed())
          .put("note", CLOCK)
          .print(out);
      return;
    }
    out.printf(Locale.ROOT, "verdict   %s%n", verdict);
    if (reached) {
      out.printf(
          Locale.ROOT,
          "heat-up   %.2f min to %.0f C, the window's lowest%n",
          run.heatUpMin(),
          cure.lowestC());
      out.printf(
          Locale.ROOT,
          "dwell     %.2f to %.2f min; metal at %.0f C at the least%n",
          run.minDwellMin(),
          run.maxDwellMin(),
          run.metalCAtMinDwell());
    }
    out.println("clock     " + CLOCK);
    if (cure.maxIsAssumed()) {
      out.println("assumed   twice the longest listed time as the most: the data sheet says none");
    }
    out.println("working   lumped part, c(T) of EN 1993-1-2 for steel; probe the heaviest part");
    out.flush();
  }

  private static final String CLOCK =
      "starts when the oven air is back at its setting; recovery after loading is added by the plan";

  /** A range whose ends cross is still printed: the verdict says that nothing lies between. */
  private static Object dwell(CureRun run) {
    return run.cures()
        ? new Interval(run.minDwellMin(), run.maxDwellMin())
        : new JsonOut().put("min", run.minDwellMin()).put("max", run.maxDwellMin());
  }
}
