package spangle.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.zinc.DipHeat;
import spangle.coating.zinc.Pickling;
import spangle.coating.zinc.ZincBath;
import spangle.coating.zinc.ZincBudget;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** The bath and the acid of the question, where they are asked about. */
final class KettleOptions {
  @Option(
      names = "--kettle",
      paramLabel = "LxWxD",
      description = "Zinc in the kettle: length, width, depth of zinc. Shows level, heat, drop.")
  private @Nullable String kettle;

  @Option(names = "--bath", paramLabel = "TEMP", description = "Bath. Default: 450C.")
  private String bath = "450C";

  @Option(
      names = "--work-at",
      paramLabel = "TEMP",
      description = "Work when it meets the zinc. Default: 20C; from a dryer 80C or so.")
  private String workAt = "20C";

  @Option(names = "--jig", paramLabel = "MASS", description = "Beams and chains heated with it.")
  private @Nullable String jig;

  @Option(names = "--dips", paramLabel = "N", description = "Dips the work is spread over.")
  private int dips = 1;

  @Option(names = "--ingot", paramLabel = "MASS", description = "One ingot. Default: 25kg.")
  private String ingot = "25kg";

  @Option(
      names = "--deep",
      paramLabel = "DEPTH",
      description = "Depth of the deepest part: how much zinc may leave until it is not covered.")
  private @Nullable String deep;

  @Option(
      names = "--dross",
      paramLabel = "DEPTH",
      description = "Dross and clearance under it. Default: 300mm.")
  private String dross = "300mm";

  @Option(
      names = "--cover",
      paramLabel = "DEPTH",
      description = "Zinc wanted over it. Default: 50mm.")
  private String cover = "50mm";

  @Option(
      names = "--rust",
      paramLabel = "STATE",
      description = "bright, light, rusty or heavy: minutes in the acid.")
  private @Nullable String rust;

  @Option(
      names = "--acid-iron",
      paramLabel = "G_L",
      description = "Iron in the acid, g/l; 0 is fresh, 120 is spent. Default: 60.")
  private @Nullable Double acidIron;

  /**
   * What the dips do to the bath.
   *
   * @param bath the bath
   * @param dipHeat heat of one dip
   * @param sharePct steel of one dip over zinc in the bath
   * @param levelMm fall of the level by what stays on the work
   * @param levelWithLossesMm the same with ash, dross and splash
   * @param ingots to bring the level back, losses included
   * @param coveredKg zinc that may leave until the deepest part is not covered
   */
  record Bath(
      ZincBath bath,
      int dips,
      DipHeat dipHeat,
      double sharePct,
      double levelMm,
      double levelWithLossesMm,
      int ingots,
      double ingotKg,
      double kgPerHour,
      OptionalDouble coveredKg) {}

  Optional<Bath> bath(ZincBudget budget) {
    Ask.goesWith(deep, "--deep", kettle != null, "--kettle");
    Ask.goesWith(jig, "--jig", kettle != null, "--kettle");
    Ask.count("--dips", dips);
    double bathC = Ask.read(QuantityKind.TEMPERATURE, "--bath", bath, 425, 620);
    double workC = Ask.read(QuantityKind.TEMPERATURE, "--work-at", workAt, -30, 300);
    double ingotKg = Ask.read(QuantityKind.MASS, "--ingot", ingot, 1, 3000);
    if (kettle == null) {
      return Optional.empty();
    }
    List<Double> size = Quantities.sizesMm(kettle, 3);
    size.forEach(side -> Ask.number("--kettle side in mm", side, 100, 30_000));
    ZincBath zinc = new ZincBath(size.get(0), size.get(1), size.get(2), bathC);
    double jigKg = jig == null ? 0 : Ask.massOrNoneKg("--jig", jig);
    double steelKg = budget.steelKg() / dips + jigKg;
    DipHeat heat = DipHeat.of(steelKg, budget.likelyKg() / dips, workC, 20, bathC);
    double drop = zinc.levelDropMm(budget.toBuyKg().likely());
    return Optional.of(
        new Bath(
            zinc,
            dips,
            heat,
            100 * steelKg / zinc.massKg(),
            zinc.levelDropMm(budget.likelyKg()),
            drop,
            zinc.ingots(drop, ingotKg),
            ingotKg,
            DipHeat.kgPerHour(size.get(0), size.get(2)),
            covered(zinc)));
  }

  private OptionalDouble covered(ZincBath zinc) {
    if (deep == null) {
      return OptionalDouble.empty();
    }
    double least =
        ZincBath.leastDepthMm(
            Ask.lengthMm("--deep", deep),
            Ask.lengthMm("--cover", cover),
            Ask.lengthMm("--dross", dross));
    return OptionalDouble.of(zinc.kgUntilDepth(least));
  }

  /** Minutes in the acid, where the rust is told. */
  OptionalDouble picklingMin() {
    Ask.goesWith(acidIron, "--acid-iron", rust != null, "--rust");
    if (rust == null) {
      return OptionalDouble.empty();
    }
    for (Pickling.Rust each : Pickling.Rust.values()) {
      if (each.name().toLowerCase(Locale.ROOT).equals(rust)) {
        return OptionalDouble.of(
            Pickling.minutes(each, Ask.number("--acid-iron", ironGL(), 0, 250)));
      }
    }
    throw ExitException.usage("--rust '" + rust + "' is not known: bright, light, rusty or heavy");
  }

  double ironGL() {
    return acidIron == null ? Pickling.SPENT_IRON_G_L / 2 : acidIron;
  }
}
