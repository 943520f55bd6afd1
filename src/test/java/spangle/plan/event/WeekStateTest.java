package spangle.plan.event;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;

import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.Scrapped;
import spangle.plan.StationSpec;

/**
 * Two loads of four pieces each: P1 hangs 360-370, booth to 375, oven 375-395, off 400; P2 forty
 * minutes later.
 */
class WeekStateTest {
  private static final Brief BRIEF =
      PlanFixtures.yard().lots(powderLot("A"), powderLot("B")).build();
  private static final Plan PLAN =
      PlanFixtures.plan(
          simpleBake("oven-1 #1", "P1", 360, "A"), simpleBake("oven-1 #2", "P2", 400, "B"));

  private static WeekState at(int minute, Said said) {
    return WeekState.of(BRIEF, PLAN, said.log(), 0, minute);
  }

  private static Stage stage(WeekState state, String load) {
    return state.load(load).orElseThrow().stage();
  }

  private static PieceCount pieces(WeekState state, String job) {
    return state.pieces().stream().filter(p -> p.jobId().equals(job)).findFirst().orElseThrow();
  }

  @Test
  void withoutWordNothingHasHappened() {
    WeekState state = at(900, new Said());
    assertThat(stage(state, "P1")).isEqualTo(Stage.PLANNED);
    assertThat(pieces(state, "job-A").planned()).isEqualTo(4);
  }

  @Test
  void aLoadGoesFromPlannedToDoneAndItsPiecesWithIt() {
    Said said =
        new Said()
            .load(350, EventKind.RELEASED, "P1")
            .load(370, EventKind.HUNG, "P1")
            .load(376, EventKind.STARTED, "P1")
            .load(401, EventKind.DONE, "P1");
    assertThat(stage(at(350, said), "P1")).isEqualTo(Stage.RELEASED);
    assertThat(stage(at(375, said), "P1")).isEqualTo(Stage.HUNG);
    assertThat(pieces(at(375, said), "job-A").hung()).isEqualTo(4);
    assertThat(stage(at(400, said), "P1")).isEqualTo(Stage.IN_PROCESS);
    assertThat(pieces(at(401, said), "job-A").done()).isEqualTo(4);
    assertThat(pieces(at(401, said), "job-B").planned()).isEqualTo(4);
  }

  @Test
  void whatHangsIsNotHungAgainAndNotTakenBack() {
    Said said =
        new Said()
            .load(370, EventKind.HUNG, "P1")
            .load(371, EventKind.HUNG, "P1")
            .load(372, EventKind.WITHDRAWN, "P1")
            .load(373, EventKind.STARTED, "P9");
    WeekState state = at(380, said);
    assertThat(state.refused())
        .extracting(WeekState.Refusal::why)
        .containsExactly(
            "P1 is hung already: nothing to report; where an earlier report is wrong, strike that"
                + " one first",
            "P1 is hung; what hangs is not taken back: report it taken-down, or strike the report"
                + " where it does not hang",
            "the plan has no load or batch P9: give the number on the sheet, of the plan that is"
                + " valid now");
    assertThat(stage(state, "P1")).isEqualTo(Stage.HUNG);
  }

  @Test
  void aSheetIsTakenBackBeforeItHangs() {
    Said said = new Said().load(350, EventKind.RELEASED, "P1").load(355, EventKind.WITHDRAWN, "P1");
    assertThat(stage(at(360, said), "P1")).isEqualTo(Stage.PLANNED);
    assertThat(at(360, said).refused()).isEmpty();
  }

  @Test
  void anOvenThatTripsMakesWhatIsInsideSuspectUntilItIsInspected() {
    Said said =
        new Said()
            .load(375, EventKind.STARTED, "oven-1 #1")
            .broken(380, "oven-1", 500)
            .load(400, EventKind.DONE, "P1")
            .load(520, EventKind.INSPECTED, "P1")
            .load(525, EventKind.DONE, "P1");
    WeekState tripped = at(400, said);
    assertThat(tripped.load("P1").orElseThrow().suspect()).contains("oven-1");
    assertThat(pieces(tripped, "job-A").suspect()).isEqualTo(4);
    assertThat(pieces(tripped, "job-A").done()).isZero();
    assertThat(tripped.refused())
        .extracting(WeekState.Refusal::why)
        .containsExactly("P1 is held (oven-1 broke down with it inside): inspect it first");
    assertThat(tripped.load("P2").orElseThrow().suspect()).isEmpty();
    assertThat(pieces(at(525, said), "job-A").done()).isEqualTo(4);
  }

  @Test
  void whatWasOutOfTheOvenBeforeItTrippedIsNotSuspect() {
    // In at 375 for 20 minutes, out at 395; the oven trips at 395.
    Said said = new Said().load(375, EventKind.STARTED, "P1").broken(395, "oven-1", 500);
    assertThat(at(396, said).load("P1").orElseThrow().suspect()).isEmpty();
  }

  @Test
  void aStationIsDownFromBrokenToRepaired() {
    Said said =
        new Said()
            .station(380, EventKind.BROKEN, "oven-1")
            .station(385, EventKind.BROKEN, "oven-1")
            .station(450, EventKind.REPAIRED, "oven-1")
            .station(460, EventKind.REPAIRED, "oven-1");
    assertThat(at(400, said).down()).containsExactly(new Down("oven-1", 380, Integer.MAX_VALUE, 0));
    assertThat(at(450, said).down()).isEmpty();
    assertThat(at(460, said).refused()).extracting(r -> r.event().number()).containsExactly(2, 4);
  }

  @Test
  void asPlannedRaisesEachLoadToWhereThePlanHasItButNotPastABreakdown() {
    assertThat(stage(at(380, new Said().asPlanned(380)), "P1")).isEqualTo(Stage.IN_PROCESS);
    assertThat(stage(at(410, new Said().asPlanned(410)), "P1")).isEqualTo(Stage.DONE);
    assertThat(stage(at(410, new Said().asPlanned(410)), "P2")).isEqualTo(Stage.HUNG);
    Said down = new Said().broken(365, "oven-1", 450).asPlanned(410);
    assertThat(stage(at(410, down), "P1")).isEqualTo(Stage.PLANNED);
  }

  @Test
  void noMorePiecesAreRejectedThanAreFinished() {
    Said said =
        new Said()
            .load(401, EventKind.DONE, "P1")
            .rejected(410, "job-A", "part-A", 3)
            .rejected(411, "job-A", "part-A", 2)
            .rejected(412, "job-B", "part-B", 1);
    WeekState state = at(420, said);
    assertThat(state.refused()).extracting(r -> r.event().number()).containsExactly(3, 4);
    assertThat(pieces(state, "job-A").good()).isEqualTo(1);
    assertThat(pieces(state, "job-A").all()).isEqualTo(4);
  }

  private static String why(WeekState state) {
    return state.refused().size() == 1 ? state.refused().get(0).why() : state.refused().toString();
  }

  /** P1 is hung by 370 and in the booth from then on. */
  @Test
  void whatHangsComesDownUntilAStationHasBegunWithIt() {
    WeekState off =
        at(
            380,
            new Said()
                .load(362, EventKind.HUNG, "P1")
                .load(369, EventKind.TAKEN_DOWN, "P1")
                .asPlanned(380));
    assertThat(off.refused()).isEmpty();
    assertThat(stage(off, "P1")).isEqualTo(Stage.PLANNED);
    assertThat(off.takenDown()).containsExactly("P1");
    assertThat(pieces(off, "job-A").planned()).isEqualTo(4);

    Said hung = new Said().load(362, EventKind.HUNG, "P1").load(370, EventKind.TAKEN_DOWN, "P1");
    assertThat(why(at(371, hung))).contains("has begun with P1 by then: it goes on");
    assertThat(stage(at(371, hung), "P1")).isEqualTo(Stage.HUNG);
    // Hung five minutes late, it comes five minutes later to the booth.
    Said late = new Said().load(375, EventKind.HUNG, "P1").load(374, EventKind.HUNG, "P2");
    assertThat(at(380, late.load(375, EventKind.TAKEN_DOWN, "P1")).takenDown()).isEmpty();
    assertThat(at(380, late.load(376, EventKind.TAKEN_DOWN, "P2")).takenDown())
        .containsExactly("P2");
    // In a booth that does not work it has not been.
    Said broken =
        new Said()
            .load(362, EventKind.HUNG, "P1")
            .broken(365, "booth", 390)
            .load(385, EventKind.TAKEN_DOWN, "P1");
    assertThat(at(386, broken).takenDown()).containsExactly("P1");
    // Of two booths the other one is out: P1 has been in the first.
    Brief booths =
        PlanFixtures.yard()
            .lots(powderLot("A"), powderLot("B"))
            .station(
                "booth",
                s ->
                    new StationSpec(
                        s.id(),
                        s.name(),
                        2,
                        s.calendar(),
                        s.setups(),
                        s.initialState(),
                        s.longestWaitAfterMin()))
            .build();
    Said other =
        new Said()
            .load(362, EventKind.HUNG, "P1")
            .placesOut(365, "booth", 1)
            .load(373, EventKind.TAKEN_DOWN, "P1");
    assertThat(WeekState.of(booths, PLAN, other.log(), 0, 380).takenDown()).isEmpty();
    assertThat(at(380, other).takenDown()).as("the only booth is out").containsExactly("P1");
    Said repaired =
        new Said()
            .load(362, EventKind.HUNG, "P1")
            .broken(365, "booth", 380)
            .load(385, EventKind.TAKEN_DOWN, "P1");
    assertThat(at(386, repaired).takenDown()).isEmpty();
  }

  @Test
  void onlyWhatHangsIsTakenDownAndItMayHangAgain() {
    assertThat(why(at(380, new Said().load(360, EventKind.TAKEN_DOWN, "P1"))))
        .isEqualTo("P1 is planned, it does not hang: nothing to take down");
    assertThat(
            why(
                at(
                    380,
                    new Said()
                        .load(350, EventKind.RELEASED, "P1")
                        .load(360, EventKind.TAKEN_DOWN, "P1"))))
        .endsWith("take the sheet back with withdrawn");
    assertThat(
            why(
                at(
                    380,
                    new Said()
                        .load(361, EventKind.STARTED, "P1")
                        .load(362, EventKind.TAKEN_DOWN, "P1"))))
        .isEqualTo("P1 is in process: what has begun is not taken down");
    WeekState again =
        at(
            380,
            new Said()
                .load(361, EventKind.HUNG, "P1")
                .load(362, EventKind.TAKEN_DOWN, "P1")
                .load(364, EventKind.HUNG, "P1"));
    assertThat(again.takenDown()).isEmpty();
    assertThat(stage(again, "P1")).isEqualTo(Stage.HUNG);
  }

  /** A plan that knew of the report and still has the load had refused it. */
  @Test
  void whatAPlanKnewAndDidNotTakeDownGoesOn() {
    EventLog log =
        new Said().load(362, EventKind.HUNG, "P1").load(369, EventKind.TAKEN_DOWN, "P1").log();
    Brief later =
        PlanFixtures.yard()
            .lots(powderLot("A"), powderLot("B"))
            .frozen(PLAN.batches().get(0))
            .build();
    assertThat(why(WeekState.of(later, PLAN, log, 2, 400))).contains("went on by the plan");
  }

  @Test
  void theSecondStepOfARouteIsNotTakenDown() {
    Brief brief =
        PlanFixtures.yard()
            .lots(powderLot("A").earlierLeg(), powderLot("B").after("A", 0, 700))
            .build();
    Said said =
        new Said()
            .load(400, EventKind.DONE, "P1")
            .load(405, EventKind.HUNG, "P2")
            .load(406, EventKind.TAKEN_DOWN, "P2");
    assertThat(why(WeekState.of(brief, PLAN, said.log(), 0, 407)))
        .isEqualTo(
            "P2 carries pieces of P1, the step before it: their route has begun and goes on");
  }

  /** Four of A hang, four of B wait. */
  @Test
  void onlyWhatDoesNotHangIsScrappedAsWaiting() {
    Said said =
        new Said()
            .load(370, EventKind.HUNG, "P1")
            .scrapped(371, "job-A", "part-A", 1, ScrapOf.WAITING)
            .scrapped(372, "job-B", "part-B", 3, ScrapOf.WAITING)
            .scrapped(373, "job-B", "part-B", 2, ScrapOf.WAITING)
            .scrapped(374, "job-C", "part-C", 1, ScrapOf.WAITING);
    WeekState state = at(380, said);
    assertThat(state.refused()).extracting(r -> r.event().number()).containsExactly(2, 4, 5);
    assertThat(state.refused().get(1).why())
        .startsWith("2 waiting pieces scrapped, 1 of the plan's loads and lots do not hang yet");
    assertThat(pieces(state, "job-B").scrapped()).isEqualTo(3);
    assertThat(state.scrapped()).containsExactly(new Scrapped("job-B", "part-B", 3, 372, 3, false));
  }

  /** The brief of a later plan has the pieces out of its lots already. */
  @Test
  void whatAPlanKnowsAsScrappedIsNotTakenTwice() {
    EventLog log = new Said().scrapped(0, "job-B", "part-B", 9, ScrapOf.WAITING).log();
    Brief later =
        PlanFixtures.yard().lots(powderLot("A"), powderLot("B")).scrapped("B", 1, 9, false).build();
    assertThat(WeekState.of(later, PLAN, log, 1, 400).refused()).isEmpty();
    assertThat(WeekState.of(BRIEF, PLAN, log, 0, 400).refused()).hasSize(1);
  }

  @Test
  void ofRejectedPiecesThoseThatDoNotGoRoundYetAreScrapped() {
    Said said =
        new Said()
            .load(401, EventKind.DONE, "P1")
            .scrapped(402, "job-A", "part-A", 1, ScrapOf.REJECTED)
            .rejected(410, "job-A", "part-A", 3)
            .scrapped(411, "job-A", "part-A", 2, ScrapOf.REJECTED)
            .scrapped(412, "job-A", "part-A", 2, ScrapOf.REJECTED)
            .stripped(413, "job-A", "part-A", 2)
            .stripped(414, "job-A", "part-A", 1);
    WeekState state = at(420, said);
    // Three were rejected and two of them scrapped: one is left to be scrapped or stripped.
    assertThat(state.refused()).extracting(r -> r.event().number()).containsExactly(2, 5, 6);
    assertThat(pieces(state, "job-A").scrapped()).isEqualTo(2);
    assertThat(pieces(state, "job-A").good()).isEqualTo(1);
  }

  @Test
  void aStruckEventDoesNotCount() {
    Said said = new Said().load(370, EventKind.HUNG, "P1").struck(372, 1);
    assertThat(stage(at(380, said), "P1")).isEqualTo(Stage.PLANNED);
  }

  @Test
  void numbersOfAnEarlierPlanCountOnlyForWhatWasFixedThen() {
    EventLog log = new Said().load(370, EventKind.HUNG, "P1").load(371, EventKind.HUNG, "P2").log();
    Brief later =
        PlanFixtures.yard()
            .lots(powderLot("A"), powderLot("B"))
            .frozen(PLAN.batches().get(0))
            .build();
    WeekState state = WeekState.of(later, PLAN, log, 2, 400);
    assertThat(stage(state, "P1")).isEqualTo(Stage.HUNG);
    assertThat(stage(state, "P2")).isEqualTo(Stage.PLANNED);
    assertThat(state.refused()).isEmpty();
  }

  /** The second coat does not go over a first one that was in the oven when it broke down. */
  @Test
  void theNextStepWaitsUntilTheOneBeforeIsInspected() {
    Brief brief =
        PlanFixtures.yard()
            .lots(powderLot("A").earlierLeg(), powderLot("B").after("A", 0, 700))
            .build();
    Said said = new Said().load(376, EventKind.STARTED, "P1").broken(378, "oven-1", 390);
    Plan twoRacks =
        PlanFixtures.plan(
            simpleBake("oven-1 #1", "P1", 360, "A"),
            PlanFixtures.bake(
                "oven-1 #2",
                "oven-1",
                0,
                415,
                435,
                PlanFixtures.simpleLoad("P2", 400, "B").number(2)));
    Said hung = said.load(402, EventKind.HUNG, "P2").load(403, EventKind.DONE, "P2");
    WeekState held = WeekState.of(brief, twoRacks, hung.log(), 0, 410);
    assertThat(held.refused())
        .extracting(WeekState.Refusal::why)
        .hasSize(2)
        .allMatch(
            why ->
                why.equals(
                    "the step before it, P1, is held (oven-1 broke down with it inside): inspect"
                        + " that one first"));
    assertThat(stage(held, "P2")).isEqualTo(Stage.PLANNED);

    Said good = hung.load(404, EventKind.INSPECTED, "P1").load(405, EventKind.HUNG, "P2");
    WeekState free = WeekState.of(brief, twoRacks, good.log(), 0, 410);
    assertThat(stage(free, "P2")).isEqualTo(Stage.HUNG);
  }
}
