package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import spangle.audit.Audit;
import spangle.equipment.Span;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.WeekReader;
import spangle.intake.week.Maintenance;
import spangle.intake.week.Shop;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.Supply;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/** What is left out is said with what holds it, and has a date only where that ends. */
class LeftOutCausesTest {
  private static final int DAY = 24 * 60;
  private static final WeekInput INPUT =
      WeekReader.read(Path.of("samples/harbour-week")).input().orElseThrow();
  private static final PreparedWeek NO_OVEN =
      week(broken("oven-1", Maintenance.NO_END), broken("oven-2", Maintenance.NO_END));
  private static final Plan WITHOUT_OVEN = dated(NO_OVEN);

  private static PreparedWeek week(Maintenance... stops) {
    Shop shop = INPUT.shop();
    List<Maintenance> blocks = new ArrayList<>(shop.maintenance());
    blocks.addAll(Arrays.asList(stops));
    return BriefMaker.prepare(INPUT.withShop(shop.with(blocks, shop.lines())));
  }

  private static Maintenance broken(String station, int untilMin) {
    return new Maintenance(station, new Span(0, untilMin), "broken: burner", false, 0);
  }

  private static Plan dated(PreparedWeek week) {
    return EarliestDates.in(week, planned(week), 0);
  }

  private static Plan planned(PreparedWeek week) {
    Plan plan =
        new Solver().solve(week.brief(), new SolveOptions(60, 20, 1, 1), ProgressListener.NOBODY);
    assertThat(Audit.of(week.brief(), plan)).isEmpty();
    return plan;
  }

  /** What a plan says of some of the lots it leaves out; the others are not asked about. */
  private static List<LeftOut> some(PreparedWeek week, Set<String> lots) {
    Plan plan = planned(week);
    List<LeftOut> few = of(plan, lots).stream().limit(6).toList();
    Plan asked = new Plan(plan.batches(), few, plan.figures(), plan.solve());
    return EarliestDates.in(week, asked, 0).leftOut();
  }

  private static List<LeftOut> of(Plan plan, Set<String> lots) {
    return plan.leftOut().stream().filter(l -> lots.contains(l.lotId())).toList();
  }

  /** First legs that want an oven, and only that. */
  private static Set<String> bakedFirst(Brief brief) {
    return brief.lots().stream()
        .filter(l -> l.after().isEmpty() && l.finish().kind() == FinishKind.POWDER)
        .map(Lot::id)
        .collect(Collectors.toSet());
  }

  @Test
  void withNoOvenAndNoEndKnownNothingThatIsBakedHasADate() {
    List<LeftOut> left = of(WITHOUT_OVEN, bakedFirst(NO_OVEN.brief()));

    assertThat(left).hasSizeGreaterThan(20);
    assertThat(left)
        .allSatisfy(
            l -> {
              assertThat(l.code()).isEqualTo("out-of-use");
              assertThat(l.reason())
                  .startsWith("held by Box oven, ")
                  .contains("(broken: burner, since Monday 00:00, no end known)");
              assertThat(l.earliestMin()).isEmpty();
              assertThat(l.condition()).startsWith("no date before that works again");
            });
    assertThat(left)
        .anySatisfy(
            l ->
                assertThat(l.reason())
                    .startsWith(
                        "held by Box oven, large (broken: burner, since Monday 00:00, no end known)"
                            + " and Box oven, small (broken"));
  }

  @Test
  void whatIsGalvanizedForPowderIsHeldByTheOvenOfALaterStep() {
    List<LeftOut> zinc =
        WITHOUT_OVEN.leftOut().stream()
            .filter(
                l ->
                    NO_OVEN.brief().lots().stream()
                        .anyMatch(lot -> lot.id().equals(l.lotId()) && lot.lineId().equals("zinc")))
            .filter(l -> l.reason().contains("after it"))
            .toList();

    assertThat(zinc).isNotEmpty();
    assertThat(zinc)
        .allSatisfy(
            l -> {
              assertThat(l.code()).isEqualTo("out-of-use");
              assertThat(l.reason())
                  .startsWith("\"degassing bake\" after it is held by Box oven, ")
                  .endsWith("; done without it, it waits longer than the 48 h its surface keeps");
              assertThat(l.earliestMin()).isEmpty();
            });
  }

  @Test
  void anEndBehindTheWeekIsSaidAndTheDatesLieBehindIt() {
    int end = 8 * DAY + 10 * 60;
    PreparedWeek week = week(broken("oven-1", end), broken("oven-2", end));

    List<LeftOut> left = some(week, bakedFirst(week.brief()));

    List<LeftOut> held = left.stream().filter(l -> l.code().equals("out-of-use")).toList();
    assertThat(held).hasSizeGreaterThan(3);
    assertThat(held)
        .allSatisfy(l -> assertThat(l.reason()).contains("until Tuesday of week 2 10:00)"));
    assertThat(held).anySatisfy(l -> assertThat(l.earliestMin()).isPresent());
    assertThat(held.stream().mapToInt(l -> l.earliestMin().orElse(Integer.MAX_VALUE)))
        .allMatch(at -> at > end);
  }

  @Test
  void anEndInTheWeekIsSaidWhereNoRoomIsLeftAfterIt() {
    int end = 4 * DAY + 12 * 60;
    PreparedWeek week = week(broken("oven-1", end), broken("oven-2", end));

    List<LeftOut> left = some(week, bakedFirst(week.brief()));

    assertThat(left)
        .anySatisfy(
            l -> {
              assertThat(l.code()).isEqualTo("no-time");
              assertThat(l.reason())
                  .startsWith("no room is left in the calendar after Friday 12:00, when Box oven, ")
                  .endsWith(" works again");
              assertThat(l.earliestMin()).isPresent();
            });
  }

  @Test
  void oneOvenOfTwoIsNamedBesideTheLackOfRoomAndStaysOutInTheWeeksBehind() {
    PreparedWeek week = week(broken("oven-1", Maintenance.NO_END));

    List<LeftOut> left = some(week, bakedFirst(week.brief()));

    assertThat(left).filteredOn(l -> l.code().equals("no-time")).isNotEmpty();
    assertThat(left)
        .filteredOn(l -> l.code().equals("no-time"))
        .allSatisfy(
            l ->
                assertThat(l.reason())
                    .isEqualTo(
                        "no room is left in the calendar before the week ends without Box oven,"
                            + " large (broken: burner, since Monday 00:00, no end known)"));
  }

  @Test
  void whereEverythingWorksTheReasonStays() {
    PreparedWeek week = week();
    Plan plan = planned(week);

    List<LeftOut> said = LeftOutCauses.in(week, plan, 0).leftOut();

    assertThat(said).filteredOn(l -> l.code().equals("out-of-use")).isEmpty();
    assertThat(said)
        .filteredOn(l -> l.code().equals("no-time"))
        .isNotEmpty()
        .noneMatch(l -> l.reason().contains("works again") || l.reason().contains("without"));
  }

  private static PreparedWeek yellow(int atMin) {
    PreparedWeek week = week();
    Brief brief =
        BriefChange.supplies(
            week.brief(),
            s ->
                s.materialId().equals("P-BUOY-YELLOW") && s.keptLot().isEmpty()
                    ? s.with(List.of(new Supply.Arrival(atMin, 200, "BY-050")))
                    : s);
    return new PreparedWeek(week.input(), brief, week.parts(), week.held(), week.gates());
  }

  /** Those for which nothing is kept. */
  private static Set<String> yellowLots(Brief brief) {
    return brief.lots().stream()
        .filter(l -> l.finish().materialId().equals("P-BUOY-YELLOW"))
        .filter(l -> brief.supplyOf(l.finish()).orElseThrow().keptLot().isEmpty())
        .map(Lot::id)
        .collect(Collectors.toSet());
  }

  @Test
  void powderTooLateForTheWeekIsTheReasonWithItsDeliveryAndADateAfterIt() {
    // Friday 18:00 nobody works any more; after the week's end it is no other
    for (int at : List.of(4 * DAY + 18 * 60, 7 * DAY + 9 * 60)) {
      PreparedWeek week = yellow(at);

      List<LeftOut> left = some(week, yellowLots(week.brief()));

      assertThat(left).hasSizeGreaterThan(1);
      assertThat(left)
          .allSatisfy(
              l -> {
                assertThat(l.code()).isEqualTo("no-supply");
                assertThat(l.reason())
                    .contains(
                        " kg of buoy yellow, gloss is not in the shop in time; it can be done")
                    .contains("if 200.0 kg of buoy yellow, gloss (lot BY-050) arrive ")
                    .endsWith(DayWords.of(at));
                assertThat(l.earliestMin().orElse(-1)).isGreaterThan(at);
              });
    }
  }

  @Test
  void powderThatComesWithLittleRoomBehindItIsNamedWithTheLackOfRoom() {
    PreparedWeek week = yellow(4 * DAY + 10 * 60);

    List<LeftOut> left = some(week, yellowLots(week.brief()));

    assertThat(left)
        .anySatisfy(
            l -> {
              assertThat(l.code()).isEqualTo("no-time");
              assertThat(l.reason())
                  .isEqualTo(
                      "no room is left in the calendar after Friday 10:00, when buoy yellow, gloss"
                          + " comes for it");
              assertThat(l.earliestMin().orElse(-1)).isGreaterThan(week.brief().horizonMin());
            });
  }

  @Test
  void powderThatIsHereIsNoReason() {
    PreparedWeek week = yellow(0);

    assertThat(some(week, yellowLots(week.brief())))
        .isNotEmpty()
        .noneMatch(l -> l.reason().contains("yellow"));
  }
}
