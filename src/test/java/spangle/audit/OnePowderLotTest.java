package spangle.audit;

import static spangle.audit.Audited.breaks;
import static spangle.audit.Audited.keeps;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleLoad;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.BriefBuilder;
import spangle.plan.Kit;
import spangle.plan.LotBuilder;
import spangle.plan.PlannedBatch;
import spangle.plan.Supply.Arrival;

/** Two lots of 0.4 kg for one kit that is due Tuesday 14:00 and asks for one lot of powder. */
class OnePowderLotTest {
  private static final Kit KIT = new Kit("K", "gate set", 1, 2280, 1, true, List.of());

  private static final PlannedBatch[] PLAN = {
    simpleBake("oven-1 #1", "P01", 360, "A"),
    bake("oven-2 #1", "oven-2", 0, 415, 435, simpleLoad("P02", 400, "B"))
  };

  private static BriefBuilder week(String lotOfA, String lotOfB) {
    return yard().lots(lot("A", lotOfA), lot("B", lotOfB)).kit(KIT);
  }

  private static LotBuilder lot(String id, String powderLot) {
    LotBuilder lot = powderLot(id).kits("K");
    return powderLot.isEmpty() ? lot : lot.fromLot(powderLot);
  }

  @Test
  void aKitIsNotSprayedFromTwoLots() {
    BriefBuilder both =
        week("K1", "K2")
            .kept("powder-grey", "K1", new Arrival(0, 0.4, "K1"))
            .kept("powder-grey", "K2", new Arrival(0, 0.4, "K2"));
    breaks("one-powder-lot", "come from lots K1 and K2", both, PLAN);
    keeps(week("K1", "K1").kept("powder-grey", "K1", new Arrival(0, 0.8, "K1")), PLAN);
  }

  @Test
  void whatIsKeptUnderALotsNameIsThatLot() {
    BriefBuilder mixed =
        week("K1", "K1")
            .kept("powder-grey", "K1", new Arrival(0, 0.4, "K1"), new Arrival(0, 0.4, "K2"));
    breaks("one-powder-lot", "lot K1, which is not kept for it", mixed, PLAN);
  }

  @Test
  void aLotThatHoldsTheKitInTimeIsNotPassedOver() {
    breaks(
        "one-powder-lot",
        "may come from any lot; K2 holds them",
        week("", "").supply("powder-grey", new Arrival(0, 0.7, "K1"), new Arrival(0, 0.8, "K2")),
        PLAN);
    keeps(
        week("", "").supply("powder-grey", new Arrival(0, 0.7, "K1"), new Arrival(0, 0.7, "K2")),
        PLAN);
    keeps(
        week("", "")
            .supply(
                "powder-grey",
                new Arrival(0, 0.7, "K1"),
                new Arrival(0, 0.1, "K3"),
                new Arrival(2281, 9, "K2")),
        PLAN);
  }

  @Test
  void nothingIsSprayedBeyondWhatIsKept() {
    breaks(
        "supplies-there",
        "draws 0.4",
        week("K1", "K1")
            .supply("powder-grey", new Arrival(0, 9, "K2"))
            .kept("powder-grey", "K1", new Arrival(0, 0.7, "K1")),
        PLAN);
  }
}
