package spangle.intake.drawing;

import java.util.List;
import java.util.Optional;
import spangle.part.Solid;
import spangle.part.mesh.MeshFacts;

/**
 * A body as read.
 *
 * @param shape what it measures in mm; empty where its surface is not closed
 * @param facts of its triangles, in the file's own unit
 * @param unit the unit it was read in
 * @param readings what it comes to in the units that were weighed
 */
public record SolidRead(
    Optional<Solid> shape, MeshFacts facts, DrawingUnit unit, List<UnitReading> readings) {
  /** Copies the list. */
  public SolidRead {
    readings = List.copyOf(readings);
  }

  /** Area of all triangles, mm2. */
  public double surfaceMm2() {
    return facts.surfaceMm2() * unit.mm() * unit.mm();
  }
}
