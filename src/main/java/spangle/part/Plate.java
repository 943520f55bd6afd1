package spangle.part;

import java.util.List;
import spangle.measure.Box;

/**
 * A rectangular plate, with openings if it has any. A hole takes its area from both faces and gives
 * its wall.
 *
 * @param lengthMm length
 * @param widthMm width
 * @param thicknessMm thickness
 * @param holes openings; together smaller than the plate
 */
public record Plate(double lengthMm, double widthMm, double thicknessMm, List<Hole> holes)
    implements Shape {
  /** Checks the sizes and copies the holes. */
  public Plate {
    Require.length(lengthMm, "plate length");
    Require.length(widthMm, "plate width");
    Require.length(thicknessMm, "thickness");
    holes = List.copyOf(holes);
    double holesMm2 = holes.stream().mapToDouble(Hole::totalAreaMm2).sum();
    if (holesMm2 >= lengthMm * widthMm) {
      throw new ShapeException(
          "area of all holes in mm2",
          holesMm2,
          "less than the plate's " + lengthMm * widthMm + " mm2",
          "check number and size of the holes");
    }
  }

  /** A plate without holes. */
  public Plate(double lengthMm, double widthMm, double thicknessMm) {
    this(lengthMm, widthMm, thicknessMm, List.of());
  }

  @Override
  public Plate withLengthsTimes(double factor) {
    return new Plate(
        lengthMm * factor,
        widthMm * factor,
        thicknessMm,
        holes.stream().map(hole -> hole.withLengthsTimes(factor)).toList());
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    double faceMm2 = lengthMm * widthMm;
    double cutEdgeMm = 2 * (lengthMm + widthMm);
    for (Hole hole : holes) {
      faceMm2 -= hole.totalAreaMm2();
      cutEdgeMm += hole.totalEdgeMm();
    }
    return Skin.sheet(faceMm2, cutEdgeMm, thicknessMm)
        .measured(
            densityKgM3,
            edges,
            new Box(lengthMm, widthMm, thicknessMm),
            thicknessMm,
            0,
            HollowKind.NONE,
            "two faces of " + Skin.mm2(faceMm2));
  }
}
