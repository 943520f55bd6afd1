package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.WeekCopy;
import spangle.desk.PlanHistory;
import spangle.desk.PlanShelf;
import spangle.intake.problem.Severity;
import spangle.intake.read.WeekReader;
import spangle.plan.json.PlanFileException;

/**
 * The program is killed without warning while it writes an event or a new plan: the week folder
 * then holds the old or the new whole, and every event it has acknowledged.
 */
class KilledProgramTest {
  @TempDir Path folder;

  private Path week;
  private final List<String> acknowledged = new ArrayList<>();

  @Test
  void threeKills() throws IOException, InterruptedException, PlanFileException {
    kills(3);
  }

  @Test
  @Tag("thorough")
  void twoHundredKills() throws IOException, InterruptedException, PlanFileException {
    kills(200);
  }

  private void kills(int times) throws IOException, InterruptedException, PlanFileException {
    week = folder.resolve("week");
    WeekCopy.unplanned(Path.of("samples/first-steps"), week);
    assertThat(inside("plan", week.toString(), "--steps", "50")).isLessThanOrEqualTo(1);
    Random random = new Random(20261125);
    for (int i = 0; i < times; i++) {
      boolean event = i % 2 == 0;
      String note = "note=kill " + i;
      List<String> args =
          event
              ? List.of("event", week.toString(), "as-planned", "--when", "mon 06:30", note)
              : List.of("replan", week.toString(), "--at", "mon 06:30", "--steps", "20");
      run(args, 150 + random.nextInt(2500), note, event);
      whole("after kill " + i);
    }
  }

  private static int inside(String... args) {
    StringWriter out = new StringWriter();
    return Spangle.run(new PrintWriter(out), new PrintWriter(out), args);
  }

  private void run(List<String> args, long killAfterMs, String note, boolean event)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            "spangle.cli.Spangle"));
    command.addAll(args);
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean ended = process.waitFor(killAfterMs, TimeUnit.MILLISECONDS);
    process.destroyForcibly().waitFor();
    String words = Files.readString(said, StandardCharsets.UTF_8);
    if (event && words.startsWith("Event ")) {
      acknowledged.add(note.substring("note=".length()));
    }
    if (ended && !event) {
      assertThat(process.exitValue()).as(words).isLessThanOrEqualTo(1);
    }
  }

  /** The log can be read and has all that was acknowledged; the plan is one plan and whole. */
  private void whole(String when) throws IOException, PlanFileException {
    WeekReader.Reading reading = WeekReader.read(week);
    assertThat(reading.problems())
        .as(when)
        .noneMatch(p -> p.severity().compareTo(Severity.REFUSED) <= 0);
    List<String> notes =
        reading.input().orElseThrow().events().events().stream().map(e -> e.note()).toList();
    assertThat(notes).as(when).containsAll(acknowledged);

    PlanHistory history = PlanHistory.open(week.resolve("plan"));
    assertThat(PlanShelf.audit(week.resolve("plan"), week).findings()).as(when).isEmpty();
    assertThat(week.resolve("plan/index.html")).as(when).isRegularFile();
    history
        .current()
        .replanned()
        .ifPresent(
            from ->
                assertThat(week.resolve("plan/earlier/" + from.keptVersion() + "/plan.json"))
                    .as(when)
                    .isRegularFile());
  }
}
