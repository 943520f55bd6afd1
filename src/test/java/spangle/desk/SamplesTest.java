package spangle.desk;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.plan.Held;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.Gate;
import spangle.plan.json.PlanJson;
import spangle.report.BatchNote;
import spangle.report.LotNote;
import spangle.report.ReportFiles;
import spangle.report.TerminalSummary;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** The sample weeks are planned from their files and proven by the audit. */
class SamplesTest {
  private static final Path HARBOUR = Path.of("samples/harbour-week");
  private static final Path FIRST = Path.of("samples/first-steps");

  private static final PlanDesk.Made HARBOUR_PLAN = plan(HARBOUR, 20_000, 7);

  /** The page without its marks, and the screen. */
  private static final String HARBOUR_WORDS =
      (new String(
                      ReportFiles.render(HARBOUR_PLAN.report()).get("index.html"),
                      StandardCharsets.UTF_8)
                  .replaceAll("(?s)<style>.*?</style>|<svg.*?</svg>", " ")
                  .replaceAll("<[^>]*>", " ")
              + TerminalSummary.of(HARBOUR_PLAN.report()))
          .replaceAll("\\s+", " ");

  @TempDir Path temp;

  private static PlanDesk.Made plan(Path week, long steps, long seed) {
    return new PlanDesk()
        .plan(week, new SolveOptions(60, steps, seed, 1), ProgressListener.NOBODY)
        .made()
        .orElseThrow();
  }

  /**
   * Straight parts too are drawn for their dip sheet; the list of what must be tried stays short.
   */
  @Test
  void everyPartThatHangsInZincIsDrawnForItsSheet() {
    List<LotNote> zinc =
        HARBOUR_PLAN.report().facts().lots().stream().filter(n -> n.zinc().isPresent()).toList();
    List<LotNote> hung =
        zinc.stream().filter(n -> !n.zinc().get().attitude().equals("in the basket")).toList();
    assertThat(hung).isNotEmpty().hasSizeLessThan(zinc.size());
    assertThat(hung)
        .allSatisfy(
            n -> {
              LotNote.Drawings drawings = n.zinc().get().drawings().orElseThrow();
              assertThat(drawings.alone()).contains("from the side", "from the end");
              assertThat(drawings.beside()).contains("hang at");
            });
    assertThat(zinc)
        .filteredOn(n -> !hung.contains(n))
        .allSatisfy(n -> assertThat(n.zinc().get().drawings()).isEmpty());
    assertThat(HARBOUR_PLAN.report().facts().fits())
        .isNotEmpty()
        .filteredOn(f -> f.verdict().equals("straight"))
        .allSatisfy(f -> assertThat(f.svg()).contains(">vent<"));
  }

  @Test
  void theHarbourWeekKeepsEveryRuleAndLosesNoPiece() {
    PlanDesk.Made made = HARBOUR_PLAN;

    assertThat(made.findings()).isEmpty();
    assertThat(made.week().input().jobs()).hasSizeGreaterThanOrEqualTo(36);
    assertThat(made.week().input().kits()).hasSizeGreaterThanOrEqualTo(5);
    assertThat(piecesOrdered(made)).isEqualTo(piecesAccountedFor(made));
  }

  private static Map<String, Integer> piecesOrdered(PlanDesk.Made made) {
    Map<String, Integer> pieces = new TreeMap<>();
    for (Job job : made.week().input().jobs()) {
      for (PartLine part : job.parts()) {
        pieces.merge(job.id() + "/" + part.id(), part.qty(), Integer::sum);
      }
    }
    return pieces;
  }

  /** Pieces planned, left out with a reason, or held by a gate; counted on the last leg. */
  private static Map<String, Integer> piecesAccountedFor(PlanDesk.Made made) {
    Map<String, Lot> lots =
        made.week().brief().lots().stream().collect(Collectors.toMap(Lot::id, l -> l));
    Map<String, Integer> pieces = new TreeMap<>();
    Stream<String> planned =
        made.plan().batches().stream()
            .map(PlannedBatch::loads)
            .flatMap(loads -> loads.stream().map(PlannedLoad::lotIds))
            .flatMap(ids -> ids.stream());
    Stream<String> left = made.plan().leftOut().stream().map(l -> l.lotId());
    Stream.concat(planned, left)
        .map(lots::get)
        .filter(Lot::lastLeg)
        .forEach(l -> pieces.merge(l.jobId() + "/" + l.partId(), l.pieces(), Integer::sum));
    Map<String, Integer> held =
        made.week().held().stream()
            .collect(
                Collectors.toMap(
                    h -> h.jobId() + "/" + h.partId(), Held::pieces, (a, b) -> a, TreeMap::new));
    held.forEach((part, count) -> pieces.merge(part, count, Integer::sum));
    return pieces;
  }

  @Test
  void theDifficultiesOfTheHarbourWeekAreHeldAtTheirGates() {
    Map<String, String> held =
        HARBOUR_PLAN.week().held().stream()
            .collect(Collectors.toMap(Held::jobId, Held::gate, (a, b) -> a + " " + b));
    assertThat(held)
        .containsEntry("H-203", "hollow-closed")
        .containsEntry("H-204", "overlap-sealed")
        .containsEntry("H-206", "does-not-fit")
        .containsEntry("H-207", "heat-sensitive")
        .containsEntry("H-121", "no-cure-data")
        .containsEntry("H-124", "material-not-for-zinc");
    assertThat(HARBOUR_PLAN.report().facts().fits())
        .anySatisfy(
            fit -> {
              assertThat(fit.partId()).isEqualTo("HC-42");
              assertThat(fit.verdict()).isEqualTo("tilted");
            });
    assertThat(HARBOUR_PLAN.purchases())
        .anySatisfy(
            p -> {
              assertThat(p.item().id()).isEqualTo("P-BUOY-YELLOW");
              assertThat(p.packs()).isPositive();
            });
  }

  /** What the week holds in store, each found in the words of the page or the screen. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "goes into the kettle only tilted  | tall hose cabinet.{0,200}tilted",
        "does not go into the kettle       | H-206.{0,80}valve house.{0,200}does not go in",
        "sealed tube frame                 | H-203.{0,80}service pedestal frame, closed tube.{0,80}a hollow without vent",
        "sealed doubler plate              | H-204.{0,80}fender base with doubler plate.{0,200}welded all round",
        "reactive steel                    | H-107/EP-03.{0,120}thick",
        "missing certificate               | H-108/EP-04.{0,200}silicon and phosphorus",
        "aluminium sent to zinc            | H-124.{0,120}aluminium",
        "colour short in stock             | buoy yellow, gloss: 1 x 20 kg, order",
        "thin and thick may not share      | lamp cover H-109, 1 mm.{0,200}lamp foot block H-110, 8 mm: [0-9]+ min apart",
        "heat-sensitive assembly           | H-207.{0,120}rubber gasket fitted: it would be heated",
        "rush job                          | ramp bolt plate, rush",
        "duplex is not quenched            | quench NO painted next",
        "vents seen by two                 | VOID WITHOUT TWO SIGNATURES",
        "a gate opened by a person         | thin flat sheet: opened by buyer of Fire Pier, 2026-11-26 11:15",
        "a week too full                   | left out.{0,300}no room is left",
      })
  void everyDifficultyOfTheHarbourWeekIsSeenOnThePage(String difficulty, String words) {
    assertThat(HARBOUR_WORDS).as(difficulty).containsPattern(words);
  }

  /** The lots of a job that wait for the same reason are one sentence, in pieces. */
  @Test
  void whatIsLeftOutOfAJobIsSaidInPieces() {
    int pieces =
        HARBOUR_PLAN.plan().leftOut().stream()
            .filter(l -> l.lotId().startsWith("H-106/") && l.code().equals("no-time"))
            .mapToInt(l -> lot(l.lotId()).pieces())
            .sum();

    assertThat(pieces).isPositive();
    assertThat(HARBOUR_PLAN.report().waiting().reasons())
        .filteredOn(r -> r.jobId().equals("H-106"))
        .extracting(r -> r.words())
        .first(as(STRING))
        .startsWith(pieces + " x mooring plate heavy left out: no room is left");
  }

  private static Lot lot(String id) {
    return HARBOUR_PLAN.week().brief().lots().stream()
        .filter(lot -> lot.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theHarbourWeekHasWhatAShopHas() {
    PreparedWeek week = HARBOUR_PLAN.week();
    Map<String, Integer> byLine = new TreeMap<>();
    for (LineSpec line : week.brief().lines()) {
      byLine.put(line.id(), line.machines().size());
    }
    assertThat(byLine).containsEntry("powder", 2).containsEntry("zinc", 1);
    assertThat(week.brief().lots().stream().filter(l -> l.leg() > 0)).isNotEmpty();
    int small = week.parts().stream().filter(p -> p.massKg() < 2).mapToInt(PartFacts::pieces).sum();
    assertThat(small / 5).as("small parts a day").isGreaterThanOrEqualTo(500);
  }

  /** Nobody takes a batch out before its end, and the end lies in the window of every part. */
  @Test
  void noOvenSheetNamesALastMinuteBeforeTheEnd() {
    Map<String, Integer> longest =
        HARBOUR_PLAN.report().facts().batches().stream()
            .collect(Collectors.toMap(BatchNote::batchId, BatchNote::longestMin));
    assertThat(longest).isNotEmpty();
    for (PlannedBatch batch : HARBOUR_PLAN.plan().batches()) {
      if (longest.containsKey(batch.id())) {
        assertThat(batch.dwellMin()).as(batch.id()).isLessThanOrEqualTo(longest.get(batch.id()));
      }
    }
  }

  @Test
  void everyGateIsInThePlanWithItsState() {
    List<Gate> gates = GateList.of(HARBOUR_PLAN.week());

    assertThat(gates).filteredOn(g -> !g.open()).hasSize(HARBOUR_PLAN.week().held().size());
    assertThat(gates)
        .filteredOn(g -> g.state().equals("opened") && g.jobId().equals("H-205"))
        .anySatisfy(
            g -> {
              assertThat(g.openedBy()).containsExactly("buyer of Fire Pier");
              assertThat(g.openedAt()).isEqualTo("2026-11-26 11:15");
              assertThat(g.seen()).contains("two ribs are pressed into the back");
            });
    for (PartFacts part : HARBOUR_PLAN.week().parts()) {
      assertThat(gates)
          .as(part.jobId() + "/" + part.partId())
          .anyMatch(g -> g.jobId().equals(part.jobId()) && g.partId().equals(part.partId()));
    }
  }

  @Test
  void thinAndThickWhiteMustNotShareAnOvenBatchButTwoThinOnesMay() {
    PlanDesk.Made made = HARBOUR_PLAN;
    Map<String, Lot> first =
        made.week().brief().lots().stream()
            .collect(Collectors.toMap(Lot::partId, l -> l, (a, b) -> a));

    assertThat(shareASetting(first.get("CV-10"), first.get("FB-10"))).isFalse();
    assertThat(shareASetting(first.get("CV-10"), first.get("CV-12"))).isTrue();
  }

  private static boolean shareASetting(Lot one, Lot other) {
    return one.dwells().stream()
        .anyMatch(
            a ->
                other.dwells().stream()
                    .anyMatch(
                        b ->
                            a.setting() == b.setting()
                                && Math.max(a.minMin(), b.minMin())
                                    <= Math.min(a.maxMin(), b.maxMin())));
  }

  @Test
  void theFirstStepsAreWrittenAsAWholeAndReadBack() throws Exception {
    PlanDesk.Made made = plan(FIRST, 2000, 3);
    Path out = temp.resolve("plan");

    PlanDesk.write(FIRST, out, made);

    assertThat(made.findings()).isEmpty();
    assertThat(made.plan().leftOut()).isEmpty();
    assertThat(PlanJson.read(Files.readAllBytes(out.resolve("plan.json"))).plan())
        .isEqualTo(made.plan());
    assertThat(Files.readString(out.resolve("index.html"))).contains("ladder bracket");
    assertThat(temp.toFile().list()).containsExactly("plan");
  }

  @Test
  void theSameSeedAndStepsGiveTheSameBytes() throws IOException {
    Path one = temp.resolve("plan");
    PlanDesk.write(FIRST, one, plan(FIRST, 1500, 5));
    Map<String, byte[]> before = contents(one);
    PlanDesk.write(FIRST, one, plan(FIRST, 1500, 5));

    assertThat(contents(one).keySet()).isEqualTo(before.keySet());
    assertThat(contents(one))
        .allSatisfy((name, bytes) -> assertThat(bytes).as(name).isEqualTo(before.get(name)));
  }

  private static Map<String, byte[]> contents(Path folder) throws IOException {
    Map<String, byte[]> contents = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        contents.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return contents;
  }
}
