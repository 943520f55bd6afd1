package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.Dwell;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Supply;

/**
 * New lots put into a kept plan of the yard shop. A grey lot takes 10 minutes of hanging (two
 * places), 5 in the booth, 20 in one of two ovens at 180 C, 5 of unloading (one place).
 */
class InserterTest {
  private static Plan solved(Brief brief) {
    Plan plan = new Solver().solve(brief, new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY);
    assertThat(Audit.of(brief, plan)).isEmpty();
    return plan;
  }

  private static int end(Plan plan, String lotId) {
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (load.lotIds().contains(lotId)) {
          return load.visits().stream()
              .mapToInt(PlannedLoad.PlannedVisit::endMin)
              .max()
              .orElse(batch.endMin());
        }
      }
    }
    return -1;
  }

  @Test
  void besideAnAnnouncedLoadNothingMoves() {
    BriefBuilder week = yard().lots(powderLot("a"));
    Plan kept = solved(week.build());
    assertThat(end(kept, "a")).isEqualTo(400);
    Brief more = week.lots(powderLot("n")).build();

    Inserted in =
        new Inserter(more, kept).insert(List.of("n"), Freedom.NOTHING_MOVES).orElseThrow();

    // hang 360, booth 375 behind a, oven 2 at 380, unloading behind a at 400
    assertThat(in.endMin()).isEqualTo(405);
    assertThat(end(in.plan(), "a")).isEqualTo(400);
    assertThat(Audit.of(more, in.plan())).isEmpty();
  }

  @Test
  void announcedDatesAreKeptWhereLoadsMayMove() {
    BriefBuilder week = yard().lots(powderLot("a").yellow().due(500));
    Plan kept = solved(week.build());
    assertThat(end(kept, "a")).isEqualTo(400);
    Brief more = week.lots(powderLot("n").due(400).dwells(new Dwell(0, 50, 60))).build();
    Inserter inserter = new Inserter(more, kept);

    Inserted still = inserter.insert(List.of("n"), Freedom.NOTHING_MOVES).orElseThrow();
    Inserted moved = inserter.insert(List.of("n"), Freedom.DATES_KEPT).orElseThrow();

    // behind a: booth free at 375, 20 minutes to grey, 395 to 400, oven to 450, done 455
    assertThat(still.endMin()).isEqualTo(455);
    // ahead of a: booth 370 to 375, oven to 425, done 430; then 10 minutes to yellow, a in the
    // booth at 385, in the same oven from 425 to 445, done 450
    assertThat(moved.endMin()).isEqualTo(430);
    assertThat(end(moved.plan(), "a")).isEqualTo(450);
    assertThat(Audit.of(more, moved.plan())).isEmpty();
  }

  @Test
  void noWordGivenIsBrokenUnlessItMaySlip() {
    BriefBuilder week = yard().lots(powderLot("a").yellow().due(405));
    Plan kept = solved(week.build());
    Brief more = week.lots(powderLot("n").due(400).dwells(new Dwell(0, 50, 60))).build();
    Inserter inserter = new Inserter(more, kept);

    Inserted dates = inserter.insert(List.of("n"), Freedom.DATES_KEPT).orElseThrow();
    Inserted slip = inserter.insert(List.of("n"), Freedom.DATES_MAY_SLIP).orElseThrow();

    assertThat(end(dates.plan(), "a")).isEqualTo(400);
    assertThat(dates.endMin()).isEqualTo(455);
    assertThat(slip.endMin()).isEqualTo(430);
    assertThat(end(slip.plan(), "a")).isEqualTo(450);
    assertThat(Audit.of(more, slip.plan())).isEmpty();
  }

  @Test
  void whatIsNotThereIsNotPromised() {
    BriefBuilder week =
        yard()
            .lots(powderLot("a"))
            .supply(
                "powder-grey",
                new Supply.Arrival(0, 0.4, "G-1"),
                new Supply.Arrival(1900, 0.4, "G-2"));
    Plan kept = solved(week.build());

    Brief one = week.lots(powderLot("n")).build();
    Inserted in = new Inserter(one, kept).insert(List.of("n"), Freedom.NOTHING_MOVES).orElseThrow();
    Brief two = week.lots(powderLot("o")).build();
    Optional<Inserted> none =
        new Inserter(two, kept).insert(List.of("n", "o"), Freedom.DATES_MAY_SLIP);

    // powder at 1900 on Tuesday: booth 1900 to 1905, oven to 1925, done 1930
    assertThat(in.endMin()).isEqualTo(1930);
    assertThat(Audit.of(one, in.plan())).isEmpty();
    assertThat(none).isEmpty();
  }

  @Test
  void theLegsOfADuplexLotFollowOneAnother() {
    BriefBuilder week = yard().lots(powderLot("a"), zincLot("z"));
    Plan kept = solved(week.build());
    Brief more =
        week.lots(
                zincLot("n.1").job("n").earlierLeg(),
                powderLot("n.2").job("n").after("n.1", 10, 600))
            .build();

    Inserted in =
        new Inserter(more, kept).insert(List.of("n.1", "n.2"), Freedom.NOTHING_MOVES).orElseThrow();

    assertThat(end(in.plan(), "n.2")).isEqualTo(in.endMin());
    assertThat(in.endMin()).isGreaterThanOrEqualTo(end(in.plan(), "n.1") + 10 + 30);
    assertThat(Audit.of(more, in.plan())).isEmpty();
  }

  @Test
  void aLotLeftOutOfTheKeptPlanStaysLeftOutWithItsReason() {
    BriefBuilder week = yard().lots(powderLot("a"), powderLot("huge").carriers());
    Plan kept = solved(week.build());
    assertThat(kept.leftOut()).hasSize(1);
    Brief more = week.lots(powderLot("n")).build();

    Inserted in =
        new Inserter(more, kept).insert(List.of("n"), Freedom.NOTHING_MOVES).orElseThrow();

    assertThat(in.plan().leftOut()).isEqualTo(kept.leftOut());
    assertThat(Audit.of(more, in.plan())).isEmpty();
  }
}
