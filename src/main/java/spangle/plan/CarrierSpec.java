package spangle.plan;

import spangle.fit.hang.CarrierFace;

/**
 * A kind of rack, cart, beam or spin basket and how many of it the shop owns.
 *
 * @param id unique in the week
 * @param name words for the sheet
 * @param lineId the line it runs on
 * @param face how parts hang on it
 * @param owned how many there are
 * @param floorUnits places it takes in an oven or kettle
 * @param ownMassKg its own mass
 * @param stripAfterCycles cycles until it is out of use for stripping; 0 = never
 * @param stripMin minutes out of use then
 */
public record CarrierSpec(
    String id,
    String name,
    String lineId,
    CarrierFace face,
    int owned,
    int floorUnits,
    double ownMassKg,
    int stripAfterCycles,
    int stripMin) {
  /** The same, of which the shop has so many. */
  public CarrierSpec owning(int count) {
    return new CarrierSpec(
        id, name, lineId, face, count, floorUnits, ownMassKg, stripAfterCycles, stripMin);
  }
}
