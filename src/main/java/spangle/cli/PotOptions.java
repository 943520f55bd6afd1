package spangle.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.liquid.CoatSchedule;
import spangle.coating.liquid.Mixes;
import spangle.coating.liquid.PotLife;
import spangle.coating.liquid.SolventAir;
import spangle.measure.Interval;
import spangle.measure.QuantityKind;

/** Times of a paint: pot life, recoat; and the air of its booth. */
final class PotOptions {
  @Option(names = "--pot-life", paramLabel = "TIME", description = "From the data sheet, e.g. 2h.")
  private @Nullable String potLife;

  @Option(
      names = "--pot-life-at",
      paramLabel = "TEMP",
      description = "Temperature it is given for. Default: 20C.")
  private @Nullable String potLifeAt;

  @Option(
      names = "--shop",
      paramLabel = "TEMP",
      description = "Temperature of the paint in the shop. Default: 20C.")
  private @Nullable String shop;

  @Option(
      names = "--rate",
      paramLabel = "FLOW",
      description = "Paint through the gun, e.g. 9l/h: gives number and size of the mixes.")
  private @Nullable String rate;

  @Option(
      names = "--induction",
      paramLabel = "TIME",
      description = "Rest after mixing before the first shot.")
  private @Nullable String induction;

  @Option(
      names = "--recoat",
      paramLabel = "LEAST-MOST",
      description = "Time from coat to coat, e.g. 8h-7d.")
  private @Nullable String recoat;

  @Option(
      names = "--exhaust",
      paramLabel = "FLOW",
      description = "Exhaust of the booth, e.g. 6000m3/h; with --rate shows the solvent in it.")
  private @Nullable String exhaust;

  /** Pot life where it is sprayed, and the mixes where the gun is known. */
  record Pot(double minutes, double celsius, Optional<Mixes> mixes) {}

  Optional<Pot> pot(double litres, boolean mixed) {
    Ask.goesWith(potLife, "--pot-life", mixed, "--mix: a one-pack paint has none");
    Ask.goesWith(potLifeAt, "--pot-life-at", potLife != null, "--pot-life");
    Ask.goesWith(shop, "--shop", potLife != null, "--pot-life");
    Ask.goesWith(induction, "--induction", potLife != null, "--pot-life");
    if (potLife == null) {
      return Optional.empty();
    }
    double atC = potLifeAt == null ? PotLife.USUAL_C : celsius("--pot-life-at", potLifeAt);
    double shopC = shop == null ? PotLife.USUAL_C : celsius("--shop", shop);
    double minutes =
        new PotLife(Ask.read(QuantityKind.DURATION, "--pot-life", potLife, 1, 2880), atC)
            .minutesAt(shopC);
    double rest = induction == null ? 0 : Ask.minutes("--induction", induction);
    return Optional.of(
        new Pot(
            minutes,
            shopC,
            rate == null
                ? Optional.empty()
                : Optional.of(Mixes.of(litres, minutes, rest, litresPerHour(rate)))));
  }

  private static double celsius(String option, String text) {
    return Ask.read(QuantityKind.TEMPERATURE, option, text, -10, 60);
  }

  private static double litresPerHour(String text) {
    return Ask.read(QuantityKind.VOLUME_FLOW, "--rate", text, 0.05, 1000);
  }

  Optional<CoatSchedule> schedule(int coats) {
    if (recoat == null) {
      return Optional.empty();
    }
    String[] ends = recoat.split("-", -1);
    if (ends.length != 2) {
      throw ExitException.usage(
          "--recoat '" + recoat + "' is no window: write least and most like 8h-7d");
    }
    double least = Ask.minutes("--recoat", ends[0]);
    double most = Ask.minutes("--recoat", ends[1]);
    if (most < least) {
      throw ExitException.usage("--recoat '" + recoat + "': the least time comes first");
    }
    return Optional.of(new CoatSchedule(coats, new Interval(least, most)));
  }

  Optional<SolventAir> air(double thinnedSolidsPct) {
    Ask.goesWith(exhaust, "--exhaust", rate != null, "--rate");
    Ask.goesWith(rate, "--rate", exhaust != null || potLife != null, "--pot-life or --exhaust");
    return exhaust == null || rate == null
        ? Optional.empty()
        : Optional.of(
            new SolventAir(
                litresPerHour(rate),
                thinnedSolidsPct,
                Ask.read(QuantityKind.AIR_FLOW, "--exhaust", exhaust, 10, 500_000)));
  }
}
