package spangle.part;

import java.util.OptionalDouble;

/**
 * A piece of metal by its form. All dimensions are outside sizes in mm. Constructors refuse
 * dimensions no piece can have with a {@link ShapeException}.
 */
public sealed interface Shape
    permits Bar,
        ClosedBox,
        FlatPattern,
        FoldedBlank,
        OpenBox,
        Plate,
        RectTube,
        RoundTube,
        Section,
        Solid {

  /**
   * Area, mass, envelope and inner space of one piece.
   *
   * @param densityKgM3 from {@link Material#densityKgM3()} or a data sheet
   * @param edges whether cut edges count
   * @throws ShapeException when the density is not between 100 and 25000 kg/m3
   */
  Measured measure(double densityKgM3, Edges edges);

  /**
   * The same piece with its lengths taken in a larger or smaller unit: lengths times {@code
   * factor}, sheet and wall thicknesses as they are, because those are read off a gauge and not a
   * drawing.
   *
   * @throws ShapeException when no such piece can exist
   */
  Shape withLengthsTimes(double factor);

  /** The same with cut edges counted. */
  default Measured measure(double densityKgM3) {
    return measure(densityKgM3, Edges.COUNTED);
  }

  /**
   * The same for a material.
   *
   * @throws ShapeException for {@link Material#OTHER}, which has no density of its own
   */
  default Measured measure(Material material, Edges edges) {
    OptionalDouble density = material.densityKgM3();
    if (density.isEmpty()) {
      throw new ShapeException(
          "density", 0, "known for material '" + material.word() + "'", "give it in kg/m3");
    }
    return measure(density.getAsDouble(), edges);
  }
}
