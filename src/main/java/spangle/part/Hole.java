package spangle.part;

/**
 * Openings of one kind cut through a plate.
 *
 * @param count how many
 * @param areaMm2 area of one
 * @param perimeterMm length of its cut edge
 */
public record Hole(int count, double areaMm2, double perimeterMm) {
  /** Checks that the opening exists and that no figure encloses so much with so little edge. */
  public Hole {
    Require.positive(count, "number of holes");
    Require.positive(areaMm2, "hole area in mm2");
    Require.positive(perimeterMm, "hole edge in mm");
    // A circle encloses the most: 4 pi A <= P^2; the small slack is for rounded input.
    if (4 * Math.PI * areaMm2 > perimeterMm * perimeterMm * 1.001) {
      throw new ShapeException(
          "hole area in mm2",
          areaMm2,
          "possible within an edge of " + perimeterMm + " mm",
          "check area and edge of the opening");
    }
  }

  /** Round holes. */
  public static Hole round(int count, double diameterMm) {
    Require.length(diameterMm, "hole diameter");
    return new Hole(count, Math.PI * diameterMm * diameterMm / 4, Math.PI * diameterMm);
  }

  /** Rectangular openings. */
  public static Hole rectangle(int count, double lengthMm, double widthMm) {
    Require.length(lengthMm, "opening length");
    Require.length(widthMm, "opening width");
    return new Hole(count, lengthMm * widthMm, 2 * (lengthMm + widthMm));
  }

  /** Slots with round ends; the length is measured over the ends. */
  public static Hole slot(int count, double lengthMm, double widthMm) {
    Require.length(widthMm, "slot width");
    if (!(lengthMm >= widthMm)) {
      throw new ShapeException(
          "slot length",
          lengthMm,
          "at least its width, " + widthMm + " mm",
          "give it over the ends");
    }
    double straight = lengthMm - widthMm;
    return new Hole(
        count,
        straight * widthMm + Math.PI * widthMm * widthMm / 4,
        2 * straight + Math.PI * widthMm);
  }

  Hole withLengthsTimes(double factor) {
    return new Hole(count, areaMm2 * factor * factor, perimeterMm * factor);
  }

  double totalAreaMm2() {
    return count * areaMm2;
  }

  double totalEdgeMm() {
    return count * perimeterMm;
  }
}
