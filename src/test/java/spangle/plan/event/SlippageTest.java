package spangle.plan.event;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.Map;
import org.junit.jupiter.api.Test;
import spangle.equipment.Span;
import spangle.plan.Brief;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;

/** P1 hangs 360-370, booth 370-375, oven 375-395, unloading 395-400. */
class SlippageTest {
  private static final PlannedBatch BATCH = simpleBake("oven-1 #1", "P1", 360, "A");

  private static Map<String, LoadState> state(Stage stage, int atMin) {
    LoadState planned = LoadState.planned("P1", "oven-1 #1");
    return Map.of("P1", stage == Stage.PLANNED ? planned : planned.at(stage, atMin));
  }

  private static Brief ovenShut(int fromMin, int untilMin) {
    return yard()
        .lots(powderLot("A"))
        .machine(
            "oven-1",
            m ->
                new MachineSpec(
                    m.id(),
                    m.name(),
                    m.capacityUnits(),
                    m.maxMassKg(),
                    m.calendar().without(new Span(fromMin, untilMin)),
                    m.initialSetting(),
                    m.turnaroundMin(),
                    m.kgPerHour()))
        .build();
  }

  @Test
  void whatHangsInTimeRunsAsPlanned() {
    Brief brief = yard().lots(powderLot("A")).build();
    assertThat(new Slippage(brief, 372).settle(BATCH, state(Stage.HUNG, 370))).isEqualTo(BATCH);
  }

  @Test
  void whatHangsWaitsForABrokenOvenAndNothingElseOfItChanges() {
    // At 372 it is in the booth; the oven is shut until 450.
    PlannedBatch late = new Slippage(ovenShut(372, 450), 372).settle(BATCH, state(Stage.HUNG, 370));
    assertThat(late.startMin()).isEqualTo(450);
    assertThat(late.endMin()).isEqualTo(470);
    assertThat(late.loads().get(0).lotIds()).containsExactly("A");
    assertThat(late.loads().get(0).visits())
        .extracting(v -> v.stationId() + " " + v.startMin())
        .containsExactly("hang 360", "booth 370", "unload 470");
  }

  @Test
  void whatWentInLaterComesOutLater() {
    Brief brief = yard().lots(powderLot("A")).build();
    PlannedBatch late = new Slippage(brief, 390).settle(BATCH, state(Stage.IN_PROCESS, 385));
    assertThat(late.startMin()).isEqualTo(385);
    assertThat(late.endMin()).isEqualTo(405);
    assertThat(late.loads().get(0).visits().get(2).startMin()).isEqualTo(405);
  }

  @Test
  void twoThatHangDoNotMeetInOneOven() {
    Brief brief = yard().lots(powderLot("A"), powderLot("B")).build();
    Slippage slippage = new Slippage(brief, 390);
    slippage.settle(BATCH, state(Stage.IN_PROCESS, 385));
    // Planned for 400 in the oven; the first one leaves it only at 405.
    PlannedBatch second = simpleBake("oven-1 #2", "P2", 385, "B");
    LoadState hung = LoadState.planned("P2", "oven-1 #2").at(Stage.HUNG, 388);
    assertThat(slippage.settle(second, Map.of("P2", hung)).startMin()).isEqualTo(405);
  }

  @Test
  void nothingOfThePastFitsAsItIs() {
    Brief brief = yard().lots(powderLot("A")).build();
    assertThat(new Slippage(brief, 360).fits(BATCH)).isTrue();
    assertThat(new Slippage(brief, 361).fits(BATCH)).isFalse();
    assertThat(new Slippage(ovenShut(380, 450), 360).fits(BATCH)).isFalse();
  }
}
