package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.fit.Body;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.FitRules;
import spangle.fit.KettleFit;
import spangle.fit.UsableSpace;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** Does a part go into the kettle, and how. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    description = "Does it go into the kettle: straight, tilted, in two dips, or not.",
    footer = {
      "",
      "Example:",
      "  spangle fit --kettle usable 3.7x1.1x1.9m --size 2000x1200x500mm --mass 240kg"
    })
final class FitCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Option(
      names = "--kettle",
      arity = "1..2",
      required = true,
      paramLabel = "usable LxWxDmm",
      description = "What the kettle takes: length along, width across, depth.")
  @SuppressWarnings("NullAway.Init")
  private List<String> kettle;

  @Option(
      names = "--size",
      required = true,
      paramLabel = "LxWxHmm",
      description = "Outside size of the part.")
  @SuppressWarnings("NullAway.Init")
  private String size;

  @Option(names = "--mass", paramLabel = "KG", description = "Mass of one lift.")
  private @Nullable String mass;

  @Option(
      names = "--overlap",
      paramLabel = "300mm",
      description = "How far two dips overlap along the part.")
  private @Nullable String overlap;

  @Option(
      names = "--rim",
      paramLabel = "150mm",
      description = "From the zinc's surface to the top edge of the kettle.")
  private @Nullable String rim;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    UsableSpace space = space();
    FitAnswer answer = KettleFit.answer(request(), space);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      FitWords.json(answer).print(out);
    } else {
      FitWords.print(answer, out);
    }
    return ExitCode.DONE;
  }

  private FitRequest request() {
    double overlapMm =
        Optional.ofNullable(overlap).map(Quantities::lengthMm).orElse(FitRules.KETTLE.overlapMm());
    OptionalDouble massKg =
        mass == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(Quantities.read(QuantityKind.MASS, mass, "kg"));
    return new FitRequest(
        Body.of(Quantities.box(size)), massKg, 0, FitRules.KETTLE.withOverlapMm(overlapMm));
  }

  private UsableSpace space() {
    String words = String.join(" ", kettle).strip();
    if (!words.startsWith("usable ")) {
      throw ExitException.usage(
          "'"
              + words
              + "' is not a kettle: say 'usable' and its working size, for example --kettle usable"
              + " 3.7x1.1x1.9m");
    }
    List<Double> sides = Quantities.sizesMm(words.substring("usable ".length()), 3);
    double rimMm =
        Optional.ofNullable(rim).map(Quantities::lengthMm).orElse(UsableSpace.USUAL_RIM_MM);
    return new UsableSpace("kettle", sides.get(0), sides.get(1), sides.get(2), rimMm);
  }
}
