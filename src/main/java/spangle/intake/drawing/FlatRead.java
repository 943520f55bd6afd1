package spangle.intake.drawing;

import java.util.List;
import java.util.Optional;
import spangle.part.FlatPattern;
import spangle.part.flat.FlatLayout;

/**
 * A flat pattern as read.
 *
 * @param shape what it measures; empty when nothing closed is there
 * @param layout its lines in mm
 * @param unit the unit it was read in
 * @param readings what it comes to in the units that were weighed
 * @param foldedReckoned whether the size after bending comes from the bend lines
 */
public record FlatRead(
    Optional<FlatPattern> shape,
    FlatLayout layout,
    DrawingUnit unit,
    List<UnitReading> readings,
    boolean foldedReckoned) {
  /** Copies the list. */
  public FlatRead {
    readings = List.copyOf(readings);
  }
}
