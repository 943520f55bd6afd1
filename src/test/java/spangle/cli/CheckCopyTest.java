package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
}
