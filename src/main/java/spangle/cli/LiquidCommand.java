package spangle.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
import spangle.coating.liquid.CoatSchedule;
import spangle.coating.liquid.MixRatio;
import spangle.coating.liquid.Mixes;
import spangle.coating.liquid.PaintLosses;
import spangle.coating.liquid.PaintNeed;
import spangle.coating.liquid.SolventAir;
import spangle.measure.LowLikelyHigh;
import spangle.measure.QuantityKind;

/** Liquid paint for an area. */
@Command(
    name = "liquid",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Liquid paint: wet film, spreading rate, litres, components, mixes, recoat.",
    footer = {
      "",
      "Examples:",
      "  spangle calc liquid --area 100m2 --film 80um --solids 60 --thinner 10 --loss 0.4 --mix"
          + " 4:1",
      "  spangle calc liquid --area 100m2 --film 80um --solids 60 --loss 0.4 --mix 4:1 --pot-life"
          + " 2h --shop 28C --rate 9l/h --coats 2 --recoat 8h-7d"
    })
final class LiquidCommand implements Callable<Integer> {
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
      description = "Dry film of one coat.")
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
      description = "Share of all litres mixed that is lost, 0 to under 1; several multiply.")
  private List<Double> losses = new ArrayList<>();

  @Option(
      names = "--method",
      paramLabel = "NAME",
      description = "In place of --loss: brush, airless or air-spray.")
  private @Nullable String method;

  @Option(
      names = "--profile",
      paramLabel = "DEPTH",
      description = "Blast profile; it swallows paint of the first coat.")
  private @Nullable String profile;

  @Option(names = "--coats", paramLabel = "N", description = "Coats of this film. Default: 1.")
  private int coats = 1;

  @Mixin private final MixOptions mix = new MixOptions();

  @Mixin private final PotOptions pot = new PotOptions();

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  private record Sum(
      PaintNeed coat,
      double deadUm,
      double theoretical,
      double litres,
      LowLikelyHigh range,
      List<Double> componentsL,
      List<Double> componentsKg,
      Optional<PotOptions.Pot> pot,
      Optional<CoatSchedule> schedule,
      Optional<SolventAir> air) {}

  @Override
  public Integer call() {
    Sum sum = sum();
    if (json) {
      json(sum).print(spec.commandLine().getOut());
    } else {
      say(sum, spec.commandLine().getOut());
    }
    return ExitCode.DONE;
  }

  private Sum sum() {
    double areaM2 = Ask.areaM2("--area", area);
    double filmUm = Ask.filmUm("--film", film);
    Ask.number("--coats", coats, 1, 20);
    Ask.number("--solids", solids, 1, 100);
    Ask.number("--thinner", thinner, 0, 200);
    LowLikelyHigh loss = loss();
    double dead =
        profile == null
            ? 0
            : PaintLosses.deadFilmUm(Ask.read(QuantityKind.FILM, "--profile", profile, 0, 300));
    PaintNeed coat = new PaintNeed(areaM2, filmUm, solids, thinner, loss.likely());
    PaintNeed first = new PaintNeed(areaM2, filmUm + dead, solids, thinner, loss.likely());
    double theoretical = first.litresTheoretical() + (coats - 1) * coat.litresTheoretical();
    double litres = theoretical / (1 - loss.likely());
    MixRatio ratio = mix.ratio();
    List<Double> one = coat.componentsL(ratio);
    double scale = litres / coat.litres();
    List<Double> components = one.stream().map(l -> l * scale).toList();
    return new Sum(
        coat,
        dead,
        theoretical,
        litres,
        method == null ? LITRES_SPREAD.times(litres) : loss.map(share -> theoretical / (1 - share)),
        components,
        kilograms(ratio, components),
        pot.pot(litres / coats, mix.mixed()),
        pot.schedule(coats),
        pot.air(coat.thinnedSolidsPct()));
  }

  /** Spread of mixed paint about the likely figure (common practice). */
  private static final LowLikelyHigh LITRES_SPREAD = new LowLikelyHigh(0.85, 1, 1.25);

  /** Kilograms of each part where the densities are known, thinner left out. */
  private static List<Double> kilograms(MixRatio ratio, List<Double> litres) {
    List<Double> kg = new ArrayList<>();
    for (int i = 0; i < ratio.densitiesKgL().size(); i++) {
      kg.add(litres.get(i) * ratio.densitiesKgL().get(i));
    }
    return kg;
  }

  private LowLikelyHigh loss() {
    if (method != null && !losses.isEmpty()) {
      throw ExitException.usage("--loss and --method contradict each other: give one");
    }
    if (method == null) {
      losses.forEach(share -> Ask.number("--loss", share, 0, 0.99));
      return LowLikelyHigh.exactly(PaintLosses.together(losses));
    }
    for (PaintLosses.Method each : PaintLosses.Method.values()) {
      if (each.word().equals(method)) {
        return each.loss();
      }
    }
    throw ExitException.usage(
        "--method '"
            + method
            + "' is not known: "
            + Arrays.stream(PaintLosses.Method.values())
                .map(PaintLosses.Method::word)
                .collect(Collectors.joining(", ")));
  }

  private static JsonOut json(Sum sum) {
    JsonOut out =
        new JsonOut()
            .put("wet_film_um", sum.coat().wetFilmUm())
            .put("spreading_m2_l", sum.coat().spreadingM2L())
            .put("litres_theoretical", sum.theoretical())
            .put("litres", sum.litres())
            .put("components_l", sum.componentsL())
            .put("spreading_ft2_gal", sum.coat().spreadingFt2Gal())
            .put("practical_m2_l", sum.coat().spreadingM2L() * (1 - sum.coat().loss()))
            .put("solids_thinned_pct", sum.coat().thinnedSolidsPct())
            .put("litres_range", sum.range());
    if (!sum.componentsKg().isEmpty()) {
      out.put("components_kg", sum.componentsKg());
    }
    sum.pot().ifPresent(p -> out.put("pot_life_min", p.minutes()));
    sum.pot().flatMap(PotOptions.Pot::mixes).ifPresent(m -> out.put("mixes", json(m)));
    sum.schedule()
        .ifPresent(s -> out.put("recoat_min", s.recoatMin()).put("last_coat_min", s.lastCoatMin()));
    sum.air().ifPresent(a -> out.put("booth", json(a)));
    return out;
  }

  private static JsonOut json(Mixes mixes) {
    return new JsonOut()
        .put("number_per_coat", mixes.number())
        .put("litres_each", mixes.litresEach())
        .put("litres_at_most", mixes.mostLitres())
        .put("minutes_each", mixes.minutesEach());
  }

  private static JsonOut json(SolventAir air) {
    return new JsonOut()
        .put("solvent_g_m3", air.gramsM3())
        .put("pct_of_lel", air.pctOfLel())
        .put("within", air.withinUsualLimit())
        .put("authority", Answer.AUTHORITY);
  }

  private static String list(List<Double> amounts) {
    return amounts.stream()
        .map(each -> String.format(Locale.ROOT, "%.2f", each))
        .collect(Collectors.joining(" + "));
  }

  private void say(Sum sum, PrintWriter out) {
    PaintNeed coat = sum.coat();
    Answer answer = new Answer(out);
    answer.line(
        "mix",
        "%.2f l ready to spray%s: %s l; %.2f to %.2f l",
        sum.litres(),
        coats > 1 ? " in " + coats + " coats" : "",
        list(sum.componentsL()),
        sum.range().low(),
        sum.range().high());
    if (!sum.componentsKg().isEmpty()) {
      answer.line("", "by mass %s kg, thinner apart", list(sum.componentsKg()));
    }
    answer.line(
        "wet film", "%.0f um (%.1f mil) each coat", coat.wetFilmUm(), Answer.mil(coat.wetFilmUm()));
    answer.line(
        "spreading",
        "%.2f m2/l without loss (%.0f ft2/gal), %.2f m2/l with %.0f %% lost",
        coat.spreadingM2L(),
        coat.spreadingFt2Gal(),
        coat.spreadingM2L() * (1 - coat.loss()),
        100 * coat.loss());
    if (sum.deadUm() > 0) {
      answer.line(
          "profile", "the blasted surface swallows %.0f um of the first coat", sum.deadUm());
    }
    sum.pot().ifPresent(p -> say(answer, p));
    sum.schedule().ifPresent(s -> say(answer, s));
    sum.air().ifPresent(a -> say(answer, a));
    answer.line(
        "working",
        "%.4g m2 x um / (10 x %.2f %% solids) / (1 - loss); ratio by %s, thinner last",
        coat.areaM2(),
        coat.thinnedSolidsPct(),
        mix.ratio().basis().name().toLowerCase(Locale.ROOT));
    answer.say(
        "source",
        "published coating tech notes: 10 x solids / um m2/l, 1604 x solids / mil ft2/gal");
    answer.say("CAUTION", "solvent: extraction, no flame; local code and the data sheet decide");
    answer.end();
  }

  private static void say(Answer answer, PotOptions.Pot pot) {
    answer.line(
        "pot life", "%.0f min at %.0f C; half for every 10 C more", pot.minutes(), pot.celsius());
    pot.mixes()
        .ifPresent(
            m ->
                answer.line(
                    "",
                    "%d mixes of %.2f l for each coat, each sprayed in %.0f min; never over %.2f l",
                    m.number(),
                    m.litresEach(),
                    m.minutesEach(),
                    m.mostLitres()));
  }

  private static void say(Answer answer, CoatSchedule schedule) {
    answer.line(
        "recoat",
        "%.1f to %.1f h after the coat before; later only on a roughened surface",
        schedule.recoatMin().min() / 60,
        schedule.recoatMin().max() / 60);
    if (schedule.coats() > 1) {
      answer.line(
          "",
          "last of %d coats at the soonest after %.1f h",
          schedule.coats(),
          schedule.lastCoatMin().min() / 60);
    }
  }

  private static void say(Answer answer, SolventAir air) {
    answer.line(
        "SAFETY",
        "%.2f g/m3 of solvent in the exhaust, %.0f %% of the limit of an unknown solvent; usual"
            + " most is 25 %%%s",
        air.gramsM3(),
        air.pctOfLel(),
        air.withinUsualLimit() ? "" : ": TOO MUCH");
    answer.line(
        "",
        "drying oven: at least %.0f m3/min of fresh air per l of solvent in a batch, %d volumes of"
            + " purge",
        SolventAir.BATCH_OVEN_M3_MIN_PER_L,
        SolventAir.PURGE_VOLUMES);
    answer.say("", Answer.AUTHORITY);
  }
}
