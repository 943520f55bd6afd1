package spangle.intake.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spangle.fit.hang.HangItem;
import spangle.intake.event.Happened.PartKey;
import spangle.intake.event.Happened.Rework;
import spangle.intake.week.Wanted.Arrival;
import spangle.plan.Lot;
import spangle.plan.Scrapped;

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
    return new Standing(
        Map.of(PART, settled), Map.of(PART, open), Map.of(), Set.of(), List.of(), List.of());
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
  void whatIsScrappedWasHereFirstAndIsNotPlanned() {
    Standing none = standing(chain(1, 40, 360, true), chain(2, 40, 360, false));
    Standing six =
        new Standing(
            Map.of(PART, none.settled(PART)),
            Map.of(),
            Map.of(),
            Set.of(),
            List.of(),
            List.of(
                new Scrapped("J", "A", 3, 400, 6, false),
                new Scrapped("J", "A", 4, 400, 5, true),
                new Scrapped("J", "B", 5, 400, 7, false)));
    List<Arrival> arrivals = List.of(new Arrival(80, 360), new Arrival(20, 1800));
    assertThat(pieces(none.open(PART, arrivals))).containsExactly(40, 20);
    assertThat(pieces(six.open(PART, arrivals))).containsExactly(34, 20);
    assertThat(six.settledOrScrapped(PART)).isEqualTo(46);
    assertThat(six.missing(PART, 110, arrivals)).isEqualTo(10);
  }

  /** Coats 1 may be coated over, coats 2 are stripped; what hangs again is not scrapped. */
  @Test
  void scrapComesOffWhatIsToBeStrippedThenOffTheOldestReport() {
    Rework first = new Rework(PART, 1, 10, 100, 1);
    Rework full = new Rework(PART, 2, 5, 200, 2);
    Rework second = new Rework(PART, 3, 8, 300, 1);
    Rework bare = new Rework(PART, 5, 4, 500, 0);
    Scrapped seven = new Scrapped("J", "A", 4, 400, 7, true);
    ReworkPool pool = ReworkPool.of(List.of(first, full, second, bare), List.of(seven), 2, r -> 0);
    assertThat(pool.toStrip()).isZero();
    assertThat(pool.again())
        .extracting(Rework::event, Rework::pieces)
        .containsExactly(tuple(1, 8), tuple(3, 8));
    ReworkPool hung =
        ReworkPool.of(List.of(first, full, second), List.of(seven), 2, r -> r.event() == 1 ? 9 : 0);
    assertThat(hung.again()).extracting(Rework::pieces).containsExactly(9, 7);
    // A piece rejected after the report was not scrapped by it, though it comes to be stripped.
    Scrapped early = new Scrapped("J", "A", 4, 150, 3, true);
    ReworkPool later = ReworkPool.of(List.of(first, full), List.of(early), 2, r -> 0);
    assertThat(later.toStrip()).isEqualTo(5);
    assertThat(later.again()).extracting(Rework::pieces).containsExactly(7);
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
