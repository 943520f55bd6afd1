package spangle.fit.vent;

import java.util.List;
import java.util.OptionalDouble;
import spangle.fit.vent.Hollow.BoxSection;
import spangle.fit.vent.Hollow.Overlap;
import spangle.fit.vent.Hollow.Returns;

/** Rules for box sections with plates across, overlapping plates, pockets, and the least hole. */
final class PlateRules {
  private static final double INCH_MM = 25.4;
  private static final double SQUARE_INCH_CM2 = 6.4516;

  /** H + W in inches and the centre hole in inches (ASTM A385, square box sections). */
  private static final double[][] CENTRE_HOLE_IN = {
    {12, 3}, {16, 4}, {20, 4}, {24, 5}, {28, 6}, {32, 6}, {36, 6}, {48, 8}
  };

  static final List<VentRule> ALL =
      List.of(
          hollow -> hollow instanceof BoxSection box ? openShare(box) : List.of(),
          hollow -> hollow instanceof BoxSection box ? centreHole(box) : List.of(),
          hollow -> hollow instanceof Overlap overlap ? gateHole(overlap) : List.of(),
          hollow -> hollow instanceof Overlap overlap ? holePerMetre(overlap) : List.of(),
          hollow -> hollow instanceof Overlap overlap ? steppedByArea(overlap) : List.of(),
          hollow ->
              hollow instanceof Returns returns
                  ? cornerHoles("one at each of " + returns.pockets())
                  : List.of(),
          hollow ->
              hollow instanceof OpenFront
                  ? cornerHoles("one at each return corner that is highest or lowest")
                  : List.of(),
          hollow -> hollow instanceof OpenFront ? preferred() : List.of(),
          PlateRules::leastHole);

  private PlateRules() {}

  private static List<Need> openShare(BoxSection box) {
    double sum = box.heightMm() + box.widthMm();
    double share =
        sum >= 24 * INCH_MM ? 0.25 : sum >= 16 * INCH_MM ? 0.30 : sum >= 8 * INCH_MM ? 0.40 : 1;
    return VentRule.both(
        share == 1 ? "leave the end fully open" : "open share of H x W by H + W",
        "ASTM A385",
        1,
        Drills.diameterMm(share * box.heightMm() * box.widthMm()),
        Text.number(100 * share)
            + " % of "
            + Text.mm2(box.heightMm() * box.widthMm())
            + " at H + W "
            + Text.mm(sum));
  }

  private static List<Need> centreHole(BoxSection box) {
    double sumIn = (box.heightMm() + box.widthMm()) / INCH_MM;
    for (double[] row : CENTRE_HOLE_IN) {
      if (sumIn <= row[0] + 1e-9 && sumIn >= 8) {
        return VentRule.both(
            "centre hole by H + W, next row up",
            "ASTM A385",
            1,
            row[1] * INCH_MM,
            "H + W up to " + Text.mm(row[0] * INCH_MM));
      }
    }
    return List.of();
  }

  private static List<Need> gateHole(Overlap overlap) {
    if (overlap.areaCm2() <= 100) {
      return List.of();
    }
    return overlapVent(
        "overlap over 100 cm2: 10 mm or both thicknesses",
        "strictest published limit; trade design guides",
        1,
        Math.max(10, overlap.firstMm() + overlap.secondMm()),
        "the larger of 10 mm and "
            + Text.number(overlap.firstMm())
            + " + "
            + Text.number(overlap.secondMm())
            + " mm");
  }

  private static List<Need> holePerMetre(Overlap overlap) {
    if (overlap.areaCm2() <= 400) {
      return List.of();
    }
    OptionalDouble length = overlap.lengthMm();
    int holes = (int) Math.max(1, Math.ceil(length.orElse(0) / 1000 - 1e-9));
    return overlapVent(
        "overlap over 400 cm2: one hole for every metre or part of it",
        "trade design guides for galvanizing",
        holes,
        Math.max(10, overlap.firstMm() + overlap.secondMm()),
        length.isPresent()
            ? Text.number(length.getAsDouble() / 1000) + " m, rounded up"
            : "length not given: one");
  }

  private static List<Need> steppedByArea(Overlap overlap) {
    double squareInches = overlap.areaCm2() / SQUARE_INCH_CM2;
    if (squareInches < 16) {
      return List.of();
    }
    String source = "ASTM A385 (from memory)";
    if (squareInches < 64) {
      return Math.max(overlap.firstMm(), overlap.secondMm()) <= 12.7
          ? overlapVent("16 to 64 in2: one hole of 3/8 in", source, 1, 9.525, "or 25 mm unwelded")
          : List.of();
    }
    if (squareInches < 400) {
      return overlapVent("64 to 400 in2: one of 1/2 in", source, 1, 12.7, "or 50 mm unwelded");
    }
    int holes = (int) Math.ceil(squareInches / 400 - 1e-9);
    return overlapVent(
        "one of 3/4 in for every 400 in2", source, holes, 19.05, "or 100 mm unwelded each");
  }

  private static List<Need> overlapVent(
      String rule, String source, int holes, double eachMm, String working) {
    return List.of(new Need(rule, source, Task.VENT, holes, eachMm, working, true));
  }

  private static List<Need> cornerHoles(String working) {
    return VentRule.both(
        "corners of stiffeners and returns: 13 mm, or cropped by 19 mm",
        "trade design guides for galvanizing",
        1,
        13,
        working);
  }

  private static List<Need> preferred() {
    String rule = "preferred where there is room: vent 12 mm, drain 25 mm";
    String source = "older trade design guide";
    return List.of(
        new Need(rule, source, Task.VENT, 1, 12, "shown only", false),
        new Need(rule, source, Task.DRAIN, 1, 25, "shown only", false));
  }

  private static List<Need> leastHole(Hollow hollow) {
    if (hollow instanceof Overlap) {
      return List.of();
    }
    double least = Math.max(10, hollow.wallMm().orElse(0));
    return VentRule.both(
        "least hole: 10 mm or the steel's thickness",
        "trade design guides for galvanizing",
        1,
        least,
        hollow.wallMm().isPresent()
            ? "steel " + Text.mm(hollow.wallMm().getAsDouble())
            : "steel thickness not given");
  }
}
