package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;

import java.util.Map;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.LotBuilder;
import spangle.plan.Plan;
import spangle.report.Overtime;
import spangle.report.WeekReport;
import spangle.report.week.WaitingList;
import spangle.report.week.WaitingPoint;
import spangle.report.week.WeekIndex;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/** What is late says what holds it, on the sheets too. */
class LateCausesTest {
  private static Plan planned(Brief brief) {
    return new Solver().solve(brief, new SolveOptions(0, 2000, 1, 1), ProgressListener.NOBODY);
  }

  /** Comes Tuesday 07:40, a quarter of an hour before it is due. */
  private static LotBuilder late(String id) {
    return powderLot(id).ready(1900).due(1915);
  }

  @Test
  void whatHoldsALatePartStandsOnTheListOfWhatWaits() {
    Brief brief = yard().lots(late("a"), powderLot("b")).build();
    Plan plan = planned(brief);

    Map<String, String> causes = LateCauses.of(brief, plan);

    assertThat(causes).hasSize(1);
    assertThat(causes.values())
        .allMatch(words -> words.startsWith("its parts, which are ready only Tuesday 07:40"));
    WeekReport report = WeekReport.bare(brief, plan).with(Overtime.NONE, causes);
    assertThat(WaitingList.of(new WeekIndex(report)))
        .filteredOn(p -> p.kind() == WaitingPoint.Kind.LATE)
        .singleElement()
        .satisfies(
            p -> assertThat(p.words()).contains(" late; held by its parts, which are ready"));
  }

  @Test
  void whatIsInTimeHasNone() {
    Brief brief = yard().lots(powderLot("a").ready(1900)).build();

    assertThat(LateCauses.of(brief, planned(brief))).isEmpty();
  }

  @Test
  void whereManyAreLateWhyIsAskedForEach() {
    Brief three = yard().lots(late("a"), late("b"), late("c")).build();
    Brief four = yard().lots(late("a"), late("b"), late("c"), late("d")).build();

    assertThat(LateCauses.of(three, planned(three))).isNotEmpty();
    assertThat(LateCauses.of(four, planned(four))).isEmpty();
  }
}
