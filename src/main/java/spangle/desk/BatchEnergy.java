package spangle.desk;

import java.util.List;
import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenEnergy;
import spangle.coating.heat.OvenPanel;
import spangle.equipment.OvenProfile;
import spangle.measure.Box;
import spangle.part.Material;
import spangle.plan.CarrierSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Energy one oven batch takes, from what a profile tells of its oven. */
final class BatchEnergy {
  private static final double ROOM_C = 20;

  private BatchEnergy() {}

  /** Energy in kWh: parts, carriers, walls of 100 mm panels, usual exhaust. */
  static double kWh(
      PlannedBatch batch,
      OvenProfile profile,
      double ovenC,
      WeekIndex index,
      List<CarrierSpec> carriers) {
    double steelKg = 0;
    double aluminiumKg = 0;
    double carriersKg = 0;
    for (PlannedLoad load : batch.loads()) {
      carriersKg +=
          carriers.stream()
              .filter(c -> c.id().equals(load.carrierId()))
              .mapToDouble(CarrierSpec::ownMassKg)
              .sum();
      for (String id : load.lotIds()) {
        Lot lot = index.lot(id);
        if (index.part(lot).material() == Material.ALUMINIUM) {
          aluminiumKg += lot.massKg();
        } else {
          steelKg += lot.massKg();
        }
      }
    }
    OvenEnergy.Oven oven = oven(profile);
    double stay = batch.dwellMin();
    return OvenEnergy.of(oven, Metal.STEEL, steelKg, carriersKg, ROOM_C, ovenC, stay).totalKWh()
        + OvenEnergy.of(oven, Metal.ALUMINIUM, aluminiumKg, 0, ROOM_C, ovenC, 0).totalKWh();
  }

  private static OvenEnergy.Oven oven(OvenProfile profile) {
    Box in = profile.inside();
    double l = in.lengthMm() / 1000;
    double w = in.widthMm() / 1000;
    double h = in.heightMm() / 1000;
    return new OvenEnergy.Oven(
        OvenPanel.MM_100,
        2 * (l * w + l * h + w * h),
        OvenEnergy.USUAL_AIR_CHANGES_PER_HOUR * l * w * h,
        1);
  }
}
