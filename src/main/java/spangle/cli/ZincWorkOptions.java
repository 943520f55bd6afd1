package spangle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spangle.measure.Quantities;
import spangle.part.Edges;
import spangle.part.Measured;
import spangle.part.ShapeException;

/** What is dipped: a form, an area, or an article of several thicknesses. */
final class ZincWorkOptions {
  private static final double STEEL_KG_M3 = 7850;
  private static final double WORTH_SAYING = 0.2;

  @Mixin private final FormDetails details = new FormDetails();

  @Option(
      names = "--area",
      paramLabel = "AREA",
      description = "All surface that gets zinc: both faces, edges, bores.")
  private @Nullable String area;

  @Option(
      names = "--skin",
      paramLabel = "T:AREA",
      description =
          "Surface of one thickness of an article of several, e.g. 6mm:1.2m2; repeat it for each.")
  private List<String> skins = new ArrayList<>();

  @Option(names = "--count", paramLabel = "N", description = "Pieces.")
  private int count = 1;

  @Option(names = "--mass", paramLabel = "MASS", description = "Black steel, weighed, all pieces.")
  private @Nullable String mass;

  /**
   * The work.
   *
   * @param form the form, where one was given
   */
  ZincWork work(FormOptions form) {
    Ask.count("--count", count);
    long ways = form.given() + (area != null ? 1 : 0) + (skins.isEmpty() ? 0 : 1);
    if (ways != 1) {
      throw ExitException.usage(
          "Give the work in one way: --area, --plate or another form, or --skin for each"
              + " thickness");
    }
    if (form.flat().isPresent() || form.solid().isPresent()) {
      String option = form.flat().isPresent() ? "--flat" : "--solid";
      throw ExitException.usage(
          option + " goes with calc area: give the area it prints here with --area");
    }
    return form.given() > 0 ? byForm(form) : area != null ? byArea(area) : bySkins();
  }

  private ZincWork byForm(FormOptions known) {
    Measured one;
    try {
      one = known.shape(details).measure(STEEL_KG_M3, Edges.COUNTED);
    } catch (ShapeException impossible) {
      throw ExitException.usage(impossible.sentence());
    }
    OptionalDouble inches =
        details.thickness().map(Quantities::inches).orElseGet(OptionalDouble::empty);
    ZincWork.Wall wall = new ZincWork.Wall(one.skinThicknessMm(), inches, count * one.areaM2());
    return weighed(
        List.of(wall),
        count * one.massKg(),
        new Form(Optional.of(one), (count > 1 ? count + " x: " : "") + one.working()));
  }

  private ZincWork byArea(String text) {
    details.refuseStrays(false, false, false, false);
    double thicknessMm = details.thicknessMm();
    double areaM2 = count * Ask.areaM2("--area", text);
    ZincWork.Wall wall =
        new ZincWork.Wall(
            thicknessMm, Quantities.inches(details.thickness().orElseThrow()), areaM2);
    return weighed(
        List.of(wall),
        plateKg(wall),
        new Form(Optional.empty(), "steel = area / 2 x thickness x 7850 kg/m3"));
  }

  private ZincWork bySkins() {
    details.refuseStrays(false, false, false, false);
    if (details.thickness().isPresent()) {
      throw ExitException.usage("--thickness stands in each --skin: leave it out");
    }
    List<ZincWork.Wall> walls = new ArrayList<>();
    for (String skin : skins) {
      String[] halves = skin.split("[:=]", -1);
      if (halves.length != 2) {
        throw ExitException.usage(
            "--skin '" + skin + "' is not a thickness and its area: write it like 6mm:1.2m2");
      }
      walls.add(
          new ZincWork.Wall(
              Ask.thicknessMm("--skin", halves[0]),
              Quantities.inches(halves[0]),
              count * Ask.areaM2("--skin", halves[1])));
    }
    return weighed(
        walls,
        walls.stream().mapToDouble(ZincWorkOptions::plateKg).sum(),
        new Form(Optional.empty(), "each skin: area / 2 x thickness x 7850 kg/m3"));
  }

  private static double plateKg(ZincWork.Wall wall) {
    return wall.areaM2() / 2 * wall.thicknessMm() / 1000 * STEEL_KG_M3;
  }

  private record Form(Optional<Measured> measured, String working) {}

  private ZincWork weighed(List<ZincWork.Wall> walls, double computedKg, Form by) {
    double steelKg = mass == null ? computedKg : Ask.massKg("--mass", mass);
    double off = Math.abs(steelKg - computedKg) / computedKg;
    String note =
        off <= WORTH_SAYING
            ? ""
            : String.format(
                Locale.ROOT,
                "the mass given, %.1f kg, differs by %.0f %% from %.1f kg by area and thickness",
                steelKg,
                100 * off,
                computedKg);
    return new ZincWork(
        List.copyOf(walls),
        steelKg,
        count,
        by.measured().map(Measured::hollow),
        note,
        by.working());
  }
}
