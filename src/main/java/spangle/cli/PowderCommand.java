package spangle.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.coating.powder.BoothDust;
import spangle.coating.powder.PartShape;
import spangle.coating.powder.PowderNeed;
import spangle.coating.powder.Reclaim;
import spangle.coating.powder.ReclaimAdvice;
import spangle.measure.LowLikelyHigh;

/** Powder for an area. */
@Command(
    name = "powder",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Powder: coverage, film, what is sprayed, what to draw; waste or reclaim.",
    footer = {
      "",
      "Examples:",
      "  spangle calc powder --area 70.4m2 --film 80um --sg 1.5 --use 0.6 --pack 20kg",
      "  spangle calc powder --area 600ft2 --film 3mil --sg 1.6 --shape bracket --hooks 300",
      "  spangle calc powder --area 70m2 --film 80um --sg 1.5 --use 0.6 --reclaim 0.9 --price 6.40"
          + " --labour 38"
    })
final class PowderCommand implements Callable<Integer> {
  /** 300 mm of 4 mm wire. */
  private static final double USUAL_HOOK_M2 = 0.00377;

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
      paramLabel = "SHARE",
      description =
          "Share of sprayed powder that stays, above 0 to 1; with --reclaim on the first pass.")
  private @Nullable Double use;

  @Option(
      names = "--shape",
      paramLabel = "FORM",
      description = "In place of --use: panel, box, bracket or wire.")
  private @Nullable String shape;

  @Option(names = "--hooks", paramLabel = "N", description = "Hooks that take powder too.")
  private @Nullable Integer hooks;

  @Option(
      names = "--hook-area",
      paramLabel = "AREA",
      description = "Surface of one hook. Default: 0.00377m2, 300 mm of 4 mm wire.")
  private @Nullable String hookArea;

  @Option(names = "--bars", paramLabel = "AREA", description = "Bare rack bars, all together.")
  private @Nullable String bars;

  @Option(names = "--colour-loss", paramLabel = "MASS", description = "Lost at each colour.")
  private @Nullable String colourLoss;

  @Option(names = "--pack", paramLabel = "MASS", description = "Size of a pack.")
  private @Nullable String pack;

  @Mixin private final ReclaimOptions reclaim = new ReclaimOptions();

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  private record Sum(
      PowderNeed need,
      LowLikelyHigh draw,
      @Nullable Integer packs,
      Optional<Reclaim> loop,
      Optional<ReclaimAdvice> advice,
      Optional<BoothDust> dust) {}

  @Override
  public Integer call() {
    double areaM2 = Ask.areaM2("--area", area);
    double hooksM2 = hooksM2() + (bars == null ? 0 : Ask.areaM2("--bars", bars));
    double filmUm = Ask.filmUm("--film", film);
    double sg = Ask.number("--sg", specificGravity, 0.8, 5);
    double lossKg = colourLoss == null ? 0 : Ask.massOrNoneKg("--colour-loss", colourLoss);
    LowLikelyHigh first = firstPass();
    Optional<Reclaim> loop = reclaim.loop(first.likely());
    PowderNeed need =
        new PowderNeed(
            areaM2, hooksM2, filmUm, sg, loop.map(Reclaim::use).orElse(first.likely()), lossKg);
    LowLikelyHigh draw =
        loop.isPresent()
            ? need.toDrawRangeKg(realUse(need.use()))
            : shape == null ? need.toDrawRangeKg() : need.toDrawRangeKg(first);
    Integer packs = pack == null ? null : need.packs(Ask.massKg("--pack", pack));
    Sum sum =
        new Sum(
            need,
            draw,
            packs,
            loop,
            reclaim.advice(areaM2 + hooksM2, need.filmGM2(), loop),
            reclaim.dust());
    if (json) {
      json(sum).print(spec.commandLine().getOut());
    } else {
      say(sum, spec.commandLine().getOut());
    }
    return ExitCode.DONE;
  }

  /** From what shops really reach with reclaim up to the steady state. */
  private static LowLikelyHigh realUse(double steady) {
    return new LowLikelyHigh(Math.min(Reclaim.REAL_USE.low(), steady), steady, steady);
  }

  private LowLikelyHigh firstPass() {
    if ((use == null) == (shape == null)) {
      throw ExitException.usage("Give either --use, like --use 0.6, or --shape");
    }
    if (use != null) {
      return LowLikelyHigh.exactly(Ask.share("--use", use));
    }
    for (PartShape each : PartShape.values()) {
      if (each.word().equals(shape)) {
        return each.firstPass();
      }
    }
    throw ExitException.usage(
        "--shape '"
            + shape
            + "' is not known: "
            + Arrays.stream(PartShape.values())
                .map(PartShape::word)
                .collect(Collectors.joining(", ")));
  }

  private static JsonOut json(Sum sum) {
    PowderNeed need = sum.need();
    JsonOut out =
        new JsonOut()
            .put("coverage_m2_kg", need.coverageM2Kg())
            .put("film_kg", need.filmKg())
            .put("sprayed_kg", need.sprayedKg())
            .put("to_draw_kg", need.toDrawKg())
            .put("packs", sum.packs())
            .put("film_g_m2", need.filmGM2())
            .put("coverage_ft2_lb", need.coverageFt2Lb())
            .put("use", need.use())
            .put("practical_m2_kg", need.coverageM2Kg() * need.use())
            .put("to_draw_range_kg", sum.draw())
            .put("hooks_kg", need.hooksM2() * need.filmGM2() / 1000);
    sum.loop().ifPresent(l -> out.put("reclaim", reclaim(l)));
    sum.advice().ifPresent(a -> out.put("advice", advice(a)));
    sum.dust().ifPresent(d -> out.put("booth", ReclaimOptions.json(d)));
    return out;
  }

  private static JsonOut reclaim(Reclaim loop) {
    return new JsonOut()
        .put("first_pass", loop.firstPass())
        .put("capture", loop.capture())
        .put("use", loop.use())
        .put("beyond_practice", loop.beyondPractice());
  }

  private static JsonOut advice(ReclaimAdvice advice) {
    return new JsonOut()
        .put("verdict", advice.verdict().words())
        .put("break_even_m2", advice.breakEvenM2())
        .put("saved_kg_m2", advice.savedKgM2())
        .put("cleaning_cost", advice.cleaningCost());
  }

  private double hooksM2() {
    Ask.goesWith(hookArea, "--hook-area", hooks != null, "--hooks");
    if (hooks == null) {
      return 0;
    }
    if (hooks < 0 || hooks > 10_000_000) {
      throw ExitException.usage("--hooks is " + hooks + ": 0 to 10 million");
    }
    return hooks * (hookArea == null ? USUAL_HOOK_M2 : Ask.hookM2("--hook-area", hookArea));
  }

  private static void say(Sum sum, PrintWriter out) {
    PowderNeed need = sum.need();
    Answer answer = new Answer(out);
    answer.line(
        "draw",
        "%.2f kg likely, %.2f to %.2f (%.1f lb)%s",
        need.toDrawKg(),
        sum.draw().low(),
        sum.draw().high(),
        Answer.lb(need.toDrawKg()),
        packs(sum.packs()));
    answer.line(
        "sprayed",
        "%.2f kg, of which %.2f kg stay as film: %.2f on the work, %.2f on hooks and bars",
        need.sprayedKg(),
        need.filmKg(),
        need.areaM2() * need.filmGM2() / 1000,
        need.hooksM2() * need.filmGM2() / 1000);
    answer.line(
        "coverage",
        "%.2f m2/kg in theory (%.1f ft2/lb), %.2f m2/kg in practice",
        need.coverageM2Kg(),
        need.coverageFt2Lb(),
        need.coverageM2Kg() * need.use());
    sum.loop().ifPresent(l -> say(answer, l));
    sum.advice().ifPresent(a -> say(answer, a));
    sum.dust().ifPresent(d -> ReclaimOptions.say(answer, d));
    answer.line(
        "working",
        "(%.2f m2 + %.3f m2 hooks) x SG %.2f x %.0f um / 1000 / use %.3f + %.2f kg for the colour",
        need.areaM2(),
        need.hooksM2(),
        need.specificGravity(),
        need.filmUm(),
        need.use(),
        need.colourLossKg());
    answer.say(
        "", "film is the mean sprayed; a planning range, not limits; stock is not counted here");
    answer.say("source", "powder makers' yield notes: g/m2 = SG x um, ft2/lb = 192.3 / (SG x mil)");
    answer.end();
  }

  private static String packs(@Nullable Integer packs) {
    return packs == null
        ? ""
        : String.format(Locale.ROOT, ", %d %s", packs, packs == 1 ? "pack" : "packs");
  }

  private static void say(Answer answer, Reclaim loop) {
    answer.line(
        "reclaim",
        "first pass %.2f, %.2f of the rest caught: %.3f of the powder stays in a steady run",
        loop.firstPass(),
        loop.capture(),
        loop.use());
    if (loop.beyondPractice()) {
      answer.line(
          "warning",
          "shops reach %.2f to %.2f: fines and the end of the colour take the rest; weigh it",
          Reclaim.REAL_USE.low(),
          Reclaim.REAL_USE.high());
    }
  }

  private static void say(Answer answer, ReclaimAdvice advice) {
    answer.line(
        "advice",
        "%s: reclaiming saves %.3f kg/m2 and its clean-out costs %.2f more",
        advice.verdict().words(),
        advice.savedKgM2(),
        advice.cleaningCost());
    if (Double.isFinite(advice.breakEvenM2())) {
      answer.line(
          "",
          "break-even at %.1f m2 of this colour (%.0f ft2); here %.1f m2, hooks counted",
          advice.breakEvenM2(),
          Answer.ft2(advice.breakEvenM2()),
          advice.areaM2());
    }
  }
}
