package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.WeekCopy;
import spangle.cli.Spangle;

/** Plans one after the other in one folder: what is kept, what is gone back to, what is refused. */
class BackDeskTest {
  @TempDir static Path temp;
  private static Path first;

  private record Said(int code, String words) {}

  private static Said run(String... args) {
    StringWriter said = new StringWriter();
    int code = Spangle.run(new PrintWriter(said), new PrintWriter(said), args);
    return new Said(code, said.toString());
  }

  /** A week with its plan A, for each test a copy. */
  @BeforeAll
  static void planned() throws IOException {
    first = temp.resolve("first");
    WeekCopy.unplanned(Path.of("samples/first-steps"), first);
    assertThat(run("plan", first.toString(), "--steps", "50").code()).isLessThanOrEqualTo(1);
  }

  private static String week(String name) throws IOException {
    Path week = temp.resolve(name);
    WeekCopy.whole(first, week);
    return week.toString();
  }

  private static void event(String week, String... about) {
    String[] args =
        Stream.concat(Stream.of("event", week), Stream.of(about)).toArray(String[]::new);
    Said said = run(args);
    assertThat(said.code()).as(said.words()).isZero();
  }

  private static void replan(String week, String at) {
    Said said = run("replan", week, "--at", at, "--steps", "50");
    assertThat(said.code()).as(said.words()).isLessThanOrEqualTo(1);
  }

  private static String plan(String week) throws IOException {
    return Files.readString(Path.of(week, "plan", "plan.json"), StandardCharsets.UTF_8);
  }

  @Test
  void theEarlierPlanIsValidAgainByteForByteAndTheOtherStays() throws IOException {
    String week = week("undone");
    String a = plan(week);
    event(week, "slow", "--when", "mon 06:10", "station=booth", "factor=2");
    replan(week, "mon 06:15");
    String b = plan(week);
    assertThat(b).isNotEqualTo(a);

    assertThat(run("back", week).code()).isZero();

    assertThat(plan(week)).isEqualTo(a);
    assertThat(Path.of(week, "plan/earlier/B/plan.json")).hasContent(b);
    assertThat(Path.of(week, "plan/changes.html")).content().contains("version A again");
    assertThat(run("back", week, "--to", "B").code()).isZero();
    assertThat(plan(week)).isEqualTo(b);
  }

  @Test
  void thereIsNoGoingBackToWhatIsNotThere() throws IOException {
    String week = week("nothing");
    assertThat(run("back", week)).returns(3, Said::code);
    assertThat(run("back", week).words()).contains("there is no earlier plan");
    replan(week, "mon 06:15");
    assertThat(run("back", week, "--to", "Q").words()).contains("no version Q", "only A");
  }

  @Test
  void onceSomethingHasHappenedPlanDoesNotOverwriteThePlanPeopleWorkBy() throws IOException {
    String week = week("unheard");
    String a = plan(week);
    event(week, "as-planned", "--when", "mon 07:30");

    Said refused = run("plan", week, "--steps", "20");

    assertThat(refused.code()).isEqualTo(3);
    assertThat(refused.words()).contains("1 event", "spangle replan", "--at \"Monday 07:30\"");
    assertThat(plan(week)).isEqualTo(a);
    Said beside = run("plan", week, "--steps", "20", "--out", temp.resolve("beside").toString());
    assertThat(beside.code()).isLessThanOrEqualTo(1);
    assertThat(beside.words()).contains("does not know of it: replan does");
    replan(week, "Monday 07:30");
    assertThat(run("audit", week + "/plan").words()).contains("every rule is kept");
  }

  @Test
  void aGateChangedByHandInALaterPlanIsFoundOut() throws IOException {
    String week = week("gate");
    event(week, "as-planned", "--when", "mon 07:30");
    replan(week, "mon 07:35");
    Path json = Path.of(week, "plan", "plan.json");
    String text = Files.readString(json, StandardCharsets.UTF_8);
    int gates = text.indexOf("\"gates\"");
    String changed = text.substring(gates).replaceFirst("nothing heat-sensitive told", "looked at");
    Files.writeString(json, text.substring(0, gates) + changed, StandardCharsets.UTF_8);

    Said audit = run("audit", week + "/plan");

    assertThat(audit.code()).isEqualTo(1);
    assertThat(audit.words()).contains("gates of parts", "brief-of-the-week");
  }

  @Test
  void aPlanOfNoFilesOrOfAnotherLetterIsFoundOut() throws IOException {
    String week = week("anonymous");
    Path json = Path.of(week, "plan", "plan.json");
    String a = plan(week);
    Files.writeString(
        json,
        a.replaceFirst("\"version\" ?: ?\"A\"", "\"version\": \"Q\""),
        StandardCharsets.UTF_8);
    assertThat(run("audit", week + "/plan").words()).contains("has the letter A");
    String none = a.replaceFirst("(?s)\"inputs\" ?: ?\\[.*?\\]", "\"inputs\": []");
    Files.writeString(json, none, StandardCharsets.UTF_8);
    assertThat(run("audit", week + "/plan").words()).contains("names no file it was made from");
    String batches = a.replaceFirst("(\"by_hand_lots_left_out\"\\s*:\\s*)[0-9]+", "$1 99");
    Files.writeString(json, batches, StandardCharsets.UTF_8);
    assertThat(run("audit", week + "/plan").words()).contains("yardstick");
    Files.writeString(
        json, a.replaceFirst("(?s)(\"batches\" ?: ?\\[)", "$1null,"), StandardCharsets.UTF_8);
    assertThat(run("audit", week + "/plan"))
        .returns(3, Said::code)
        .extracting(Said::words)
        .asString()
        .contains("holds null")
        .doesNotContain("NullPointer");
  }

  @Test
  void timeDoesNotRunBackAndWhatIsReportedAheadOfItIsSaid() throws IOException {
    String week = week("clock");
    event(week, "as-planned", "--when", "mon 07:00");
    event(week, "slow", "--when", "mon 09:00", "station=pickle", "factor=2");
    Said said = run("replan", week, "--at", "mon 07:30", "--steps", "50");
    assertThat(said.code()).isEqualTo(1);
    assertThat(said.words())
        .contains(
            "does not count: events.yaml, event 2, Monday 09:00 slow pickle: not yet, it lies after"
                + " Monday 07:30; replan at its time or later");

    String before = plan(week);
    Said early = run("replan", week, "--at", "mon 07:00", "--steps", "50");
    assertThat(early.code()).isEqualTo(3);
    assertThat(early.words())
        .contains("Monday 07:00 lies before Monday 07:30", "version B is valid", "spangle back");
    assertThat(plan(week)).isEqualTo(before);

    replan(week, "mon 09:00");
    assertThat(run("replan", week, "--at", "mon 09:00", "--steps", "50").words())
        .doesNotContain("does not count");
  }
}
