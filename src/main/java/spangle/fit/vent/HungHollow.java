package spangle.fit.vent;

/**
 * A hollow in the attitude it meets the zinc in, seen from the side: a box l by h, l at an angle.
 *
 * @param lMm side whose angle is given
 * @param hMm the other side seen
 * @param tiltDeg angle of l above level, 0 to 90
 * @param second what happens between two dips
 */
public record HungHollow(double lMm, double hMm, double tiltDeg, Second second) {
  /** Whether and how a part meets the zinc a second time. */
  public enum Second {
    /** One dip. */
    NONE,
    /** Turned over about its long axis. */
    TURNED_OVER,
    /** Swung end for end. */
    END_FOR_END
  }
}
