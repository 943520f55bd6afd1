package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.PlanJson;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** The sample weeks are planned from their files and proven by the audit. */
class SamplesTest {
  private static final Path HARBOUR = Path.of("samples/harbour-week");
  private static final Path FIRST = Path.of("samples/first-steps");

  private static final PlanDesk.Made HARBOUR_PLAN = plan(HARBOUR, 2000, 7);

  @TempDir Path temp;

  private static PlanDesk.Made plan(Path week, long steps, long seed) {
    return new PlanDesk()
        .plan(week, new SolveOptions(60, steps, seed, 1), ProgressListener.NOBODY)
        .made()
        .orElseThrow();
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
  void theDifficultiesOfTheHarbourWeekAreSaid() {
    PlanDesk.Made made = HARBOUR_PLAN;

    Map<String, String> held =
        made.week().held().stream()
            .collect(Collectors.toMap(Held::jobId, Held::gate, (a, b) -> a + " " + b));
    assertThat(held)
        .containsEntry("H-203", "hollow-closed")
        .containsEntry("H-204", "overlap-sealed")
        .containsEntry("H-206", "does-not-fit")
        .containsEntry("H-207", "heat-sensitive")
        .containsEntry("H-121", "no-cure-data")
        .containsEntry("H-124", "material-not-for-zinc");
    assertThat(made.report().facts().fits())
        .anySatisfy(
            fit -> {
              assertThat(fit.partId()).isEqualTo("HC-42");
              assertThat(fit.verdict()).isEqualTo("tilted");
            });
    assertThat(made.report().waiting().questions())
        .anySatisfy(q -> assertThat(q.subject()).isEqualTo("H-108/EP-04"));
    assertThat(made.purchases())
        .anySatisfy(
            p -> {
              assertThat(p.item().id()).isEqualTo("P-BUOY-YELLOW");
              assertThat(p.packs()).isPositive();
            });
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
