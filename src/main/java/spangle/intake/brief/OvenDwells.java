package spangle.intake.brief;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spangle.coating.heat.ConvectionRadiation;
import spangle.coating.heat.CurePoint;
import spangle.coating.heat.CureWindow;
import spangle.coating.heat.DegassingBake;
import spangle.coating.heat.HeatUpTable;
import spangle.coating.heat.HeatedPart;
import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenEnergy;
import spangle.coating.heat.PlanDwell;
import spangle.equipment.OvenProfile;
import spangle.intake.week.Cure;
import spangle.part.Material;
import spangle.plan.Dwell;
import spangle.plan.Setting;

/**
 * How long a part may stay in the ovens of a line at each setting. The least time is that of the
 * thickest wall with the oven's recovery added, the most is that of the thinnest. Where a line has
 * several ovens, the slowest and the fastest count, so that a batch may go into any of them.
 */
final class OvenDwells {
  /** Nothing stays in an oven longer, however patient its coating (common practice). */
  static final int LONGEST_MIN = 240;

  private final List<OvenProfile> ovens;
  private final List<Setting> settings;
  private final double ruleMinPerMm;

  /** Lists have thousands of parts of a few thicknesses: each question is reckoned once. */
  private final Map<Asked, List<Dwell>> known = new HashMap<>();

  private record Asked(Walls walls, CureWindow window) {}

  OvenDwells(List<OvenProfile> ovens, List<Setting> settings, double ruleMinPerMm) {
    this.ovens = List.copyOf(ovens);
    this.settings = List.copyOf(settings);
    this.ruleMinPerMm = ruleMinPerMm;
  }

  /** Windows of a coat of powder or force-dried paint, one per setting at which it cures. */
  List<Dwell> cure(Walls walls, CureWindow window) {
    return known.computeIfAbsent(new Asked(walls, window), this::reckoned);
  }

  private List<Dwell> reckoned(Asked asked) {
    List<Dwell> dwells = new ArrayList<>();
    for (Setting setting : settings) {
      double least = 0;
      double most = Double.MAX_VALUE;
      for (OvenProfile oven : ovens) {
        PlanDwell thick = dwell(oven, asked.walls.thickest(), asked.window, setting.celsius());
        PlanDwell thin = dwell(oven, asked.walls.thinnest(), asked.window, setting.celsius());
        least = Math.max(least, thick.minMin() + oven.recoveryMin());
        most = Math.min(most, Math.min(LONGEST_MIN, thin.maxMin() + oven.recoveryMin()));
      }
      if (Double.isFinite(least) && Math.ceil(least) <= Math.floor(most)) {
        dwells.add(new Dwell(setting.index(), (int) Math.ceil(least), (int) Math.floor(most)));
      }
    }
    return List.copyOf(dwells);
  }

  /** Window of the degassing bake: the first setting hot enough; zinc does not overbake. */
  List<Dwell> degas(Walls walls, double leastC, int provenMin) {
    for (Setting setting : settings) {
      if (setting.celsius() >= leastC) {
        double least = 0;
        for (OvenProfile oven : ovens) {
          DegassingBake bake = bake(oven, walls.thickest(), setting.celsius(), provenMin);
          least = Math.max(least, bake.minMinutes() + oven.recoveryMin());
        }
        return List.of(new Dwell(setting.index(), (int) Math.ceil(least), LONGEST_MIN));
      }
    }
    return List.of();
  }

  DegassingBake bake(OvenProfile oven, HeatedPart part, double ovenC, int provenMin) {
    return DegassingBake.of(part, OvenEnergy.HALL_C, ovenC, provenMin, table(oven));
  }

  PlanDwell dwell(OvenProfile oven, HeatedPart part, CureWindow window, double ovenC) {
    return PlanDwell.of(
        part,
        new ConvectionRadiation(oven.convectionWM2K(), ConvectionRadiation.COATED_EMISSIVITY),
        window,
        OvenEnergy.HALL_C,
        ovenC,
        table(oven));
  }

  /** The oven's own measurements, else the shop's rule of minutes per mm. */
  private HeatUpTable table(OvenProfile oven) {
    if (oven.heatUp().isEmpty()) {
      return new HeatUpTable(List.of(new HeatUpTable.Row(Metal.STEEL, 1, ruleMinPerMm)));
    }
    return new HeatUpTable(
        oven.heatUp().stream()
            .map(p -> new HeatUpTable.Row(Metal.STEEL, p.thicknessMm(), p.minutes()))
            .toList());
  }

  /** The data sheet's cure as a window; a first coat takes a share of its minutes. */
  static CureWindow window(Cure cure, double share) {
    return new CureWindow(
        cure.points().stream().map(p -> new CurePoint(p.celsius(), p.minutes() * share)).toList(),
        cure.maxMin());
  }

  /** The thinnest and thickest wall of a part, both faces in moving air. */
  record Walls(HeatedPart thinnest, HeatedPart thickest) {
    static Walls of(Material material, double thinnestMm, double thickestMm) {
      Metal metal = material == Material.ALUMINIUM ? Metal.ALUMINIUM : Metal.STEEL;
      return new Walls(
          HeatedPart.bothSides(metal, thinnestMm), HeatedPart.bothSides(metal, thickestMm));
    }
  }
}
