package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.audit.Audited.breaks;
import static spangle.audit.Audited.keeps;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.simpleLoad;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.BriefBuilder;
import spangle.plan.CarrierSpec;
import spangle.plan.Finding;
import spangle.plan.LoadBuilder;
import spangle.plan.PlannedBatch;
import spangle.plan.Supply;

class RouteAndResourceRulesTest {
  /** On rack 1, reported there until 485. */
  private static final PlannedBatch HELD =
      bake(
          "oven-1 #1",
          "oven-1",
          0,
          375,
          395,
          load("P01", "rack", "A")
              .visit("hang", 360, 370)
              .visit("booth", 370, 375)
              .visit("unload", 480, 485)
              .row("A", 4, 60));

  private final PlannedBatch first = simpleBake("oven-1 #1", "P01", 360, "A");

  /** Zinc from 360 to 406, then powder: duplex. */
  private static BriefBuilder duplex(int minGapMin, int maxGapMin) {
    return yard().lots(zincLot("Z").earlierLeg(), powderLot("A").after("Z", minGapMin, maxGapMin));
  }

  private static PlannedBatch[] duplexFrom(int powderMin) {
    return new PlannedBatch[] {
      simpleBake("oven-1 #1", "P01", powderMin, "A"), simpleDip("kettle #1", "Z01", 360, "Z")
    };
  }

  @Test
  void powderFollowsZincInsideItsWindow() {
    keeps(duplex(30, 60), duplexFrom(436));
    keeps(duplex(30, 60), duplexFrom(466));
    breaks(
        "leg-after-leg",
        "starts 29 min after Z ended; at least 30",
        duplex(30, 60),
        duplexFrom(435));
    breaks(
        "leg-after-leg",
        "starts 61 min after Z ended; at most 60",
        duplex(30, 60),
        duplexFrom(467));
  }

  @Test
  void noPowderWithoutItsZinc() {
    breaks(
        "leg-after-leg",
        "the leg before it, Z, is not",
        duplex(30, 60).build(),
        plan(List.of(simpleBake("oven-1 #1", "P01", 466, "A")), List.of(leftOut("Z"))));
  }

  private static BriefBuilder twoLots() {
    return yard().lots(powderLot("A"), powderLot("B"));
  }

  /** Lot B on that rack, hung at place 2 from that minute, 15 minutes behind at the earliest. */
  private static PlannedBatch behind(int number, int startMin) {
    return bake(
        "oven-2 #1",
        "oven-2",
        0,
        startMin + 15,
        startMin + 35,
        simpleLoad("P02", startMin, "B").number(number));
  }

  @Test
  void aRackCarriesOneLoadAtATime() {
    keeps(twoLots(), first, behind(1, 400));
    keeps(twoLots(), first, behind(2, 370));
    breaks(
        "carrier-in-one-place", "rack number 1 from Mon 06:10", twoLots(), first, behind(1, 370));
  }

  @Test
  void aRackThatDoesNotExistCarriesNothing() {
    breaks(
        "carrier-in-one-place",
        "number 3 of rack; the shop owns 2",
        twoLots(),
        first,
        behind(3, 370));
  }

  @Test
  void aRackReportedWithTwoLoadsIsFreeWhenBothAreOff() {
    PlannedBatch off = behind(1, 380);
    BriefBuilder brief =
        yard().lots(powderLot("A"), powderLot("B"), powderLot("C")).frozen(HELD, off);
    keeps(brief, HELD, simpleBake("oven-1 #2", "P03", 485, "C"), off);
    breaks(
        "carrier-in-one-place",
        "rack number 1 from Mon 07:10; it is free after P01 from Mon 08:05",
        brief,
        HELD,
        simpleBake("oven-1 #2", "P03", 430, "C"),
        off);
  }

  @Test
  void aRackReportedWithTwoLoadsIsOneRack() {
    PlannedBatch later =
        bake("oven-1 #2", "oven-1", 0, 445, 465, simpleLoad("P03", 430, "C").number(2));
    BriefBuilder same =
        yard().lots(powderLot("A"), powderLot("B"), powderLot("C")).frozen(HELD, behind(1, 410));
    keeps(same, HELD, later, behind(1, 410));
    BriefBuilder two =
        yard().lots(powderLot("A"), powderLot("B"), powderLot("C")).frozen(HELD, behind(2, 410));
    assertThat(Audited.findings(two, HELD, later, behind(2, 410)))
        .extracting(Finding::rule)
        .contains("carriers-enough");
  }

  private static CarrierSpec owned(CarrierSpec c, int owned, int stripAfter, int stripMin) {
    return new CarrierSpec(
        c.id(),
        c.name(),
        c.lineId(),
        c.face(),
        owned,
        c.floorUnits(),
        c.ownMassKg(),
        stripAfter,
        stripMin);
  }

  @Test
  void noMoreRacksInUseThanOwned() {
    List<Finding> findings =
        Audited.findings(twoLots().carrier("rack", c -> owned(c, 1, 0, 0)), first, behind(2, 370));
    assertThat(findings)
        .extracting(Finding::rule)
        .containsExactly("carrier-in-one-place", "carriers-enough");
    assertThat(findings.get(1).words()).contains("is number 2 of rack in use at Mon 06:10");
    keeps(twoLots().carrier("rack", c -> owned(c, 1, 0, 0)), first, behind(1, 400));
  }

  @Test
  void aStrippedRackIsAway() {
    BriefBuilder brief = twoLots().carrier("rack", c -> owned(c, 2, 1, 30));
    keeps(brief, first, behind(1, 430));
    breaks(
        "carrier-in-one-place", "and its stripping from Mon 07:10", brief, first, behind(1, 429));
    keeps(twoLots().carrier("rack", c -> owned(c, 2, 2, 30)), first, behind(1, 400));
  }

  @Test
  void noPowderIsSprayedBeforeItIsThere() {
    // Both lots draw 0.4 kg, at 370 and 410.
    keeps(twoLots().supply("powder-grey", new Supply.Arrival(0, 0.8, "K1")), first, behind(1, 400));
    keeps(
        twoLots()
            .supply(
                "powder-grey",
                new Supply.Arrival(0, 0.4, "K1"),
                new Supply.Arrival(410, 0.4, "K2")),
        first,
        behind(1, 400));
    breaks(
        "supplies-there",
        "draws 0.4 of powder-grey at Mon 06:50; 0.3 are there",
        twoLots()
            .supply(
                "powder-grey", new Supply.Arrival(0, 0.7, "K1"), new Supply.Arrival(411, 9, "K2")),
        first,
        behind(1, 400));
  }

  @Test
  void anotherPowderDoesNotHelp() {
    breaks(
        "supplies-there",
        "0 are there",
        yard()
            .lots(powderLot("A"))
            .supply("powder-grey")
            .supply("powder-yellow", new Supply.Arrival(0, 50, "Y1")),
        first);
  }

  @Test
  void whatHasStartedStaysAsItWas() {
    keeps(yard().lots(powderLot("A")).frozen(first), first);
    PlannedBatch later = simpleBake("oven-1 #1", "P01", 361, "A");
    breaks(
        "frozen-untouched",
        "is not in the plan as it was",
        yard().lots(powderLot("A")).frozen(first),
        later);
  }

  @Test
  void whatHasStartedStandsFirst() {
    PlannedBatch second = simpleBake("oven-1 #2", "P02", 400, "B");
    breaks("frozen-untouched", "comes before oven-1 #2", twoLots().frozen(second), first, second);
    keeps(twoLots().frozen(first), first, second);
  }

  @Test
  void whatHasStartedIsFactAndNotJudged() {
    // Ready later than it was really hung: the count came in after the fact.
    keeps(yard().lots(powderLot("A").ready(500)).frozen(first), first);
  }

  @Test
  void whatFollowsRespectsWhatHasStarted() {
    LoadBuilder onTop =
        load("P02", "rack", "B")
            .number(2)
            .visit("hang", 2, 360, 360, 370)
            .visit("booth", 375, 380)
            .visit("unload", 414, 419)
            .row("B", 4, 60);
    breaks(
        "one-batch-at-a-time",
        "is free after oven-1 #1 from Mon 06:35",
        twoLots().frozen(first),
        first,
        bake("oven-1 #2", "oven-1", 0, 394, 414, onTop));
  }
}
