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
import static spangle.audit.LogCases.week;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.Finding;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.event.EventKind;
import spangle.plan.event.Said;
import spangle.plan.event.ScrapOf;

/** Rejected pieces go round once, are stripped, or are scrapped; {@link LogCases} has the week. */
class RejectsAuditTest {
  @Test
  void rejectedPiecesGoRoundOnce() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4);
    breaks("rework-planned", said, KEPT);
    Brief again = withRework("job-A/part-A#r3").build();
    assertThat(audit(said, again, KEPT, Map.of())).isEmpty();
    // More than were finished: the rejection does not count and nothing need go round.
    keeps(hung().rejected(405, "job-B", "part-B", 2), KEPT);
  }

  private static List<Finding> coats(
      Said said, Supplier<BriefBuilder> week, Plan plan, int most, int toStrip) {
    Map<String, Integer> held = toStrip == 0 ? Map.of() : Map.of("rework-strip", toStrip);
    BriefBuilder made = toStrip == 0 ? week.get() : week.get().caged("A", toStrip);
    return audit(
        said,
        made.build(),
        plan,
        new LogAudit.PartOrder("job-A", "part-A", 4, held, most),
        Map.of(),
        new LogAudit.Sheets("A", "B", Map.of()));
  }

  /** Four rejected pieces wait to be stripped; the kits must not count on them. */
  @Test
  void whatWaitsInTheCageIsKeptOutOfTheKits() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4, 1);
    LogAudit.PartOrder part =
        new LogAudit.PartOrder("job-A", "part-A", 4, Map.of("rework-strip", 4), 1);
    LogAudit.Sheets sheets = new LogAudit.Sheets("A", "B", Map.of());
    Brief four = week().caged("A", 4).build();
    assertThat(audit(said, four, KEPT, part, Map.of(), sheets)).isEmpty();
    assertThat(audit(said, now(), KEPT, part, Map.of(), sheets))
        .extracting(Finding::words)
        .containsExactly(
            "4 rejected pieces wait to be stripped or for a gate, 0 are kept out of the kits");
  }

  /** P1 is done and all its four pieces are rejected with their first coat: event 3. */
  @Test
  void noPieceGetsMoreCoatsThanItMayBear() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4, 1);
    Supplier<BriefBuilder> over = () -> withRework("job-A/part-A#r3");
    assertThat(coats(said, over, KEPT, 2, 0)).isEmpty();
    assertThat(coats(said, over, KEPT, 1, 4))
        .extracting(Finding::rule, Finding::subject)
        .containsExactly(tuple("coats-counted", "job-A/part-A#r3"));
    // What bears all it may is held until it is stripped, and then planned under that event.
    assertThat(coats(said, LogCases::week, KEPT, 1, 4)).isEmpty();
    assertThat(coats(said, LogCases::week, KEPT, 1, 0))
        .extracting(Finding::rule)
        .containsExactly("rework-planned");
    Said bare = said.stripped(407, "job-A", "part-A", 4);
    Supplier<BriefBuilder> anew = () -> withRework("job-A/part-A#r4");
    assertThat(coats(bare, anew, KEPT, 1, 0)).isEmpty();
    assertThat(coats(bare, anew, KEPT, 1, 4))
        .extracting(Finding::words)
        .containsExactly(
            "0 or 4 rejected pieces bear all the coats they may, 4 wait to be stripped, 4 are planned"
                + " again");
    // Three more than were finished: one of the reports is refused, whole, and it may be either.
    Said twice = said.rejected(406, "job-A", "part-A", 3, 1);
    assertThat(coats(twice, LogCases::week, KEPT, 1, 4)).isEmpty();
    assertThat(coats(twice, LogCases::week, KEPT, 1, 3)).isEmpty();
    assertThat(coats(twice, LogCases::week, KEPT, 1, 5))
        .extracting(Finding::words)
        .containsExactly(
            "0 or 3 or 4 or 7 rejected pieces bear all the coats they may, 5 wait to be stripped, 0"
                + " are planned again");
  }

  /** P1 is done and its four pieces are rejected with their first coat. */
  @Test
  void rejectedPiecesThatAreScrappedGoRoundNoMore() {
    Said said =
        hung()
            .load(401, EventKind.DONE, "P1")
            .rejected(405, "job-A", "part-A", 4, 1)
            .scrapped(406, "job-A", "part-A", 4, ScrapOf.REJECTED);
    Supplier<BriefBuilder> gone = () -> week().scrapped("A", 4, 4, true);
    assertThat(coats(said, gone, KEPT, 2, 0)).isEmpty();
    assertThat(coats(said, gone, KEPT, 1, 0)).isEmpty();
    assertThat(coats(said, gone, KEPT, 1, 4))
        .extracting(Finding::words)
        .containsExactly(
            "0 or 4 rejected pieces bear all the coats they may, 4 wait to be stripped, 0 are planned"
                + " again, 4 are scrapped");
    assertThat(coats(said, () -> withRework("job-A/part-A#r3"), KEPT, 2, 0))
        .extracting(Finding::rule)
        .containsExactly("scrap-as-reported");
    Supplier<BriefBuilder> twice = () -> withRework("job-A/part-A#r3").scrapped("A", 4, 4, true);
    assertThat(coats(said, twice, KEPT, 2, 0))
        .extracting(Finding::rule)
        .containsExactly("rework-planned");
  }

  @Test
  void rejectedPiecesHangByThemselves() {
    Said said = hung().load(401, EventKind.DONE, "P1").rejected(405, "job-A", "part-A", 4, 1);
    Supplier<BriefBuilder> over = () -> withRework("job-A/part-A#r3");
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

  private static BriefBuilder withRework(String id) {
    return yard()
        .lots(powderLot("A"), powderLot("B"), powderLot(id).of("job-A", "part-A"))
        .frozen(FIRST);
  }
}
