package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.audit.Audited.breaks;
import static spangle.audit.Audited.keeps;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.BriefBuilder;
import spangle.plan.Finding;
import spangle.plan.LoadBuilder;
import spangle.plan.PlannedBatch;
import spangle.plan.StationSpec;
import spangle.plan.Visit;

class StationRulesTest {
  private final PlannedBatch first = simpleBake("oven-1 #1", "P01", 360, "A");

  private static BriefBuilder oneLot() {
    return yard().lots(powderLot("A"));
  }

  private static BriefBuilder twoLots() {
    return yard().lots(powderLot("A"), powderLot("B"));
  }

  private static PlannedBatch oneBake(LoadBuilder load) {
    return bake("oven-1 #1", "oven-1", 0, 375, 395, load.row("A", 4, 60));
  }

  @Test
  void aVisitLastsAsLongAsItsLotsNeed() {
    breaks(
        "station-minutes",
        "is 4 min at booth; its lots need 5",
        oneLot(),
        oneBake(
            load("P01", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 370, 374)
                .visit("unload", 395, 400)));
  }

  @Test
  void fixedMinutesAreTheLargestAndVariableMinutesAreSummed() {
    // Fixed 3 and 4: 4. Variable 2.2 + 2.3 = 4.5. Together 8.5, so 9.
    BriefBuilder brief =
        yard()
            .lots(
                powderLot("A").visits(new Visit("booth", 3, 2.2)),
                powderLot("B").visits(new Visit("booth", 4, 2.3)));
    LoadBuilder nine =
        load("P01", "rack", "A", "B").visit("booth", 366, 375).row("A", 4, 60).row("B", 4, 460);
    LoadBuilder eight =
        load("P01", "rack", "A", "B").visit("booth", 367, 375).row("A", 4, 60).row("B", 4, 460);
    keeps(brief, bake("oven-1 #1", "oven-1", 0, 375, 395, nine));
    breaks(
        "station-minutes",
        "is 8 min at booth; its lots need 9",
        brief,
        bake("oven-1 #1", "oven-1", 0, 375, 395, eight));
  }

  @Test
  void noStationIsMissed() {
    breaks(
        "station-minutes",
        "misses hang, where it needs 10 min",
        oneLot(),
        oneBake(load("P01", "rack", "A").visit("booth", 370, 375).visit("unload", 395, 400)));
  }

  @Test
  void aStationNoLotNeedsIsPassedBy() {
    breaks(
        "station-minutes",
        "visits unload, which none of its lots needs",
        yard().lots(powderLot("A").visits(new Visit("hang", 10, 0), new Visit("booth", 0, 5))),
        first);
  }

  @Test
  void aStationIsVisitedOnce() {
    LoadBuilder twice =
        load("P01", "rack", "A")
            .visit("hang", 360, 370)
            .visit("hang", 2, 370, 370, 380)
            .visit("booth", 380, 385)
            .visit("unload", 405, 410)
            .row("A", 4, 60);
    breaks(
        "station-minutes",
        "visits hang 2 times",
        oneLot(),
        bake("oven-1 #1", "oven-1", 0, 385, 405, twice));
  }

  @Test
  void stationsComeInTheOrderOfTheLine() {
    List<Finding> findings =
        Audited.findings(
            oneLot(),
            oneBake(
                load("P01", "rack", "A")
                    .visit("booth", 360, 365)
                    .visit("hang", 365, 375)
                    .visit("unload", 395, 400)));
    assertThat(findings).extracting(Finding::rule).containsExactly("station-sequence");
    assertThat(findings.get(0).words()).contains("hang comes too late");
  }

  @Test
  void aLoadIsAtOneStationAtATime() {
    breaks(
        "station-sequence",
        "is at booth from Mon 06:09",
        oneLot(),
        oneBake(
            load("P01", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 369, 374)
                .visit("unload", 395, 400)));
  }

  @Test
  void aLoadReachesTheOvenBeforeItIsShut() {
    breaks(
        "station-sequence",
        "is at oven-1 from Mon 06:15",
        oneLot(),
        oneBake(
            load("P01", "rack", "A")
                .visit("hang", 361, 371)
                .visit("booth", 371, 376)
                .visit("unload", 395, 400)));
  }

  @Test
  void aLoadLeavesTheOvenBeforeItIsUnloaded() {
    breaks(
        "station-sequence",
        "is at unload from Mon 06:34",
        oneLot(),
        oneBake(
            load("P01", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 370, 375)
                .visit("unload", 394, 399)));
  }

  /** Lot B in the second oven after a booth that is changed for it from a minute on. */
  private static PlannedBatch second(int place, int hangMin, int changeMin, int boothMin) {
    return bake(
        "oven-2 #1",
        "oven-2",
        0,
        boothMin + 5,
        boothMin + 25,
        load("P02", "rack", "B")
            .number(2)
            .visit("hang", place, hangMin, hangMin, hangMin + 10)
            .visit("booth", 1, changeMin, boothMin, boothMin + 5)
            .visit("unload", boothMin + 25, boothMin + 30)
            .row("B", 4, 60));
  }

  /** Lot B hung at that place and time, sprayed after lot A in its colour. */
  private static PlannedBatch beside(int place, int hangMin, int boothMin) {
    return second(place, hangMin, boothMin, boothMin);
  }

  @Test
  void twoPlacesTakeTwoLoads() {
    keeps(twoLots(), first, beside(2, 360, 375));
    breaks("place-free", "while P01 holds it", twoLots(), first, beside(1, 365, 375));
  }

  @Test
  void placesEndWhereTheyEnd() {
    breaks(
        "place-free", "place 3 of hang, which has 2 places", twoLots(), first, beside(3, 360, 375));
  }

  /** Lot B in yellow after lot A in grey: 10 minutes of change before its visit. */
  private static PlannedBatch yellow(int changeMin, int boothMin) {
    return second(2, 360, changeMin, boothMin);
  }

  @Test
  void theBoothHasItsMinutesToChangeColour() {
    BriefBuilder brief = yard().lots(powderLot("A"), powderLot("B").yellow());
    keeps(brief, first, yellow(375, 385));
    breaks(
        "colour-change-made",
        "has 9 min of change at booth; from grey to yellow takes 10",
        brief,
        first,
        yellow(376, 385));
  }

  @Test
  void theChangeWaitsForTheLoadBefore() {
    BriefBuilder brief = yard().lots(powderLot("A"), powderLot("B").yellow());
    breaks("place-free", "takes booth from Mon 06:14", brief, first, yellow(374, 385));
  }

  @Test
  void theFirstLoadChangesFromWhatTheBoothSprayedLast() {
    BriefBuilder brief = yard().lots(powderLot("A").yellow());
    breaks("colour-change-made", "from grey to yellow takes 10", brief, first);
  }

  private static StationSpec open(StationSpec s, Span... spans) {
    return s.during(new WorkCalendar(List.of(spans)));
  }

  @Test
  void stationsKeepTheirHours() {
    keeps(oneLot().station("booth", s -> open(s, new Span(370, 375))), first);
    breaks(
        "station-hours",
        "is at booth Mon 06:10 to Mon 06:15",
        oneLot().station("booth", s -> open(s, new Span(371, 400))),
        first);
  }

  @Test
  void changesKeepTheHoursToo() {
    BriefBuilder brief = yard().lots(powderLot("A"), powderLot("B").yellow());
    keeps(brief.station("booth", s -> open(s, new Span(370, 390))), first, yellow(375, 385));
    breaks(
        "station-hours",
        "has its change at booth",
        yard()
            .lots(powderLot("A"), powderLot("B").yellow())
            .station("booth", s -> open(s, new Span(370, 380), new Span(381, 390))),
        first,
        yellow(375, 385));
  }

  @Test
  void noLoadOvertakes() {
    // B is hung after A and sprayed before it.
    PlannedBatch late =
        bake(
            "oven-1 #1",
            "oven-1",
            0,
            390,
            410,
            load("P01", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 385, 390)
                .visit("unload", 410, 415)
                .row("A", 4, 60));
    keeps(twoLots(), late, beside(2, 360, 375));
    breaks("no-overtaking", "in different orders", twoLots(), late, beside(2, 365, 375));
  }

  @Test
  void washedWorkIsCoatedInTime() {
    PlannedBatch waits =
        oneBake(
            load("P01", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 370, 375)
                .visit("unload", 400, 405));
    keeps(oneLot().longestWaitAfter("hang", 0), waits);
    PlannedBatch waitsLonger =
        bake(
            "oven-1 #1",
            "oven-1",
            0,
            386,
            406,
            load("P01", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 381, 386)
                .visit("unload", 406, 411)
                .row("A", 4, 60));
    keeps(oneLot().longestWaitAfter("hang", 11), waitsLonger);
    breaks(
        "longest-wait",
        "waits 11 min after hang; longest allowed is 10",
        oneLot().longestWaitAfter("hang", 10),
        waitsLonger);
  }

  @Test
  void fluxedWorkIsDippedInTime() {
    PlannedBatch dip = simpleDip("kettle #1", "Z01", 360, "Z");
    keeps(yard().lots(zincLot("Z")).longestWaitAfter("flux", 0), dip);
    PlannedBatch late = new PlannedBatch(dip.id(), "zinc", "kettle", 0, 393, 393, 396, dip.loads());
    List<Finding> findings =
        Audited.findings(yard().lots(zincLot("Z")).longestWaitAfter("flux", 0), late);
    assertThat(findings)
        .extracting(Finding::rule)
        .containsExactly("dwell-inside-every-window", "longest-wait");
  }

  @Test
  void theWaitAfterTheOvenCountsBetweenTheStationsBehindIt() {
    PlannedBatch dip = simpleDip("kettle #1", "Z01", 360, "Z");
    keeps(yard().lots(zincLot("Z")).longestWaitAfter("cool", 0), dip);
  }

  @Test
  void nothingStartsBeforeItIsReady() {
    keeps(yard().lots(powderLot("A").ready(360)), first);
    breaks(
        "not-before-ready", "it is ready Mon 06:01", yard().lots(powderLot("A").ready(361)), first);
  }

  @Test
  void theWeekHasAnEnd() {
    keeps(oneLot().horizon(400), first);
    breaks("inside-the-week", "the plan reaches to Mon 06:39", oneLot().horizon(399), first);
  }
}
