package spangle.intake.drawing;

import spangle.measure.Box;
import spangle.measure.Figures;
import spangle.part.Measured;

/**
 * What a drawing comes to in one unit.
 *
 * @param unit the unit supposed
 * @param measured the figures then
 * @param likely whether a shop could have such a part
 */
public record UnitReading(DrawingUnit unit, Measured measured, boolean likely) {
  /** Size, area and mass in words. */
  public String words() {
    Box box = measured.envelopeMm();
    return "in "
        + unit.words()
        + " it is "
        + Figures.significant(box.lengthMm(), 4)
        + " x "
        + Figures.significant(box.widthMm(), 4)
        + " x "
        + Figures.significant(box.heightMm(), 4)
        + " mm, "
        + Figures.significant(measured.areaM2(), 4)
        + " m2, "
        + Figures.significant(measured.massKg(), 4)
        + " kg";
  }
}
