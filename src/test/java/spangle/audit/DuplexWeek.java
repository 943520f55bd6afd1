package spangle.audit;

import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import spangle.plan.Brief;
import spangle.plan.LoadBuilder;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;
import spangle.plan.Supply;

/**
 * A small week without slack: whatever starts a minute sooner, takes a minute less or loses a name
 * breaks a rule.
 */
final class DuplexWeek {
  private DuplexWeek() {}

  static Brief brief() {
    return yard()
        .lots(
            powderLot("A").ready(360).due(500),
            powderLot("B").ready(360).yellow().due(500),
            powderLot("C").ready(360).yellow().due(500),
            zincLot("Z").ready(360).earlierLeg(),
            powderLot("D").yellow().after("Z", 34, 40),
            powderLot("E").due(500))
        .supply("powder-grey", new Supply.Arrival(0, 0.4, "K1"))
        .supply("powder-yellow", new Supply.Arrival(385, 1.2, "Y1"))
        .longestWaitAfter("flux", 0)
        .build();
  }

  static Plan plan(Brief brief) {
    LoadBuilder both =
        load("P02", "rack", "B", "C")
            .number(2)
            .visit("hang", 2, 360, 360, 370)
            .visit("booth", 1, 375, 385, 395)
            .visit("unload", 415, 420)
            .row("B", 4, 60)
            .row("C", 4, 460);
    LoadBuilder duplex =
        load("P03", "rack", "D")
            .visit("hang", 440, 450)
            .visit("booth", 450, 455)
            .visit("unload", 475, 480)
            .row("D", 4, 60);
    List<PlannedBatch> batches =
        List.of(
            simpleBake("oven-1 #1", "P01", 360, "A"),
            bake("oven-1 #2", "oven-1", 0, 395, 415, both),
            bake("oven-1 #3", "oven-1", 0, 455, 475, duplex),
            simpleDip("kettle #1", "Z01", 360, "Z"));
    return Audited.counted(brief, PlanFixtures.plan(batches, List.of(leftOut("E"))));
  }
}
