package spangle.plan.json;

import spangle.plan.PlanFigures;
import spangle.plan.bound.WeekBounds;

/**
 * How good a plan is: what no plan of the same lots can go under, and what the usual rule of the
 * shop makes of the same week.
 *
 * @param noPlanUnder floors
 * @param byHand figures of the plan by hand
 * @param byHandLotsLeftOut lots the plan by hand leaves out
 * @param byHandHeatKwh heat the plan by hand takes, kWh
 * @param byHandWorkKg work the plan by hand puts through ovens and kettles, kilograms, each leg of
 *     a route counted
 * @param heatKwh heat this plan takes, kWh
 * @param workKg work this plan puts through
 */
public record PlanYardstick(
    WeekBounds noPlanUnder,
    PlanFigures byHand,
    int byHandLotsLeftOut,
    double byHandHeatKwh,
    double byHandWorkKg,
    double heatKwh,
    double workKg) {
  /** Heat for a tonne of work by hand, kWh; 0 without work. */
  public double byHandKwhPerTonne() {
    return byHandWorkKg > 0 ? 1000 * byHandHeatKwh / byHandWorkKg : 0;
  }

  /** Heat for a tonne of work in this plan, kWh; 0 without work. */
  public double kwhPerTonne() {
    return workKg > 0 ? 1000 * heatKwh / workKg : 0;
  }
}
