package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.cli.Spangle;

/** A line taken out of the job files in the middle of the week: words where its pieces hang. */
class GonePartTest {
  private static final Path SAMPLE = Path.of("samples/first-steps");

  @TempDir private Path week;
  private String said = "";

  @BeforeEach
  void planTheWeek() throws IOException {
    try (Stream<Path> files = Files.walk(SAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path to = week.resolve(SAMPLE.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
    run("plan", week.toString(), "--steps", "500", "--threads", "1");
  }

  private int run(String... args) {
    StringWriter out = new StringWriter();
    int code = Spangle.run(new PrintWriter(out), new PrintWriter(out), args);
    said = out.toString().replaceAll("\\s+", " ");
    return code;
  }

  /** Takes the first line of a file of jobs away and says of which job it was. */
  private String firstLineGone() throws IOException {
    Path jobs;
    try (Stream<Path> files = Files.list(week.resolve("jobs"))) {
      jobs = files.filter(f -> f.toString().endsWith(".csv")).sorted().findFirst().orElseThrow();
    }
    List<String> lines = Files.readAllLines(jobs);
    String job = lines.get(1).substring(0, lines.get(1).indexOf(','));
    Files.write(jobs, Stream.concat(Stream.of(lines.get(0)), lines.stream().skip(2)).toList());
    return job;
  }

  @Test
  void whatHangsAndIsNotNamedAnyMoreIsAskedForAndNothingIsLost() throws IOException {
    assertThat(run("event", week.toString(), "as-planned", "--when", "thu 12:00")).isZero();
    byte[] before = Files.readAllBytes(week.resolve("plan/plan.json"));
    String job = firstLineGone();

    int code = run("replan", week.toString(), "--at", "thu 12:00", "--steps", "100");

    assertThat(code).as(said).isEqualTo(3);
    assertThat(said)
        .contains("Nothing was planned: " + job + "/")
        .contains("Put the lines back; where they are not wanted, report the job cancelled");
    assertThat(Files.readAllBytes(week.resolve("plan/plan.json"))).isEqualTo(before);
  }

  @Test
  void whatDoesNotHangYetMayGo() throws IOException {
    firstLineGone();

    int code = run("replan", week.toString(), "--at", "mon 05:00", "--freeze", "none");

    assertThat(code).as(said).isLessThan(2);
  }

  @Test
  void aPlanThatWasCutShortIsSaidSo() throws IOException {
    Path plan = week.resolve("plan/plan.json");
    String whole = Files.readString(plan);
    Files.writeString(plan, whole.substring(0, whole.length() / 2));

    int code = run("why", week.resolve("plan").toString(), "anything");

    assertThat(code).isEqualTo(3);
    assertThat(said)
        .contains("the file ends here, in the middle of a plan: it was cut short; put a whole copy")
        .doesNotContain("REDACTED");
  }
}
