package spangle.fit;

/**
 * The hoist that serves the way.
 *
 * @param name what people call it
 * @param massKg what it may lift: parts, jig and the zinc that drains back
 * @param hookAboveRimMm highest place of the hook above the rim of the highest tank
 * @param slingMm from the hook down to the top of the part: beam, chains, wires
 */
public record Crane(String name, double massKg, double hookAboveRimMm, double slingMm) {
  /** Lowest point of the part over a rim it is carried across (common practice). */
  public static final double OVER_RIM_MM = 200;

  /**
   * Zinc lifted with the work before it has run off, as a share of the steel (common practice;
   * coatings alone run from 2 to 8 %).
   */
  public static final double DRAINING_ZINC_SHARE = 0.10;

  /** Hook and beam to part where nobody measured it (common practice). */
  public static final double USUAL_SLING_MM = 1000;
}
