package spangle.fit;

/**
 * What a tank, a kettle or a room really takes: the inside less clearances, freeboard and dross.
 *
 * @param name what people call it, for messages
 * @param lengthMm along, 0 or more
 * @param widthMm across, 0 or more
 * @param depthMm down (for a room: up), 0 or more
 * @param rimMm from the liquid's surface to the top edge of the tank; 0 for a room
 */
public record UsableSpace(
    String name, double lengthMm, double widthMm, double depthMm, double rimMm) {
  /** What a door alone takes in length: whatever comes. */
  public static final double ANY_LENGTH_MM = 1e6;

  /** Rim taken where nobody measured it: common practice for a kettle kept at its usual mark. */
  public static final double USUAL_RIM_MM = 150;

  /** Checks that every size is a number of 0 or more. */
  public UsableSpace {
    require(name, "length", lengthMm);
    require(name, "width", widthMm);
    require(name, "depth", depthMm);
    require(name, "rim", rimMm);
  }

  /** Whether nothing bounds the length. */
  public boolean anyLength() {
    return lengthMm >= ANY_LENGTH_MM;
  }

  /** A space with the usual rim. */
  public static UsableSpace of(String name, double lengthMm, double widthMm, double depthMm) {
    return new UsableSpace(name, lengthMm, widthMm, depthMm, USUAL_RIM_MM);
  }

  /**
   * A room entered through a door: what passes the door and finds place behind it.
   *
   * @param doorWidthMm clear width of the opening
   * @param doorHeightMm clear height of the opening
   */
  public UsableSpace behindDoor(double doorWidthMm, double doorHeightMm) {
    return new UsableSpace(
        name, lengthMm, Math.min(widthMm, doorWidthMm), Math.min(depthMm, doorHeightMm), rimMm);
  }

  /**
   * The same tank on a day with less liquid or more dross: the depth shrinks by both, and the rim
   * stands higher over a lower surface.
   *
   * @param levelDropMm surface below its usual mark
   * @param drossMm dross above the layer already taken off the usable depth
   */
  public UsableSpace onTheDay(double levelDropMm, double drossMm) {
    return new UsableSpace(
        name,
        lengthMm,
        widthMm,
        Math.max(0, depthMm - levelDropMm - drossMm),
        Math.max(0, rimMm + levelDropMm));
  }

  /** The side-by-side smallest of two spaces: what goes into both in one attitude. */
  public UsableSpace tightest(UsableSpace other) {
    return new UsableSpace(
        name,
        Math.min(lengthMm, other.lengthMm),
        Math.min(widthMm, other.widthMm),
        Math.min(depthMm, other.depthMm),
        Math.max(rimMm, other.rimMm));
  }

  private static void require(String name, String side, double sizeMm) {
    if (!(sizeMm >= 0) || Double.isInfinite(sizeMm)) {
      throw new IllegalArgumentException(
          name + ": usable " + side + " must be 0 mm or more, not " + sizeMm);
    }
  }
}
