package spangle.intake.week;

/**
 * Dry film, um.
 *
 * @param minUm least
 * @param aimUm mean to be sprayed
 * @param maxUm most
 */
public record Film(double minUm, double aimUm, double maxUm) {}
