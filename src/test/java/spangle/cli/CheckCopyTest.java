package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.desk.CheckDesk;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Severity;

/** {@code check --copy}: a clean copy beside the week, never over anything. */
class CheckCopyTest {
  private static final String WEEK = "samples/dirty-week";

  @TempDir private Path temp;
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Spangle.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), args);
  }

  private static long newest(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.mapToLong(f -> f.toFile().lastModified()).max().orElseThrow();
    }
  }

  @Test
  void writesANewFolderAndLeavesTheWeekAlone() throws IOException {
    long before = newest(Path.of(WEEK));
    Path copy = temp.resolve("clean");
    assertThat(run("check", WEEK, "--copy", copy.toString())).isEqualTo(ExitCode.WAITS);
    assertThat(copy.resolve("jobs/jobs.csv")).exists();
    assertThat(copy.resolve("refused-rows.csv")).exists();
    assertThat(copy.resolve("shop.yaml")).hasSameBinaryContentAs(Path.of(WEEK, "shop.yaml"));
    assertThat(newest(Path.of(WEEK))).isEqualTo(before);
    assertThat(err.toString()).contains("jobs/jobs.csv");
  }

  @Test
  void neverWritesOverAFolderThatIsThere() throws IOException {
    Path there = Files.createDirectory(temp.resolve("there"));
    assertThat(run("check", WEEK, "--copy", there.toString())).isEqualTo(ExitCode.REFUSED);
    assertThat(err.toString()).contains("is there already");
    assertThat(there).isEmptyDirectory();
  }

  @Test
  void neverWritesIntoTheWeekItself() {
    Path inside = Path.of(WEEK, "clean");
    assertThat(run("check", WEEK, "--copy", inside.toString())).isEqualTo(ExitCode.REFUSED);
    assertThat(err.toString()).contains("inside the week");
    assertThat(inside).doesNotExist();
  }

  private static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        content.put(
            folder.relativize(file).toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return content;
  }

  /** Severities of what is said of the rows of a week, its drawings left out. */
  private static Set<Severity> ofRows(Path week) {
    return CheckDesk.check(week, Optional.empty()).problems().stream()
        .filter(p -> p.place().file().startsWith("jobs/"))
        .map(Problem::severity)
        .collect(Collectors.toSet());
  }

  @Test
  void aCopyOfACopyIsTheSameAndAsksOnlyWhatAPersonMustAnswer() throws IOException {
    Path strangers = Files.createDirectories(temp.resolve("strangers/jobs")).getParent();
    for (String file : List.of("shop.yaml", "coatings.yaml")) {
      Files.copy(Path.of(WEEK, file), strangers.resolve(file));
    }
    Files.writeString(
        strangers.resolve("columns.yaml"),
        "columns:\n  - {files: \"b*\", decimal: comma, dates: dmy}\n");
    Files.writeString(
        strangers.resolve("jobs/b.csv"),
        """
        Work Order;Mark;Menge;Werkstoff;Blechdicke [mm];Size;Weight;Colour;Route;Req. Date;Si (%);Remarks
        4711;BR (LH), 1;1.250;S235JR;1,5;plate 160x120 mm;0,22 kg;P-FOAM;powder;Fri 6 Nov;;=1+1
        4711;+1;12 pcs;S235JR;1,5;plate 160x120 mm;;P-FOAM;powder;06/11/2026;;
        4712;Q;2 dz;Ms;3;plate 160x120 mm;;P-FOAM;powder;6.11.2026;;-1
        4712;R;24;cold rolled;16 ga;plate 6x4 in;;P-FOAM;powder;asap;;
        4713;S;1'000 pcs;DC01;1/8 in;plate 6x4 in;;P-FOAM;powder;5 Nov;0,02 %;@x
        """);
    for (Path week : List.of(Path.of(WEEK), strangers)) {
      Map<String, String> before = content(week);
      Path first = temp.resolve(week.getFileName() + "-1");
      Path second = temp.resolve(week.getFileName() + "-2");
      run("check", week.toString(), "--copy", first.toString());
      run("check", first.toString(), "--copy", second.toString());
      assertThat(content(second)).isEqualTo(content(first));
      assertThat(content(week)).isEqualTo(before);
      assertThat(ofRows(first)).isSubsetOf(Severity.DANGER, Severity.ASK);
    }
    assertThat(Files.readString(temp.resolve("strangers-1/jobs/jobs.csv")))
        .contains("4711,", ",\"BR (LH), 1\",", ",1250,", "'=1+1", ",1000,", "3.175", "'@x");
    assertThat(Files.readString(temp.resolve("strangers-1/refused-rows.csv")))
        .contains(",'+1,part,", ",Ms,", "16 ga");
  }
}
