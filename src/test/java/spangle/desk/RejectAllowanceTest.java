package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.estimate.LotSharing;
import spangle.estimate.Purchase;
import spangle.estimate.Use;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.WeekReader;
import spangle.intake.week.WeekInput;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.report.Allowance;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * Material is kept ready for rejects and shown apart; no piece is ever planned for it. Two to eight
 * rejects of a hundred are usual in a powder shop (trade texts); the share is the shop's to set.
 */
class RejectAllowanceTest {
  private static final Path STEPS = Path.of("samples/first-steps");

  @TempDir Path temp;

  private Path week(String defaults, String job1) throws IOException {
    Path week = Files.createTempDirectory(temp, "week");
    Files.createDirectories(week.resolve("jobs"));
    Files.copy(STEPS.resolve("coatings.yaml"), week.resolve("coatings.yaml"));
    Files.writeString(
        week.resolve("shop.yaml"), Files.readString(STEPS.resolve("shop.yaml")) + defaults);
    List<String> rows = Files.readAllLines(STEPS.resolve("jobs/jobs.csv"));
    StringBuilder csv = new StringBuilder(rows.get(0)).append(",reject_allowance_pct\n");
    for (String row : rows.subList(1, rows.size())) {
      csv.append(row).append(row.startsWith("F-1,") ? "," + job1 : ",").append('\n');
    }
    Files.writeString(week.resolve("jobs/jobs.csv"), csv);
    return week;
  }

  private static PreparedWeek prepared(Path week) {
    WeekInput input = WeekReader.read(week).input().orElseThrow();
    assertThat(input.rows().refused()).isZero();
    return BriefMaker.prepare(input);
  }

  private static Plan planned(PreparedWeek week) {
    return new Solver().solve(week.brief(), new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY);
  }

  private static Map<String, Purchase> purchases(PreparedWeek week) {
    return new StoreDesk(week, planned(week))
        .purchases().stream().collect(Collectors.toMap(p -> p.item().id(), p -> p));
  }

  @Test
  void wholePiecesUpwards() {
    assertThat(RejectAllowance.pieces(200, 3)).isEqualTo(6);
    assertThat(RejectAllowance.pieces(10, 3)).isEqualTo(1);
    assertThat(RejectAllowance.pieces(200, 0.5)).isEqualTo(1);
    assertThat(RejectAllowance.pieces(200, 0)).isZero();
  }

  @Test
  void noneUnlessTheShopOrTheJobSaysSo() throws IOException {
    PreparedWeek week = prepared(week("", ""));

    assertThat(RejectAllowance.of(week)).isEmpty();
    assertThat(purchases(week).values()).isNotEmpty().allMatch(p -> p.allowance() == 0);
  }

  @Test
  void theShopsFigureHoldsForAllAndAJobMayHaveItsOwn() throws IOException {
    PreparedWeek all = prepared(week("defaults: {reject_allowance_pct: 3}\n", ""));
    PreparedWeek own = prepared(week("defaults: {reject_allowance_pct: 3}\n", "10 %"));
    PreparedWeek none = prepared(week("defaults: {reject_allowance_pct: 3}\n", "0"));

    assertThat(RejectAllowance.of(all))
        .extracting(Allowance::jobId, Allowance::ordered, Allowance::pieces)
        .contains(tuple("F-1", 200, 6), tuple("F-4", 4, 1));
    assertThat(RejectAllowance.left(own)).containsEntry("F-1/LB-20", 20);
    assertThat(RejectAllowance.left(none)).doesNotContainKey("F-1/LB-20").containsKey("F-4/PC-01");
  }

  @Test
  void materialIsShownApartAndNoPieceIsPlanned() throws IOException {
    PreparedWeek plain = prepared(week("", ""));
    PreparedWeek with = prepared(week("", "3"));
    Purchase before = purchases(plain).get("P-LIGHT-GREY");
    Purchase after = purchases(with).get("P-LIGHT-GREY");
    Lot lot =
        with.brief().lots().stream().filter(l -> l.jobId().equals("F-1")).findFirst().orElseThrow();

    assertThat(with.brief().lots()).isEqualTo(plain.brief().lots());
    assertThat(after.allowance()).isCloseTo(6 * lot.materialKg() / lot.pieces(), within(1e-9));
    assertThat(after.need().likely() - before.need().likely())
        .isCloseTo(after.allowance(), within(1e-9));
    assertThat(after.jobs()).doesNotContain(Use.ALLOWANCE);
    LotSharing.Share last = after.shares().get(after.shares().size() - 1);
    assertThat(last.jobId()).isEqualTo(Use.ALLOWANCE);
    assertThat(last.amount()).isCloseTo(after.allowance(), within(1e-9));
  }

  @Test
  void everyCoatOfARouteIsKeptReady() throws IOException {
    PreparedWeek week = prepared(week("defaults: {reject_allowance_pct: 10}\n", "0"));
    Map<String, Purchase> purchases = purchases(week);

    assertThat(RejectAllowance.left(week)).containsEntry("F-5/SH-04", 2);
    assertThat(purchases.get("P-DEEP-BLUE").allowance()).isPositive();
    assertThat(purchases.values().stream().filter(p -> p.item().unit().equals("kg")))
        .filteredOn(p -> p.item().id().toLowerCase(Locale.ROOT).contains("z"))
        .allMatch(p -> p.allowance() > 0);
  }

  @Test
  void rejectsThatArePlannedOnceMoreDrawOnItFirst() throws IOException {
    LivingWeek living = new LivingWeek(week("", "3"), temp.resolve("living"), 300);
    living.event("when: mon 14:30, what: as-planned");
    living.event("when: mon 14:31, what: rejected, job: F-1, part: LB-20, count: 2");
    Allowance afterTwo = RejectAllowance.of(living.replan("mon 14:32").start().week()).get(0);
    living.event("when: mon 14:33, what: rejected, job: F-1, part: LB-20, count: 5");
    ReplanDesk.Rest rest = living.sound("mon 14:34");
    Allowance afterSeven = RejectAllowance.of(rest.start().week()).get(0);

    assertThat(List.of(afterTwo.ordered(), afterTwo.pieces(), afterTwo.again(), afterTwo.left()))
        .containsExactly(200, 6, 2, 4);
    assertThat(List.of(afterSeven.pieces(), afterSeven.again(), afterSeven.left()))
        .containsExactly(6, 7, 0);
  }

  @Test
  void planFileAndSheetsSayOrderedAndAllowance() throws IOException {
    Path folder = week("defaults: {reject_allowance_pct: 3}\n", "");
    PlanDesk.Made made =
        new PlanDesk()
            .plan(folder, new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY)
            .made()
            .orElseThrow();
    Path out = folder.resolve("plan");
    PlanDesk.write(folder, out, made);

    assertThat(made.findings()).isEmpty();
    assertThat(pieces(made.plan(), made.week(), "F-1")).isEqualTo(200);
    assertThat(Files.readString(out.resolve("plan.json")))
        .contains("\"ordered\" : 200", "\"allowance_pieces\" : 6");
    assertThat(Files.readString(out.resolve("index.html")))
        .contains("Allowance for rejects", "no piece is hung for it", "as allowance for rejects");
    assertThat(Files.readString(out.resolve("purchases.csv"))).contains("allowance_for_rejects");
  }

  private static int pieces(Plan plan, PreparedWeek week, String job) {
    int sum = 0;
    for (PlannedBatch batch : plan.batches()) {
      sum +=
          batch.loads().stream()
              .flatMap(l -> l.lotIds().stream())
              .flatMap(id -> week.brief().lots().stream().filter(l -> l.id().equals(id)))
              .filter(l -> l.jobId().equals(job))
              .mapToInt(Lot::pieces)
              .sum();
    }
    return sum;
  }
}
