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
    return uWM2K() * areaM2 * (ovenC - roomC) / 1000;
  }
}
