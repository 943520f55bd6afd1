package spangle.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.report.Heading;
import spangle.report.Overtime;
import spangle.report.SheetFacts;
import spangle.report.Stop;
import spangle.report.Stores;
import spangle.report.Waiting;
import spangle.report.WeekReport;
import spangle.report.Yardstick;
import spangle.report.week.WeekIndex;

/** What people keep a station for stands on the chart of its line, in its own lane and hours. */
class StopOnChartTest {
  private static String chart(Stop... stops) {
    Brief brief = yard().lots(zincLot("a")).build();
    WeekReport report =
        new WeekReport(
            Heading.plain("yard"),
            brief,
            plan(simpleDip("kettle #1", "Z01", 360, "a")),
            Waiting.NOBODY,
            Stores.EMPTY,
            SheetFacts.EMPTY,
            Yardstick.EMPTY,
            List.of(stops),
            Overtime.NONE,
            Map.of());
    LineSpec zinc =
        brief.lines().stream().filter(l -> l.kind() == LineKind.ZINC).findFirst().orElseThrow();
    return LineChart.of(new WeekIndex(report), zinc).get(0).svg();
  }

  @Test
  void aTopUpStandsInTheLaneOfTheKettle() {
    String svg = chart(new Stop("kettle", 480, 720, "skimming and top-up"));
    assertThat(svg).contains("skimming and top-up").containsOnlyOnce("class=\"stop\"");
  }

  @Test
  void whatIsOfAnotherStationOrDayDoesNot() {
    assertThat(chart(new Stop("booth", 480, 720, "filter change"))).doesNotContain("filter");
    assertThat(chart(new Stop("kettle", 1900, 2000, "dross"))).doesNotContain("dross");
    assertThat(chart()).doesNotContain("class=\"stop\"");
  }
}
