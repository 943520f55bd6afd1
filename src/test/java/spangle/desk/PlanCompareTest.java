package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.Kit;
import spangle.plan.LeftOut;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.json.InputDigest;
import spangle.plan.json.OverlayDigest;
import spangle.plan.json.PlanFile;

/** Two plans of the yard shop side by side; a simple bake from minute t is done at t + 40. */
class PlanCompareTest {
  private static final Brief BRIEF =
      yard()
          .lots(
              powderLot("a").due(500), powderLot("b").due(700).kits("K"), powderLot("c").due(2000))
          .kit(
              new Kit(
                  "K", "gate set", 4, 700, 1, List.of(new Kit.KitLine("part-b", "job-b", 1, 0))))
          .build();

  private static PlanFile file(Plan plan, String digest, Optional<OverlayDigest> overlay) {
    return new PlanFile(
        PlanFile.FORMAT,
        "A",
        "..",
        List.of(new InputDigest("shop.yaml", 10, digest.repeat(32))),
        overlay,
        List.of(),
        BRIEF,
        plan,
        List.of(),
        Optional.empty());
  }

  private static PlanFile file(List<PlannedBatch> batches, LeftOut... left) {
    return file(plan(batches, List.of(left)), "0a", Optional.empty());
  }

  private static PlanFile at(int a, int b, int c) {
    return file(
        List.of(
            simpleBake("oven-1 #1", "P01", a, "a"),
            simpleBake("oven-1 #2", "P02", b, "b"),
            simpleBake("oven-1 #3", "P03", c, "c")));
  }

  @Test
  void theSamePlanTwiceHasNoDifference() {
    PlanCompare.Difference difference = PlanCompare.of(at(360, 420, 480), at(360, 420, 480));

    assertThat(difference.parts()).isEmpty();
    assertThat(difference.changes()).isEmpty();
    assertThat(difference.kits()).isEmpty();
    assertThat(difference.made()).isEmpty();
    assertThat(difference.balance()).extracting(Balance::verdict).containsOnly("same");
  }

  @Test
  void whatBecomesLateIsSaidFirstWithDayHourAndDue() {
    PlanCompare.Difference difference = PlanCompare.of(at(360, 420, 480), at(480, 720, 540));

    assertThat(difference.parts())
        .extracting(PartChange::words)
        .containsExactly(
            "job-b lot b: done Monday 12:40, 5 h later than Monday 07:40; late by 1 h,"
                + " due Monday 11:40",
            "job-a lot a: done Monday 08:40, 2 h later than Monday 06:40; late by 20 min,"
                + " due Monday 08:20",
            "job-c lot c: done Monday 09:40, 1 h later than Monday 08:40; due Tuesday 09:20");
    assertThat(difference.parts())
        .extracting(PartChange::lateNow)
        .containsExactly(true, true, false);
    assertThat(difference.kits())
        .containsExactly(
            "gate set: all 4 sets Monday 12:40 (late); before: all 4 sets Monday 07:40");
    assertThat(difference.loadsMoved()).isEqualTo(3);
    assertThat(difference.minutesMoved()).isEqualTo(120 + 300 + 60);
  }

  @Test
  void aShiftUnderHalfAnHourIsNotSaidUnlessItMakesThePartLate() {
    // b 400 -> 425 is 25 minutes; a 455 -> 461 crosses its due time of 500
    PlanCompare.Difference difference = PlanCompare.of(at(455, 400, 540), at(461, 425, 540));

    assertThat(difference.parts()).extracting(PartChange::jobId).containsExactly("job-a");
    assertThat(difference.changes()).hasSize(2);
  }

  @Test
  void whatFallsOutOfTheWeekIsSaidWithItsReason() {
    PlanFile without =
        file(
            List.of(
                simpleBake("oven-1 #1", "P01", 360, "a"), simpleBake("oven-1 #2", "P02", 420, "b")),
            leftOut("c"));

    PlanCompare.Difference lost = PlanCompare.of(at(360, 420, 480), without);
    PlanCompare.Difference won = PlanCompare.of(without, at(360, 420, 480));

    assertThat(lost.parts()).singleElement().extracting(PartChange::kind).isEqualTo("less");
    assertThat(lost.parts().get(0).words()).contains("not in this week: no room this week");
    assertThat(row(lost, "pieces not in the week").after()).isEqualTo(4);
    assertThat(row(lost, "pieces not in the week").verdict()).isEqualTo("worse");
    assertThat(won.parts()).singleElement().extracting(PartChange::kind).isEqualTo("more");
    assertThat(row(won, "parts late or not in the week").verdict()).isEqualTo("better");
  }

  private static Balance row(PlanCompare.Difference difference, String name) {
    return difference.balance().stream()
        .filter(b -> b.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatTheTwoWereMadeFromIsSaid() {
    Plan same = at(360, 420, 480).plan();
    OverlayDigest saturday =
        new OverlayDigest("Saturday shift", "s.yaml", 9, "1b".repeat(32), Optional.empty());

    PlanCompare.Difference difference =
        PlanCompare.of(file(same, "0a", Optional.empty()), file(same, "0b", Optional.of(saturday)));

    assertThat(difference.made())
        .containsExactly(
            "the second plan is a what-if: Saturday shift",
            "shop.yaml was changed between the two");
  }
}
