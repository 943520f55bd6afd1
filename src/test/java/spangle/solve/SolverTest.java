package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.Plan;

class SolverTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void a_plan_of_a_week_with_everything_passes_the_audit(long seed) {
    Brief brief = RandomWeek.of(seed, 25);
    List<Progress> told = new ArrayList<>();
    Plan plan = new Solver().solve(brief, new SolveOptions(0, 3000, seed, 1), told::add);
    assertThat(Audit.of(brief, plan)).isEmpty();
    assertThat(told).isNotEmpty();
    assertThat(told.get(told.size() - 1).goal()).isLessThan(told.get(0).goal());
  }

  @Test
  void the_same_seed_steps_and_threads_give_the_same_plan() {
    Brief brief = RandomWeek.of(7, 20);
    SolveOptions options = new SolveOptions(0, 70_000, 3, 2);
    Plan once = new Solver().solve(brief, options, ProgressListener.NOBODY);
    Plan again = new Solver().solve(brief, options, ProgressListener.NOBODY);
    assertThat(again).isEqualTo(once);
  }

  @Test
  void more_steps_give_no_worse_a_plan_and_it_is_the_best_told_of() {
    Brief brief = RandomWeek.of(8, 20);
    List<Progress> told = new ArrayList<>();
    Plan little = new Solver().solve(brief, new SolveOptions(0, 1, 3, 1), told::add);
    Plan much = new Solver().solve(brief, new SolveOptions(0, 60_000, 3, 1), told::add);
    Progress last = told.get(told.size() - 1);
    long leftOut = much.figures().leftOut() * brief.goals().leftOut();
    assertThat(much.figures().goal()).isLessThanOrEqualTo(little.figures().goal());
    assertThat(last.goal()).isEqualTo(much.figures().goal() - leftOut);
  }

  /** It would take an hour if it did not. */
  @Test
  @Tag("thorough")
  void the_search_ends_by_itself_when_nothing_gets_better() {
    Brief brief = RandomWeek.of(9, 1);
    List<Progress> told = new ArrayList<>();
    Plan plan = new Solver().solve(brief, new SolveOptions(3600, 0, 1, 2), told::add);
    assertThat(Audit.of(brief, plan)).isEmpty();
    assertThat(told).isNotEmpty();
  }
}
