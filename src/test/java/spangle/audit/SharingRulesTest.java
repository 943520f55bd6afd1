package spangle.audit;

import static spangle.audit.Audited.breaks;
import static spangle.audit.Audited.keeps;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleLoad;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import org.junit.jupiter.api.Test;
import spangle.plan.Dwell;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;

class SharingRulesTest {
  private final PlannedBatch first = simpleBake("oven-1 #1", "P01", 360, "A");

  /** Lots A and B on one rack in two rows: 10 minutes in the booth. */
  private static PlannedBatch shared(int setting, int dwellMin) {
    int in = 380;
    return bake(
        "oven-1 #1",
        "oven-1",
        setting,
        in,
        in + dwellMin,
        load("P01", "rack", "A", "B")
            .visit("hang", 360, 370)
            .visit("booth", 370, 380)
            .visit("unload", in + dwellMin, in + dwellMin + 5)
            .row("A", 4, 60)
            .row("B", 4, 460));
  }

  /**
   * Lots A and B on two racks, one behind the other through booth and unloading, one oven batch.
   */
  private static PlannedBatch together(int dwellMin) {
    int out = 385 + dwellMin;
    return bake(
        "oven-1 #1",
        "oven-1",
        0,
        385,
        out,
        load("P01", "rack", "A")
            .visit("hang", 360, 370)
            .visit("booth", 370, 375)
            .visit("unload", out, out + 5)
            .row("A", 4, 60),
        load("P02", "rack", "B")
            .number(2)
            .visit("hang", 2, 365, 365, 375)
            .visit("booth", 375, 380)
            .visit("unload", out + 5, out + 10)
            .row("B", 4, 60));
  }

  @Test
  void aLotRunsOnItsOwnLine() {
    breaks(
        "lot-on-its-line",
        "its route says outside",
        yard().lots(powderLot("A").line("outside")),
        first);
  }

  @Test
  void aLotKeepsToItsOvens() {
    keeps(yard().lots(powderLot("A").machines("oven-1")), first);
    breaks(
        "lot-may-use-machine",
        "it may use [oven-2]",
        yard().lots(powderLot("A").machines("oven-2")),
        first);
  }

  @Test
  void aLotKeepsToItsCarriers() {
    keeps(yard().lots(powderLot("A").carriers("frame", "rack")), first);
    breaks(
        "lot-may-use-carrier",
        "it may use [frame]",
        yard().lots(powderLot("A").carriers("frame")),
        first);
  }

  @Test
  void aCarrierKeepsToItsLine() {
    PlannedBatch onBeam =
        bake("oven-1 #1", "oven-1", 0, 375, 395, simpleLoad("P01", 360, "A").carrier("beam"));
    breaks(
        "lot-may-use-carrier",
        "belongs to zinc",
        yard().lots(powderLot("A").carriers("beam")),
        onBeam);
  }

  @Test
  void oneColourOnOneRack() {
    keeps(yard().lots(powderLot("A"), powderLot("B")), shared(0, 20));
    Finish other = new Finish(0, "grey/lot 7", "shelter grey", FinishKind.POWDER, "powder-grey");
    breaks(
        "one-finish-per-load",
        "(B) together",
        yard().lots(powderLot("A"), powderLot("B").finish(other)),
        shared(0, 20));
  }

  @Test
  void aLoneLotSharesNoRack() {
    keeps(yard().lots(powderLot("A").alone()), first);
    breaks(
        "alone-means-alone",
        "shares P01 with 1 other lot",
        yard().lots(powderLot("A").alone(), powderLot("B")),
        shared(0, 20));
  }

  @Test
  void wetPaintAndPowderNeverShareAnOven() {
    keeps(yard().lots(powderLot("A"), powderLot("B")), together(20));
    breaks(
        "one-kind-of-work",
        "powder together with wet",
        yard().lots(powderLot("A"), powderLot("B").batchGroup("wet")),
        together(20));
  }

  @Test
  void theSettingSuitsEveryLot() {
    keeps(yard().lots(powderLot("A"), powderLot("B").dwells(new Dwell(0, 5, 30))), shared(0, 20));
    breaks(
        "setting-suits-every-lot",
        "cannot run at 180 C",
        yard().lots(powderLot("A"), powderLot("B").dwells(new Dwell(1, 5, 30))),
        shared(0, 20));
  }

  @Test
  void theHeaviestLotCures() {
    keeps(yard().lots(powderLot("A"), powderLot("B").dwells(new Dwell(0, 25, 60))), together(25));
    breaks(
        "dwell-inside-every-window",
        "stays in 24 min; B needs 25",
        yard().lots(powderLot("A"), powderLot("B").dwells(new Dwell(0, 25, 60))),
        together(24));
  }

  @Test
  void theLightestLotIsNotOverbaked() {
    keeps(yard().lots(powderLot("A"), powderLot("B").dwells(new Dwell(0, 8, 24))), together(24));
    breaks(
        "dwell-inside-every-window",
        "stays in 25 min; B bears 24",
        yard().lots(powderLot("A"), powderLot("B").dwells(new Dwell(0, 8, 24))),
        together(25));
  }

  @Test
  void zincWorkKeepsItsLine() {
    keeps(yard().lots(zincLot("Z")), PlanFixtures.simpleDip("kettle #1", "Z01", 360, "Z"));
  }
}
