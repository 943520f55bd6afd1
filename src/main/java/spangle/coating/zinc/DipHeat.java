package spangle.coating.zinc;

import spangle.coating.heat.Metal;
import spangle.measure.Limits;

/**
 * Heat one dip, or one hour of dips, takes from the bath.
 *
 * @param steelKJ into the work, beams and chains
 * @param zincKJ into the zinc that replaces what left on the work
 */
public record DipHeat(double steelKJ, double zincKJ) {
  /** Specific heat of the melt: 31.40 J/mol K over 65.38 g/mol. */
  public static final double LIQUID_ZINC_KJ_KG_K = 31.40 / 65.38;

  /** Share of the bath's mass one dip should not exceed, per cent (common practice, 1-2). */
  public static final double USUAL_SHARE_OF_BATH_PCT = 2;

  /**
   * Work an hour per m2 of the two long walls, kg: planning range 100-130 around one published
   * plant's 117 (9525 kg/h on 81.5 m2).
   */
  public static final double KG_H_PER_M2_LONG_WALL = 117;

  private static final double ZINC_MELTS_C = 419.5;
  private static final double ZINC_MOLAR_G = 65.38;
  private static final double ZINC_LATENT_KJ_KG = 112;
  private static final double ZERO_CELSIUS_K = 273.15;

  /** Checks the limits. */
  public DipHeat {
    Limits.between(steelKJ, 0, 1e12, "a heat", "kJ");
    Limits.between(zincKJ, 0, 1e12, "a heat", "kJ");
  }

  /**
   * Heat of some work.
   *
   * @param steelKg steel dipped, beams and chains included
   * @param zincKg zinc that leaves with it and is made up with cold ingots
   * @param fromC temperature of the work when it meets the zinc
   * @param ingotC temperature of the ingots
   * @param bathC bath temperature
   */
  public static DipHeat of(
      double steelKg, double zincKg, double fromC, double ingotC, double bathC) {
    Limits.between(steelKg, 0, 1e6, "a mass", "kg");
    Limits.between(zincKg, 0, 1e6, "a mass", "kg");
    Limits.between(fromC, -60, bathC, "a temperature of work below the bath", "C");
    return new DipHeat(
        steelKg * Metal.STEEL.heatJKg(fromC, bathC) / 1000, zincKg * zincKJKg(ingotC, bathC));
  }

  /**
   * Heat to melt a kg of zinc and bring it to bath temperature: solid 22.40 + 0.0105 T(K) J/mol K,
   * latent 112 kJ/kg, liquid 31.40 J/mol K (handbook values).
   */
  public static double zincKJKg(double ingotC, double bathC) {
    Limits.between(ingotC, -60, ZINC_MELTS_C, "an ingot temperature", "C");
    Limits.between(bathC, ZINC_MELTS_C, 650, "a bath temperature", "C");
    double fromK = ingotC + ZERO_CELSIUS_K;
    double meltK = ZINC_MELTS_C + ZERO_CELSIUS_K;
    double solidJMol = 22.40 * (meltK - fromK) + 0.0105 / 2 * (meltK * meltK - fromK * fromK);
    return solidJMol / ZINC_MOLAR_G
        + ZINC_LATENT_KJ_KG
        + LIQUID_ZINC_KJ_KG_K * (bathC - ZINC_MELTS_C);
  }

  /** All of it, kJ. */
  public double totalKJ() {
    return steelKJ + zincKJ;
  }

  /** All of it, kWh. */
  public double totalKWh() {
    return totalKJ() / 3600;
  }

  /** Work a kettle can take in an hour by its long walls, kg/h. */
  public static double kgPerHour(double lengthMm, double depthMm) {
    Limits.above(lengthMm, 0, "a kettle length", "mm");
    Limits.above(depthMm, 0, "a kettle depth", "mm");
    return 2 * lengthMm * depthMm / 1e6 * KG_H_PER_M2_LONG_WALL;
  }
}
