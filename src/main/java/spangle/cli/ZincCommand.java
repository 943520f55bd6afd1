package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.coating.zinc.AstmA123;
import spangle.coating.zinc.Iso1461;
import spangle.coating.zinc.SteelChemistry;
import spangle.coating.zinc.SteelReactivity;
import spangle.coating.zinc.ZincBudget;
import spangle.coating.zinc.ZincRow;
import spangle.coating.zinc.ZincSkin;
import spangle.measure.Quantities;

/** Zinc on the work and to buy. */
@Command(
    name = "zinc",
    mixinStandardHelpOptions = true,
    description = "Zinc: coating by the standard, on the work, to buy.",
    footer = {
      "",
      "Example:",
      "  spangle calc zinc --thickness 3mm --plate 1000x500mm --count 10 --si 0.02 --p 0.01"
    })
final class ZincCommand implements Callable<Integer> {
  private static final double STEEL_KG_M3 = 7850;

  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Option(
      names = "--thickness",
      required = true,
      paramLabel = "T",
      description = "Steel thickness.")
  @SuppressWarnings("NullAway.Init")
  private String thickness;

  @Option(
      names = "--area",
      paramLabel = "AREA",
      description = "All surface that gets zinc: both faces, edges, bores.")
  private @Nullable String area;

  @Option(names = "--plate", paramLabel = "LxW", description = "A plate; edges are counted.")
  private @Nullable String plate;

  @Option(names = "--count", paramLabel = "N", description = "Pieces.")
  private int count = 1;

  @Option(names = "--mass", paramLabel = "MASS", description = "Black steel, weighed.")
  private @Nullable String mass;

  @Option(names = "--spun", description = "Centrifuged.")
  private boolean spun;

  @Option(names = "--threaded", description = "Threaded and centrifuged.")
  private boolean threaded;

  @Option(names = "--diameter", paramLabel = "D", description = "Thread diameter.")
  private @Nullable String diameter;

  @Option(names = "--casting", description = "An iron casting.")
  private boolean casting;

  @Option(names = "--si", paramLabel = "PCT", description = "Silicon, per cent.")
  private @Nullable Double si;

  @Option(names = "--p", paramLabel = "PCT", description = "Phosphorus, per cent.")
  private @Nullable Double p;

  @Option(names = "--al", paramLabel = "PCT", description = "Aluminium, per cent.")
  private @Nullable Double al;

  @Option(names = "--standard", paramLabel = "NAME", description = "iso1461 or astm-a123.")
  private String standard = "iso1461";

  @Option(names = "--category", paramLabel = "NAME", description = "plate, shape, pipe or bar.")
  private @Nullable String category;

  @Option(names = "--yield", paramLabel = "SHARE", description = "Zinc on work / zinc bought.")
  private double yield = ZincBudget.USUAL_YIELD;

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  private record Work(double areaM2, double steelKg, String note) {}

  @Override
  public Integer call() {
    double thicknessMm = Quantities.lengthMm(thickness);
    Work work = work(thicknessMm);
    ZincRow row = row(thicknessMm);
    SteelReactivity steel =
        SteelReactivity.of(new SteelChemistry(optional(si), optional(p), optional(al)));
    ZincBudget budget =
        ZincBudget.of(
            List.of(new ZincSkin(work.areaM2(), row)),
            work.steelKg(),
            steel.steelClass(),
            false,
            yield);
    print(work, row, steel, budget);
    return ExitCode.DONE;
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private Work work(double thicknessMm) {
    if ((area == null) == (plate == null)) {
      throw ExitException.usage("Give either --area or --plate");
    }
    if (count < 1) {
      throw ExitException.usage("--count is " + count + ": 1 or more");
    }
    double areaM2;
    double steelKg;
    if (plate != null) {
      List<Double> sides = Quantities.sizesMm(plate, 2);
      double length = sides.get(0);
      double width = sides.get(1);
      areaM2 = count * (2 * length * width + 2 * (length + width) * thicknessMm) / 1e6;
      steelKg = count * length * width * thicknessMm / 1e9 * STEEL_KG_M3;
    } else {
      areaM2 = count * Quantities.areaM2(String.valueOf(area));
      steelKg = areaM2 / 2 * thicknessMm / 1000 * STEEL_KG_M3;
    }
    if (mass == null) {
      return new Work(areaM2, steelKg, "");
    }
    double given = Quantities.massKg(mass);
    double off = Math.abs(given - steelKg) / steelKg;
    String note =
        off > 0.2
            ? String.format(
                Locale.ROOT,
                "the mass given, %.1f kg, differs by %.0f %% from %.1f kg by area and thickness",
                given,
                100 * off,
                steelKg)
            : "";
    return new Work(areaM2, given, note);
  }

  private ZincRow row(double thicknessMm) {
    boolean special = spun || threaded || casting;
    if (standard.equals("astm-a123")) {
      if (special) {
        throw ExitException.usage(
            "--spun, --threaded and --casting go with iso1461; ASTM A153 judges spun hardware");
      }
      return AstmA123.row(category(), thicknessMm);
    }
    if (!standard.equals("iso1461")) {
      throw ExitException.usage("--standard '" + standard + "' is not known: iso1461 or astm-a123");
    }
    if (category != null) {
      throw ExitException.usage("--category goes with --standard astm-a123");
    }
    if (threaded) {
      if (diameter == null) {
        throw ExitException.usage("--threaded needs --diameter");
      }
      return Iso1461.threaded(Quantities.lengthMm(diameter));
    }
    if (spun) {
      return Iso1461.spun(thicknessMm);
    }
    return casting ? Iso1461.casting(thicknessMm) : Iso1461.steel(thicknessMm);
  }

  private AstmA123.Category category() {
    String wanted = category == null ? "plate" : category;
    for (AstmA123.Category each : AstmA123.Category.values()) {
      if (each.word().equals(wanted)) {
        return each;
      }
    }
    throw ExitException.usage(
        "--category '" + wanted + "' is not known: plate, shape, pipe or bar");
  }

  private void print(Work work, ZincRow row, SteelReactivity steel, ZincBudget budget) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      new JsonOut()
          .put("coating_um", new JsonOut().put("local", row.localUm()).put("mean", row.meanUm()))
          .put("coating_g_m2", row.coatingGM2())
          .put("area_m2", work.areaM2())
          .put("steel_kg", work.steelKg())
          .put(
              "zinc_on_parts_kg",
              new JsonOut().put("minimum", budget.minimumKg()).put("likely", budget.likelyKg()))
          .put(
              "pickup_pct",
              new JsonOut()
                  .put("minimum", budget.minimumPickupPct())
                  .put("likely", budget.likelyPickupPct()))
          .put("zinc_to_buy_kg", budget.toBuyKg())
          .put("steel_class", steel.steelClass().word())
          .put("rule", row.rule())
          .put("from_memory", row.fromMemory())
          .put("warnings", steel.warnings())
          .put("questions", steel.questions())
          .put("note", work.note())
          .print(out);
      return;
    }
    out.printf(
        Locale.ROOT,
        "coating   %.0f um mean, %.0f um local; %.0f g/m2 of coated surface%n",
        row.meanUm(),
        row.localUm(),
        row.coatingGM2());
    row.tableMassGM2()
        .ifPresent(g -> out.printf(Locale.ROOT, "          the table prints %.0f g/m2%n", g));
    out.printf(
        Locale.ROOT,
        "on work   %.3f kg at least, %.3f kg likely: %.2f %% to %.2f %% of %.1f kg steel%n",
        budget.minimumKg(),
        budget.likelyKg(),
        budget.minimumPickupPct(),
        budget.likelyPickupPct(),
        work.steelKg());
    out.printf(
        Locale.ROOT,
        "to buy    %.2f kg likely, %.2f to %.2f (yield %.2f; ash and dross are inside it)%n",
        budget.toBuyKg().likely(),
        budget.toBuyKg().low(),
        budget.toBuyKg().high(),
        yield);
    out.printf(
        Locale.ROOT,
        "steel     class %s: %s%n",
        steel.steelClass().word(),
        steel.steelClass().look());
    out.println("rule      " + row.rule() + (row.fromMemory() ? " (from memory)" : ""));
    steel.warnings().forEach(w -> out.println("warning   " + w));
    steel.questions().forEach(q -> out.println("question  " + q));
    if (!work.note().isEmpty()) {
      out.println("note      " + work.note());
    }
    out.flush();
  }
}
