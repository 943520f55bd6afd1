package spangle.desk;

import java.util.List;
import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenEnergy;
import spangle.equipment.OvenProfile;
import spangle.part.Material;
import spangle.plan.CarrierSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** Energy one oven batch takes, from what a profile tells of its oven. */
final class BatchEnergy {
  private BatchEnergy() {}

  /** Energy in kWh: parts, carriers, walls, exhaust, as the profile tells of the oven. */
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
    return OvenEnergy.of(oven, Metal.STEEL, steelKg, carriersKg, OvenEnergy.HALL_C, ovenC, stay)
            .totalKWh()
        + OvenEnergy.of(oven, Metal.ALUMINIUM, aluminiumKg, 0, OvenEnergy.HALL_C, ovenC, 0)
            .totalKWh();
  }

  private static OvenEnergy.Oven oven(OvenProfile profile) {
    return new OvenEnergy.Oven(profile.wallWM2K(), profile.wallM2(), profile.exhaustM3H(), 1);
  }
}
