package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan command from outside: its files, its object, its end. */
class PlanCommandTest {
  private static final String WEEK = "samples/first-steps";

  @TempDir Path temp;

  private record Said(int code, String out, String err) {}

  private static Said plan(String... more) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] args = Stream.concat(Stream.of("plan", WEEK), Stream.of(more)).toArray(String[]::new);
    int code = Spangle.run(new PrintWriter(out), new PrintWriter(err), args);
    return new Said(code, out.toString(), err.toString());
  }

  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        files.put(
            file.getFileName().toString(),
            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  @Test
  void aRefusalSaysWhatStandsThereAndWhatWouldBeRight() throws IOException {
    Path week = Files.createDirectories(temp.resolve("week"));
    Files.copy(Path.of(WEEK, "coatings.yaml"), week.resolve("coatings.yaml"));
    Files.createDirectories(week.resolve("jobs"));
    String shop = Files.readString(Path.of(WEEK, "shop.yaml"));
    Files.writeString(
        week.resolve("shop.yaml"),
        shop + "overtime:\n  - {days: [fri], from: '14:30', to: '16:30', people: -3}\n");
    StringWriter err = new StringWriter();
    PrintWriter nowhere = new PrintWriter(new StringWriter());

    int code = Spangle.run(nowhere, new PrintWriter(err), "plan", week.toString());

    assertThat(code).isEqualTo(ExitCode.REFUSED);
    assertThat(err.toString())
        .contains("people \"-3\", the value is outside what makes sense")
        .contains("(right would be: 1 to 200) [out-of-range]");
  }

  @Test
  void aPlaceThatCannotBeWrittenIsSaidBeforeTheSearch() throws IOException {
    Path file = Files.writeString(temp.resolve("a-file"), "");

    Said said = plan("--out", file.resolve("sheets").toString(), "--steps", "0");

    assertThat(said.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(said.err()).contains("a-file is a file where a folder is needed");
    assertThat(said.err()).doesNotContain("batches");
  }

  @Test
  void sheetsDoNotStandAmongTheJobFiles() {
    Said said = plan("--out", WEEK + "/jobs/sheets", "--steps", "0");
    assertThat(said.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(said.err()).contains("is where the week's job files stand");
    assertThat(Path.of(WEEK, "jobs", "sheets")).doesNotExist();
  }

  @Test
  void theSameStepsAndSeedGiveTheSameBytes() throws IOException {
    Path out = temp.resolve("plan");
    String[] asked = {"--out", out.toString(), "--steps", "400", "--seed", "5"};
    Said once = plan(asked);
    Map<String, String> first = files(out);
    Said again = plan(asked);

    assertThat(files(out)).isEqualTo(first).hasSize(6);
    assertThat(again.out()).isEqualTo(once.out());
    assertThat(again.code()).isEqualTo(once.code());
  }

  @Test
  void theFirstCompletePlanIsToldAtOnceInWords() {
    Said said = plan("--out", temp.resolve("plan").toString(), "--steps", "50");

    assertThat(said.err().lines().findFirst().orElseThrow())
        .matches(" *[0-9.]+ s  [0-9]+ batches, [0-9]+ late, [0-9]+ left out, .* 0 improvements");
  }

  @Test
  void jsonIsOneObjectAndNothingElse() throws IOException {
    Said said = plan("--out", temp.resolve("plan").toString(), "--steps", "50", "--json");

    JsonNode object = new JsonMapper().readTree(said.out());
    assertThat(object.isObject()).isTrue();
    assertThat(object.get("figures").get("batches").intValue()).isPositive();
    assertThat(object.get("answers")).hasSize(10);
    assertThat(object.get("answers").get(0).get("question").textValue())
        .isEqualTo("Which load is next?");
    assertThat(object.get("findings")).isEmpty();
    assertThat(object.get("left_out_why")).hasSameSizeAs(object.get("left_out"));
    assertThat(object.get("left_out_why")).noneMatch(l -> l.get("reason").textValue().isEmpty());
    assertThat(object.get("kits").isArray()).isTrue();
  }

  /** Ctrl-C in a search of minutes: the best plan so far is there whole, proven, and soon. */
  @Test
  void anInterruptWritesTheBestPlanSoFar() throws Exception {
    assumeTrue(
        Files.isExecutable(Path.of("/bin/kill")) || Files.isExecutable(Path.of("/usr/bin/kill")));
    Path out = temp.resolve("plan");
    List<String> command = new ArrayList<>(takingInterrupts());
    command.addAll(
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
            "spangle.cli.Spangle",
            "plan",
            WEEK,
            "--seconds",
            "600",
            "--out",
            out.toString()));
    Process program = new ProcessBuilder(command).start();
    try {
      BufferedReader progress = program.errorReader(StandardCharsets.UTF_8);
      assertThat(progress.readLine()).contains("batches");

      new ProcessBuilder("kill", "-INT", Long.toString(program.pid())).start().waitFor();

      assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
      assertThat(program.exitValue()).isIn(ExitCode.DONE, ExitCode.WAITS);
      String screen = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(screen).contains("Sheets: ");
      assertThat(progress.lines()).contains("Stopped: the best plan so far is written.");
    } finally {
      program.destroyForcibly();
    }
    assertThat(files(out))
        .containsOnlyKeys(
            "index.html",
            "plan.json",
            "purchases.csv",
            "schedule.csv",
            "schedule.xlsx",
            "week.ics");
    StringWriter said = new StringWriter();
    int audit =
        Spangle.run(
            new PrintWriter(said), new PrintWriter(said), "audit", out.toString(), "--week", WEEK);
    assertThat(audit).as(said.toString()).isZero();
  }

  /** A shell that runs this in the background has switched interrupts off for its children. */
  private static List<String> takingInterrupts() throws Exception {
    Process env = new ProcessBuilder("env", "--default-signal=INT", "true").start();
    return env.waitFor() == 0 ? List.of("env", "--default-signal=INT") : List.of();
  }
}
