package spangle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spangle.report.week.Say;
import spangle.report.week.WeekIndex;

class TerminalSummaryTest {
  static Stream<WeekReport> weeks() {
    return Stream.of(HarbourWeek.report(), BusyWeek.report());
  }

  @ParameterizedTest
  @MethodSource("weeks")
  void theTenAnswersStandOnOneScreen(WeekReport week) {
    List<String> lines = TerminalSummary.of(week).lines().toList();

    assertThat(lines).hasSizeLessThanOrEqualTo(TerminalSummary.LINES);
    assertThat(lines)
        .allSatisfy(l -> assertThat(l.codePointCount(0, l.length())).isLessThanOrEqualTo(80));
    for (int n = 1; n <= 10; n++) {
      String number = n < 10 ? " " + n : "" + n;
      assertThat(lines).anyMatch(l -> l.matches("[ !]" + number + " [a-z].*"));
    }
  }

  @Test
  void aPersonIsCalledByTheMarkAndByName() {
    String screen = TerminalSummary.of(HarbourWeek.report());

    assertThat(screen).contains("!10 blocked    2 parts held; 1 question");
    assertThat(screen).contains("customer, then bending: held J111");
    assertThat(screen).contains("  9 changes    1 change");
  }

  @Test
  void oneIsSaidInTheSingular() {
    WeekIndex week = new WeekIndex(HarbourWeek.report());

    assertThat(YardstickLines.amount(week, "colour changes", 1)).isEqualTo("1 change");
    assertThat(YardstickLines.amount(week, "colour changes", 2)).isEqualTo("2 changes");
    assertThat(YardstickLines.amount(week, "oven batches and dips", 1)).isEqualTo("1 batch");
  }

  @Test
  void aCutEndsAfterAWholeWord() {
    assertThat(Say.cut("P01 Mon 06:00; L01 Mon 06:00; Z01 Mon 06:00", 40))
        .isEqualTo("P01 Mon 06:00; L01 Mon 06:00; Z01 Mon...");
    assertThat(Say.cut("margins 40 mm along, 450 mm across", 24))
        .isEqualTo("margins 40 mm along...");
    assertThat(Say.cut("short", 10)).isEqualTo("short");
    assertThat(Say.cut("abcdefghijklmnop", 10)).isEqualTo("abcdefg...");
  }
}
