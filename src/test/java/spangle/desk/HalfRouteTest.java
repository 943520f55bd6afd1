package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Plan;

/** Zinc from 06:00 to 06:46 on Monday, powder within 48 hours of it: duplex. */
class HalfRouteTest {
  private static Brief duplex(int maxGapMin) {
    return yard().lots(zincLot("Z").earlierLeg(), powderLot("A").after("Z", 0, maxGapMin)).build();
  }

  private static String reason(Brief brief, Plan plan) {
    List<LeftOut> left = HalfRoute.said(brief, plan).leftOut();
    assertThat(left).hasSize(1);
    return left.get(0).reason();
  }

  @Test
  void whatIsLeftOutBehindItsZincSaysWhatWaitsAndHowLong() {
    Brief brief = duplex(2880);
    Plan half = plan(List.of(simpleDip("kettle #1", "Z01", 360, "Z")), List.of(leftOut("A")));
    assertThat(reason(brief, half))
        .startsWith(leftOut("A").reason() + "; ")
        .contains("4 pieces wait", "(load Z01) from Monday 06:46", "until Wednesday 06:46");
    assertThat(HalfRoute.of(brief, half).get("A").caution())
        .contains("left out of the plan", "4 pieces may wait", "good until Wednesday 06:46");
    assertThat(HalfRoute.said(brief, half).batches()).isEqualTo(half.batches());
  }

  @Test
  void withoutALongestGapNoHourIsSaid() {
    Plan half = plan(List.of(simpleDip("kettle #1", "Z01", 360, "Z")), List.of(leftOut("A")));
    assertThat(reason(duplex(Integer.MAX_VALUE), half))
        .contains("(load Z01) from Monday 06:46")
        .doesNotContain("until");
  }

  @Test
  void aRouteThatIsWhollyLeftOutOrWhollyPlannedHasNoHalf() {
    Brief brief = duplex(2880);
    Plan none = plan(List.of(), List.of(leftOut("Z"), leftOut("A")));
    assertThat(HalfRoute.said(brief, none)).isEqualTo(none);
    Plan all =
        plan(
            List.of(
                simpleDip("kettle #1", "Z01", 360, "Z"), simpleBake("oven-1 #1", "P1", 420, "A")),
            List.of());
    assertThat(HalfRoute.of(brief, all)).isEmpty();
  }
}
