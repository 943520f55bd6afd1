package spangle.coating.zinc;

import java.util.OptionalDouble;
import spangle.measure.Limits;

/**
 * What a mill certificate says of the elements that matter in zinc, mass per cent; empty where it
 * says nothing.
 *
 * @param siPct silicon
 * @param pPct phosphorus
 * @param alPct aluminium
 */
public record SteelChemistry(OptionalDouble siPct, OptionalDouble pPct, OptionalDouble alPct) {
  /** No certificate. */
  public static final SteelChemistry UNKNOWN =
      new SteelChemistry(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

  /** Checks the limits. */
  public SteelChemistry {
    siPct.ifPresent(si -> Limits.between(si, 0, 5, "a silicon content", "%"));
    pPct.ifPresent(p -> Limits.between(p, 0, 1, "a phosphorus content", "%"));
    alPct.ifPresent(al -> Limits.between(al, 0, 5, "an aluminium content", "%"));
  }

  /** Silicon and phosphorus from a certificate that does not give aluminium. */
  public static SteelChemistry of(double siPct, double pPct) {
    return new SteelChemistry(
        OptionalDouble.of(siPct), OptionalDouble.of(pPct), OptionalDouble.empty());
  }

  /** Silicon, phosphorus and aluminium. */
  public static SteelChemistry of(double siPct, double pPct, double alPct) {
    return new SteelChemistry(
        OptionalDouble.of(siPct), OptionalDouble.of(pPct), OptionalDouble.of(alPct));
  }

  /** Silicon equivalent Si + 2.5 P; empty when one of them is not known. */
  public OptionalDouble equivalentPct() {
    return siPct.isPresent() && pPct.isPresent()
        ? OptionalDouble.of(siPct.getAsDouble() + 2.5 * pPct.getAsDouble())
        : OptionalDouble.empty();
  }
}
