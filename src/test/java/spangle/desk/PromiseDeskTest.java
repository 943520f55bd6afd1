package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.cli.Spangle;
import spangle.plan.LoadTimes;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.PlanFileException;
import spangle.solve.Freedom;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** Promises on the harbour week: what is promised is a plan the audit has nothing against. */
class PromiseDeskTest {
  private static final Path HARBOUR = Path.of("samples/harbour-week");
  private static final String HEADING =
      "job,part,description,qty,material,thickness_mm,shape,length_mm,width_mm,height_mm,route,"
          + "finish,ready,due,welded,hollow,overlaps,pockets,soldered,moving_parts,heat_sensitive,"
          + "certificate,si_pct,p_pct,hooks\n";

  @TempDir static Path temp;

  private static Path plan;

  @BeforeAll
  static void planTheWeek() throws IOException {
    plan = planned("kept", 60_000);
  }

  private static Path planned(String name, long steps) throws IOException {
    PlanDesk.Made made =
        new PlanDesk()
            .plan(HARBOUR, new SolveOptions(60, steps, 1, 1), ProgressListener.NOBODY)
            .made()
            .orElseThrow();
    Path folder = temp.resolve(name);
    PlanDesk.write(HARBOUR, folder, made);
    return folder;
  }

  private static Promise promise(String row, int atMin) throws IOException, PlanFileException {
    return promise(row, plan, atMin);
  }

  private static Promise promise(String row, Path kept, int atMin)
      throws IOException, PlanFileException {
    Path file = temp.resolve("offer.csv");
    Files.writeString(file, HEADING + row + "\n");
    return PromiseDesk.promise(HARBOUR, file, Optional.of(kept), atMin).promise().orElseThrow();
  }

  private static final String BLUE =
      "N-1,RB-30,railing bracket,60,steel,3,blank 160x120 mm,120,60,60,powder,P-DEEP-BLUE,"
          + "mon 06:00,fri 12:00,no,no,no,no,no,no,no,,,,1";

  @Test
  void everyDateIsThatOfAPlanThatKeepsEveryRule() throws Exception {
    Promise promise = promise(BLUE, 0);

    assertThat(promise.offers()).isNotEmpty();
    for (Promise.Offer offer : promise.offers()) {
      assertThat(offer.findings()).as(offer.freedom().name()).isEmpty();
      if (offer.freedom() == Freedom.NOTHING_MOVES) {
        assertThat(offer.loadsMoved()).isZero();
      }
      if (offer.freedom() != Freedom.DATES_MAY_SLIP) {
        assertThat(offer.slips()).isEmpty();
        assertThat(offer.kits()).isEmpty();
      }
    }
    assertThat(promise.work()).containsExactly("N-1: 60 x railing bracket, deep blue, satin");
    assertThat(promise.honest()).isPresent();
  }

  /** A plan searched briefly leaves lots out in the middle of its rows: they have to wait on. */
  @Test
  void aBrieflySearchedPlanHasDatesThatKeepEveryRuleToo() throws Exception {
    Promise promise = promise(BLUE, planned("brief", 20_000), 0);

    assertThat(promise.offers()).isNotEmpty().allSatisfy(o -> assertThat(o.findings()).isEmpty());
    assertThat(promise.lacking()).isEmpty();
  }

  @Test
  void nothingNewStartsBeforeNow() throws Exception {
    int wednesdayTen = 2 * 1440 + 600;

    Promise promise = promise(BLUE, wednesdayTen);

    assertThat(promise.offers())
        .allSatisfy(o -> assertThat(o.endMin()).isGreaterThan(wednesdayTen));
  }

  /** What hung before now by the announced plan is not hung again, whatever may slip. */
  @Test
  void whatHasBegunStaysWhereItIs() throws Exception {
    int wednesdayTen = 2 * 1440 + 600;
    Map<String, String> begun = new TreeMap<>(places(PlanShelf.sound(plan).plan(), wednesdayTen));

    Promise promise = promise(BLUE.replace("P-DEEP-BLUE", "P-NIGHT-BLACK"), wednesdayTen);

    assertThat(begun).hasSizeGreaterThan(20);
    assertThat(promise.offers()).isNotEmpty();
    assertThat(promise.offers())
        .allSatisfy(
            o -> assertThat(places(o.plan(), Integer.MAX_VALUE)).containsAllEntriesOf(begun));
    assertThat(promise.notes()).noneMatch(n -> n.contains("is over"));
  }

  /** Where and when each lot hung before a minute runs. */
  private static Map<String, String> places(Plan of, int beforeMin) {
    Map<String, String> places = new TreeMap<>();
    for (PlannedBatch batch : of.batches()) {
      for (PlannedLoad load : batch.loads()) {
        if (LoadTimes.first(batch, load) < beforeMin) {
          String place = batch.machineId() + batch.startMin() + load.carrierId() + load.visits();
          load.lotIds().forEach(id -> places.put(id, place));
        }
      }
    }
    return places;
  }

  @Test
  void aDueTimeThatIsOverIsSaid() throws Exception {
    Promise promise = promise(BLUE.replace("fri 12:00", "tue 08:00"), 2 * 1440 + 600);

    assertThat(promise.notes())
        .contains(
            "it is wanted for Tuesday 08:00, which is over by Wednesday 10:00: ask for a date that"
                + " lies ahead");
    assertThat(promise.kept()).isFalse();
  }

  /** The order comes after the job: what was announced needs it. The gentle date stands first. */
  @Test
  void anOrderForWhatOthersThenLackIsSaidSo() throws Exception {
    Promise promise =
        promise(BLUE.replace(",60,steel", ",900,steel").replace("fri 12:00", "thu 12:00"), 0);

    assertThat(promise.offers().get(0).freedom()).isEqualTo(Freedom.NOTHING_MOVES);
    assertThat(promise.offers().get(0).loadsMoved()).isZero();
    for (Promise.Offer offer : promise.offers()) {
      boolean before = offer.endMin() <= 4 * 1440 + 360;
      assertThat(offer.conditions())
          .anyMatch(
              c ->
                  c.contains("more of deep blue")
                      && c.contains(", for announced work whose deep blue, satin this takes")
                          == before);
    }
    // Nothing gentle is ready by Thursday noon.
    assertThat(promise.kept()).isFalse();
  }

  @Test
  void colourThatRunsShortIsPromisedOnlyOnCondition() throws Exception {
    Promise promise =
        promise(
            "N-2,YG-1,yellow grip,900,steel,2,blank 150x60 mm,150,40,20,powder,P-BUOY-YELLOW,"
                + "mon 06:00,wed 16:00,no,no,no,no,no,no,no,,,,1",
            0);

    Promise.Offer offer = promise.offers().get(0);
    assertThat(offer.conditions())
        .anyMatch(c -> c.contains("more of buoy yellow") && c.contains("4 working days"));
    assertThat(offer.endMin()).isGreaterThan(4 * 1440 + 360);
    assertThat(offer.findings()).isEmpty();
  }

  /** Powder for the last lot alone is no date for all of them. */
  @Test
  void aPromiseIsForAllPieces() throws Exception {
    for (int pieces : new int[] {100, 500, 900}) {
      Promise promise =
          promise(
              "N-2,YG-1,yellow grip,"
                  + pieces
                  + ",steel,2,blank 150x60 mm,150,40,20,powder,P-BUOY-YELLOW,"
                  + "mon 06:00,wed 16:00,no,no,no,no,no,no,no,,,,1",
              0);

      assertThat(promise.offers()).isNotEmpty();
      for (Promise.Offer offer : promise.offers()) {
        int placed =
            offer.where().stream()
                .mapToInt(words -> Integer.parseInt(words.substring(0, words.indexOf(' '))))
                .sum();
        assertThat(placed).as(String.join("; ", offer.where())).isEqualTo(pieces);
      }
    }
  }

  @Test
  void aDateThatRestsOnADeliveryNamesIt() throws Exception {
    int thursdaySix = 3 * 1440 + 360;

    Promise promise =
        promise(
            "N-4,YG-2,yellow clip,20,steel,2,blank 100x60 mm,100,40,20,powder,P-BUOY-YELLOW,"
                + "mon 06:00,fri 12:00,no,no,no,no,no,no,no,,,,1",
            thursdaySix);

    // What is planned before it uses up the 3.2 kg in the store.
    Promise.Offer offer = promise.offers().get(0);
    assertThat(offer.conditions())
        .contains("if 8.0 kg of buoy yellow, gloss (lot BY-047) arrive Wednesday 10:00");
    assertThat(offer.endMin()).isGreaterThan(thursdaySix);
    assertThat(offer.findings()).isEmpty();
  }

  @Test
  void behindAShutGateThereIsNoDate() throws Exception {
    Promise promise =
        promise(
            "N-3,FR-1,welded frame,5,steel,3,tube 40x40x1000 mm,1000,600,40,zinc,,mon 06:00,"
                + "fri 12:00,yes,,no,no,no,no,no,C-1,0.02,0.01,2",
            0);

    assertThat(promise.offers()).isEmpty();
    assertThat(promise.held()).isNotEmpty();
    assertThat(promise.kept()).isFalse();
  }

  @Test
  void theCommandAnswersInWordsAndAsOneObject() throws IOException {
    Path file = temp.resolve("blue.csv");
    Files.writeString(file, HEADING + BLUE + "\n");
    StringWriter words = new StringWriter();
    StringWriter data = new StringWriter();

    int code = run(words, file, "--at", "tue 06:00");
    run(data, file, "--json");

    assertThat(code).isIn(0, 1);
    assertThat(words.toString()).contains("railing bracket", "wanted Friday 12:00", "load ");
    assertThat(data.toString()).startsWith("{").contains("\"end_min\"", "\"keeps\"");
    assertThat(run(new StringWriter(), file, "--at", "someday")).isEqualTo(2);
    assertThat(run(new StringWriter(), temp.resolve("none.csv"))).isEqualTo(3);
  }

  private static int run(StringWriter out, Path job, String... more) {
    String[] args = new String[6 + more.length];
    System.arraycopy(
        new String[] {
          "promise", HARBOUR.toString(), "--job", job.toString(), "--keep", plan.toString()
        },
        0,
        args,
        0,
        6);
    System.arraycopy(more, 0, args, 6, more.length);
    return Spangle.run(new PrintWriter(out), new PrintWriter(new StringWriter()), args);
  }

  @Test
  void aFileWithoutANewJobIsRefused() throws Exception {
    Path file = temp.resolve("bad.csv");
    Files.writeString(file, HEADING + BLUE.replace(",60,steel", ",1 lot,steel") + "\n");

    PromiseDesk.Answer answer = PromiseDesk.promise(HARBOUR, file, Optional.of(plan), 0);

    assertThat(answer.promise()).isEmpty();
    assertThat(answer.nothing()).contains("bad.csv has no job that is new and complete");
    assertThat(answer.refused()).anySatisfy(p -> assertThat(p.field()).isEqualTo("qty"));
  }

  /** Whatever its file is called: the row of the week is the one that counts. */
  @Test
  void whatTheWeekHasAlreadyIsNotNew() throws Exception {
    Path week = Path.of("samples/first-steps");
    Path own = week.resolve("jobs/jobs.csv");
    for (String name : List.of("a.csv", "jobs.csv", "z.csv")) {
      Path file = Files.copy(own, Files.createTempDirectory(temp, "again").resolve(name));

      PromiseDesk.Answer answer = PromiseDesk.promise(week, file, Optional.empty(), 0);

      assertThat(answer.promise()).as(name).isEmpty();
      assertThat(answer.refused()).as(name).isNotEmpty();
    }
  }

  @Test
  void aPlanOfAnotherShopIsRefused() throws Exception {
    Path file = Files.writeString(temp.resolve("good.csv"), HEADING + BLUE + "\n");
    Path week = Path.of("samples/first-steps");
    Path other = temp.resolve("other");
    PlanDesk.write(
        week,
        other,
        new PlanDesk()
            .plan(week, new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY)
            .made()
            .orElseThrow());

    assertThatThrownBy(() -> PromiseDesk.promise(HARBOUR, file, Optional.of(other), 0))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("the shop is not the one this plan was made for");
  }

  @Test
  void aWeekThatCannotBeReadIsNotTheJobFilesFault() throws Exception {
    Path file = Files.writeString(temp.resolve("good.csv"), HEADING + BLUE + "\n");

    PromiseDesk.Answer answer =
        PromiseDesk.promise(temp.resolve("nowhere"), file, Optional.empty(), 0);

    assertThat(answer.nothing()).contains("nowhere cannot be read");
    assertThat(answer.refused()).isNotEmpty();
  }
}
