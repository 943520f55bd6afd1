package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
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
}
