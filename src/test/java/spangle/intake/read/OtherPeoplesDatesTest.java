package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.intake.read.OtherLists.DAY;
import static spangle.intake.read.OtherLists.codes;
import static spangle.intake.read.OtherLists.parts;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.problem.Problem;

/**
 * Due dates as people write them: read where they have one meaning, else asked about or refused.
 */
class OtherPeoplesDatesTest {
  @TempDir Path folder;

  private WeekReader.Reading due(String due) {
    return WeekFiles.rows(
            folder, "J-1,,A,4,steel,3,plate 160x120 mm,,,powder,P-GREY,,\"" + due + "\",no,no,,,,")
        .read();
  }

  @ParameterizedTest
  @CsvSource({
    "Thu, 3",
    "Thursday, 3",
    "5 Nov, 3",
    "5th November 2026, 3",
    "Nov 5, 3",
    "'November 5, 2026', 3",
    "5-Nov-26, 3",
    "Thu 5 Nov, 3",
    "20261105, 3",
    "2026-11-05, 3",
    "05.11.2026, 3",
    "2 Jan, 61",
    "2026-11-05 00:00:00, 3"
  })
  void datesAsPeopleWriteThem(String written, int day) {
    assertThat(parts(due(written)).get(0).wanted().dueMin()).isEqualTo((day + 1) * DAY);
  }

  @ParameterizedTest
  @CsvSource({
    "Fri noon, 720",
    "Fri 2pm, 840",
    "Fri 2:30 p.m., 870",
    "6 Nov 7:30, 450",
    "06.11.2026 12 am, 0",
    "2026-11-06 4 PM, 960"
  })
  void hoursAsPeopleWriteThem(String written, int minute) {
    assertThat(parts(due(written)).get(0).wanted().dueMin()).isEqualTo(4 * DAY + minute);
  }

  /** The 6th of November 2026 is a Friday. */
  @ParameterizedTest
  @CsvSource({"Mon 6 Nov", "'Thursday, November 6, 2026'"})
  void aDayOfTheWeekThatDoesNotFitItsDateIsAsked(String written) {
    assertThat(codes(due(written))).containsExactly("date-two-ways " + written);
  }

  @ParameterizedTest
  @CsvSource({"Fri 6 Nov, 5", "29 Feb 2028, 485", "'Tue, 29 Feb 2028', 485"})
  void aDayOfTheWeekThatFitsAndALeapDayAreRead(String written, int day) {
    assertThat(parts(due(written)).get(0).wanted().dueMin()).isEqualTo(day * DAY);
  }

  @ParameterizedTest
  @CsvSource({"asap", "hot", "week 45", "31 Feb", "Nov", "Fri 25:00", "5 Nov or so"})
  void whatIsNoDateIsRefusedAndBearsNoDue(String written) {
    WeekReader.Reading reading = due(written);
    assertThat(reading.rows().refused()).isEqualTo(1);
    assertThat(reading.problems()).allMatch(p -> p.dueMin() == Problem.NO_DUE);
  }
}
