package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import spangle.desk.CheckDesk;
import spangle.intake.problem.Problem;
import spangle.intake.week.WeekInput;

/** The week of bad papers gives exactly the problems that were planted in it. */
class DirtyWeekTest {
  private static final Path WEEK = Path.of("samples/dirty-week");
  private static final Path EXPECTED = Path.of("src/test/resources/dirty-week-problems.txt");

  private static String line(Problem p) {
    return String.format(
        Locale.ROOT,
        "%s | %s | %s | %s %s | %s | %s",
        p.severity().word(),
        p.code().key(),
        p.place().words(),
        p.job(),
        p.part(),
        p.field(),
        p.value());
  }

  @Test
  void givesExactlyTheProblemsPlanted() throws IOException {
    List<String> expected =
        Files.readAllLines(EXPECTED, StandardCharsets.UTF_8).stream()
            .filter(l -> !l.startsWith("#") && !l.isBlank())
            .toList();

    List<String> found =
        CheckDesk.check(WEEK).problems().stream().map(DirtyWeekTest::line).toList();

    assertThat(expected).hasSizeGreaterThanOrEqualTo(40);
    assertThat(found).containsExactlyElementsOf(expected);
  }

  @Test
  void losesNoRowAndGoesOnWithTheRest() {
    CheckDesk.Checked checked = CheckDesk.check(WEEK);

    assertThat(checked.stopped()).isFalse();
    assertThat(checked.waits()).isTrue();
    assertThat(checked.rows()).isEqualTo(new WeekInput.Rows(56, 31, 25));
  }

  @Test
  void everyProblemSaysWhatToDoAndWhatHappensMeanwhile() {
    assertThat(CheckDesk.check(WEEK).problems())
        .allSatisfy(
            p -> {
              assertThat(p.why()).isNotBlank();
              assertThat(p.remedy()).isNotBlank();
              assertThat(p.meanwhile().words()).isNotBlank();
              assertThat(p.place().file()).isNotBlank();
            });
  }

  @Test
  void readingItAgainGivesTheSame() {
    assertThat(CheckDesk.check(WEEK).problems()).isEqualTo(CheckDesk.check(WEEK).problems());
  }
}
