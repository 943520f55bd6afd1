package spangle.coating.heat;

/** Oven wall panels by insulation thickness, factors of a published oven heat-load note. */
public enum OvenPanel {
  /** 3 in. */
  MM_75(75, 0.40),
  /** 4 in. */
  MM_100(100, 0.35),
  /** 5 in. */
  MM_125(125, 0.30),
  /** 6 in. */
  MM_150(150, 0.25),
  /** 8 in. */
  MM_200(200, 0.20);

  /** 1 Btu/h ft2 F in W/m2 K (international table Btu, exact foot). */
  private static final double W_M2K_PER_BTU = 5.678263341;

  private final int thicknessMm;
  private final double btuHFt2F;

  OvenPanel(int thicknessMm, double btuHFt2F) {
    this.thicknessMm = thicknessMm;
    this.btuHFt2F = btuHFt2F;
  }

  /** Panels where nothing is said of an oven: 100 mm is usual (common practice). */
  public static final OvenPanel USUAL = MM_100;

  /** Least and most thickness there are factors for, with room for inches, mm. */
  public static final double THINNEST_MM = 75;

  /** See {@link #THINNEST_MM}. */
  public static final double THICKEST_MM = 204;

  /**
   * Heat that leaves per m2 and kelvin through panels of any thickness, W/m2 K: along a straight
   * line between the published ones, at most that of the thinnest, at least that of the thickest.
   */
  public static double uWM2K(double thicknessMm) {
    OvenPanel thinner = MM_75;
    for (OvenPanel panel : values()) {
      if (panel.thicknessMm >= thicknessMm) {
        double share =
            panel == thinner
                ? 0
                : (thicknessMm - thinner.thicknessMm) / (panel.thicknessMm - thinner.thicknessMm);
        return thinner.uWM2K() + share * (panel.uWM2K() - thinner.uWM2K());
      }
      thinner = panel;
    }
    return MM_200.uWM2K();
  }

  /** Nominal thickness. */
  public int thicknessMm() {
    return thicknessMm;
  }

  /** Heat that leaves per m2 and kelvin, W/m2 K, joints and steelwork included. */
  public double uWM2K() {
    return btuHFt2F * W_M2K_PER_BTU;
  }

  /** Steady loss of a whole oven, kW. */
  public double lossKW(double areaM2, double ovenC, double roomC) {
    return lossKW(uWM2K(), areaM2, ovenC, roomC);
  }

  /** Steady loss of walls that lose {@code wallWM2K} per m2 and kelvin, kW. */
  public static double lossKW(double wallWM2K, double areaM2, double ovenC, double roomC) {
    return wallWM2K * areaM2 * (ovenC - roomC) / 1000;
  }
}
