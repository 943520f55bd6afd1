package spangle.part;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.measure.Box;

/**
 * What a job file says of one piece, to be compared with itself.
 *
 * @param areaM2 area of one piece, both faces
 * @param massKg mass of one piece
 * @param thicknessMm sheet or wall thickness
 * @param envelopeMm outside size
 * @param densityKgM3 density of its material
 * @param pieces ordered; 1 when not known
 * @param shape its form, when one is given
 */
public record Given(
    OptionalDouble areaM2,
    OptionalDouble massKg,
    OptionalDouble thicknessMm,
    Optional<Box> envelopeMm,
    double densityKgM3,
    int pieces,
    Optional<Shape> shape) {
  /** Checks that figures which are there are above zero. */
  public Given {
    areaM2.ifPresent(value -> Require.positive(value, "area"));
    massKg.ifPresent(value -> Require.positive(value, "mass"));
    thicknessMm.ifPresent(value -> Require.length(value, "thickness"));
    Require.density(densityKgM3);
    Require.positive(pieces, "number of pieces");
  }
}
