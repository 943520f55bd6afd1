package spangle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.fit.Body;
import spangle.fit.FitRequest;
import spangle.fit.FitRules;
import spangle.fit.Silhouette.Corner;
import spangle.measure.Box;
import spangle.measure.Figures;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** What is to go in: its outside size, or its outline. */
final class FitSubject {
  private static final double LONGEST_MM = 100_000;

  /** Thinner than any foil. */
  private static final double SHORTEST_MM = 0.01;

  /** More than any crane of the trade lifts: a slip of the unit. */
  private static final double HEAVIEST_KG = 100_000;

  @Option(names = "--size", paramLabel = "LxWxHmm", description = "Outside size of the part.")
  private @Nullable String size;

  @Option(
      names = "--cylinder",
      paramLabel = "DxLmm",
      description = "A round part: diameter and length.")
  private @Nullable String cylinder;

  @Option(
      names = "--outline",
      arity = "3..*",
      paramLabel = "XxYmm",
      description =
          "Corners of its side view, e.g. 0x0mm 2000x0mm 2000x80mm 80x900mm 0x900mm; its convex"
              + " hull counts. Needs --across.")
  private List<String> outline = new ArrayList<>();

  @Option(names = "--across", paramLabel = "MM", description = "Size square to the outline.")
  private @Nullable String across;

  @Option(names = "--mass", paramLabel = "KG", description = "Mass of one lift.")
  private @Nullable String mass;

  boolean any() {
    return size != null || cylinder != null || !outline.isEmpty() || across != null || mass != null;
  }

  FitRequest request(FitRules rules) {
    return new FitRequest(body(), massKg(), 0, rules);
  }

  private OptionalDouble massKg() {
    if (mass == null) {
      return OptionalDouble.empty();
    }
    double kg = Quantities.read(QuantityKind.MASS, mass, "kg");
    if (!(kg > 0) || kg > HEAVIEST_KG) {
      throw ExitException.usage(
          "--mass '"
              + mass
              + "' is no mass of one lift: above 0 and up to 100 t; look at the unit");
    }
    return OptionalDouble.of(kg);
  }

  private Body body() {
    int forms = (size == null ? 0 : 1) + (cylinder == null ? 0 : 1) + (outline.isEmpty() ? 0 : 1);
    if (forms != 1) {
      throw ExitException.usage(
          "Say what is to go in with one of --size LxWxHmm, --cylinder DxLmm, --outline");
    }
    if (across != null && outline.isEmpty()) {
      throw ExitException.usage("--across goes with --outline only: leave it out");
    }
    if (size != null) {
      Box box = Quantities.box(size);
      solid(size, List.of(box.lengthMm(), box.widthMm(), box.heightMm()));
      return Body.of(box);
    }
    if (cylinder != null) {
      List<Double> sides = Quantities.sizesMm(cylinder, 2);
      solid(cylinder, sides);
      return Body.cylinder(sides.get(0), sides.get(1));
    }
    if (across == null) {
      throw ExitException.usage("--outline needs --across, the size square to it");
    }
    List<Corner> corners = new ArrayList<>();
    for (String corner : outline) {
      List<Double> xy = Quantities.sizesMm(corner, 2);
      upTo100m(corner, xy);
      corners.add(new Corner(xy.get(0), xy.get(1)));
    }
    double acrossMm = Quantities.lengthMm(across);
    solid(across, List.of(acrossMm));
    try {
      return Body.prism(corners, acrossMm);
    } catch (IllegalArgumentException flat) {
      throw ExitException.usage("--outline: " + flat.getMessage());
    }
  }

  static void upTo100m(String text, List<Double> sides) {
    for (double side : sides) {
      if (Math.abs(side) > LONGEST_MM) {
        throw ExitException.usage("'" + text + "' has a side of more than 100 m: look at the unit");
      }
    }
  }

  /** Refuses sides no part and no room has. */
  static void solid(String text, List<Double> sides) {
    upTo100m(text, sides);
    for (double side : sides) {
      if (side <= 0) {
        throw ExitException.usage("'" + text + "' has a side of 0 mm: every side is above zero");
      }
      if (side < SHORTEST_MM) {
        throw ExitException.usage(
            "'" + text + "' has a side of less than 0.01 mm: look at the unit");
      }
    }
  }

  /** In words, for the sheet. */
  String words() {
    String what = size != null ? size : cylinder != null ? "cylinder " + cylinder : "outline";
    return what + (mass == null ? "" : ", " + massWords(mass));
  }

  private static String massWords(String mass) {
    return Figures.upTo(Quantities.read(QuantityKind.MASS, mass, "kg"), 1) + " kg";
  }
}
