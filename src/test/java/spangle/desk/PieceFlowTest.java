package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spangle.fit.hang.HangItem;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;

/** Which load is which in two plans, and where pieces went. */
class PieceFlowTest {
  private final Map<String, Lot> lots = new HashMap<>();

  /** A bake whose load carries so many pieces of the part, as a lot of that number. */
  private PlannedBatch bake(String load, int startMin, String part, int number, int pieces) {
    String id = "J/" + part + "#" + number;
    lots.put(
        id,
        powderLot(id)
            .of("J", part)
            .item(new HangItem(id, pieces, 200, 300, 50, 2, 1, false))
            .build());
    return simpleBake("oven-1 " + startMin, load, startMin, id);
  }

  private LoadMatch match(List<PlannedBatch> before, List<PlannedBatch> after) {
    return new LoadMatch(plan(before, List.of()), plan(after, List.of()), lots, Set.of());
  }

  private static List<String> pairs(LoadMatch match) {
    return match.pairs().stream().map(p -> p.was().id() + ">" + p.is().id()).sorted().toList();
  }

  @Test
  void theNumberOnTheSheetDecidesBetweenLoadsOfTheSameWork() {
    List<PlannedBatch> before = List.of(bake("P1", 400, "A", 1, 10), bake("P2", 800, "A", 2, 10));
    // P1 is dropped and P2 comes sooner, near where P1 stood.
    List<PlannedBatch> after = List.of(bake("P2", 410, "A", 2, 10));

    LoadMatch match = match(before, after);

    assertThat(pairs(match)).containsExactly("P2>P2");
    assertThat(match.gone()).extracting(LoadMatch.Spot::id).containsExactly("P1");
  }

  @Test
  void aLoadThatKeepsItsNumberIsThatLoadThoughAnotherCarriedAsManyPieces() {
    List<PlannedBatch> before = List.of(bake("P1", 400, "A", 1, 10), bake("P2", 800, "A", 2, 6));
    // P1 is down to the six that were on P2, which is down to three.
    List<PlannedBatch> after = List.of(bake("P1", 400, "A", 3, 6), bake("P2", 800, "A", 4, 3));

    LoadMatch match = match(before, after);

    assertThat(pairs(match)).containsExactly("P1>P1", "P2>P2");
    assertThat(match.added()).isEmpty();
    assertThat(match.gone()).isEmpty();
  }

  @Test
  void aShortDeliveryMakesItsLoadSmaller() {
    List<PlannedBatch> before = List.of(bake("P1", 400, "A", 1, 10));
    List<PlannedBatch> after = List.of(bake("P1", 400, "A", 2, 7));

    LoadMatch match = match(before, after);
    PieceFlow flow = new PieceFlow(match, lots);

    assertThat(pairs(match)).containsExactly("P1>P1");
    assertThat(flow.cameOnto("P1")).isEmpty();
    assertThat(flow.wentFrom("P1")).containsExactly(new PieceFlow.Flow("J/A#", 3, ""));
  }

  @Test
  void piecesThatChangeTheirLoadAreFoundThere() {
    List<PlannedBatch> before = List.of(bake("P1", 400, "A", 1, 10), bake("P2", 800, "A", 2, 4));
    List<PlannedBatch> after = List.of(bake("P2", 800, "A", 3, 6), bake("P3", 900, "A", 4, 9));

    PieceFlow flow = new PieceFlow(match(before, after), lots);

    assertThat(flow.cameOnto("P2")).containsExactly(new PieceFlow.Flow("J/A#", 2, "P1"));
    // eight are left of P1, one is new
    assertThat(flow.cameOnto("P3"))
        .containsExactly(new PieceFlow.Flow("J/A#", 8, "P1"), new PieceFlow.Flow("J/A#", 1, ""));
    assertThat(flow.wentFrom("P1"))
        .containsExactly(new PieceFlow.Flow("J/A#", 2, "P2"), new PieceFlow.Flow("J/A#", 8, "P3"));
  }

  @Test
  void otherPartsAndReworkAreNotTheSamePieces() {
    List<PlannedBatch> before = List.of(bake("P1", 400, "A", 1, 10));
    lots.put("J/A#r4", powderLot("J/A#r4").of("J", "A").build());
    List<PlannedBatch> after =
        List.of(bake("P1", 400, "B", 1, 10), simpleBake("oven-1 500", "P2", 500, "J/A#r4"));

    LoadMatch match = match(before, after);
    PieceFlow flow = new PieceFlow(match, lots);

    assertThat(match.pairs()).isEmpty();
    assertThat(flow.wentFrom("P1")).containsExactly(new PieceFlow.Flow("J/A#", 10, ""));
    assertThat(flow.cameOnto("P2")).containsExactly(new PieceFlow.Flow("J/A#r4", 4, ""));
  }
}
