package spangle.fit;

/**
 * One way to lay a part: which side lies across the tank and what is then seen from the side.
 *
 * @param acrossMm the side across, w
 * @param side the view along the tank
 */
public record Lay(double acrossMm, Silhouette side) {}
