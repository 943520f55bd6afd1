package spangle.plan.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.WeekOf.HORIZON;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.BriefBuilder;
import spangle.plan.Kit;
import spangle.plan.LotBuilder;
import spangle.plan.PlanFixtures;

/** Lots of four pieces each; ends in the order of the brief's lots. */
class KitCountTest {
  private static LotBuilder lot(String id, String part) {
    return PlanFixtures.powderLot(id).of("J", part);
  }

  private static BriefBuilder twoSets(int onHand) {
    return PlanFixtures.yard()
        .lots(lot("a1", "A"), lot("a2", "A"), lot("b1", "B"), lot("b2", "B"))
        .kit(
            kit(
                "K",
                2,
                1000,
                1,
                new Kit.KitLine("A", "J", 4, 0),
                new Kit.KitLine("B", "J", 4, onHand)));
  }

  private static Kit kit(String id, int sets, int due, int weight, Kit.KitLine... lines) {
    return new Kit(id, id, sets, due, weight, List.of(lines));
  }

  private static long[] count(BriefBuilder week, int... ends) {
    long[] tally = new long[Tally.SIZE];
    new KitCount(week.build()).count(ends, tally);
    return tally;
  }

  @Test
  void setAfterSetIsWholeSoonerThanOnePartAfterTheOther() {
    long[] setBySet = count(twoSets(0), 100, 300, 200, 400);
    long[] partByPart = count(twoSets(0), 100, 200, 300, 400);
    // A B A B: whole at 200 and 400. A A B B: at 300 and 400; each waits 200 for its second part.
    assertThat(setBySet[Tally.SET_MIN]).isEqualTo(300);
    assertThat(setBySet[Tally.KIT_MIN]).isEqualTo(100);
    assertThat(partByPart[Tally.SET_MIN]).isEqualTo(350);
    assertThat(partByPart[Tally.KIT_MIN]).isEqualTo(200);
  }

  @Test
  void aSetThatIsNotMadeCountsToTheHorizonAndMakesNothingLate() {
    long[] tally = count(twoSets(0), 100, 2000, 200, -1);
    assertThat(tally[Tally.SET_MIN]).isEqualTo((200 + HORIZON) / 2);
    assertThat(tally[Tally.LATE_KITS]).isZero();
    assertThat(count(twoSets(0), 100, 900, 200, 1001)[Tally.LATE_KITS]).isEqualTo(1);
  }

  @Test
  void whatLiesInTheStoreIsThereAtOnce() {
    // Four B are in the store: the first set is whole with its A at 100, the second at 500.
    long[] tally = count(twoSets(4), 100, 300, 500, 700);
    assertThat(tally[Tally.SET_MIN]).isEqualTo(300);
    assertThat(tally[Tally.KIT_MIN]).isEqualTo(200 / 2);
    assertThat(count(twoSets(8), 100, 300, 500, 700)[Tally.SET_MIN]).isEqualTo(200);
  }

  /** Of eight finished A four did not pass and wait to be stripped: one set is all there is. */
  @Test
  void whatLiesInTheRejectCageIsInNoSet() {
    BriefBuilder week =
        PlanFixtures.yard()
            .lots(PlanFixtures.powderLot("a1").of("job-A", "part-A"))
            .lots(PlanFixtures.powderLot("a2").of("job-A", "part-A"))
            .kit(kit("K", 2, 1000, 1, new Kit.KitLine("part-A", "job-A", 4, 0)));
    assertThat(count(week, 100, 300)[Tally.SET_MIN]).isEqualTo(200);
    assertThat(count(week.caged("A", 4), 100, 300)[Tally.SET_MIN]).isEqualTo((300 + HORIZON) / 2);
  }

  /** Of eight finished A four did not pass and are scrapped: one set is all there is. */
  @Test
  void whatIsScrappedAfterItWasRejectedIsInNoSet() {
    BriefBuilder week =
        PlanFixtures.yard()
            .lots(PlanFixtures.powderLot("a1").of("job-A", "part-A"))
            .lots(PlanFixtures.powderLot("a2").of("job-A", "part-A"))
            .kit(kit("K", 2, 1000, 1, new Kit.KitLine("part-A", "job-A", 4, 0)));
    assertThat(count(week, 100, 300)[Tally.SET_MIN]).isEqualTo(200);
    assertThat(count(week.scrapped("A", 1, 9, false), 100, 300)[Tally.SET_MIN]).isEqualTo(200);
    assertThat(count(week.scrapped("A", 2, 4, true), 100, 300)[Tally.SET_MIN])
        .isEqualTo((300 + HORIZON) / 2);
  }

  @Test
  void theKitDueFirstDrawsFirst() {
    BriefBuilder week =
        PlanFixtures.yard()
            .lots(lot("a1", "A"), lot("a2", "A"))
            .kit(kit("late", 1, 900, 10, new Kit.KitLine("A", "J", 4, 0)))
            .kit(kit("soon", 1, 300, 1, new Kit.KitLine("A", "J", 4, 0)));
    assertThat(count(week, 700, 200)[Tally.SET_MIN]).isEqualTo(200 + 10 * 700);
  }

  @Test
  void rejectedPiecesAreGoodOnlyAfterTheirRework() {
    BriefBuilder week =
        PlanFixtures.yard()
            .lots(lot("J/A#1", "A"), lot("J/A#r7", "A"))
            .kit(kit("K", 1, 300, 1, new Kit.KitLine("A", "J", 4, 0)));
    assertThat(count(week, 100, 600)[Tally.SET_MIN]).isEqualTo(600);
    assertThat(count(week, 100, 600)[Tally.LATE_KITS]).isEqualTo(1);
  }

  @Test
  void aLineThatTakesNothingAndAKitOfNoSetsCountNothing() {
    BriefBuilder week =
        PlanFixtures.yard()
            .lots(lot("a1", "A"))
            .kit(kit("none", 0, 300, 1, new Kit.KitLine("A", "J", 4, 0)))
            .kit(kit("empty", 1, 300, 1, new Kit.KitLine("A", "J", 0, 0)))
            .kit(kit("store", 1, 300, 1, new Kit.KitLine("A", "J", 4, 4)));
    assertThat(count(week, 700)).containsOnly(0);
  }
}
