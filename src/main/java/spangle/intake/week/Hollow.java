package spangle.intake.week;

import java.util.Optional;

/**
 * Hollow members of one kind in a piece, and the holes on record.
 *
 * @param count how many alike in one piece
 * @param widthMm outside width of the section, or its diameter
 * @param heightMm outside height of the section; equal to the width for a round one
 * @param lengthMm length of the member
 * @param round whether it is round
 * @param vents holes at the high end
 * @param drains holes at the low end
 */
public record Hollow(
    int count,
    double widthMm,
    double heightMm,
    double lengthMm,
    boolean round,
    Optional<HoleSet> vents,
    Optional<HoleSet> drains) {

  /** So many holes of one diameter. */
  public record HoleSet(int count, double diameterMm) {}
}
