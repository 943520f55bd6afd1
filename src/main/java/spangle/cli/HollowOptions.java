package spangle.cli;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.fit.vent.Hollow;
import spangle.fit.vent.Hollow.HollowSection.Use;
import spangle.fit.vent.OpenFront;
import spangle.measure.Box;
import spangle.measure.Figures;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** The hollow that is asked about; exactly one form. */
final class HollowOptions {
  /** No longer side, no larger vessel or overlap goes into a kettle: a slip of the unit. */
  private static final double MOST_MM = 60_000;

  private static final double MOST_LITRES = 1e6;
  private static final double MOST_CM2 = 1e6;
  private static final Pattern SHEETS = Pattern.compile("(.+?)\\s*\\+\\s*(.+)");

  @Option(
      names = "--tube",
      paramLabel = "WxH[xL]",
      description = "A square or rectangular tube, outside, e.g. 60x60x1200mm.")
  private @Nullable String tube;

  @Option(names = "--pipe", paramLabel = "D[xL]", description = "A pipe, outside, e.g. 60x1200mm.")
  private @Nullable String pipe;

  @Option(
      names = "--box",
      paramLabel = "LxWxH",
      description = "A closed box or vessel, outside, e.g. 1200x1000x1000mm.")
  private @Nullable String box;

  @Option(
      names = "--open",
      paramLabel = "front",
      description = "The box is open at a largest face, hung with that face upright.")
  private @Nullable String open;

  @Option(
      names = "--return",
      paramLabel = "W",
      description = "Width of returns folded inward round the opening, outside, e.g. 25mm.")
  private @Nullable String returns;

  @Option(names = "--vessel", paramLabel = "VOLUME", description = "A closed vessel, e.g. 1200 l.")
  private @Nullable String vessel;

  @Option(names = "--diameter", paramLabel = "D", description = "Of a round vessel, e.g. 1m.")
  private @Nullable String diameter;

  @Option(
      names = "--plates",
      paramLabel = "WxH",
      description = "A box section with plates across, inside, e.g. 600x400mm.")
  private @Nullable String plates;

  @Option(
      names = "--overlap",
      paramLabel = "AREA",
      description = "Two sheets on one another, contact area, e.g. 480cm2.")
  private @Nullable String overlap;

  @Option(names = "--sheets", paramLabel = "T1+T2", description = "Of the overlap, e.g. 8+10mm.")
  private @Nullable String sheets;

  @Option(names = "--length", paramLabel = "L", description = "Longest side of the overlap.")
  private @Nullable String length;

  @Option(
      names = "--pockets",
      paramLabel = "N",
      description = "Corners in folded returns or behind stiffeners of an open box.")
  private @Nullable Integer pockets;

  @Option(names = "--thickness", paramLabel = "T", description = "Wall, e.g. 3mm.")
  private @Nullable String thickness;

  @Option(
      names = "--use",
      paramLabel = "plain|truss|pole|rail|hidden",
      description = "What a tube or pipe is part of.")
  private String use = "plain";

  Hollow hollow(double tiltDeg) {
    one();
    strays();
    if (tube != null || pipe != null) {
      return section();
    }
    if (box != null) {
      Box size = Quantities.box(box);
      upTo(box, MOST_MM, "mm", size.longestMm());
      double wall = wallMm();
      if (open != null) {
        return openFront(size, wall, tiltDeg);
      }
      return new Hollow.Vessel(
          inside(size.lengthMm(), wall)
              * inside(size.widthMm(), wall)
              * inside(size.heightMm(), wall)
              / 1e9,
          OptionalDouble.empty(),
          OptionalDouble.of(wall));
    }
    if (vessel != null) {
      double litres = Quantities.litres(vessel);
      positive(vessel, litres);
      upTo(vessel, MOST_LITRES, "l", litres);
      return new Hollow.Vessel(litres / 1000, optional(diameter), optional(thickness));
    }
    if (plates != null) {
      List<Double> sides = Quantities.sizesMm(plates, 2);
      positive(plates, sides.get(0), sides.get(1));
      upTo(plates, MOST_MM, "mm", sides.get(0), sides.get(1));
      return new Hollow.BoxSection(sides.get(1), sides.get(0), optional(thickness));
    }
    if (overlap != null) {
      return overlapOf(overlap);
    }
    int count = pockets == null ? 0 : pockets;
    if (count < 1) {
      throw ExitException.usage("--pockets is " + count + ": 1 or more");
    }
    return new Hollow.Returns(count, optional(thickness));
  }

  /** Length and height seen from the side, mm. */
  List<Double> seenMm() {
    if (tube != null) {
      List<Double> s = sides(tube, 2);
      return List.of(s.size() > 2 ? s.get(2) : 6 * s.get(0), s.get(1));
    }
    if (pipe != null) {
      List<Double> s = sides(pipe, 1);
      return List.of(s.size() > 1 ? s.get(1) : 6 * s.get(0), s.get(0));
    }
    if (box != null) {
      Box size = Quantities.box(box);
      return List.of(size.longestMm(), size.middleMm());
    }
    return List.of(1000.0, 500.0);
  }

  private void one() {
    int forms = 0;
    for (Object form : new Object[] {tube, pipe, box, vessel, plates, overlap, pockets}) {
      forms += form == null ? 0 : 1;
    }
    if (forms != 1) {
      throw ExitException.usage(
          "Say one hollow: --tube, --pipe, --box, --vessel, --plates, --overlap or --pockets");
    }
  }

  private void strays() {
    refuse(open != null && box == null, "--open", "--box");
    refuse(returns != null && open == null, "--return", "--open front");
    refuse(diameter != null && vessel == null, "--diameter", "--vessel");
    refuse(sheets != null && overlap == null, "--sheets", "--overlap");
    refuse(length != null && overlap == null, "--length", "--overlap");
    refuse(thickness != null && overlap != null, "--thickness", "a wall, not an overlap");
  }

  private static void refuse(boolean stray, String option, String form) {
    if (stray) {
      throw ExitException.usage(option + " goes with " + form + " only: leave it out");
    }
  }

  private Hollow section() {
    boolean round = tube == null;
    String text = round ? String.valueOf(pipe) : String.valueOf(tube);
    List<Double> sides = sides(text, round ? 1 : 2);
    double wall = wallMm();
    int across = round ? 1 : 2;
    double width = inside(sides.get(0), wall);
    double height = round ? width : inside(sides.get(1), wall);
    OptionalDouble lengthMm =
        sides.size() > across ? OptionalDouble.of(sides.get(across)) : OptionalDouble.empty();
    lengthMm.ifPresent(l -> positive(text, l));
    return new Hollow.HollowSection(width, height, round, lengthMm, OptionalDouble.of(wall), use());
  }

  private Hollow openFront(Box size, double wall, double tiltDeg) {
    if (!"front".equalsIgnoreCase(open)) {
      throw ExitException.usage("--open '" + open + "' is not known: front");
    }
    if (returns == null) {
      throw ExitException.usage(
          "--return is missing: width of the folded returns, like --return 25mm; a front without"
              + " returns holds nothing when it hangs upright");
    }
    double lip = Quantities.lengthMm(returns);
    try {
      return new OpenFront(
          size.longestMm(), size.middleMm(), size.shortestMm(), lip, wall, tiltDeg);
    } catch (IllegalArgumentException impossible) {
      throw ExitException.usage("--return " + returns + ": " + impossible.getMessage());
    }
  }

  private Use use() {
    try {
      return Use.valueOf(use.toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException unknown) {
      throw ExitException.usage(
          "--use '" + use + "' is not known: plain, truss, pole, rail or hidden");
    }
  }

  private Hollow overlapOf(String area) {
    if (sheets == null) {
      throw ExitException.usage("--sheets is missing: both thicknesses, like --sheets 8+10mm");
    }
    Matcher both = SHEETS.matcher(sheets);
    if (!both.matches()) {
      throw ExitException.usage("--sheets '" + sheets + "' is not two thicknesses: like 8+10mm");
    }
    List<Double> mm = Quantities.sizesMm(both.group(1) + "x" + both.group(2), 2);
    double cm2 = Quantities.read(QuantityKind.AREA, area) * 10_000;
    positive(area, cm2);
    upTo(area, MOST_CM2, "cm2", cm2);
    positive(sheets, mm.get(0), mm.get(1));
    return new Hollow.Overlap(cm2, mm.get(0), mm.get(1), optional(length));
  }

  private static List<Double> sides(String text, int least) {
    List<Double> sides =
        Quantities.sizesMm(text, text.split("[xX×*]", -1).length > least ? least + 1 : least);
    sides.forEach(side -> upTo(text, MOST_MM, "mm", side));
    return sides;
  }

  private double wallMm() {
    if (thickness == null) {
      throw ExitException.usage("--thickness is missing: the wall, like --thickness 3mm");
    }
    double wall = Quantities.lengthMm(thickness);
    positive(thickness, wall);
    return wall;
  }

  private static double inside(double outsideMm, double wallMm) {
    double inside = outsideMm - 2 * wallMm;
    if (inside <= 0) {
      throw ExitException.usage(
          "A side of " + outsideMm + " mm with walls of " + wallMm + " mm has no space inside");
    }
    return inside;
  }

  private static void positive(String text, double... values) {
    for (double value : values) {
      if (value <= 0) {
        throw ExitException.usage("'" + text + "' must be above zero");
      }
    }
  }

  private static void upTo(String text, double most, String unit, double... values) {
    for (double value : values) {
      if (value > most) {
        throw ExitException.usage(
            "'"
                + text
                + "' is more than "
                + Figures.upTo(most, 0)
                + " "
                + unit
                + ": look at the unit");
      }
    }
  }

  private static OptionalDouble optional(@Nullable String text) {
    return text == null ? OptionalDouble.empty() : OptionalDouble.of(Quantities.lengthMm(text));
  }
}
