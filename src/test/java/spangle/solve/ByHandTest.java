package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.WeekOf.LotOf.lot;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.WeekOf;

class ByHandTest {
  private static final int DAY = 24 * 60;

  /** Racks of one square metre take four pieces of 400 mm; the oven takes two racks. */
  private static WeekOf shop() {
    return new WeekOf()
        .line(
            "powder",
            LineKind.POWDER,
            List.of(WeekOf.booth("booth", 3, 15)),
            List.of(WeekOf.oven("oven", 2, WeekOf.always())),
            List.of(),
            WeekOf.changes(1, 0))
        .rack("rack", "powder", 9);
  }

  private static WeekOf.LotOf piece(String id, int colour, int due) {
    return piece(id, colour, due, 20, 40);
  }

  private static WeekOf.LotOf piece(String id, int colour, int due, int least, int most) {
    return lot(id, "powder")
        .dwell(0, least, most)
        .in("oven")
        .on("rack")
        .visit("booth", 5, 0)
        .finish(colour)
        .due(due);
  }

  private static List<List<List<String>>> lots(Plan plan) {
    return plan.batches().stream()
        .map(PlannedBatch::loads)
        .map(loads -> loads.stream().map(PlannedLoad::lotIds).toList())
        .toList();
  }

  @Test
  void dueDateComesBeforeColour() {
    Brief brief =
        shop()
            .lot(piece("a", 1, DAY))
            .lot(piece("b", 2, DAY))
            .lot(piece("c", 1, 2 * DAY))
            .lot(piece("d", 2, 2 * DAY))
            .brief();

    Plan plan = ByHand.plan(brief);

    assertThat(lots(plan))
        .containsExactly(List.of(List.of("a"), List.of("b")), List.of(List.of("c"), List.of("d")));
    assertThat(plan.figures().colourChanges()).isEqualTo(4);
  }

  @Test
  void colourComesBeforeTheHourAndARackIsFilledBeforeTheNextIsBegun() {
    Brief brief =
        shop()
            .lot(piece("a", 1, 600))
            .lot(piece("b", 2, 700))
            .lot(piece("c", 1, 800))
            .lot(piece("d", 1, 900))
            .brief();

    Plan plan = ByHand.plan(brief);

    assertThat(lots(plan)).containsExactly(List.of(List.of("a", "c", "d"), List.of("b")));
  }

  @Test
  void theNextRackThatDoesNotGoInClosesTheOven() {
    Brief brief =
        shop()
            .lot(piece("a", 0, 600))
            .lot(piece("b", 1, 700, 50, 60))
            .lot(piece("c", 2, 800))
            .brief();

    Plan plan = ByHand.plan(brief);

    assertThat(lots(plan))
        .containsExactly(List.of(List.of("a")), List.of(List.of("b")), List.of(List.of("c")));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void itKeepsEveryRule(long seed) {
    Brief brief = RandomWeek.of(seed, 40);

    assertThat(Audit.of(brief, ByHand.plan(brief))).isEmpty();
  }
}
