package spangle.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.coating.liquid.PaintNeed;
import spangle.measure.Quantities;

/** Liquid paint for an area. */
@Command(
    name = "liquid",
    mixinStandardHelpOptions = true,
    description = "Liquid paint: wet film, spreading rate, litres, components.",
    footer = {
      "",
      "Example:",
      "  spangle calc liquid --area 100m2 --film 80um --solids 60 --thinner 10 --loss 0.4 --mix 4:1"
    })
final class LiquidCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Option(names = "--area", required = true, paramLabel = "AREA", description = "Work to coat.")
  @SuppressWarnings("NullAway.Init")
  private String area;

  @Option(names = "--film", required = true, paramLabel = "FILM", description = "Dry film.")
  @SuppressWarnings("NullAway.Init")
  private String film;

  @Option(
      names = "--solids",
      required = true,
      paramLabel = "PCT",
      description = "Solids by volume, per cent.")
  private double solids;

  @Option(
      names = "--thinner",
      paramLabel = "PCT",
      description = "Thinner per 100 of unthinned paint, by volume.")
  private double thinner;

  @Option(
      names = "--loss",
      paramLabel = "SHARE",
      description = "Share of all litres mixed that is lost, 0 to under 1.")
  private double loss;

  @Option(
      names = "--mix",
      paramLabel = "A:B",
      description = "Mix ratio by volume, base first. Default: one pack.")
  private String mix = "1";

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  @Override
  public Integer call() {
    PaintNeed need =
        new PaintNeed(Quantities.areaM2(area), Quantities.filmUm(film), solids, thinner, loss);
    List<Double> components = need.componentsL(parts());
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      new JsonOut()
          .put("wet_film_um", need.wetFilmUm())
          .put("spreading_m2_l", need.spreadingM2L())
          .put("litres_theoretical", need.litresTheoretical())
          .put("litres", need.litres())
          .put("components_l", components)
          .print(out);
      return ExitCode.DONE;
    }
    String each =
        components.stream()
            .map(l -> String.format(Locale.ROOT, "%.2f", l))
            .collect(Collectors.joining(" + "));
    out.printf(Locale.ROOT, "mix        %.2f l ready to spray: %s l%n", need.litres(), each);
    out.printf(Locale.ROOT, "wet film   %.0f um%n", need.wetFilmUm());
    out.printf(Locale.ROOT, "spreading  %.2f m2/l, no loss%n", need.spreadingM2L());
    out.println("working    10 x solids% / um m2/l; ratio by volume, thinner last");
    out.println("CAUTION    solvent: extraction, no flame; local code and the data sheet decide");
    out.flush();
    return ExitCode.DONE;
  }

  private List<Double> parts() {
    List<Double> parts = new ArrayList<>();
    for (String part : mix.split(":", -1)) {
      try {
        parts.add(Double.parseDouble(part.strip()));
      } catch (NumberFormatException notANumber) {
        throw ExitException.usage("--mix '" + mix + "' is no ratio: write it like 4:1");
      }
    }
    return parts;
  }
}
