package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spangle.audit.Audit;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.WeekReader;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Plan;
import spangle.plan.Supply;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/** What an overfull week leaves out has a date behind it, and the plan itself stays as it was. */
class EarliestDatesTest {
  private static final PreparedWeek WEEK = shortOfYellow();
  private static final Plan PLAN =
      new Solver().solve(WEEK.brief(), new SolveOptions(60, 40_000, 1, 1), ProgressListener.NOBODY);

  /** The demo week with half of the yellow that is on order. */
  private static PreparedWeek shortOfYellow() {
    PreparedWeek week =
        BriefMaker.prepare(WeekReader.read(Path.of("samples/harbour-week")).input().orElseThrow());
    Brief brief =
        BriefChange.supplies(
            week.brief(),
            s ->
                s.materialId().equals("P-BUOY-YELLOW")
                    ? s.with(
                        s.arrivals().stream()
                            .map(a -> new Supply.Arrival(a.atMin(), less(a), a.lot()))
                            .toList())
                    : s);
    return new PreparedWeek(week.input(), brief, week.parts(), week.held(), week.gates());
  }

  private static double less(Supply.Arrival arrival) {
    return arrival.atMin() > 0 ? arrival.amount() / 2 : arrival.amount();
  }

  @Test
  void lotsWithoutRoomGetADateBehindTheWeek() {
    Plan dated = EarliestDates.in(WEEK, PLAN, 0);

    List<LeftOut> noRoom =
        dated.leftOut().stream()
            .filter(l -> l.code().equals("no-time") && startsARoute(l.lotId()))
            .toList();
    assertThat(noRoom).isNotEmpty();
    assertThat(noRoom)
        .allSatisfy(
            l -> assertThat(l.earliestMin().orElse(-1)).isGreaterThan(WEEK.brief().horizonMin()));
  }

  /** A later leg whose zinc is planned may have spoiled by then: it rightly gets no date. */
  private static boolean startsARoute(String lotId) {
    return WEEK.brief().lots().stream().anyMatch(l -> l.id().equals(lotId) && l.after().isEmpty());
  }

  @Test
  void nothingElseOfThePlanChanges() {
    Plan dated = EarliestDates.in(WEEK, PLAN, 0);

    assertThat(dated.batches()).isEqualTo(PLAN.batches());
    assertThat(dated.figures()).isEqualTo(PLAN.figures());
    assertThat(dated.leftOut())
        .extracting(LeftOut::lotId)
        .containsExactlyElementsOf(PLAN.leftOut().stream().map(LeftOut::lotId).toList());
    assertThat(Audit.of(WEEK.brief(), dated)).isEmpty();
  }

  /** A batch that finds no time for what one lot lacks is no reason for the others in it. */
  @Test
  void aLotIsLeftOutForAReasonOfItsOwn() {
    Plan brief =
        new Solver()
            .solve(WEEK.brief(), new SolveOptions(60, 20_000, 1, 1), ProgressListener.NOBODY);

    // Only the yellow is short in this week.
    assertThat(Stream.concat(brief.leftOut().stream(), PLAN.leftOut().stream()))
        .filteredOn(l -> l.code().equals("no-supply"))
        .isNotEmpty()
        .allMatch(l -> l.reason().contains("buoy yellow"));
    assertThat(brief.leftOut())
        .filteredOn(l -> l.code().equals("earlier-leg"))
        .isNotEmpty()
        .noneMatch(l -> startsARoute(l.lotId()));
  }

  @Test
  void twoAnswersAreTheSame() {
    assertThat(EarliestDates.in(WEEK, PLAN, 0)).isEqualTo(EarliestDates.in(WEEK, PLAN, 0));
  }

  @Test
  void whatLacksPowderHasTheDateOfAnOrderPlacedNowAndNamesIt() {
    // ordered Monday, four working days: Friday 06:00
    assertThat(EarliestDates.in(WEEK, PLAN, 0).leftOut())
        .filteredOn(l -> l.code().equals("no-supply") && l.reason().contains("buoy yellow"))
        .isNotEmpty()
        .allSatisfy(
            l -> {
              assertThat(l.reason())
                  .contains(
                      "is not in the shop in time; it can be done if 20.0 kg more of buoy yellow,"
                          + " gloss, ordered Monday, arrive by Friday 06:00 (4 working days)");
              // before it comes where others, who can wait, draw on it in its place
              assertThat(l.earliestMin().orElse(-1)).isPositive();
            });
    // of Wednesday 10:00: four working days later is Tuesday of the week after
    assertThat(EarliestDates.in(WEEK, PLAN, 2 * 1440 + 600).leftOut())
        .filteredOn(l -> l.code().equals("no-supply") && l.reason().contains("buoy yellow"))
        .isNotEmpty()
        .allSatisfy(
            l ->
                assertThat(l.reason())
                    .contains("ordered Wednesday, arrive by Tuesday of week 2 06:00"));
  }
}
