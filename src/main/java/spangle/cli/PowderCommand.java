package spangle.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.coating.powder.PowderNeed;
import spangle.measure.Quantities;

/** Powder for an area. */
@Command(
    name = "powder",
    mixinStandardHelpOptions = true,
    description = "Powder: coverage, film, what is sprayed, what to draw.",
    footer = {
      "",
      "Example:",
      "  spangle calc powder --area 70.4m2 --film 80um --sg 1.5 --use 0.6 --pack 20kg"
    })
final class PowderCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Option(names = "--area", required = true, paramLabel = "AREA", description = "Work to coat.")
  @SuppressWarnings("NullAway.Init")
  private String area;

  @Option(
      names = "--film",
      required = true,
      paramLabel = "FILM",
      description = "Mean film sprayed, not the least.")
  @SuppressWarnings("NullAway.Init")
  private String film;

  @Option(
      names = "--sg",
      required = true,
      paramLabel = "N",
      description = "Specific gravity from the data sheet.")
  private double specificGravity;

  @Option(
      names = "--use",
      required = true,
      paramLabel = "SHARE",
      description = "Share of sprayed powder that stays, above 0 to 1.")
  private double use;

  @Option(names = "--hooks", paramLabel = "N", description = "Hooks that take powder too.")
  private int hooks;

  @Option(names = "--hook-area", paramLabel = "AREA", description = "Surface of one hook.")
  private String hookArea = "0.00377m2";

  @Option(names = "--colour-loss", paramLabel = "MASS", description = "Lost at each colour.")
  private @Nullable String colourLoss;

  @Option(names = "--pack", paramLabel = "MASS", description = "Size of a pack.")
  private @Nullable String pack;

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  @Override
  public Integer call() {
    if (hooks < 0) {
      throw ExitException.usage("--hooks is " + hooks + ": 0 or more");
    }
    PowderNeed need =
        new PowderNeed(
            Quantities.areaM2(area),
            hooks * Quantities.areaM2(hookArea),
            Quantities.filmUm(film),
            specificGravity,
            use,
            colourLoss == null ? 0 : Quantities.massKg(colourLoss));
    Integer packs = pack == null ? null : need.packs(Quantities.massKg(pack));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      new JsonOut()
          .put("coverage_m2_kg", need.coverageM2Kg())
          .put("film_kg", need.filmKg())
          .put("sprayed_kg", need.sprayedKg())
          .put("to_draw_kg", need.toDrawKg())
          .put("packs", packs)
          .print(out);
      return ExitCode.DONE;
    }
    out.printf(
        Locale.ROOT,
        "draw      %.2f kg%s%n",
        need.toDrawKg(),
        packs == null ? "" : ", " + packs + " packs");
    out.printf(
        Locale.ROOT,
        "sprayed   %.2f kg, of which %.2f kg stay as film%n",
        need.sprayedKg(),
        need.filmKg());
    out.printf(
        Locale.ROOT, "coverage  %.2f m2/kg in theory (1000 / (SG x um))%n", need.coverageM2Kg());
    out.println("working   (area + hooks) x SG x um / 1000 / use + colour loss; stock not counted");
    out.flush();
    return ExitCode.DONE;
  }
}
