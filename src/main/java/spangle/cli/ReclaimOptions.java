package spangle.cli;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.powder.BoothDust;
import spangle.coating.powder.Reclaim;
import spangle.coating.powder.ReclaimAdvice;
import spangle.measure.QuantityKind;

/** The booth of the question: reclaim or waste, and the dust in its air. */
final class ReclaimOptions {
  @Option(
      names = "--reclaim",
      paramLabel = "CAPTURE",
      description = "Share of the overspray that is sprayed again: cyclone 0.9, cartridge 0.99.")
  private @Nullable Double capture;

  @Option(
      names = "--price",
      paramLabel = "MONEY",
      description = "A kg of powder; with --labour it gives the break-even area.")
  private @Nullable Double price;

  @Option(names = "--labour", paramLabel = "MONEY", description = "An hour of one person.")
  private @Nullable Double labour;

  @Option(
      names = "--extra-clean",
      paramLabel = "TIME",
      description = "Longer colour change with reclaim. Default: 20min.")
  private @Nullable String extraClean;

  @Option(names = "--people", paramLabel = "N", description = "Who clean. Default: 2.")
  private @Nullable Integer people;

  @Option(
      names = "--extra-loss",
      paramLabel = "MASS",
      description = "Powder lost more at a change with reclaim. Default: 0kg.")
  private @Nullable String extraLoss;

  @Option(names = "--guns", paramLabel = "N", description = "Guns that spray at once. Default: 1.")
  private @Nullable Integer guns;

  @Option(
      names = "--gun-rate",
      paramLabel = "FLOW",
      description = "Powder through one gun, e.g. 15kg/h: shows the dust in the booth's air.")
  private @Nullable String gunRate;

  @Option(
      names = "--booth-air",
      paramLabel = "FLOW",
      description = "Exhaust of the booth, e.g. 6000m3/h or 3500cfm.")
  private @Nullable String boothAir;

  Optional<Reclaim> loop(double firstPass) {
    return capture == null
        ? Optional.empty()
        : Optional.of(new Reclaim(firstPass, Ask.number("--reclaim", capture, 0, 1)));
  }

  Optional<ReclaimAdvice> advice(double areaM2, double gramsM2, Optional<Reclaim> loop) {
    boolean money = price != null && labour != null;
    Ask.goesWith(price, "--price", labour != null, "--labour");
    Ask.goesWith(labour, "--labour", price != null, "--price");
    Ask.goesWith(price, "--price", loop.isPresent(), "--reclaim");
    Ask.goesWith(extraClean, "--extra-clean", money, "--price and --labour");
    Ask.goesWith(people, "--people", money, "--price and --labour");
    Ask.goesWith(extraLoss, "--extra-loss", money, "--price and --labour");
    if (price == null || labour == null || loop.isEmpty()) {
      return Optional.empty();
    }
    ReclaimAdvice.Costs costs =
        new ReclaimAdvice.Costs(
            Ask.number("--price", price, 0.01, 10_000),
            Ask.number("--labour", labour, 0, 10_000),
            extraClean == null
                ? ReclaimAdvice.USUAL_EXTRA_MIN
                : Ask.read(QuantityKind.DURATION, "--extra-clean", extraClean, 0, 1440),
            people == null ? ReclaimAdvice.USUAL_PEOPLE : people,
            extraLoss == null ? 0 : Ask.massOrNoneKg("--extra-loss", extraLoss));
    return Optional.of(ReclaimAdvice.of(areaM2, gramsM2, loop.get(), costs));
  }

  Optional<BoothDust> dust() {
    Ask.goesWith(gunRate, "--gun-rate", boothAir != null, "--booth-air");
    Ask.goesWith(boothAir, "--booth-air", gunRate != null, "--gun-rate");
    Ask.goesWith(guns, "--guns", gunRate != null, "--gun-rate");
    if (gunRate == null || boothAir == null) {
      return Optional.empty();
    }
    int firing = guns == null ? 1 : Ask.count("--guns", guns);
    return Optional.of(
        new BoothDust(
            firing * Ask.read(QuantityKind.MASS_FLOW, "--gun-rate", gunRate, 0.1, 200),
            Ask.read(QuantityKind.AIR_FLOW, "--booth-air", boothAir, 100, 200_000)));
  }

  static JsonOut json(BoothDust dust) {
    return new JsonOut()
        .put("g_m3", dust.gramsM3())
        .put("usual_limit_g_m3", BoothDust.LIMIT_G_M3)
        .put("within", dust.withinUsualLimit())
        .put("air_needed_m3_h", dust.airNeededM3H())
        .put("authority", Answer.AUTHORITY);
  }

  static void say(Answer answer, BoothDust dust) {
    answer.line(
        "SAFETY",
        "%.2f g/m3 of powder in the booth's air, usual limit %.0f and half the powder's own"
            + " limit%s",
        dust.gramsM3(),
        BoothDust.LIMIT_G_M3,
        dust.withinUsualLimit()
            ? ""
            : String.format(Locale.ROOT, ": TOO MUCH, it takes %.0f m3/h", dust.airNeededM3H()));
    answer.say("", "every part and rack earthed, at most 1 megohm; clean hooks");
    answer.say("", Answer.AUTHORITY);
  }
}
