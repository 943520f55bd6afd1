package spangle.plan.event;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.Map;
import org.junit.jupiter.api.Test;
import spangle.plan.PlannedBatch;

/** How what was reported moves the times of what stays. */
class SlippageTest {
  private static final PlannedBatch LATE = simpleBake("oven-1 #1", "P1", 360, "A");

  private static PlannedBatch doneAt(int minute) {
    LoadState done = LoadState.planned("P1", "oven-1 #1").at(Stage.DONE, minute);
    return new Slippage(yard().lots(powderLot("A")).build(), 410).settle(LATE, Map.of("P1", done));
  }

  private static int last(PlannedBatch batch) {
    return LoadTimes.last(batch, batch.loads().get(0));
  }

  @Test
  void whatIsDoneSoonerThanPlannedWasSoonerAllAlong() {
    int sooner = last(LATE) - 390;
    PlannedBatch settled = doneAt(390);
    assertThat(last(settled)).isEqualTo(390);
    assertThat(settled.startMin()).isEqualTo(LATE.startMin() - sooner);
  }

  @Test
  void nothingBeganBeforeTheWeekDid() {
    PlannedBatch settled = doneAt(5);
    assertThat(settled.setupStartMin()).isNotNegative();
    assertThat(settled.dwellMin()).isEqualTo(LATE.dwellMin());
    // Hang 0 to 10, booth to 15, oven to 35, off by 40: one after the other from zero on.
    assertThat(LoadTimes.first(settled)).isZero();
    assertThat(settled.startMin()).isEqualTo(15);
    assertThat(last(settled)).isEqualTo(40);
  }
}
