package spangle.intake.brief;

import java.util.List;
import spangle.coating.heat.CureWindow;
import spangle.coating.heat.DegassingBake;
import spangle.coating.heat.PlanDwell;
import spangle.equipment.OvenProfile;
import spangle.intake.week.Cure;
import spangle.intake.week.ShopLine;
import spangle.intake.week.WeekInput;
import spangle.plan.PartFacts;

/**
 * What the oven hand reads off the probe.
 *
 * @param heatUpMin minutes until the metal is at the lowest cure temperature, from the oven being
 *     back at its setting; by the slower estimate
 * @param minutesAtHeat minutes from then on at least
 * @param partCelsius that temperature
 */
public record OvenTimes(int heatUpMin, int minutesAtHeat, double partCelsius) {

  /** The times of a part's thickest wall in the slowest oven of a line. */
  public static OvenTimes of(
      WeekInput input, ShopLine line, PartFacts part, Cure cure, double ovenC) {
    CureWindow window = OvenDwells.window(cure, 1);
    OvenDwells.Walls walls =
        OvenDwells.Walls.of(part.material(), part.thicknessMm(), part.thickestMm());
    OvenDwells dwells =
        new OvenDwells(
            LineMaker.ovens(line),
            LineMaker.settings(line),
            input.shop().defaults().heatUpMinPerMm());
    double heatUp = 0;
    double least = 0;
    List<OvenProfile> ovens = LineMaker.ovens(line);
    for (OvenProfile oven : ovens) {
      PlanDwell dwell = dwells.dwell(oven, walls.thickest(), window, ovenC);
      heatUp = Math.max(heatUp, dwell.slowHeatUpMin());
      least = Math.max(least, dwell.minMin());
    }
    int hot = (int) Math.ceil(heatUp);
    return new OvenTimes(hot, Math.max(0, (int) Math.ceil(least) - hot), window.lowestC());
  }

  /**
   * The degassing bake of a part's thickest wall: here {@code heatUpMin} runs until the metal is at
   * oven temperature and {@code minutesAtHeat} is the whole bake; both from the oven being back at
   * its setting, in the slowest oven of the line.
   */
  public static OvenTimes degassing(WeekInput input, ShopLine line, PartFacts part, double ovenC) {
    OvenDwells dwells =
        new OvenDwells(
            LineMaker.ovens(line),
            LineMaker.settings(line),
            input.shop().defaults().heatUpMinPerMm());
    OvenDwells.Walls walls =
        OvenDwells.Walls.of(part.material(), part.thicknessMm(), part.thickestMm());
    double hot = 0;
    double least = 0;
    for (OvenProfile oven : LineMaker.ovens(line)) {
      DegassingBake bake =
          dwells.bake(oven, walls.thickest(), ovenC, input.shop().defaults().degasMin());
      hot = Math.max(hot, bake.heatUpMin());
      least = Math.max(least, bake.minMinutes());
    }
    return new OvenTimes((int) Math.ceil(hot), (int) Math.ceil(least), ovenC);
  }
}
