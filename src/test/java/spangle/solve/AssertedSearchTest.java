package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.optaplanner.core.config.solver.EnvironmentMode;
import spangle.audit.Audit;
import spangle.intake.brief.BriefMaker;
import spangle.intake.read.WeekReader;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Tally;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekEdit;
import spangle.plan.clock.WeekPlan;
import spangle.solve.move.MoveBook;

/**
 * The search watched at every step: OptaPlanner's full assertions against score corruption, and
 * every plan that the clock worked out from the change alone beside the same plan timed from the
 * beginning.
 */
class AssertedSearchTest {

  private static Plan asserted(Brief brief, long steps) {
    return new Solver(EnvironmentMode.FULL_ASSERT)
        .solve(brief, new SolveOptions(0, steps, 1, 1), ProgressListener.NOBODY);
  }

  private static Brief sample(String folder) {
    return BriefMaker.prepare(WeekReader.read(Path.of(folder)).input().orElseThrow()).brief();
  }

  /** Wanders through plans, keeping any that breaks nothing more. */
  private static int wander(Brief brief, int moves, long seed) {
    Floor floor = Floor.of(brief);
    WeekClock clock = new WeekClock(floor);
    WeekPlan plan = new Builder(floor, clock).build();
    MoveBook book = new MoveBook(floor, plan, seed);
    WeekEdit edit = new WeekEdit();
    int made = 0;
    for (int k = 0; k < moves; k++) {
      if (!book.draw(plan, edit)) {
        continue;
      }
      boolean within = clock.attempt(plan, edit, plan.left());
      clock.attempt(plan, edit);
      assertThat(within).as("move " + k + " stays within").isEqualTo(clock.left() <= plan.left());
      if (clock.broken() > plan.broken()) {
        continue;
      }
      long left = clock.left();
      long weighed = clock.weighed();
      WeekPlan next = clock.made();
      WeekPlan anew = new WeekClock(floor).plan(next.batches());
      assertThat(left).isEqualTo(anew.left());
      assertThat(weighed).isEqualTo(anew.weighed());
      for (int term = 0; term < Tally.SIZE; term++) {
        assertThat(next.term(term)).as("term " + term + " of move " + k).isEqualTo(anew.term(term));
      }
      plan = next;
      made++;
    }
    return made;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void noScoreIsCorruptInWeeksByChance(long seed) {
    Brief brief = RandomWeek.of(seed, 15);

    assertThat(Audit.of(brief, asserted(brief, 300))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {4, 5, 6})
  void aChangedPlanIsTimedAsIfFromTheBeginning(long seed) {
    assertThat(wander(RandomWeek.of(seed, 20), 400, seed)).isGreaterThan(50);
    assertThat(wander(OvenWeek.of(seed, 20), 400, seed)).isGreaterThan(50);
  }

  @ParameterizedTest
  @ValueSource(strings = {"samples/first-steps", "samples/harbour-week"})
  @Tag("thorough")
  void noScoreIsCorruptInTheSamples(String week) {
    Brief brief = sample(week);

    assertThat(Audit.of(brief, asserted(brief, 20_000))).isEmpty();
    assertThat(wander(brief, 10_000, 1)).isGreaterThan(500);
  }

  @Test
  @Tag("thorough")
  void manyWeeksAreTimedAsIfFromTheBeginning() {
    for (long seed = 20; seed < 60; seed++) {
      assertThat(wander(RandomWeek.of(seed, 30), 1000, seed)).isGreaterThan(50);
      assertThat(wander(OvenWeek.of(seed, 40), 2000, seed)).isGreaterThan(50);
    }
  }
}
