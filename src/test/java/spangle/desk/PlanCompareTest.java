package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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

  @Test
  void aPartOfSeveralLotsIsDoneWithItsLastPieceAndWhatIsLeftOutIsCounted() {
    Brief three =
        yard()
            .lots(
                powderLot("a").of("job-p", "part").due(800),
                powderLot("b").of("job-p", "part").due(800),
                powderLot("c").of("job-p", "part").due(800))
            .build();
    PlannedBatch first = simpleBake("oven-1 #1", "P01", 360, "a");
    PlannedBatch second = simpleBake("oven-1 #2", "P02", 420, "b");
    PlannedBatch third = simpleBake("oven-1 #3", "P03", 780, "c");
    int monday = 7 * 1440;
    PlanFile one =
        of(
            three,
            plan(
                List.of(first),
                List.of(
                    new LeftOut("b", "no-time", "no room", OptionalInt.of(monday + 900)),
                    new LeftOut("c", "no-time", "no room", OptionalInt.of(monday + 600)))));
    PlanFile two =
        of(
            three,
            plan(
                List.of(first, second),
                List.of(new LeftOut("c", "no-time", "no room", OptionalInt.empty()))));
    PlanFile all = of(three, plan(List.of(first, second, third), List.of()));

    assertThat(words(one, all))
        .containsExactly(
            "job-p lot a: done Monday 13:40 (before: 8 of 12 pieces not in this week); late by 20"
                + " min, due Monday 13:20");
    assertThat(words(all, one))
        .containsExactly(
            "job-p lot a: 8 of 12 pieces not in this week: no room; earliest Monday of week 2 15:00"
                + " (before: done Monday 13:40); due Monday 13:20");
    assertThat(words(one, two))
        .containsExactly(
            "job-p lot a: 4 of 12 pieces not in this week: no room (before: 8 of 12 pieces not in"
                + " this week); due Monday 13:20");
    assertThat(
            words(
                one,
                of(
                    three,
                    plan(
                        List.of(simpleBake("oven-1 #1", "P01", 420, "a")),
                        List.of(leftOut("b"), leftOut("c"))))))
        .containsExactly(
            "job-p lot a: 4 of 12 pieces, the others in no plan, done Monday 07:40, 1 h later than"
                + " Monday 06:40; due Monday 13:20");
  }

  @Test
  void whatIsSpentIsNoMeasureWhereTheWorkIsNotTheSame() {
    PlanFile less =
        file(List.of(simpleBake("oven-1 #1", "P01", 360, "a")), leftOut("b"), leftOut("c"));
    Balance hours = row(PlanCompare.of(less, at(360, 420, 480)), "hours in ovens and kettle");

    assertThat(hours.words())
        .isEqualTo("hours in ovens and kettle: 1, was 0.3 (not the same work)");
    assertThat(hours.verdict()).isEqualTo("more");
  }

  private static PlanFile of(Brief brief, Plan plan) {
    return new PlanFile(
        PlanFile.FORMAT,
        "A",
        "..",
        List.of(),
        Optional.empty(),
        List.of(),
        brief,
        plan,
        List.of(),
        Optional.empty());
  }

  private static List<String> words(PlanFile before, PlanFile after) {
    return PlanCompare.of(before, after).parts().stream().map(PartChange::words).toList();
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
