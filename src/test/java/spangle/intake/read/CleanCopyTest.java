package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.intake.copy.CleanCopy;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.week.Job;

/** The clean copy of a week reads as the week did, and copies to itself. */
class CleanCopyTest {
  /** Twelve digits are written. */
  private static final Comparator<Double> CLOSE =
      (a, b) -> Math.abs(a - b) <= 1e-10 * Math.max(1, Math.abs(a)) ? 0 : Double.compare(a, b);

  @TempDir private Path temp;

  private static SortedMap<String, byte[]> copied(WeekReader.Reading reading) {
    return CleanCopy.of(reading.input().orElseThrow(), reading.answers());
  }

  private WeekReader.Reading readCopy(Path folder, SortedMap<String, byte[]> copy) {
    WeekFiles files =
        WeekFiles.empty(folder)
            .put("shop.yaml", WeekFiles.SHOP)
            .put("coatings.yaml", WeekFiles.COATINGS);
    copy.forEach(files::put);
    return files.read();
  }

  private static void same(List<Job> actual, List<Job> expected) {
    assertThat(actual)
        .usingRecursiveComparison()
        .withComparatorForType(CLOSE, Double.class)
        .withEqualsForType(
            (a, b) -> CLOSE.compare(a.orElse(Double.NaN), b.orElse(Double.NaN)) == 0,
            OptionalDouble.class)
        // Where a row stood and how its shape was worded is what a clean copy may change.
        .ignoringFieldsMatchingRegexes(".*place", ".*shape\\.value\\.text")
        .isEqualTo(expected);
  }

  private void roundTrip(long seed) {
    OddCells cells = new OddCells(seed);
    List<Map<String, String>> rows = cells.rows(1 + cells.random().nextInt(8));
    WeekReader.Reading first =
        WeekFiles.sound(temp.resolve("first"))
            .put("jobs/a.csv", OddFiles.csv(rows, cells.random()))
            .read();
    if (first.rows().accepted() == 0) {
      // A table of headings alone is no week; reading it says so.
      return;
    }
    SortedMap<String, byte[]> copy = copied(first);
    WeekReader.Reading second = readCopy(temp.resolve("second"), copy);
    assertThat(second.rows().refused()).as("seed %d: %s", seed, second.problems()).isZero();
    same(second.input().orElseThrow().jobs(), first.input().orElseThrow().jobs());
    assertThat(copied(second).get(CleanCopy.JOBS)).isEqualTo(copy.get(CleanCopy.JOBS));
  }

  @Test
  void readsAsTheWeekDidAndCopiesToItself() {
    for (long seed = 0; seed < 60; seed++) {
      roundTrip(seed);
    }
  }

  @Test
  @Tag("thorough")
  void readsAsTheWeekDidAndCopiesToItselfLong() {
    for (long seed = 0; seed < 20_000; seed++) {
      roundTrip(seed);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"harbour-week", "first-steps", "dirty-week"})
  void aSampleWeekReadsAsItDid(String sample) {
    WeekReader.Reading first = WeekReader.read(Path.of("samples", sample));
    SortedMap<String, byte[]> copy = copied(first);
    WeekFiles files = WeekFiles.empty(temp.resolve(sample));
    copy.forEach(files::put);
    for (String file : List.of("shop.yaml", "coatings.yaml", "kits.yaml", "gates.yaml")) {
      SampleFiles.bytes(sample, file).ifPresent(bytes -> files.put(file, bytes));
    }
    SampleFiles.drawings(sample).forEach(files::put);
    WeekReader.Reading second = files.read();
    same(second.input().orElseThrow().jobs(), first.input().orElseThrow().jobs());
    assertThat(copied(second).get(CleanCopy.JOBS)).isEqualTo(copy.get(CleanCopy.JOBS));
  }

  @Test
  void aGaugeAnInchAndAPoundStandInHouseUnits() {
    WeekReader.Reading reading =
        WeekFiles.rows(
                temp,
                "J-1,Pilot House,LB-1,10,steel,0.25 in,plate 6x4 in,,1.7 lb,powder,P-GREY,mon,wed,no,no,,,,")
            .read();
    String table = new String(copied(reading).get(CleanCopy.JOBS), StandardCharsets.UTF_8);
    assertThat(table).contains(",6.35,").contains("plate 152.4x101.6 mm").contains("0.771107029");
  }

  @Test
  void aFormulaIsNeutralisedAndReadBackAsItWas() {
    WeekReader.Reading reading =
        WeekFiles.rows(
                temp,
                "J-1,Pilot House,LB-1,10,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,\"=HYPERLINK(\"\"x\"\")\"")
            .read();
    SortedMap<String, byte[]> copy = copied(reading);
    assertThat(new String(copy.get(CleanCopy.JOBS), StandardCharsets.UTF_8))
        .contains("\"'=HYPERLINK(\"\"x\"\")\"");
    assertThat(
            readCopy(temp.resolve("copy"), copy).input().orElseThrow().jobs().get(0).parts().get(0))
        .extracting(part -> part.note())
        .isEqualTo("=HYPERLINK(\"x\")");
  }

  @Test
  void everyRefusedRowStandsInATableOfItsOwn() {
    WeekReader.Reading reading =
        WeekFiles.rows(
                temp,
                "J-1,Pilot House,LB-1,1 lot,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,",
                "J-2,Pilot House,LB-2,10,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,")
            .read();
    SortedMap<String, byte[]> copy = copied(reading);
    assertThat(new String(copy.get(CleanCopy.REFUSED), StandardCharsets.UTF_8))
        .contains("jobs/a.csv:2:22,J-1,LB-1,qty,1 lot,not-a-count");
    assertThat(new String(copy.get(CleanCopy.JOBS), StandardCharsets.UTF_8))
        .contains("J-2,Pilot House,LB-2")
        .doesNotContain("LB-1");
  }

  @Test
  void anAnswerToKeepAValueFollowsItIntoTheCopy() {
    WeekFiles files =
        WeekFiles.rows(
                temp,
                "J-1,Pilot House,LB-1,90000,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,")
            .put(
                "answers.yaml",
                "answers:\n  - {ask: J-1/LB-1/qty, was: \"90000\", answer: keep}\n");
    SortedMap<String, byte[]> copy = copied(files.read());
    assertThat(readCopy(temp.resolve("copy"), copy).problems())
        .extracting(Problem::code)
        .doesNotContain(ProblemCode.COUNT_HUGE, ProblemCode.ANSWER_STALE);
  }
}
