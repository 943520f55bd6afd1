package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.PlannedBatch;

/** Why P1 moves though nothing forces it: whose room it takes, who took its own. */
class RoomWordsTest {
  private static PlannedBatch in(String machine, int startMin, String... loads) {
    List<String> ids = List.of(loads);
    return bake("B " + startMin + ids, machine, 0, startMin, startMin + 20, load("P0", "rack", "x"))
        .with(ids.stream().map(id -> load(id, "rack", "lot of " + id).build()).toList());
  }

  private static String why(List<PlannedBatch> before, List<PlannedBatch> after) {
    return new RoomWords(plan(before, List.of()), plan(after, List.of()), yard().build())
        .of(spot(before), spot(after));
  }

  private static LoadMatch.Spot spot(List<PlannedBatch> batches) {
    return batches.stream()
        .flatMap(b -> b.loads().stream().map(l -> new LoadMatch.Spot(b, l)))
        .filter(s -> s.id().equals("P1"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLoadThatMovesIntoRoomOthersLeftSaysWhose() {
    assertThat(
            why(
                List.of(in("oven-1", 400, "P2"), in("oven-1", 800, "P1")),
                List.of(in("oven-1", 410, "P1"), in("oven-1", 900, "P2"))))
        .isEqualTo("the room of P2 came free");
  }

  @Test
  void roomThatStoodEmptyBeforeDidNotComeFree() {
    assertThat(why(List.of(in("oven-1", 800, "P1")), List.of(in("oven-1", 400, "P1")))).isEmpty();
    // P2 stands where it stood, in the other oven.
    assertThat(
            why(
                List.of(in("oven-2", 400, "P2"), in("oven-1", 800, "P1")),
                List.of(in("oven-2", 400, "P2"), in("oven-1", 400, "P1"))))
        .isEmpty();
  }

  @Test
  void aLoadThatGivesWaySaysWhoIsInItsMachineThen() {
    assertThat(
            why(
                List.of(in("oven-9", 400, "P1"), in("oven-9", 800, "P2")),
                List.of(in("oven-9", 400, "P2"), in("oven-9", 800, "P1"))))
        .isEqualTo("P2 is in oven-9 then");
    assertThat(
            why(
                List.of(in("oven-9", 400, "P1")),
                List.of(in("oven-9", 400, "P2", "P3", "P4", "P5"), in("oven-9", 800, "P1"))))
        .isEqualTo("P2, P3, P4 and 1 more are in oven-9 then");
  }

  @Test
  void aLoadThatWaitsWhileItsMachineStandsEmptyHasNoSuchReason() {
    assertThat(why(List.of(in("oven-1", 400, "P1", "P2")), List.of(in("oven-1", 800, "P1", "P2"))))
        .isEmpty();
  }

  @Test
  void aLoadThatJoinsOthersSaysWith() {
    assertThat(
            why(
                List.of(in("oven-1", 400, "P2"), in("oven-1", 800, "P1")),
                List.of(in("oven-1", 400, "P1", "P2"))))
        .isEqualTo("it goes in with P2");
  }

  @Test
  void whatItSharesTheBatchWithIsNotInItsWay() {
    assertThat(
            why(
                List.of(in("oven-1", 400, "P1"), in("oven-1", 800, "P2")),
                List.of(in("oven-1", 416, "P1", "P2"))))
        .isEqualTo("it goes in with P2");
  }
}
