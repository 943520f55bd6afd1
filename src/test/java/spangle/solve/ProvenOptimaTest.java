package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.audit.Audit;
import spangle.bench.ExactOvens;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.bound.WeekBounds;

/**
 * The search beside a constraint program that knows neither its clock nor its rules. Better than a
 * proven optimum would be a fault of one of the two models.
 */
class ProvenOptimaTest {
  private static final int WEEKS = 60;

  private static long ours(Brief brief, long steps, long seed, int threads) {
    Plan plan =
        new Solver()
            .solve(brief, new SolveOptions(0, steps, seed, threads), ProgressListener.NOBODY);
    assertThat(Audit.of(brief, plan)).isEmpty();
    return plan.figures().goal();
  }

  private static void floorHolds(Brief brief, long optimum) {
    Set<String> all = brief.lots().stream().map(Lot::id).collect(Collectors.toSet());
    if (optimum < brief.goals().leftOut()) {
      assertThat(WeekBounds.of(brief, all).goal()).isLessThanOrEqualTo(optimum);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aFewWeeksOfSixLotsAreSolvedToTheOptimum(long seed) {
    Brief brief = OvenWeek.of(seed, 6);

    ExactOvens.Answer exact = ExactOvens.solve(brief, 30, 1);

    assertThat(exact.proven()).isTrue();
    assertThat(ours(brief, 30_000, seed, 1)).isEqualTo(exact.value());
    floorHolds(brief, exact.value());
  }

  @Test
  @Tag("thorough")
  void sixtyWeeksOfUpToTwentyLots(TestReporter reporter) {
    int proven = 0;
    List<String> missed = new ArrayList<>();
    for (long seed = 1; proven < WEEKS; seed++) {
      assertThat(seed).as("too few weeks are proven in their time").isLessThan(2L * WEEKS);
      int lots = 6 + (int) (seed % 15);
      Brief brief = OvenWeek.of(1000 + seed, lots);
      ExactOvens.Answer exact = ExactOvens.solve(brief, 60, 2);
      if (!exact.proven()) {
        continue;
      }
      proven++;
      long ours = ours(brief, 1_000_000, seed, 2);
      assertThat(ours)
          .as("week " + seed + ": better than what is proven to be the best")
          .isGreaterThanOrEqualTo(exact.value());
      floorHolds(brief, exact.value());
      if (ours > exact.value()) {
        missed.add("week " + seed + ", " + lots + " lots: " + ours + " for " + exact.value());
      }
    }
    reporter.publishEntry("optima reached", (WEEKS - missed.size()) + " of " + WEEKS);
    assertThat(missed).as(missed.toString()).hasSizeLessThanOrEqualTo(WEEKS / 20);
  }
}
