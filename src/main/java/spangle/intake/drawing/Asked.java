package spangle.intake.drawing;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.measure.Box;

/**
 * What is known of a part beside its drawing.
 *
 * @param thicknessMm sheet thickness; not used for bodies
 * @param densityKgM3 density of the material
 * @param massKg mass of one piece, where known
 * @param unit unit of the drawing, where somebody has said it
 * @param foldedMm outside size after bending, where known
 * @param bendAngleDeg angle of every bend that has none written to it
 * @param bendRadiusMm inside radius of bends that have none written to them; else the thickness
 */
public record Asked(
    double thicknessMm,
    double densityKgM3,
    OptionalDouble massKg,
    Optional<DrawingUnit> unit,
    Optional<Box> foldedMm,
    OptionalDouble bendAngleDeg,
    OptionalDouble bendRadiusMm) {

  /** Nothing but thickness and density is known. */
  public static Asked of(double thicknessMm, double densityKgM3) {
    return new Asked(
        thicknessMm,
        densityKgM3,
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  /** The same in a known unit. */
  public Asked in(DrawingUnit known) {
    return new Asked(
        thicknessMm, densityKgM3, massKg, Optional.of(known), foldedMm, bendAngleDeg, bendRadiusMm);
  }

  /** The same with a known mass. */
  public Asked weighing(double kg) {
    return new Asked(
        thicknessMm,
        densityKgM3,
        OptionalDouble.of(kg),
        unit,
        foldedMm,
        bendAngleDeg,
        bendRadiusMm);
  }
}
