package spangle.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.liquid.MixRatio;
import spangle.measure.MeasureException;

/** The mix ratio, and whether it is one of litres or of kilograms. */
final class MixOptions {
  @Option(
      names = "--mix",
      paramLabel = "A:B",
      description = "Mix ratio, base first. Default: one pack.")
  private @Nullable String mix;

  @Option(
      names = "--mix-by",
      paramLabel = "WHAT",
      description = "volume (default) or mass; by mass --densities is needed.")
  private @Nullable String by;

  @Option(
      names = "--densities",
      paramLabel = "A:B",
      description = "Density of each part, kg/l, base first: shows the kilograms too.")
  private @Nullable String densities;

  boolean mixed() {
    return mix != null;
  }

  MixRatio ratio() {
    Ask.goesWith(by, "--mix-by", mix != null, "--mix");
    if (mix == null && densities == null) {
      return MixRatio.ONE_PACK;
    }
    boolean byMass = "mass".equals(by);
    if (by != null && !byMass && !by.equals("volume")) {
      throw ExitException.usage("--mix-by '" + by + "' is not known: volume or mass");
    }
    if (byMass && densities == null) {
      throw ExitException.usage(
          "--mix-by mass needs --densities in kg/l, base first, like --densities 1.4:1.0");
    }
    return new MixRatio(
        parts("--mix", mix == null ? "1" : mix),
        byMass ? MixRatio.Basis.MASS : MixRatio.Basis.VOLUME,
        densities == null ? List.of() : parts("--densities", densities));
  }

  private static List<Double> parts(String option, String text) {
    try {
      return MixRatio.readParts(text);
    } catch (MeasureException unreadable) {
      throw ExitException.usage(option + " '" + text + "' is no ratio: write it like 4:1");
    }
  }
}
