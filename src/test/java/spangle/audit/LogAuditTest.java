package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static spangle.audit.LogCases.FIRST;
import static spangle.audit.LogCases.KEPT;
import static spangle.audit.LogCases.SECOND;
import static spangle.audit.LogCases.audit;
import static spangle.audit.LogCases.breaks;
import static spangle.audit.LogCases.hung;
import static spangle.audit.LogCases.keeps;
import static spangle.audit.LogCases.now;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;
import spangle.plan.event.EventKind;
import spangle.plan.event.Said;
import spangle.plan.event.ScrapOf;

/** P1 hangs from 360 to 400, P2 from 420; the new plan is made at 410. */
class LogAuditTest {
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
    // Another station was broken, or this one later: neither held it up.
    Said elsewhere =
        new Said()
            .load(362, EventKind.HUNG, "P1")
            .broken(363, "oven-2", 500)
            .load(370, EventKind.TAKEN_DOWN, "P1")
            .broken(380, "booth", 500);
    assertThat(audit(elsewhere, down(), anew, Map.of()))
        .extracting(Finding::rule)
        .contains("taken-down-in-time");
    Said held =
        new Said()
            .load(362, EventKind.HUNG, "P1")
            .broken(363, "booth", 500)
            .load(375, EventKind.TAKEN_DOWN, "P1");
    assertThat(audit(held, down(), PlanFixtures.plan(SECOND), Map.of()))
        .extracting(Finding::rule)
        .doesNotContain("taken-down-in-time");
    Said reportedAfter =
        new Said()
            .load(362, EventKind.HUNG, "P1")
            .load(369, EventKind.TAKEN_DOWN, "P1")
            .load(371, EventKind.STARTED, "P1");
    assertThat(audit(reportedAfter, down(), anew, Map.of())).isEmpty();
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
