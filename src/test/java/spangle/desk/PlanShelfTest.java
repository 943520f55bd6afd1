package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.WeekCopy;
import spangle.cli.Spangle;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.json.Gate;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanJson;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

class PlanShelfTest {
  @TempDir static Path temp;
  private static Path week;
  private static Path plan;

  @BeforeAll
  static void planTheFirstSteps() throws IOException {
    week = temp.resolve("first-steps");
    WeekCopy.unplanned(Path.of("samples/first-steps"), week);
    PlanDesk.Made made =
        new PlanDesk()
            .plan(week, new SolveOptions(60, 500, 1, 1), ProgressListener.NOBODY)
            .made()
            .orElseThrow();
    plan = week.resolve("plan");
    PlanDesk.write(week, plan, made);
  }

  private static int audit(StringWriter out, String... more) {
    String[] args = Stream.concat(Stream.of("audit"), Stream.of(more)).toArray(String[]::new);
    return Spangle.run(new PrintWriter(out), new PrintWriter(new StringWriter()), args);
  }

  @Test
  void aFreshPlanIsClean() {
    StringWriter out = new StringWriter();
    assertThat(audit(out, plan.toString())).isZero();
    assertThat(out.toString()).contains("every rule is kept");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "replan WEEK --at=mon --keep PLAN",
        "promise WEEK --job samples/new-jobs/railing-bracket.yaml --keep PLAN",
        "why PLAN F-1"
      })
  void aPlanThatNamesWhatItsBriefDoesNotKnowIsNoGroundToBuildOn(String command) throws Exception {
    PlanFile file = PlanJson.read(Files.readAllBytes(json()));
    String unknown = file.plan().batches().get(0).loads().get(0).lotIds().get(0);
    List<Lot> lots = file.brief().lots().stream().filter(l -> !l.id().equals(unknown)).toList();
    Path folder = temp.resolve("unknown-lot");
    byte[] bytes = PlanJson.write(with(file, file.gates(), lots, file.plan().batches()));
    WholeFolder.replace(folder, Map.of("plan.json", bytes));
    StringWriter err = new StringWriter();
    String[] args =
        command.replace("WEEK", week.toString()).replace("PLAN", folder.toString()).split(" ");

    int code = Spangle.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args);

    assertThat(code).as(err.toString()).isEqualTo(3);
    assertThat(err.toString()).contains(unknown);
  }

  @Test
  void aFileThatChangedSinceIsNamed() throws IOException {
    Path copy = temp.resolve("changed");
    WholeFolder.replace(copy, Map.of("plan.json", Files.readAllBytes(json())));
    Path other = temp.resolve("other-week");
    Files.createDirectories(other);
    Files.copy(week.resolve("shop.yaml"), other.resolve("shop.yaml"));
    StringWriter out = new StringWriter();
    assertThat(audit(out, copy.toString(), "--week", other.toString())).isEqualTo(1);
    assertThat(out.toString())
        .contains("coatings.yaml is not there any more")
        .doesNotContain("shop.yaml");
    Files.writeString(other.resolve("coatings.yaml"), "changed");
    StringWriter again = new StringWriter();
    assertThat(audit(again, copy.toString(), "--week", other.toString(), "--json")).isEqualTo(1);
    assertThat(again.toString()).contains("coatings.yaml has changed since the plan was made");
  }

  @Test
  void aPlanWhoseBriefWasTrimmedIsFoundOut() throws Exception {
    PlanFile file = PlanJson.read(Files.readAllBytes(json()));
    Lot dropped = file.brief().lots().get(0);
    List<Lot> lots = file.brief().lots().subList(1, file.brief().lots().size());
    List<PlannedBatch> batches =
        file.plan().batches().stream()
            .filter(b -> b.loads().stream().noneMatch(l -> l.lotIds().contains(dropped.id())))
            .toList();
    PlanFile trimmed = with(file, file.gates(), lots, batches);
    Path folder = week.resolve("trimmed");
    WholeFolder.replace(folder, Map.of("plan.json", PlanJson.write(trimmed)));

    PlanShelf.Audited audited = PlanShelf.audit(folder, week);

    assertThat(audited.changed()).isEmpty();
    assertThat(audited.findings())
        .filteredOn(f -> f.rule().equals("brief-of-the-week"))
        .singleElement()
        .extracting(Finding::words)
        .asString()
        .contains(dropped.id());
  }

  @Test
  void aGateTakenOutOfThePlanIsFoundOut() throws Exception {
    PlanFile file = PlanJson.read(Files.readAllBytes(json()));
    Gate first = file.gates().get(0);
    List<Gate> rest = file.gates().subList(1, file.gates().size());
    Path folder = week.resolve("ungated");
    byte[] bytes = PlanJson.write(with(file, rest, file.brief().lots(), file.plan().batches()));
    WholeFolder.replace(folder, Map.of("plan.json", bytes));

    assertThat(PlanShelf.audit(folder, week).findings())
        .singleElement()
        .matches(f -> f.rule().equals("brief-of-the-week"))
        .matches(f -> f.subject().startsWith("gates"))
        .extracting(Finding::words)
        .asString()
        .contains(first.jobId() + "/" + first.partId());
  }

  private static PlanFile with(
      PlanFile file, List<Gate> gates, List<Lot> lots, List<PlannedBatch> batches) {
    Brief b = file.brief();
    Brief brief =
        new Brief(
            b.name(),
            b.monday(),
            b.horizonMin(),
            b.lines(),
            b.carriers(),
            lots,
            b.kits(),
            b.supplies(),
            b.goals(),
            b.frozen(),
            b.announced(),
            b.baths());
    Plan plan =
        new Plan(batches, file.plan().leftOut(), file.plan().figures(), file.plan().solve());
    return new PlanFile(
        file.format(),
        file.version(),
        file.weekFolder(),
        file.inputs(),
        file.overlay(),
        gates,
        brief,
        plan,
        file.findings(),
        file.estimates());
  }

  @Test
  void whatIsNoPlanIsRefused() throws IOException {
    Path file = temp.resolve("notes.json");
    Files.writeString(file, "{\"format\":");
    assertThat(audit(new StringWriter(), file.toString())).isEqualTo(3);
    assertThat(audit(new StringWriter(), temp.resolve("nowhere.json").toString())).isEqualTo(3);
  }

  @Test
  void sheetsNeverReplaceTheWeekFolder() throws IOException {
    Path job = week.resolve("jobs");
    assertThat(plan("--out", week.toString())).isEqualTo(3);
    assertThat(plan("--out", temp.toString())).isEqualTo(3);
    assertThat(job).isNotEmptyDirectory();
    assertThat(week.resolve("shop.yaml")).exists();
  }

  private static int plan(String... more) {
    String[] args =
        Stream.concat(Stream.of("plan", week.toString(), "--steps", "50"), Stream.of(more))
            .toArray(String[]::new);
    StringWriter nowhere = new StringWriter();
    return Spangle.run(new PrintWriter(nowhere), new PrintWriter(nowhere), args);
  }

  private static Path json() {
    return plan.resolve("plan.json");
  }
}
