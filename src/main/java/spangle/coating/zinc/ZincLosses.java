package spangle.coating.zinc;

/**
 * Parts of what the yield loses; they are inside the zinc bought and never added to it.
 *
 * @param ashKg zinc in ash and skimmings
 * @param drossKg zinc in bottom dross
 * @param splashKg splash, run-off, jigs and chains
 * @param skimmedAshKg ash skimmed by the surface figure (zinc and oxide together), for comparison
 */
public record ZincLosses(double ashKg, double drossKg, double splashKg, double skimmedAshKg) {}
