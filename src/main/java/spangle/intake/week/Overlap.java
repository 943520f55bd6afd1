package spangle.intake.week;

import java.util.OptionalDouble;

/**
 * Two plates that lie on one another.
 *
 * @param areaCm2 contact area of one overlap
 * @param thicknessMm one plate, mm
 * @param otherThicknessMm the other plate, mm
 * @param weld how it is closed
 * @param holeMm diameter of the relief hole on record, mm
 */
public record Overlap(
    double areaCm2, double thicknessMm, double otherThicknessMm, Weld weld, OptionalDouble holeMm) {

  /** How an overlap is closed. */
  public enum Weld {
    /** Welded all round: sealed. */
    ALL_ROUND,
    /** Welded with gaps. */
    GAP,
    /** Not welded: bolted or riveted, open. */
    NONE
  }
}
