package spangle.intake.week;

import spangle.equipment.CarrierProfile;

/**
 * A kind of carrier a line owns.
 *
 * @param id unique in the shop
 * @param profile what it is
 * @param owned how many there are
 * @param inStrip how many of them are away for stripping this week
 */
public record CarrierUse(String id, CarrierProfile profile, int owned, int inStrip) {
  /** Those that can be filled. */
  public int usable() {
    return owned - inStrip;
  }
}
