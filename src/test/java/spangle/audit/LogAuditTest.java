package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.Caged;
import spangle.plan.Finding;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;
import spangle.plan.event.EventKind;
import spangle.plan.event.Said;
import spangle.plan.event.ScrapOf;

/** P1 hangs from 360 to 400, P2 from 420; the new plan is made at 410. */
class LogAuditTest {
  private static final PlannedBatch FIRST = simpleBake("oven-1 #1", "P1", 360, "A");
  private static final PlannedBatch SECOND = simpleBake("oven-1 #2", "P2", 420, "B");
  private static final Brief BEFORE = yard().lots(powderLot("A"), powderLot("B")).build();
  private static final Plan KEPT = PlanFixtures.plan(FIRST, SECOND);
  private static final int AT = 410;

  private static List<Finding> audit(
      Said said, Brief brief, Plan plan, Map<String, Integer> heldB) {
    return audit(said, brief, plan, heldB, new LogAudit.Sheets("A", "B", Map.of()));
  }

  private static List<Finding> audit(
      Said said, Brief brief, Plan plan, Map<String, Integer> heldB, LogAudit.Sheets sheets) {
    return audit(
        said, brief, plan, new LogAudit.PartOrder("job-A", "part-A", 4, Map.of()), heldB, sheets);
  }

  private static List<Finding> audit(
      Said said,
      Brief brief,
      Plan plan,
      LogAudit.PartOrder orderA,
      Map<String, Integer> heldB,
      LogAudit.Sheets sheets) {
    return LogAudit.of(
        new LogAudit.Case(
            BEFORE,
            KEPT,
            0,
            said.log(),
            said.log().last(),
            AT,
            brief,
            plan,
            List.of(orderA, new LogAudit.PartOrder("job-B", "part-B", 4, heldB)),
            sheets));
  }

  private static Brief now() {
    return yard().lots(powderLot("A"), powderLot("B")).frozen(FIRST).build();
  }

  private static void keeps(Said said, Plan plan) {
    assertThat(audit(said, now(), plan, Map.of())).isEmpty();
  }

  private static void breaks(String rule, Said said, Plan plan) {
    assertThat(audit(said, now(), plan, Map.of())).extracting(Finding::rule).containsExactly(rule);
  }

  private static Said hung() {
    return new Said().load(370, EventKind.HUNG, "P1");
  }

  @Test
  void whatHangsKeepsItsPlaceAndMayOnlyBeLater() {
    keeps(hung(), KEPT);
    PlannedBatch later = simpleBake("oven-1 #1", "P1", 380, "A");
    Brief slipped = yard().lots(powderLot("A"), powderLot("B")).frozen(later).build();
    assertThat(audit(hung(), slipped, PlanFixtures.plan(later, SECOND), Map.of())).isEmpty();
    Brief away = yard().lots(powderLot("A"), powderLot("B")).build();
    PlannedBatch elsewhere =
        PlanFixtures.bake(
            "oven-2 #1", "oven-2", 0, 430, 450, PlanFixtures.simpleLoad("P1", 415, "A"));
    assertThat(audit(hung(), away, PlanFixtures.plan(elsewhere, SECOND), Map.of()))
        .extracting(Finding::rule)
        .containsExactly("hung-unmoved");
    assertThat(audit(hung(), away, PlanFixtures.plan(SECOND), Map.of()))
        .extracting(Finding::words)
        .containsExactly("was reported hung and is not in the plan any more");
  }

  @Test
  void aSheetThatIsOutChangesOnlyWithAReasonAndANewLetter() {
    Said out = hung().load(372, EventKind.RELEASED, "P2");
    keeps(out, KEPT);
    keeps(out, PlanFixtures.plan(FIRST, simpleBake("oven-1 #2", "P2", 435, "B")));
    Plan later = PlanFixtures.plan(FIRST, simpleBake("oven-1 #2", "P2", 436, "B"));
    breaks("released-with-reason", out, later);
    breaks(
        "released-with-reason",
        out,
        PlanFixtures.plan(FIRST, simpleBake("oven-1 #2", "P7", 420, "B")));
    Map<String, String> why = Map.of("P2", "its pieces are not here in time");
    assertThat(audit(out, now(), later, Map.of(), new LogAudit.Sheets("A", "B", why))).isEmpty();
    assertThat(audit(out, now(), later, Map.of(), new LogAudit.Sheets("A", "A", why)))
        .extracting(Finding::words)
        .containsExactly("has its sheet out and has been changed under the letter A");
    // Taken back before, or not out at all: it may go anywhere.
    keeps(hung().load(372, EventKind.RELEASED, "P2").load(373, EventKind.WITHDRAWN, "P2"), later);
    keeps(hung(), later);
  }

  @Test
  void noPieceIsLost() {
    Brief lost = yard().lots(powderLot("A")).frozen(FIRST).build();
    assertThat(audit(hung(), lost, PlanFixtures.plan(FIRST), Map.of()))
        .extracting(Finding::words)
        .containsExactly("4 ordered, 0 in lots, 0 held, 0 not arrived, 0 scrapped");
    assertThat(audit(hung(), lost, PlanFixtures.plan(FIRST), Map.of("vents", 4))).isEmpty();
    assertThat(audit(hung(), lost, PlanFixtures.plan(FIRST), Map.of("not-arrived", 4))).isEmpty();
  }

  @Test
  void rejectedPiecesGoRoundOnce() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4);
    breaks("rework-planned", said, KEPT);
    Brief again =
        yard()
            .lots(
                powderLot("A"), powderLot("B"), powderLot("job-A/part-A#r3").of("job-A", "part-A"))
            .frozen(FIRST)
            .build();
    assertThat(audit(said, again, KEPT, Map.of())).isEmpty();
    // More than were finished: the rejection does not count and nothing need go round.
    keeps(hung().rejected(405, "job-B", "part-B", 2), KEPT);
  }

  private static List<Finding> coats(Said said, Brief brief, Plan plan, int most, int toStrip) {
    Map<String, Integer> held = toStrip == 0 ? Map.of() : Map.of("rework-strip", toStrip);
    List<Caged> cage = toStrip == 0 ? List.of() : List.of(new Caged("job-A", "part-A", toStrip));
    return audit(
        said,
        caged(brief, cage),
        plan,
        new LogAudit.PartOrder("job-A", "part-A", 4, held, most),
        Map.of(),
        new LogAudit.Sheets("A", "B", Map.of()));
  }

  private static Brief caged(Brief b, List<Caged> cage) {
    return new Brief(
        b.name(),
        b.monday(),
        b.horizonMin(),
        b.lines(),
        b.carriers(),
        b.lots(),
        b.kits(),
        b.supplies(),
        b.goals(),
        b.frozen(),
        b.announced(),
        b.baths(),
        b.scrapped(),
        cage,
        b.retired());
  }

  /** Four rejected pieces wait to be stripped; the kits must not count on them. */
  @Test
  void whatWaitsInTheCageIsKeptOutOfTheKits() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4, 1);
    LogAudit.PartOrder part =
        new LogAudit.PartOrder("job-A", "part-A", 4, Map.of("rework-strip", 4), 1);
    LogAudit.Sheets sheets = new LogAudit.Sheets("A", "B", Map.of());
    List<Caged> four = List.of(new Caged("job-A", "part-A", 4));
    assertThat(audit(said, caged(now(), four), KEPT, part, Map.of(), sheets)).isEmpty();
    assertThat(audit(said, now(), KEPT, part, Map.of(), sheets))
        .extracting(Finding::words)
        .containsExactly(
            "4 rejected pieces wait to be stripped or for a gate, 0 are kept out of the kits");
  }

  /** P1 is done and all its four pieces are rejected with their first coat: event 3. */
  @Test
  void noPieceGetsMoreCoatsThanItMayBear() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4, 1);
    Brief over = withRework("job-A/part-A#r3");
    assertThat(coats(said, over, KEPT, 2, 0)).isEmpty();
    assertThat(coats(said, over, KEPT, 1, 4))
        .extracting(Finding::rule, Finding::subject)
        .containsExactly(tuple("coats-counted", "job-A/part-A#r3"));
    // What bears all it may is held until it is stripped, and then planned under that event.
    assertThat(coats(said, now(), KEPT, 1, 4)).isEmpty();
    assertThat(coats(said, now(), KEPT, 1, 0))
        .extracting(Finding::rule)
        .containsExactly("rework-planned");
    Said bare = said.stripped(407, "job-A", "part-A", 4);
    Brief anew = withRework("job-A/part-A#r4");
    assertThat(coats(bare, anew, KEPT, 1, 0)).isEmpty();
    assertThat(coats(bare, anew, KEPT, 1, 4))
        .extracting(Finding::words)
        .containsExactly(
            "0 or 4 rejected pieces bear all the coats they may, 4 wait to be stripped, 4 are planned"
                + " again");
    // Three more than were finished: one of the reports is refused, whole, and it may be either.
    Said twice = said.rejected(406, "job-A", "part-A", 3, 1);
    assertThat(coats(twice, now(), KEPT, 1, 4)).isEmpty();
    assertThat(coats(twice, now(), KEPT, 1, 3)).isEmpty();
    assertThat(coats(twice, now(), KEPT, 1, 5))
        .extracting(Finding::words)
        .containsExactly(
            "0 or 3 or 4 or 7 rejected pieces bear all the coats they may, 5 wait to be stripped, 0"
                + " are planned again");
  }

  private static Brief down() {
    return yard().lots(powderLot("A"), powderLot("B")).retired("P1").build();
  }

  /** P1 hangs from 360, is in the booth at 370, and hangs anew as P3 from 460. */
  @Test
  void whatHungLeavesThePlanOnlyWhereItWasTakenDownInTime() {
    Plan anew = PlanFixtures.plan(simpleBake("oven-1 #2", "P3", 460, "A"), SECOND);
    Said hung = new Said().load(362, EventKind.HUNG, "P1");
    assertThat(audit(hung, down(), anew, Map.of()))
        .extracting(Finding::rule, Finding::words)
        .containsExactly(
            tuple("taken-down-in-time", "is void as taken down, which no report says"));
    Said late = new Said().load(362, EventKind.HUNG, "P1").load(370, EventKind.TAKEN_DOWN, "P1");
    assertThat(audit(late, down(), anew, Map.of()))
        .extracting(Finding::words)
        .containsExactly("was taken down although a station had begun with it");
    Said begun =
        new Said()
            .load(361, EventKind.HUNG, "P1")
            .load(362, EventKind.STARTED, "P1")
            .load(363, EventKind.TAKEN_DOWN, "P1");
    assertThat(audit(begun, down(), anew, Map.of()))
        .extracting(Finding::words)
        .containsExactly("was taken down although a station had begun with it");
    Said inTime = new Said().load(362, EventKind.HUNG, "P1").load(369, EventKind.TAKEN_DOWN, "P1");
    assertThat(audit(inTime, down(), anew, Map.of())).isEmpty();
    // Nobody said when it was hung, only that all ran as planned.
    Said asPlanned = new Said().asPlanned(362).load(369, EventKind.TAKEN_DOWN, "P1");
    assertThat(audit(asPlanned, down(), anew, Map.of())).isEmpty();
    Said tooLate = new Said().asPlanned(362).load(370, EventKind.TAKEN_DOWN, "P1");
    assertThat(audit(tooLate, down(), anew, Map.of()))
        .extracting(Finding::rule)
        .containsExactly("taken-down-in-time");
    // Its old number is on no sheet any more.
    Plan same = PlanFixtures.plan(simpleBake("oven-1 #2", "P1", 460, "A"), SECOND);
    assertThat(audit(inTime, down(), same, Map.of()))
        .extracting(Finding::rule, Finding::subject)
        .containsExactly(tuple("taken-down-in-time", "P1"));
    // A report alone does not unhang what the plan still has under its number.
    Brief away = yard().lots(powderLot("A"), powderLot("B")).build();
    assertThat(audit(inTime, away, anew, Map.of()))
        .extracting(Finding::rule)
        .containsExactly("hung-unmoved");
    Brief unknown = yard().lots(powderLot("A"), powderLot("B")).frozen(FIRST).retired("P9").build();
    assertThat(audit(hung(), unknown, KEPT, Map.of()))
        .extracting(Finding::words)
        .containsExactly("is void as taken down, and no load had that number");
  }

  private static List<Finding> scrap(Said said, boolean counted, int event, int inLots) {
    Brief brief =
        counted
            ? yard()
                .lots(powderLot("A"))
                .frozen(FIRST)
                .scrapped("B", event, 4 - inLots, false)
                .build()
            : yard().lots(powderLot("A"), powderLot("B")).frozen(FIRST).build();
    return audit(
        said, brief, counted ? PlanFixtures.plan(FIRST) : KEPT, Map.of("scrapped", 4 - inLots));
  }

  /** P1 hangs with all of A; B waits with four pieces. */
  @Test
  void piecesAreScrappedBecauseTheLogSaysSo() {
    Said said = hung().scrapped(405, "job-B", "part-B", 4, ScrapOf.WAITING);
    assertThat(scrap(said, true, 2, 0)).isEmpty();
    // Not counted though four surely wait: they are in the lots, and they are not.
    assertThat(scrap(said, false, 2, 4))
        .extracting(Finding::rule, Finding::words)
        .containsExactly(tuple("scrap-as-reported", "4 pieces were reported scrapped and are not"));
    // Nobody has said so, or another number: the pieces are lost.
    assertThat(scrap(hung(), true, 2, 0))
        .extracting(Finding::rule)
        .containsExactly("no-piece-lost", "scrap-as-reported");
    assertThat(scrap(said, true, 2, 1)).extracting(Finding::rule).contains("scrap-as-reported");
    // More than surely wait may be refused: of five, and of those on a load that may hang.
    keeps(hung().scrapped(405, "job-B", "part-B", 5, ScrapOf.WAITING), KEPT);
    keeps(
        hung()
            .load(404, EventKind.RELEASED, "P2")
            .scrapped(405, "job-A", "part-A", 1, ScrapOf.WAITING),
        KEPT);
    breaks(
        "scrap-as-reported",
        hung()
            .scrapped(404, "job-B", "part-B", 1, ScrapOf.WAITING)
            .scrapped(405, "job-B", "part-B", 9, ScrapOf.WAITING)
            .struck(406, 3),
        KEPT);
  }

  /** P1 is done and its four pieces are rejected with their first coat. */
  @Test
  void rejectedPiecesThatAreScrappedGoRoundNoMore() {
    Said said =
        hung()
            .load(401, EventKind.DONE, "P1")
            .rejected(405, "job-A", "part-A", 4, 1)
            .scrapped(406, "job-A", "part-A", 4, ScrapOf.REJECTED);
    Brief gone =
        yard().lots(powderLot("A"), powderLot("B")).frozen(FIRST).scrapped("A", 4, 4, true).build();
    assertThat(coats(said, gone, KEPT, 2, 0)).isEmpty();
    assertThat(coats(said, gone, KEPT, 1, 0)).isEmpty();
    assertThat(coats(said, gone, KEPT, 1, 4))
        .extracting(Finding::words)
        .containsExactly(
            "0 or 4 rejected pieces bear all the coats they may, 4 wait to be stripped, 0 are planned"
                + " again, 4 are scrapped");
    assertThat(coats(said, withRework("job-A/part-A#r3"), KEPT, 2, 0))
        .extracting(Finding::rule)
        .containsExactly("scrap-as-reported");
    Brief twice =
        yard()
            .lots(
                powderLot("A"), powderLot("B"), powderLot("job-A/part-A#r3").of("job-A", "part-A"))
            .frozen(FIRST)
            .scrapped("A", 4, 4, true)
            .build();
    assertThat(coats(said, twice, KEPT, 2, 0))
        .extracting(Finding::rule)
        .containsExactly("rework-planned");
  }

  @Test
  void rejectedPiecesHangByThemselves() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4, 1);
    Brief over = withRework("job-A/part-A#r3");
    Plan apart =
        PlanFixtures.plan(FIRST, SECOND, simpleBake("oven-1 #3", "P3", 480, "job-A/part-A#r3"));
    assertThat(coats(said, over, apart, 2, 0)).isEmpty();
    Plan mixed =
        PlanFixtures.plan(
            FIRST,
            PlanFixtures.bake(
                "oven-1 #2",
                "oven-1",
                0,
                435,
                455,
                PlanFixtures.load("P2", "rack", "B", "job-A/part-A#r3")
                    .visit("hang", 420, 430)
                    .visit("booth", 430, 435)
                    .visit("unload", 455, 460)));
    assertThat(coats(said, over, mixed, 2, 0))
        .extracting(Finding::rule, Finding::subject)
        .containsExactly(tuple("coats-counted", "P2"));
  }

  private static Brief withRework(String id) {
    return yard()
        .lots(powderLot("A"), powderLot("B"), powderLot(id).of("job-A", "part-A"))
        .frozen(FIRST)
        .build();
  }

  @Test
  void aShutGateLetsNothingBegin() {
    assertThat(audit(hung(), now(), KEPT, Map.of("vents", 4)))
        .extracting(Finding::rule)
        .contains("gates-shut");
    assertThat(audit(hung(), now(), KEPT, Map.of("not-arrived", 0)))
        .extracting(Finding::rule)
        .doesNotContain("gates-shut");
  }

  @Test
  void nothingIsPlannedWhereSomethingIsBroken() {
    // P2 is in the oven from 435 to 455.
    breaks("out-of-use", hung().broken(405, "oven-1", 440), KEPT);
    keeps(hung().broken(405, "oven-1", 435), KEPT);
    keeps(
        hung().station(404, EventKind.BROKEN, "oven-1").station(408, EventKind.REPAIRED, "oven-1"),
        KEPT);
  }

  @Test
  void whereSomePlacesAreOutTheOthersWorkOn() {
    // P2 is hung at the first of two places.
    keeps(hung().placesOut(405, "hang", 1), KEPT);
    breaks("out-of-use", hung().placesOut(405, "hang", 2), KEPT);
  }

  @Test
  void whatDoesNotHangBeginsFromNowOn() {
    PlannedBatch past = simpleBake("oven-1 #2", "P2", 409, "B");
    breaks("nothing-in-the-past", hung(), PlanFixtures.plan(FIRST, past));
    keeps(hung(), PlanFixtures.plan(FIRST, simpleBake("oven-1 #2", "P2", 410, "B")));
  }
}
