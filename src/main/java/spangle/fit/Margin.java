package spangle.fit;

/**
 * Usable less needed; a minus sign means missing.
 *
 * @param lengthMm along the tank
 * @param widthMm across the tank
 * @param depthMm down
 */
public record Margin(double lengthMm, double widthMm, double depthMm) {
  /** How much is missing in the worst direction; 0 or less when nothing is. */
  public double worstShortageMm() {
    return -Math.min(lengthMm, Math.min(widthMm, depthMm));
  }
}
