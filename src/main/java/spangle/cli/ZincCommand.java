package spangle.cli;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.coating.zinc.SteelChemistry;
import spangle.coating.zinc.SteelReactivity;
import spangle.coating.zinc.ZincBudget;
import spangle.coating.zinc.ZincInspection;
import spangle.coating.zinc.ZincSkin;

/** Zinc on the work and to buy. */
@Command(
    name = "zinc",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Zinc: coating by the standard, on the work, to buy; what the bath sees of it.",
    footer = {
      "",
      "Examples:",
      "  spangle calc zinc --thickness 3mm --plate 1000x500mm --count 10 --si 0.02 --p 0.01",
      "  spangle calc zinc --thickness 1/4in --area 120ft2 --standard astm-a123 --category plate",
      "  spangle calc zinc --skin 3mm:2.4m2 --skin 8mm:0.6m2 --mass 48kg",
      "  spangle calc zinc --thickness 4mm --tube 60x40x2000mm --kettle 4.5x1.3x2.1m --rust light"
    })
final class ZincCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Mixin private final FormOptions form = new FormOptions();

  @Mixin private final ZincWorkOptions options = new ZincWorkOptions();

  @Mixin private final ZincStandardOptions standard = new ZincStandardOptions();

  @Option(names = "--si", paramLabel = "PCT", description = "Silicon, per cent.")
  private @Nullable Double si;

  @Option(names = "--p", paramLabel = "PCT", description = "Phosphorus, per cent.")
  private @Nullable Double p;

  @Option(names = "--al", paramLabel = "PCT", description = "Aluminium, per cent.")
  private @Nullable Double al;

  @Option(names = "--blasted", description = "Blasted before dipping: the zinc grows thicker.")
  private boolean blasted;

  @Option(names = "--yield", paramLabel = "SHARE", description = "Zinc on work / zinc bought.")
  private double yield = ZincBudget.USUAL_YIELD;

  @Mixin private final KettleOptions kettle = new KettleOptions();

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  @Override
  public Integer call() {
    standard.check();
    ZincWork work = options.work(form);
    Ask.share("--yield", yield);
    SteelReactivity steel =
        SteelReactivity.of(new SteelChemistry(optional(si), optional(p), optional(al)));
    List<ZincSkin> skins =
        work.walls().stream().map(w -> new ZincSkin(w.areaM2(), standard.row(w))).toList();
    ZincBudget budget = ZincBudget.of(skins, work.steelKg(), steel.steelClass(), blasted, yield);
    List<ZincInspection> inspections =
        skins.stream()
            .map(s -> ZincInspection.of(work.pieces(), s.areaM2() / work.pieces(), s.row()))
            .toList();
    ZincWords words =
        new ZincWords(
            work,
            skins,
            steel,
            budget,
            inspections,
            kettle.bath(budget),
            kettle.picklingMin(),
            standard.categoryAssumed());
    if (json) {
      words.json().print(spec.commandLine().getOut());
    } else {
      words.print(spec.commandLine().getOut());
    }
    return ExitCode.DONE;
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
