package spangle.coating.heat;

import spangle.measure.Limits;

/**
 * Heat one oven batch takes, kWh into the oven.
 *
 * @param partsKWh into the work
 * @param carriersKWh into racks, carts and hooks, which are heated just as well
 * @param panelsKWh through the walls during the stay
 * @param exhaustKWh with the exhaust air during the stay
 */
public record OvenEnergy(double partsKWh, double carriersKWh, double panelsKWh, double exhaustKWh) {
  /** Exhaust of a powder oven, oven volumes an hour (published 6-8). */
  public static final double USUAL_AIR_CHANGES_PER_HOUR = 6;

  /** Air of the hall and metal as it comes from the floor, C (common practice). */
  public static final double HALL_C = 20;

  private static final double J_PER_KWH = 3.6e6;

  /** Air at 20 C: 1.204 kg/m3 times 1006 J/kg K, which is 1.08 Btu/h per cfm and F. */
  private static final double AIR_J_M3K = 1.204 * 1006;

  /**
   * What the oven is.
   *
   * @param wallWM2K heat its walls lose per m2 and kelvin, {@link OvenPanel#uWM2K(double)}
   * @param wallM2 their area, roof, floor and doors included
   * @param exhaustM3H exhaust at room temperature, m3/h
   * @param powerKW what the burner or heater gives at most
   */
  public record Oven(double wallWM2K, double wallM2, double exhaustM3H, double powerKW) {
    /** Checks the limits. */
    public Oven {
      Limits.between(wallWM2K, 0, 50, "a wall loss", "W/m2 K");
      Limits.between(wallM2, 0, 1e5, "a panel area", "m2");
      Limits.between(exhaustM3H, 0, 1e6, "an exhaust flow", "m3/h");
      Limits.above(powerKW, 0, "a heating power", "kW");
    }

    /** Heat it takes just to stay hot, kW. */
    public double standingKW(double ovenC, double roomC) {
      return OvenPanel.lossKW(wallWM2K, wallM2, ovenC, roomC)
          + exhaustM3H * AIR_J_M3K * (ovenC - roomC) / J_PER_KWH;
    }
  }

  /**
   * One batch.
   *
   * @param oven the oven
   * @param metal what the parts are made of
   * @param partsKg mass of the work
   * @param carriersKg mass of steel racks and carts
   * @param roomC hall air and work before it goes in
   * @param ovenC setting
   * @param minutes whole stay
   */
  public static OvenEnergy of(
      Oven oven,
      Metal metal,
      double partsKg,
      double carriersKg,
      double roomC,
      double ovenC,
      double minutes) {
    Limits.between(partsKg, 0, 1e6, "a mass", "kg");
    Limits.between(carriersKg, 0, 1e6, "a mass", "kg");
    Limits.between(minutes, 0, 1e5, "a stay", "min");
    double hours = minutes / 60;
    double panels = OvenPanel.lossKW(oven.wallWM2K(), oven.wallM2(), ovenC, roomC);
    return new OvenEnergy(
        partsKg * metal.heatJKg(roomC, ovenC) / J_PER_KWH,
        carriersKg * Metal.STEEL.heatJKg(roomC, ovenC) / J_PER_KWH,
        panels * hours,
        (oven.standingKW(ovenC, roomC) - panels) * hours);
  }

  /** All of it, kWh. */
  public double totalKWh() {
    return partsKWh + carriersKWh + panelsKWh + exhaustKWh;
  }

  /**
   * Minutes until the oven air is back at its setting, with the cure clock still at 0: while the
   * cold load takes more than the heater can spare, the air sags and the load warms at the heater's
   * pace; once its demand U A (To - T) falls to the spare power, the air holds. Infinite when
   * nothing is spare.
   *
   * @param oven the oven
   * @param heatedAreaM2 surface of parts and carriers
   * @param uWM2K convection and radiation together
   * @param roomC hall air and work before it goes in
   * @param ovenC setting
   */
  public double recoveryMinutes(
      Oven oven, double heatedAreaM2, double uWM2K, double roomC, double ovenC) {
    double spareKW = oven.powerKW() - oven.standingKW(ovenC, roomC);
    if (spareKW <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double demandKW = uWM2K * heatedAreaM2 * (ovenC - roomC) / 1000;
    double shareAtHeaterPace = Math.max(0, 1 - spareKW / demandKW);
    return shareAtHeaterPace * (partsKWh + carriersKWh) / spareKW * 60;
  }
}
