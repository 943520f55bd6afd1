package spangle.intake.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spangle.fit.hang.HangItem;
import spangle.intake.event.Happened.PartKey;
import spangle.intake.week.Wanted.Arrival;
import spangle.plan.Lot;

/** Which pieces are still to be planned, and in which lots people know them. */
class StandingTest {
  private static final PartKey PART = new PartKey("J", "A");

  private static Standing.Chain chain(int number, int pieces, int readyMin, boolean hangs) {
    String id = "J/A#" + number;
    Lot lot =
        zincLot(id)
            .of("J", "A")
            .item(new HangItem(id, pieces, 100, 100, 3, 0.5, 1, true))
            .ready(readyMin)
            .build();
    return new Standing.Chain(id, number, List.of(lot), hangs ? Set.of(id) : Set.of());
  }

  private static Standing standing(Standing.Chain... chains) {
    List<Standing.Chain> settled = new ArrayList<>();
    List<Standing.Chain> open = new ArrayList<>();
    for (Standing.Chain each : chains) {
      (each.fixed().isEmpty() ? open : settled).add(each);
    }
    return new Standing(Map.of(PART, settled), Map.of(PART, open), Map.of(), Set.of(), List.of());
  }

  private static List<Integer> pieces(List<Arrival> arrivals) {
    return arrivals.stream().map(Arrival::pieces).toList();
  }

  /** 100 come at 360 and at 1800, in lots of 40, 40 and 20: both short ones hang. */
  @Test
  void lotsOfALaterArrivalThatHungFirstLeaveTheOthersAsTheyWere() {
    Standing standing =
        standing(
            chain(1, 40, 360, false),
            chain(2, 40, 360, false),
            chain(3, 20, 360, true),
            chain(4, 40, 1800, false),
            chain(5, 40, 1800, false),
            chain(6, 20, 1800, true));
    List<Arrival> open =
        standing.open(PART, List.of(new Arrival(100, 360), new Arrival(100, 1800)));
    assertThat(pieces(open)).containsExactly(40, 40, 40, 40);
    assertThat(open).extracting(Arrival::atMin).containsExactly(360, 1800, 1800, 1800);
  }

  @Test
  void whatIsNotHereInTimeIsCountedOffAnew() {
    Standing standing = standing(chain(1, 40, 360, false), chain(2, 40, 360, false));
    // Thirty of them come only at 700: the lots people know cannot all hang at 360.
    List<Arrival> later = standing.open(PART, List.of(new Arrival(50, 360), new Arrival(30, 700)));
    assertThat(pieces(later)).containsExactly(50, 30);
    // Ten are missing, ten more are there: other counts in any case.
    assertThat(pieces(standing.open(PART, List.of(new Arrival(70, 360))))).containsExactly(70);
    assertThat(pieces(standing.open(PART, List.of(new Arrival(90, 360))))).containsExactly(90);
    assertThat(standing.open(PART, List.of())).isEmpty();
  }
}
