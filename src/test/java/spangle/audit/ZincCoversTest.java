package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.BathSpec;
import spangle.plan.BathSpec.Mark;
import spangle.plan.BathSpec.Need;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Plan;

/**
 * Each lot takes 2 kg of zinc, a kilogram is a millimetre of the bath. The dip of {@link
 * spangle.plan.PlanFixtures#simpleDip} goes in 32 minutes after it begins.
 */
class ZincCoversTest {
  private static final Mark LOW = new Mark(0, 60, false);
  private static final Mark FILLED = new Mark(1800, 0, true);

  private static Brief week(List<Mark> marks, Need... needs) {
    return yard()
        .lots(zincLot("a"), zincLot("b"), zincLot("deep"))
        .bath(new BathSpec("kettle", marks, 1, List.of(needs)))
        .build();
  }

  private static List<Finding> findings(Brief brief, Plan plan) {
    Findings findings = new Findings("zinc-covers");
    new ZincCovers().check(new PlanView(brief, plan), findings);
    return findings.found();
  }

  @Test
  void aDeepPartIsNotDippedBelowItsNeed() {
    Brief brief = week(List.of(LOW, FILLED), new Need("deep", 40));
    List<Finding> found = findings(brief, plan(simpleDip("kettle #1", "Z01", 360, "deep")));
    assertThat(found)
        .containsExactly(
            new Finding(
                "zinc-covers",
                "kettle #1",
                "lot deep needs the zinc no more than 40 mm below its mark; it stands 60 mm"
                    + " below"));
    assertThat(findings(brief, plan(simpleDip("kettle #1", "Z01", 360, "a")))).isEmpty();
  }

  @Test
  void afterTheTopUpItIs() {
    Brief brief = week(List.of(LOW, FILLED), new Need("deep", 40));
    assertThat(findings(brief, plan(simpleDip("kettle #1", "Z01", 1800, "deep")))).isEmpty();
    // 1767 + 32 is one minute before the bath is full
    assertThat(findings(brief, plan(simpleDip("kettle #1", "Z01", 1767, "deep")))).hasSize(1);
  }

  @Test
  void whatDipsTakeOutCounts() {
    Brief three = week(List.of(FILLED), new Need("deep", 3));
    Brief four = week(List.of(FILLED), new Need("deep", 4));
    Plan last =
        plan(
            simpleDip("kettle #1", "Z01", 1800, "a"),
            simpleDip("kettle #2", "Z02", 1850, "b"),
            simpleDip("kettle #3", "Z03", 1900, "deep"));
    // two dips of 2 kg before it: 4 mm
    assertThat(findings(three, last)).hasSize(1);
    assertThat(findings(four, last)).isEmpty();
  }

  @Test
  void whatWentInBeforeTheLevelWasReadIsFact() {
    Brief brief =
        week(List.of(new Mark(0, 0, false), new Mark(400, 60, false)), new Need("deep", 40));
    assertThat(findings(brief, plan(simpleDip("kettle #1", "Z01", 360, "deep")))).isEmpty();
    assertThat(findings(brief, plan(simpleDip("kettle #1", "Z01", 400, "deep")))).hasSize(1);
  }
}
