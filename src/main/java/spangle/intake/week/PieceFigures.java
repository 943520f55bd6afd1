package spangle.intake.week;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.measure.Box;
import spangle.part.Edges;
import spangle.part.FlatPattern;
import spangle.part.Measured;
import spangle.part.Shape;

/**
 * Area, mass and size of one piece with where they come from. A value the file gives wins over a
 * computed one; that the two agree has been checked when the file was read.
 *
 * @param areaM2 all wetted surface
 * @param massKg mass before coating
 * @param sizeMm outside size as it hangs
 * @param computed what the shape gives, where there is one
 * @param source in words: given, computed from ...
 */
public record PieceFigures(
    double areaM2, double massKg, Box sizeMm, Optional<Measured> computed, String source) {

  /**
   * Figures of a piece.
   *
   * @return empty where something is neither given nor computable
   */
  public static Optional<PieceFigures> of(Metal metal, Body body) {
    Optional<Measured> computed = computed(metal, body);
    OptionalDouble area =
        body.areaM2().isEmpty() && !metal.skins().isEmpty()
            ? OptionalDouble.of(metal.skinAreaM2())
            : orComputed(body.areaM2(), computed.map(Measured::areaM2));
    OptionalDouble mass = orComputed(body.massKg(), computed.map(Measured::massKg));
    Optional<Box> size = body.sizeMm().or(() -> envelope(body, computed));
    if (area.isEmpty() && mass.isPresent()) {
      area = fromMass(metal, mass.getAsDouble());
    } else if (mass.isEmpty() && area.isPresent()) {
      mass = fromArea(metal, area.getAsDouble());
    }
    if (area.isEmpty() || mass.isEmpty() || size.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PieceFigures(
            area.getAsDouble(),
            mass.getAsDouble(),
            size.get(),
            computed,
            source(metal, body, computed)));
  }

  /** The flat size of a part that will be bent is not its envelope. */
  private static Optional<Box> envelope(Body body, Optional<Measured> computed) {
    boolean unknown =
        body.drawn().map(s -> s instanceof FlatPattern f && f.foldedSizeUnknown()).orElse(false);
    return unknown ? Optional.empty() : computed.map(Measured::envelopeMm);
  }

  /** What drawing or shape give; empty without one that can be measured. */
  public static Optional<Measured> computed(Metal metal, Body body) {
    if (metal.material().densityKgM3().isEmpty()) {
      return Optional.empty();
    }
    return shape(metal, body).map(s -> s.measure(metal.material(), Edges.COUNTED));
  }

  /** The shape of a piece: its drawing's, else the one in words. */
  public static Optional<Shape> shape(Metal metal, Body body) {
    return body.drawn()
        .or(
            () ->
                body.shape()
                    .flatMap(words -> Shapes.of(words, metal.thicknessMm(), body.sizeMm())));
  }

  private static OptionalDouble orComputed(OptionalDouble given, Optional<Double> computed) {
    return given.isPresent() || computed.isEmpty() ? given : OptionalDouble.of(computed.get());
  }

  /** Sheet of one thickness: area = 2 m / (rho t), edges forgotten. */
  private static OptionalDouble fromMass(Metal metal, double massKg) {
    OptionalDouble density = metal.material().densityKgM3();
    return density.isEmpty()
        ? density
        : OptionalDouble.of(2000 * massKg / (density.getAsDouble() * metal.thicknessMm()));
  }

  private static OptionalDouble fromArea(Metal metal, double areaM2) {
    OptionalDouble density = metal.material().densityKgM3();
    if (density.isEmpty()) {
      return density;
    }
    return OptionalDouble.of(areaM2 * density.getAsDouble() * metal.meanWallMm() / 2000);
  }

  private static String source(Metal metal, Body body, Optional<Measured> computed) {
    if (body.areaM2().isPresent() && body.massKg().isPresent()) {
      return "area and mass as given";
    }
    String how = computed.map(Measured::working).orElse("area, mass and thickness");
    if (body.areaM2().isEmpty() && !metal.skins().isEmpty()) {
      return body.massKg().isPresent()
          ? "mass as given, area from its skins"
          : "area from its skins, mass from "
              + computed.map(Measured::working).orElse("area and thickness of each");
    }
    if (body.areaM2().isPresent()) {
      return "area as given, mass from " + how;
    }
    return body.massKg().isPresent() ? "mass as given, area from " + how : "from " + how;
  }
}
