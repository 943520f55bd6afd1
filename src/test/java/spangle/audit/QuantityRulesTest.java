package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.audit.Audited.breaks;
import static spangle.audit.Audited.keeps;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleLoad;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.LeftOut;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;

class QuantityRulesTest {
  private final PlannedBatch first = simpleBake("oven-1 #1", "P01", 360, "A");

  @Test
  void aLotInOneLoadIsRight() {
    keeps(yard().lots(powderLot("A")), first);
  }

  @Test
  void aLotInNoLoadIsLost() {
    breaks(
        "every-lot-once",
        "4 pieces stand in 0 loads and 0 times",
        yard().lots(powderLot("A"), powderLot("B")),
        first);
  }

  @Test
  void aLotInTwoLoadsIsCountedTwice() {
    breaks(
        "every-lot-once",
        "stand in 2 loads",
        yard().lots(powderLot("A")),
        first,
        simpleBake("oven-1 #2", "P02", 400, "A"));
  }

  @Test
  void aLotLeftOutWithItsReasonIsRight() {
    Brief brief = yard().lots(powderLot("A"), powderLot("B")).build();
    assertThat(Audited.findings(brief, plan(List.of(first), List.of(leftOut("B"))))).isEmpty();
  }

  @Test
  void aLotBothPlannedAndLeftOutIsWrong() {
    Brief brief = yard().lots(powderLot("A")).build();
    breaks(
        "every-lot-once", "1 load and 1 time", brief, plan(List.of(first), List.of(leftOut("A"))));
  }

  @Test
  void leftOutWithoutReasonIsWrong() {
    Brief brief = yard().lots(powderLot("A"), powderLot("B")).build();
    LeftOut silent = new LeftOut("B", "no-room", " ", OptionalInt.empty());
    breaks("every-lot-once", "without a reason", brief, plan(List.of(first), List.of(silent)));
  }

  @Test
  void leavingOutWhatWasNeverThereIsWrong() {
    Brief brief = yard().lots(powderLot("A")).build();
    breaks(
        "every-lot-once", "knows no such lot", brief, plan(List.of(first), List.of(leftOut("Z"))));
  }

  @Test
  void aLotTheBriefDoesNotKnowIsNamed() {
    List<Finding> findings = Audited.findings(yard(), first);
    assertThat(findings).extracting(Finding::rule).containsExactly("names-known");
    assertThat(findings.get(0).words()).contains("knows no lot \"A\"");
  }

  @Test
  void everyUnknownNameIsNamed() {
    Brief brief = yard().lots(powderLot("A")).build();
    PlannedBatch strange =
        PlanFixtures.batch(
            "b",
            "paint",
            "oven-9",
            7,
            375,
            375,
            395,
            PlanFixtures.load("P01", "sled", "A").visit("sauna", 360, 370));
    assertThat(Audited.findings(brief, plan(strange)))
        .extracting(Finding::words)
        .anySatisfy(words -> assertThat(words).contains("no machine \"oven-9\""))
        .anySatisfy(words -> assertThat(words).contains("no setting number 7"))
        .anySatisfy(words -> assertThat(words).contains("no carrier \"sled\""))
        .anySatisfy(words -> assertThat(words).contains("no station \"sauna\""));
    PlannedBatch nowhere = PlanFixtures.batch("b", "tin", "oven-1", 0, 375, 375, 395);
    assertThat(Audited.findings(brief, plan(nowhere)))
        .extracting(Finding::words)
        .anySatisfy(words -> assertThat(words).contains("no line \"tin\""));
    PlannedBatch empty = PlanFixtures.batch("b", "paint", "oven-1", 0, 375, 375, 395);
    assertThat(Audited.findings(brief, plan(empty)))
        .extracting(Finding::words)
        .anySatisfy(words -> assertThat(words).contains("holds no load"));
  }

  @Test
  void twoLoadsOfOneNumberAreConfused() {
    breaks(
        "names-known",
        "two loads carry this number",
        yard().lots(powderLot("A"), powderLot("B")),
        first,
        simpleBake("oven-1 #2", "P01", 400, "B"));
  }

  @Test
  void twoBatchesOfOneNumberAreConfused() {
    breaks(
        "names-known",
        "two batches carry this number",
        yard().lots(powderLot("A"), powderLot("B")),
        first,
        simpleBake("oven-1 #1", "P02", 400, "B"));
  }

  @Test
  void batchesStandInTheOrderOfTheirStart() {
    breaks(
        "plan-in-order",
        "starts sooner",
        yard().lots(powderLot("A"), powderLot("B")),
        simpleBake("oven-1 #2", "P02", 400, "B"),
        first);
  }

  @Test
  void batchesOfOneMachineStandTogether() {
    PlannedBatch other =
        PlanFixtures.bake("oven-2 #1", "oven-2", 0, 415, 435, simpleLoad("P02", 400, "B"));
    breaks(
        "plan-in-order",
        "does not stand with the other batches",
        yard().lots(powderLot("A"), powderLot("B"), powderLot("C")),
        first,
        other,
        simpleBake("oven-1 #2", "P03", 440, "C"));
  }
}
