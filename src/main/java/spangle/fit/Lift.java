package spangle.fit;

import java.util.OptionalDouble;

/**
 * What the crane must do for one answer.
 *
 * @param crane the hoist
 * @param massKg parts, jig and draining zinc; empty when the mass is not known
 * @param hookMm hook height needed above the rim
 * @param freeEndMm how far the free end of an end-out part stands above the rim; 0 otherwise
 */
public record Lift(Crane crane, OptionalDouble massKg, double hookMm, double freeEndMm) {
  /** What it can lift beyond the need, in kg; a minus sign means too heavy. */
  public OptionalDouble massMarginKg() {
    return massKg.isPresent()
        ? OptionalDouble.of(crane.massKg() - massKg.getAsDouble())
        : OptionalDouble.empty();
  }

  /** Height left over the hook's need, in mm; a minus sign means too low. */
  public double hookMarginMm() {
    return crane.hookAboveRimMm() - hookMm;
  }

  /** Whether the crane can do it, as far as is known. */
  public boolean possible() {
    return massMarginKg().orElse(0) >= 0 && hookMarginMm() >= 0;
  }
}
