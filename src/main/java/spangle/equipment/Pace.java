package spangle.equipment;

/**
 * How long a visit takes: fixed minutes of the load plus minutes for what hangs there.
 *
 * @param fixedMin minutes however much hangs there
 * @param perPieceMin minutes per piece
 * @param perM2Min minutes per m2 of surface to coat
 * @param perKgMin minutes per kg of parts
 */
public record Pace(double fixedMin, double perPieceMin, double perM2Min, double perKgMin) {
  /** Refuses minutes below zero. */
  public Pace {
    if (!(fixedMin >= 0 && perPieceMin >= 0 && perM2Min >= 0 && perKgMin >= 0)) {
      throw new IllegalArgumentException("minutes of a visit are not below zero");
    }
  }

  /** The same visit, so many times longer. */
  public Pace times(double factor) {
    return new Pace(fixedMin * factor, perPieceMin * factor, perM2Min * factor, perKgMin * factor);
  }

  /** The same visit, so many minutes longer. */
  public Pace longer(int minutes) {
    return new Pace(fixedMin + minutes, perPieceMin, perM2Min, perKgMin);
  }

  /** Minutes that depend on the pieces. */
  public double variableMin(double pieces, double areaM2, double massKg) {
    return perPieceMin * pieces + perM2Min * areaM2 + perKgMin * massKg;
  }
}
