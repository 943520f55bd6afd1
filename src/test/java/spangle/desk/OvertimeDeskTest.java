package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.plan.json.PlanJson;
import spangle.report.Overtime;
import spangle.report.TerminalSummary;
import spangle.report.week.OvertimeWords;
import spangle.report.week.WeekTime;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/**
 * A shop that dips on Monday only, with more than a Monday of work: hours it may work besides bring
 * in what they have room for, and nothing is said that a whole audited plan does not hold.
 */
class OvertimeDeskTest {
  private static final int QUITTING = 14 * 60 + 30;

  /** Twice what a Monday takes. */
  private static final int FULL = 20;

  @TempDir static Path temp;

  private static final Map<String, PlanDesk.Made> MADE = new LinkedHashMap<>();

  private static final String MONDAY_EVENING = FULL + evening("mon", "14:30", "18:30", "zinc");

  private static PlanDesk.Made made(String overtime, int beams) throws IOException {
    String key = beams + overtime;
    PlanDesk.Made made = MADE.get(key);
    if (made == null) {
      made = planned(overtime, beams);
      MADE.put(key, made);
    }
    return made;
  }

  private static PlanDesk.Made planned(String overtime, int beams) throws IOException {
    Path week = temp.resolve("week" + MADE.size());
    Files.createDirectories(week.resolve("jobs"));
    Path steps = Path.of("samples/first-steps");
    Files.copy(steps.resolve("coatings.yaml"), week.resolve("coatings.yaml"));
    String shop = Files.readString(steps.resolve("shop.yaml"));
    String monday =
        shop.replace("horizon_days: 5", "horizon_days: 1")
            .replace("days: [mon, tue, wed, thu, fri]", "days: [mon]")
            .replace("lines:\n  - id: powder", overtime + "lines:\n  - id: powder");
    Files.writeString(week.resolve("shop.yaml"), monday);
    StringBuilder jobs =
        new StringBuilder(Files.readAllLines(steps.resolve("jobs/jobs.csv")).get(0));
    IntStream.range(0, beams)
        .forEach(
            i ->
                jobs.append(
                    "\nB-%02d,Pilot House,P%02d,bulwark plate %02d,1,steel,8,plate 2400x700 mm,,,,zinc,,mon 06:00,tue 24:00,no,no,no,,,no,C-8850,0.18,0.012,2,"
                        .formatted(i, i, i)));
    Files.writeString(week.resolve("jobs/jobs.csv"), jobs + "\n");
    return new PlanDesk()
        .plan(week, new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY)
        .made()
        .orElseThrow();
  }

  private static String evening(String days, String from, String to, String line) {
    return "overtime:\n  - {days: ["
        + days
        + "], from: '"
        + from
        + "', to: '"
        + to
        + "', lines: ["
        + line
        + "], people: 2}\n";
  }

  @Test
  void anEveningBringsInWhatItHasRoomFor() throws IOException {
    PlanDesk.Made made = made(evening("mon", "14:30", "18:30", "zinc"), FULL);
    Overtime answer = made.report().overtime();

    assertThat(made.findings()).isEmpty();
    assertThat(made.plan().leftOut()).isNotEmpty();
    assertThat(answer.state()).isEqualTo(Overtime.State.TRIED);
    assertThat(answer.tried()).isEqualTo(1);
    assertThat(answer.lotsOut()).isEqualTo(made.plan().leftOut().size());
    Overtime.Offer offer = answer.offers().get(0);
    Overtime.Hours hours = offer.hours().get(0);
    assertThat(offer.lotsIn()).isBetween(1, answer.lotsOut());
    assertThat(hours.startMin()).isEqualTo(QUITTING);
    assertThat(hours.endMin()).isBetween(QUITTING + 15, QUITTING + 240);
    assertThat(hours.minutes() % 15).isZero();
    assertThat(offer.costMin()).isEqualTo(2L * hours.minutes());
    assertThat(offer.gains()).allMatch(Overtime.Gain::inTime);
    assertThat(offer.jobsInTime()).hasSize(offer.lotsIn());
  }

  @Test
  void twiceTheHoursBringMoreAndCostMore() throws IOException {
    Overtime two =
        made(
                "overtime:\n"
                    + "  - {days: [mon], from: '14:30', to: '16:30', lines: [zinc], people: 2}\n"
                    + "  - {days: [mon], from: '14:30', to: '18:30', lines: [zinc], people: 2}\n",
                40)
            .report()
            .overtime();

    assertThat(two.tried()).isEqualTo(3);
    assertThat(two.offers()).hasSize(2);
    assertThat(two.offers().get(0).lotsIn()).isGreaterThan(two.offers().get(1).lotsIn());
    assertThat(two.offers().get(0).costMin()).isGreaterThan(two.offers().get(1).costMin());
  }

  @Test
  void aSaturdayBehindTheEndOfThePlanIsTried() throws IOException {
    Overtime answer = made(evening("sat", "06:00", "10:00", "zinc"), FULL).report().overtime();

    Overtime.Offer offer = answer.offers().get(0);
    assertThat(offer.hours().get(0).startMin()).isEqualTo(5 * 1440 + 360);
    assertThat(offer.gains()).isNotEmpty().noneMatch(Overtime.Gain::inTime);
    assertThat(offer.jobsInTime()).isEmpty();
  }

  @Test
  void hoursOfAnotherLineBringNothing() throws IOException {
    PlanDesk.Made made = made(evening("mon", "14:30", "18:30", "powder"), FULL);

    assertThat(made.report().overtime().state()).isEqualTo(Overtime.State.TRIED);
    assertThat(made.report().overtime().offers()).isEmpty();
    assertThat(words(made))
        .containsExactly(
            "Overtime: what the shop file allows was tried and brings nothing in or in time.");
  }

  @Test
  void whereTheShopFileAllowsNoneItSaysSo() throws IOException {
    PlanDesk.Made made = made("", FULL);

    assertThat(made.report().overtime().state()).isEqualTo(Overtime.State.NOT_ALLOWED);
    assertThat(words(made)).singleElement().asString().contains("shop file allows none");
  }

  @Test
  void aClosedDayIsNotOffered() throws IOException {
    String closed =
        evening("sat", "06:00", "10:00", "zinc")
            + "closed_days:\n  - {date: sat, lines: [zinc], why: holiday}\n";

    assertThat(made(closed, FULL).report().overtime().state())
        .isEqualTo(Overtime.State.NOT_ALLOWED);
  }

  @Test
  void aLineThatIsClosedDoesNotKeepTheOthersHome() throws IOException {
    String closed =
        "overtime:\n  - {days: [sat], from: '06:00', to: '10:00', people: 2}\n"
            + "closed_days:\n  - {date: sat, lines: [powder], why: stocktaking}\n";

    assertThat(made(closed, FULL).report().overtime().offers())
        .isNotEmpty()
        .flatExtracting(Overtime.Offer::hours)
        .allSatisfy(hours -> assertThat(hours.lines()).containsExactly("Kettle line"));
  }

  @Test
  void nobodyIsAskedToStayAtAnotherFirm() throws IOException {
    Path overlay = temp.resolve("outside.yaml");
    Files.writeString(
        overlay,
        Files.readString(Path.of("samples/what-if/kettle-outside.yaml"))
            + "  overtime:\n    - {days: [sun], from: '06:00', to: '10:00', people: 2}\n");
    PreparedWeek week =
        BriefMaker.prepare(
            WeekReader.read(Path.of("samples/harbour-week"), Besides.overlay(Optional.of(overlay)))
                .input()
                .orElseThrow());

    assertThat(new OvertimeHours(week.input().shop(), week.brief()).allowed(0))
        .filteredOn(stretch -> stretch.date().day() == 6)
        .singleElement()
        .satisfies(sunday -> assertThat(sunday.date().lines()).contains("powder"))
        .satisfies(sunday -> assertThat(sunday.date().lines()).doesNotContain("zinc"));
  }

  @Test
  void aWeekThatIsNotFullAsksForNothing() throws IOException {
    PlanDesk.Made made = made(evening("mon", "14:30", "18:30", "zinc"), 1);

    assertThat(made.report().overtime()).isEqualTo(Overtime.NONE);
    assertThat(words(made)).isEmpty();
    assertThat(file(made).estimates()).isEmpty();
  }

  @Test
  void hoursThatAreOverAreNotOffered() throws IOException {
    PlanDesk.Made made = made(evening("mon", "14:30", "18:30", "zinc"), FULL);

    assertThat(OvertimeDesk.of(made.week(), made.plan(), QUITTING).state())
        .isEqualTo(Overtime.State.TRIED);
    assertThat(OvertimeDesk.of(made.week(), made.plan(), QUITTING + 1).state())
        .isEqualTo(Overtime.State.NOT_ALLOWED);
  }

  @Test
  void inTheMiddleOfTheWeekOnlyTheRestIsTriedAndWhatHangsStays() throws IOException {
    ReplanDesk.Rest rest = living("when: mon 10:00, what: as-planned").replan("mon 10:05");
    Overtime answer = OvertimeDesk.of(rest.start().week(), rest.plan(), 605);

    assertThat(rest.findings()).isEmpty();
    assertThat(rest.start().week().brief().frozen()).isNotEmpty();
    assertThat(answer.offers()).isNotEmpty();
    assertThat(answer.offers().get(0).lotsIn()).isPositive();
  }

  @Test
  void whatAnEventShutsStaysShutInTheEvening() throws IOException {
    ReplanDesk.Rest rest =
        living("when: mon 10:00, what: broken, station: kettle, until: mon 18:30")
            .replan("mon 10:05");
    Overtime answer = OvertimeDesk.of(rest.start().week(), rest.plan(), 605);

    assertThat(answer.state()).isEqualTo(Overtime.State.TRIED);
    assertThat(answer.offers()).isEmpty();
  }

  @Test
  void hoursOfTheShiftAreNoOvertime() throws IOException {
    Overtime besides = made(evening("mon", "14:30", "18:30", "zinc"), FULL).report().overtime();
    Overtime over = made(evening("mon", "10:00", "18:30", "zinc"), FULL).report().overtime();

    assertThat(over).isEqualTo(besides);
    assertThat(made(evening("mon", "06:00", "14:30", "zinc"), FULL).report().overtime().state())
        .isEqualTo(Overtime.State.NOT_ALLOWED);
  }

  /** One line works then anyway and the other does not: for that one they are hours more. */
  @Test
  void hoursOfOneLinesExtraDayAreOvertimeOfTheOther() throws IOException {
    String evening =
        "overtime:\n  - {days: [mon], from: '14:30', to: '18:30', people: 2}\n"
            + "extra_days:\n  - {date: mon, from: '14:30', to: '18:30'";
    Overtime other = made(evening + ", lines: [powder]}\n", FULL).report().overtime();
    Overtime none = made(evening + "}\n", FULL * 2).report().overtime();

    assertThat(other.offers().get(0).hours())
        .allSatisfy(hours -> assertThat(hours.startMin()).isEqualTo(QUITTING))
        .allSatisfy(hours -> assertThat(hours.lines()).containsExactly("Kettle line"));
    assertThat(other.offers().get(0).lotsIn()).isPositive();
    assertThat(none.state()).isEqualTo(Overtime.State.NOT_ALLOWED);
  }

  /** Overtime that goes on past midnight buys what the same hours until midnight buy, or more. */
  @Test
  void whatCoolsAfterMidnightIsNoReasonToBuyNothing() throws IOException {
    for (int end = 0; end < 60; end += 15) {
      String until = "00:%02d".formatted(end + 1);
      Overtime night = made(evening("mon", "22:00", until, "zinc"), FULL).report().overtime();
      assertThat(night.offers()).as(until).isNotEmpty();
    }
  }

  @Test
  void moreHoursAndLotsThanCanBeTriedAreSaid() throws IOException {
    StringBuilder many = new StringBuilder("overtime:\n");
    for (int i = 0; i < 240; i++) {
      many.append(
          "  - {days: [mon, tue, wed], from: '%02d:%02d', to: '23:30', lines: [zinc]}\n"
              .formatted(15 + i / 60, i % 60));
    }
    PlanDesk.Made made = made(many.toString(), FULL);

    assertThat(made.report().overtime().state()).isEqualTo(Overtime.State.TOO_MUCH_OUT);
    assertThat(words(made)).singleElement().asString().contains("so many that it was not tried");
  }

  private static LivingWeek living(String event) throws IOException {
    made(evening("mon", "14:30", "18:30", "zinc"), FULL);
    Path week = temp.resolve("week" + new ArrayList<>(MADE.keySet()).indexOf(MONDAY_EVENING));
    LivingWeek living =
        new LivingWeek(week, Files.createTempDirectory(temp, "living").resolve("week"), 1);
    return living.event(event);
  }

  @Test
  void theSamePlanGivesTheSameAnswer() throws IOException {
    PlanDesk.Made made = made(evening("mon", "14:30", "18:30", "zinc"), FULL);

    assertThat(OvertimeDesk.of(made.week(), made.plan(), 0)).isEqualTo(made.report().overtime());
  }

  @Test
  void screenAndPlanFileSayIt() throws IOException {
    PlanDesk.Made made = made(evening("mon", "14:30", "18:30", "zinc"), FULL);
    Overtime.Offer offer = made.report().overtime().offers().get(0);

    assertThat(TerminalSummary.of(made.report()))
        .contains("overtime Mon 14:30-")
        .contains(": " + offer.lotsIn() + " of " + made.plan().leftOut().size() + " lots");
    JsonNode kept = file(made).estimates().orElseThrow().path("overtime");
    assertThat(kept.path("state").asText()).isEqualTo("tried");
    JsonNode first = kept.path("offers").path(0);
    assertThat(first.path("lots_in").asInt()).isEqualTo(offer.lotsIn());
    assertThat(first.path("hours").path(0).path("start_min").asInt()).isEqualTo(QUITTING);
    assertThat(first.path("words").asText())
        .startsWith("Mon 14:30 to ")
        .contains(" on Kettle line (2 people): ");
  }

  private static List<String> words(PlanDesk.Made made) {
    return new OvertimeWords(made.report().overtime(), new WeekTime(made.week().brief().monday()))
        .lines();
  }

  /** The files named in it are those of any of the weeks: all have the same names. */
  private static PlanFile file(PlanDesk.Made made) throws IOException {
    Path out = temp.resolve("out" + MADE.size());
    PlanDesk.write(temp.resolve("week0"), out, made);
    byte[] bytes = Files.readAllBytes(out.resolve("plan.json"));
    assertThat(new String(bytes, StandardCharsets.UTF_8)).contains("\"estimates\"");
    try {
      return PlanJson.read(bytes);
    } catch (PlanFileException wrong) {
      throw new IOException(wrong);
    }
  }
}
