package spangle.coating.heat;

/** Heat capacity of a lumped body per m2 of the surface that takes or gives heat. */
@FunctionalInterface
public interface ThermalMass {
  /** J/m2 K at a temperature. */
  double capacityJM2K(double celsius);
}
