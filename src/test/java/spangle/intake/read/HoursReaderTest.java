package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.equipment.Manning;
import spangle.equipment.Span;
import spangle.intake.problem.Problem;
import spangle.intake.week.Overtime;
import spangle.intake.week.ShopCalendar;

/** Hours of a shop file: days of the week, overtime that has a length, breaks of the night. */
class HoursReaderTest {
  private static final int DAY = 1440;
  private static final int HOUR = 60;

  @TempDir Path folder;

  private WeekReader.Reading with(String lines) {
    return WeekFiles.sound(folder)
        .put("shop.yaml", WeekFiles.SHOP.replace("extra_days:", lines + "extra_days:"))
        .read();
  }

  private List<Overtime> overtime(String written) {
    return with("overtime:\n  - " + written + "\n").input().orElseThrow().shop().overtime();
  }

  @Test
  void overtimeThatEndsWhenItBeginsIsRefused() {
    WeekReader.Reading reading = with("overtime:\n  - {days: [fri], from: 15:00, to: 15:00}\n");

    assertThat(reading.input()).isEmpty();
    Problem problem = reading.problems().get(0);
    assertThat(problem.field()).isEqualTo("to");
    assertThat(problem.value()).isEqualTo("15:00");
    assertThat(problem.why()).contains("ends when it begins");
  }

  @ParameterizedTest
  @CsvSource({"15:00, 15:01, 1", "00:00, 24:00, 1440", "22:00, 02:00, 240", "15:00, 14:59, 1439"})
  void overtimeWithALengthIsTaken(String from, String to, int minutes) {
    assertThat(overtime("{days: [fri], from: '" + from + "', to: '" + to + "'}"))
        .singleElement()
        .satisfies(o -> assertThat(o.hours().minutes()).isEqualTo(minutes));
  }

  @Test
  void aBreakAfterMidnightLiesInItsNight() {
    Overtime night =
        overtime("{days: [mon], from: '22:00', to: '06:00', breaks: [23:50-00:05, 02:00-02:15]}")
            .get(0);

    assertThat(night.breaks())
        .containsExactly(
            new Span(23 * HOUR + 50, DAY + 5), new Span(DAY + 2 * HOUR, DAY + 2 * HOUR + 15));
  }

  /** The night from Friday has its break on Saturday; before Monday's night there is none. */
  @Test
  void aNightShiftRestsInEachOfItsNights() {
    String shop =
        WeekFiles.SHOP.replaceFirst(
            "- \\{days: \\[mon, tue], from: 14:30, to: 20:00, lines: \\[powder]}",
            "- {days: [mon, fri], from: 22:00, to: 06:00, breaks: [02:00-02:15], lines: [powder]}");
    List<Span> open =
        ShopCalendar.of(
                WeekFiles.sound(folder).put("shop.yaml", shop).read().input().orElseThrow().shop(),
                "powder",
                Manning.PEOPLE)
            .open();

    for (int day : new int[] {0, 4}) {
      int begin = day * DAY + 22 * HOUR;
      assertThat(open).contains(new Span(begin, begin + 4 * HOUR));
      assertThat(open).anyMatch(span -> span.startMin() == begin + 4 * HOUR + 15);
    }
  }

  @Test
  void aBreakOfADayShiftStaysOnItsDay() {
    assertThat(
            overtime("{days: [sat], from: '06:00', to: '12:00', breaks: [09:00-09:15]}")
                .get(0)
                .breaks())
        .containsExactly(new Span(9 * HOUR, 9 * HOUR + 15));
  }

  @Test
  void aBreakThatEndsBeforeItBeginsIsRefusedByDay() {
    WeekReader.Reading reading =
        with("overtime:\n  - {days: [sat], from: 06:00, to: 12:00, breaks: [09:15-09:00]}\n");

    assertThat(reading.problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.field()).isEqualTo("breaks");
              assertThat(problem.value()).isEqualTo("09:15-09:00");
            });
  }

  @ParameterizedTest
  @CsvSource({
    "mon, 0",
    "Monday, 0",
    "Tues, 1",
    "tuesday, 1",
    "Wed., 2",
    "wednesdays, 2",
    "thurs, 3",
    "Thursday, 3",
    "fri, 4",
    "Fridays, 4",
    "saturday, 5",
    "SUN, 6"
  })
  void daysAsPeopleWriteThem(String text, int day) {
    assertThat(Times.weekday(text)).isEqualTo(OptionalInt.of(day));
  }

  @ParameterizedTest
  @ValueSource(strings = {"money", "sunk", "frieday", "monfri", "m", "", "satin", "day"})
  void wordsThatOnlyBeginLikeADayAreNone(String text) {
    assertThat(Times.weekday(text)).isEmpty();
  }
}
