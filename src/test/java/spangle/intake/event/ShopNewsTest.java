package spangle.intake.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import spangle.equipment.Span;
import spangle.equipment.StationProfile;
import spangle.intake.read.WeekReader;
import spangle.intake.week.Maintenance;
import spangle.intake.week.Shop;
import spangle.intake.week.StationUse;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** What events make of stations; the booth of the sample is manned from 06:00, with breaks. */
class ShopNewsTest {
  private static final Shop SHOP =
      WeekReader.read(Path.of("samples/first-steps")).input().orElseThrow().shop();
  private static final int TUE = 1440;

  private static Event event(int number, int atMin, EventKind kind, String station, int... more) {
    OptionalInt from = more.length > 2 ? OptionalInt.of(more[2]) : OptionalInt.empty();
    OptionalInt until = more.length > 1 && more[1] > 0 ? OptionalInt.of(more[1]) : from;
    OptionalDouble figure = more.length > 0 ? OptionalDouble.of(more[0]) : OptionalDouble.empty();
    boolean level = kind == EventKind.LEVEL;
    Event.Figures n = Event.Figures.NONE;
    return new Event(
        number,
        atMin,
        kind,
        "",
        "",
        "",
        "",
        station,
        "",
        "",
        "",
        "",
        List.of(),
        new Event.Figures(
            n.count(),
            n.amount(),
            from,
            until,
            level ? n.factor() : figure,
            n.siPct(),
            n.pPct(),
            level ? figure : n.levelDownMm(),
            n.priority(),
            n.dueMin(),
            n.event(),
            n.coats()),
        "");
  }

  private static List<Maintenance> blocks(int atMin, Event... events) {
    return ShopNews.shop(SHOP, List.of(events), atMin).maintenance();
  }

  private static StationUse station(String id, Event... events) {
    return ShopNews.shop(SHOP, List.of(events), 600).lines().stream()
        .flatMap(l -> l.stations().stream())
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBreakdownLastsUntilItIsRepairedOrAsLongAsWasSaid() {
    assertThat(blocks(600, event(1, 480, EventKind.BROKEN, "oven", 0, 700)))
        .containsExactly(new Maintenance("oven", new Span(480, 700), "broken"));
    assertThat(
            blocks(
                600,
                event(1, 480, EventKind.BROKEN, "oven"),
                event(2, 540, EventKind.REPAIRED, "oven")))
        .containsExactly(new Maintenance("oven", new Span(480, 540), "broken"));
    assertThat(blocks(600, event(1, 480, EventKind.BROKEN, "oven")))
        .containsExactly(new Maintenance("oven", new Span(480, Maintenance.NO_END), "broken"));
    // An end behind the plan's is kept: the weeks behind have it too.
    int later = SHOP.horizonMin() + 2000;
    assertThat(blocks(600, event(1, 480, EventKind.BROKEN, "oven", 0, later)))
        .containsExactly(new Maintenance("oven", new Span(480, later), "broken"));
  }

  @Test
  void absentPeopleCloseTheRestOfEachStretchBetweenFromAndUntilOnly() {
    // Tuesday 06:00 to 08:00 with half the people: the first hour is worked, the second not.
    int from = TUE + 360;
    assertThat(blocks(600, event(1, 500, EventKind.ABSENT, "booth", 2, from + 120, from)))
        .containsExactly(
            new Maintenance("booth", new Span(from + 60, from + 120), "people absent"));
    // Without from it begins when it was reported; what has passed is past.
    assertThat(blocks(420, event(1, 360, EventKind.ABSENT, "booth", 2, 480)))
        .containsExactly(new Maintenance("booth", new Span(450, 480), "people absent"));
  }

  /** Both of two places are manned by one person each: one away, one place stands empty. */
  @Test
  void ofSeveralPlacesThoseStandEmptyAtWhichPeopleAreMissing() {
    int from = TUE + 360;
    assertThat(blocks(600, event(1, 500, EventKind.ABSENT, "pickle", 2, from + 120, from)))
        .containsExactly(
            new Maintenance("pickle", new Span(from, from + 120), "people absent", false, 1));
    // A quarter of two: one place the first half, then none.
    assertThat(blocks(600, event(1, 500, EventKind.ABSENT, "pickle", 4, from + 120, from)))
        .containsExactly(
            new Maintenance("pickle", new Span(from, from + 60), "people absent", false, 1),
            new Maintenance("pickle", new Span(from + 60, from + 120), "people absent"));
  }

  @Test
  void slowStaysSlowUntilFactorOne() {
    StationProfile usual = (StationProfile) station("pickle").profile();
    Event slow = event(1, 400, EventKind.SLOW, "pickle", 2);
    assertThat(station("pickle", slow).profile()).isEqualTo(usual.slower(2));
    assertThat(station("pickle", slow, event(2, 500, EventKind.SLOW, "pickle", 1)).profile())
        .isEqualTo(usual);
    assertThat(station("flux", slow).profile()).isEqualTo(station("flux").profile());
  }

  @Test
  void theLastLevelCounts() {
    assertThat(
            station(
                    "kettle",
                    event(1, 400, EventKind.LEVEL, "kettle", 150),
                    event(2, 500, EventKind.LEVEL, "kettle", 40))
                .levelDownMm())
        .isEqualTo(40);
  }
}
