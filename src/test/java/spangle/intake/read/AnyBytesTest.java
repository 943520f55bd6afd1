package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Problems;
import spangle.intake.problem.Severity;
import spangle.intake.week.WeekInput;

/**
 * Generated files, sound and spoiled, through every reader of a week: nothing is thrown, nothing
 * hangs, and every row is either accepted or refused by name.
 */
class AnyBytesTest {
  private static final Duration HANG = Duration.ofSeconds(5);

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
        case XLSX -> OddFiles.xlsx(rows, random);
      };
    }
  }

  @TempDir private Path temp;
  private WeekInput sound;

  @BeforeEach
  void aShopAndItsCoatings() {
    sound = WeekFiles.sound(temp.resolve("sound")).read().input().orElseThrow();
  }

  private WeekInput.Rows read(Kind kind, byte[] bytes, Problems problems) {
    Path folder = temp.resolve(kind.name());
    WeekFiles files = WeekFiles.empty(folder).put(kind.file, bytes);
    JobsReader reader =
        new JobsReader(
            WeekFolder.open(files.folder(), problems).orElseThrow(),
            ColumnRules.none(),
            AnswerBook.none(),
            problems);
    JobMerge merge = reader.read(sound.shop(), sound.catalogue(), Set.of());
    merge.jobs();
    return merge.rows();
  }

  private void everyRowIsAccountedFor(Kind kind, long seed) {
    OddCells cells = new OddCells(seed);
    List<Map<String, String>> rows = cells.rows(1 + cells.random().nextInt(6));
    byte[] bytes = kind.bytes(rows, cells.random());
    Problems problems = new Problems();
    WeekInput.Rows counted =
        assertTimeoutPreemptively(HANG, () -> read(kind, bytes, problems), () -> "seed " + seed);
    assertThat(counted.read()).as("rows of seed %d", seed).isEqualTo(rows.size());
    assertThat(counted.accepted() + counted.refused()).isEqualTo(rows.size());
    assertThat(refusedPlaces(problems)).as("seed %d", seed).hasSize(counted.refused());
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
    for (long seed = 0; seed < (kind == Kind.XLSX ? 8 : 80); seed++) {
      everyRowIsAccountedFor(kind, seed);
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  @Tag("thorough")
  void everyRowIsAcceptedOrRefusedByNameLong(Kind kind) {
    for (long seed = 0; seed < 100_000; seed++) {
      everyRowIsAccountedFor(kind, seed);
    }
  }

  private void spoiledBytesAreAnswered(Kind kind, long seed) {
    OddCells cells = new OddCells(seed);
    byte[] bytes = kind.bytes(cells.rows(3), cells.random());
    byte[] spoiled = OddFiles.spoiled(bytes, cells.random());
    Problems problems = new Problems();
    WeekInput.Rows rows =
        assertTimeoutPreemptively(HANG, () -> read(kind, spoiled, problems), () -> "seed " + seed);
    assertThat(rows.accepted() + rows.refused()).isEqualTo(rows.read());
    if (rows.read() == 0) {
      assertThat(problems.list()).as("seed %d", seed).isNotEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void anyBytesAreAnsweredInWords(Kind kind) {
    for (long seed = 0; seed < (kind == Kind.XLSX ? 10 : 80); seed++) {
      spoiledBytesAreAnswered(kind, seed);
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  @Tag("thorough")
  void anyBytesAreAnsweredInWordsLong(Kind kind) {
    for (long seed = 0; seed < 100_000; seed++) {
      spoiledBytesAreAnswered(kind, seed);
    }
  }

  private static final Map<String, String> SETTINGS =
      Map.of(
          "shop.yaml",
          WeekFiles.SHOP,
          "coatings.yaml",
          WeekFiles.COATINGS,
          "kits.yaml",
          "kits:\n  - {kit: K-1, name: set, due: fri, sets: 10, parts: [{job: J-1, part: LB-20,"
              + " per_kit: 4, visible: yes}]}\n",
          "gates.yaml",
          "gates:\n  - {job: J-1, part: LB-20, gate: vents, by: [Mira, Jonas], at: 2026-10-30,"
              + " seen: two holes of 14 mm}\n",
          "answers.yaml",
          "answers:\n  - {ask: J-1/LB-20/qty, was: \"400\", answer: keep, by: desk}\n",
          "columns.yaml",
          "files:\n  - {files: \"a*.csv\", names: {Blech: thickness_mm}, dates: dmy}\n",
          "rack-profiles/flat-rack.yaml",
          "kind: rack\nname: own\nfaces: 2\n");

  private void spoiledSettingsAreAnswered(String file, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    byte[] bytes = SETTINGS.get(file).getBytes(StandardCharsets.UTF_8);
    byte[] spoiled = OddFiles.spoiled(bytes, random);
    WeekFiles files = WeekFiles.sound(temp.resolve("spoiled")).put(file, spoiled);
    WeekReader.Reading reading =
        assertTimeoutPreemptively(HANG, files::read, () -> file + " seed " + seed);
    assertThat(reading.rows().read())
        .isEqualTo(reading.rows().accepted() + reading.rows().refused());
    if (reading.stopped()) {
      assertThat(reading.problems()).as("%s seed %d", file, seed).isNotEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shop.yaml",
        "coatings.yaml",
        "kits.yaml",
        "gates.yaml",
        "answers.yaml",
        "columns.yaml",
        "rack-profiles/flat-rack.yaml"
      })
  void spoiledSettingsAreAnsweredInWords(String file) {
    for (long seed = 0; seed < 10; seed++) {
      spoiledSettingsAreAnswered(file, seed);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shop.yaml",
        "coatings.yaml",
        "kits.yaml",
        "gates.yaml",
        "answers.yaml",
        "columns.yaml",
        "rack-profiles/flat-rack.yaml"
      })
  @Tag("thorough")
  void spoiledSettingsAreAnsweredInWordsLong(String file) {
    for (long seed = 0; seed < 100_000; seed++) {
      spoiledSettingsAreAnswered(file, seed);
    }
  }
}
