package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Problems;
import spangle.intake.problem.Severity;
import spangle.intake.week.WeekInput;

/**
 * Generated job files, sound and spoiled, through every reader: nothing is thrown, nothing hangs,
 * and every row is either accepted or refused by name.
 */
@Timeout(value = 3, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class AnyBytesTest {
  private static final int FEW = 60;

  /** Kinds of job files. */
  enum Kind {
    CSV("jobs/a.csv"),
    JSON("jobs/a.json"),
    YAML("jobs/a.yaml"),
    XLSX("jobs/a.xlsx");

    final String file;

    Kind(String file) {
      this.file = file;
    }

    byte[] bytes(List<Map<String, String>> rows, SplittableRandom random) {
      return switch (this) {
        case CSV -> OddFiles.csv(rows, random);
        case JSON -> OddFiles.json(rows, random.nextBoolean());
        case YAML -> OddFiles.yaml(rows);
        case XLSX -> OddWorkbook.of(rows, random);
      };
    }

    byte[] spoiled(List<Map<String, String>> rows, SplittableRandom random) {
      return this == XLSX && random.nextInt(3) > 0
          ? OddWorkbook.spoiledInside(rows, random)
          : OddFiles.spoiled(bytes(rows, random), random);
    }
  }

  @TempDir private Path temp;
  private WeekInput sound;

  @BeforeEach
  void aShopAndItsCoatings() {
    sound = WeekFiles.sound(temp.resolve("sound")).read().input().orElseThrow();
  }

  private WeekInput.Rows read(Kind kind, byte[] bytes, Problems problems) {
    WeekFiles files = WeekFiles.empty(temp.resolve(kind.name())).put(kind.file, bytes);
    JobsReader reader =
        new JobsReader(
            WeekFolder.open(files.folder(), problems, true).orElseThrow(),
            ColumnRules.none(),
            AnswerBook.none(),
            problems,
            Optional.empty());
    JobMerge merge = reader.read(sound.shop(), sound.catalogue(), Set.of());
    merge.jobs();
    return merge.rows();
  }

  private void everyRowIsAccountedFor(Kind kind, long seed) {
    OddCells cells = new OddCells(seed);
    List<Map<String, String>> rows = cells.rows(1 + cells.random().nextInt(6));
    byte[] bytes = kind.bytes(rows, cells.random());
    Problems problems = new Problems();
    WeekInput.Rows counted = read(kind, bytes, problems);
    assertThat(counted.read()).as("rows").isEqualTo(rows.size());
    assertThat(counted.accepted() + counted.refused()).isEqualTo(rows.size());
    assertThat(refusedPlaces(problems)).as("rows refused").hasSize(counted.refused());
  }

  /** Rows named by what refuses them. */
  private static Set<String> refusedPlaces(Problems problems) {
    return problems.list().stream()
        .filter(p -> p.severity() == Severity.REFUSED)
        .map(AnyBytesTest::row)
        .collect(Collectors.toSet());
  }

  private static String row(Problem problem) {
    return problem.place().file() + ":" + problem.place().line();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyRowIsAcceptedOrRefusedByName(Kind kind) {
    Many.inputs(FEW, seed -> everyRowIsAccountedFor(kind, seed));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  @Tag("thorough")
  void everyRowIsAcceptedOrRefusedByNameLong(Kind kind) {
    Many.inputs(Many.THOROUGH, seed -> everyRowIsAccountedFor(kind, seed));
  }

  private void spoiledBytesAreAnswered(Kind kind, long seed) {
    OddCells cells = new OddCells(seed);
    byte[] spoiled = kind.spoiled(cells.rows(3), cells.random());
    Problems problems = new Problems();
    WeekInput.Rows rows = read(kind, spoiled, problems);
    assertThat(rows.accepted() + rows.refused()).isEqualTo(rows.read());
    if (rows.read() == 0) {
      assertThat(problems.list()).isNotEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void anyBytesAreAnsweredInWords(Kind kind) {
    Many.inputs(FEW, seed -> spoiledBytesAreAnswered(kind, seed));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  @Tag("thorough")
  void anyBytesAreAnsweredInWordsLong(Kind kind) {
    Many.inputs(Many.THOROUGH, seed -> spoiledBytesAreAnswered(kind, seed));
  }
}
