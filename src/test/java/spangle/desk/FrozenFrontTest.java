package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.equipment.Span;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.EventKind;
import spangle.plan.event.EventLog;
import spangle.plan.event.Said;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFiles;

/**
 * At minute 390, A hangs on rack 1 for oven 1 and B on rack 2 for oven 2; C is to join B in oven 2
 * on rack 1, from 420 on, when A is off it.
 */
class FrozenFrontTest {
  private static final int AT = 390;
  private static final PlannedBatch FIRST =
      bake(
          "oven-1 #1",
          "oven-1",
          0,
          395,
          415,
          load("P1", "rack", "A")
              .visit("hang", 365, 375)
              .visit("booth", 375, 380)
              .visit("unload", 415, 420));
  private static final PlannedBatch SECOND =
      bake(
          "oven-2 #1",
          "oven-2",
          0,
          435,
          455,
          load("P2", "rack", "B")
              .number(2)
              .visit("hang", 380, 390)
              .visit("booth", 395, 400)
              .visit("unload", 455, 460),
          load("P3", "rack", "C")
              .number(1)
              .visit("hang", 420, 430)
              .visit("booth", 430, 435)
              .visit("unload", 460, 465));

  private static BriefBuilder week() {
    return yard().lots(powderLot("A"), powderLot("B"), powderLot("C"));
  }

  private static FrozenFront front(Brief now) {
    Plan before = plan(FIRST, SECOND);
    PlanFile kept = PlanFiles.of(week().build(), before);
    EventLog log = new Said().load(375, EventKind.HUNG, "P1").load(390, EventKind.HUNG, "P2").log();
    WeekState state = WeekState.of(kept.brief(), before, log, 0, AT);
    FrozenFront front = new FrozenFront(kept, now, state, log.events(), 0, AT);
    front.freeze(AT);
    return front;
  }

  private static List<String> loads(List<PlannedBatch> batches) {
    return batches.stream().flatMap(b -> b.loads().stream()).map(PlannedLoad::id).toList();
  }

  @Test
  void whatIsStillToHangJoinsItsBatchWhenItsCarrierIsBack() {
    FrozenFront front = front(week().build());
    assertThat(loads(front.frozen())).containsExactly("P1", "P2", "P3");
    assertThat(front.open()).isEmpty();
  }

  @Test
  void whatIsStillToHangDoesNotWaitForACarrierThatIsLate() {
    // Oven 1 is shut until 500: A stays on rack 1 until 525.
    Brief broken =
        week()
            .machine("oven-1", m -> m.during(m.calendar().without(new Span(AT - 10, 500))))
            .build();
    FrozenFront front = front(broken);
    assertThat(loads(front.frozen())).containsExactlyInAnyOrder("P1", "P2");
    assertThat(loads(front.open())).containsExactly("P3");
  }

  /** Two hang in one minute; the one whose name comes later is the first in booth and oven. */
  @Test
  void whatBeginsInOneMinuteStaysInTheOrderInWhichItPassesTheStations() {
    PlannedBatch large =
        bake(
            "oven-1 #1",
            "oven-1",
            0,
            430,
            450,
            load("P1", "rack", "A")
                .visit("hang", 390, 400)
                .visit("booth", 405, 410)
                .visit("unload", 450, 455),
            load("P2", "rack", "B")
                .number(2)
                .visit("hang", 400, 410)
                .visit("booth", 420, 430)
                .visit("unload", 455, 460));
    PlannedBatch small =
        bake(
            "oven-2 #1",
            "oven-2",
            0,
            405,
            425,
            load("P3", "rack", "C")
                .number(3)
                .visit("hang", 2, 390, 390, 395)
                .visit("booth", 395, 400)
                .visit("unload", 425, 430));
    Plan before = plan(large, small);
    PlanFile kept = PlanFiles.of(week().build(), before);
    EventLog log = new Said().log();
    WeekState state = WeekState.of(kept.brief(), before, log, 0, AT);

    FrozenFront front = new FrozenFront(kept, kept.brief(), state, log.events(), 0, AT);
    front.freeze(450);

    assertThat(loads(front.frozen())).containsExactlyInAnyOrder("P1", "P2", "P3");
    assertThat(front.open()).isEmpty();
  }
}
