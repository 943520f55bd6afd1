package spangle.solve.move;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.WeekOf.LotOf.lot;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.MachineSpec;
import spangle.plan.WeekOf;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.Tally;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekEdit;
import spangle.plan.clock.WeekPlan;

/** Moves that change whole companies of loads: what each does to a week small enough to see. */
class CompanyMovesTest {
  private static final int DRAWS = 400;

  /** Six lots of 20 minutes on racks; a small oven takes two of them, a large one six. */
  private static Brief week(int dueMin) {
    return week(dueMin, 0);
  }

  /** The same where the last so many lots need 40 minutes. */
  private static Brief week(int dueMin, int longLots) {
    List<MachineSpec> ovens =
        List.of(WeekOf.oven("small", 2, WeekOf.always()), WeekOf.oven("large", 6, WeekOf.always()));
    WeekOf week =
        new WeekOf()
            .line("paint", LineKind.POWDER, List.of(), ovens, List.of(), WeekOf.changes(1, 0))
            .rack("rack", "paint", 9);
    for (int k = 0; k < 6; k++) {
      week.lot(
          lot("lot-" + k, "paint")
              .dwell(0, k < 6 - longLots ? 20 : 40, 60)
              .in("small", "large")
              .on("rack")
              .finish(0)
              .due(dueMin));
    }
    return week.brief();
  }

  private static WeekPlan plan(Floor floor, int[][][] lots) {
    Batch[][] rows = new Batch[lots.length][];
    for (int m = 0; m < lots.length; m++) {
      rows[m] = Stream.of(lots[m]).map(in -> Batch.of(0, loads(floor, in))).toArray(Batch[]::new);
    }
    return new WeekClock(floor).plan(new Batch[][][] {rows});
  }

  private static Load[] loads(Floor floor, int[] lots) {
    Load[] loads = new Load[lots.length];
    for (int k = 0; k < lots.length; k++) {
      loads[k] = floor.single(lots[k], 0);
    }
    return loads;
  }

  /** Every plan the move makes of that one; each holds all lots once. */
  private static List<WeekPlan> made(Floor floor, WeekPlan plan, Move move) {
    Desk desk = new Desk(floor, new Dice(5), plan);
    WeekClock clock = new WeekClock(floor);
    WeekEdit edit = new WeekEdit();
    List<WeekPlan> plans = new ArrayList<>();
    for (int k = 0; k < DRAWS; k++) {
      if (desk.begin(plan, edit) && move.make(desk) && !edit.isEmpty()) {
        clock.attempt(plan, edit);
        assertThat(clock.broken()).isZero();
        WeekPlan next = clock.made();
        assertThat(lots(next)).containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5);
        plans.add(next);
      }
    }
    return plans;
  }

  private static List<Integer> lots(WeekPlan plan) {
    List<Integer> lots = new ArrayList<>();
    for (Batch[] row : plan.batches()[0]) {
      for (Batch batch : row) {
        for (Load load : batch.loads) {
          for (int lot : load.lots) {
            lots.add(lot);
          }
        }
      }
    }
    return lots;
  }

  @Test
  void disbandEmptiesABatchIntoThoseThatRunAnyway() {
    Floor floor = Floor.of(week(10_000));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 1}}, {{2, 3}, {4, 5}}});

    assertThat(made(floor, plan, new Disband()::make))
        .isNotEmpty()
        .allSatisfy(next -> assertThat(next.term(Tally.BATCHES)).isEqualTo(2))
        .allSatisfy(next -> assertThat(next.term(Tally.RUN)).isEqualTo(40));
  }

  @Test
  void disbandLeavesABatchAloneWhoseLoadsHaveNoRoomElsewhere() {
    Floor floor = Floor.of(week(10_000));
    WeekPlan plan = plan(floor, new int[][][] {{}, {{0, 1, 2, 3, 4, 5}}});

    assertThat(made(floor, plan, new Disband()::make)).isEmpty();
  }

  @Test
  void peelSendsWhatKeepsABatchLongToOneThatIsLongAnyway() {
    Floor floor = Floor.of(week(10_000, 2));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 4}}, {{1, 2, 3, 5}}});
    assertThat(plan.term(Tally.RUN)).isEqualTo(80);

    assertThat(made(floor, plan, new Peel()::make))
        .isNotEmpty()
        .allSatisfy(next -> assertThat(next.term(Tally.RUN)).isEqualTo(60));
  }

  @Test
  void peelLeavesALongBatchAloneWhereNoOtherIsAsLong() {
    Floor floor = Floor.of(week(10_000, 1));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 5}}, {{1, 2, 3, 4}}});

    assertThat(made(floor, plan, new Peel()::make)).isEmpty();
  }

  @Test
  void regroupMakesOneLargeBatchOfSmallOnesOfAnotherMachine() {
    Floor floor = Floor.of(week(10_000));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 1}, {2, 3}, {4, 5}}, {}});

    assertThat(made(floor, plan, new Regroup()::make))
        .anySatisfy(next -> assertThat(next.term(Tally.RUN)).isEqualTo(20))
        .allSatisfy(next -> assertThat(next.term(Tally.BATCHES)).isLessThanOrEqualTo(3));
  }

  @Test
  void rescueOpensABatchInTimeForSeveralThatAreLate() {
    Floor floor = Floor.of(week(40));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 1}, {2, 3}, {4, 5}}, {}});
    assertThat(plan.term(Tally.LATE_LOTS)).isEqualTo(2);

    assertThat(made(floor, plan, new Rescue()::open))
        .anySatisfy(next -> assertThat(next.term(Tally.LATE_LOTS)).isZero());
  }

  @Test
  void rescueFindsNothingToDoWhereNothingIsLate() {
    Floor floor = Floor.of(week(60));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 1}, {2, 3}, {4, 5}}, {}});

    assertThat(made(floor, plan, new Rescue()::open)).isEmpty();
    assertThat(made(floor, plan, new Rescue()::join)).isEmpty();
  }

  @Test
  void lateLoadsJoinABatchThatHasRoom() {
    Floor floor = Floor.of(week(40));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 1}, {2}, {4, 5}}, {{3}}});
    assertThat(plan.term(Tally.LATE_LOTS)).isEqualTo(2);

    assertThat(made(floor, plan, new Rescue()::join))
        .isNotEmpty()
        .allSatisfy(next -> assertThat(next.term(Tally.LATE_LOTS)).isLessThan(2));
  }

  @Test
  void repackPartsThreeBatchesAmongThemAnew() {
    Floor floor = Floor.of(week(10_000));
    WeekPlan plan = plan(floor, new int[][][] {{}, {{0, 1}, {2, 3}, {4, 5}}});

    assertThat(made(floor, plan, new Repack()::make))
        .anySatisfy(next -> assertThat(next.term(Tally.BATCHES)).isEqualTo(1));
  }

  @Test
  void resettleSeatsLoadsWhereNothingIsLate() {
    Floor floor = Floor.of(week(40));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 1}, {2}, {4, 5}}, {{3}}});
    assertThat(plan.term(Tally.LATE_LOTS)).isEqualTo(2);

    assertThat(made(floor, plan, new Resettle()::make))
        .anySatisfy(next -> assertThat(next.term(Tally.LATE_LOTS)).isZero());
  }

  @Test
  void resettleGathersWhatRunsNoLongerTogether() {
    Floor floor = Floor.of(week(10_000));
    WeekPlan plan = plan(floor, new int[][][] {{{0, 1}, {2, 3}}, {{4}, {5}}});
    assertThat(plan.term(Tally.RUN)).isEqualTo(80);

    assertThat(made(floor, plan, new Resettle()::make))
        .anySatisfy(next -> assertThat(next.term(Tally.RUN)).isLessThanOrEqualTo(40));
  }

  @Test
  void resettleLeavesASingleBatchAlone() {
    Floor floor = Floor.of(week(10_000));
    WeekPlan plan = plan(floor, new int[][][] {{}, {{0, 1, 2, 3, 4, 5}}});

    assertThat(made(floor, plan, new Resettle()::make)).isEmpty();
  }
}
