package spangle.plan.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import spangle.audit.Audit;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.LotBuilder;
import spangle.plan.Plan;
import spangle.plan.PlanFigures;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.SolveNote;

class PlanJsonProperties {
  private static final Arbitrary<String> NAMES =
      Arbitraries.strings().ofMaxLength(12).filter(name -> !name.isBlank());
  private static final Arbitrary<Integer> MINUTES = Arbitraries.integers();
  private static final Arbitrary<Double> LENGTHS =
      Arbitraries.doubles().between(0.001, 99_999).ofScale(3);

  @Provide
  Arbitrary<PlanFile> files() {
    Arbitrary<HungPiece> piece =
        Combinators.combine(
                NAMES,
                Arbitraries.integers().between(-1, 3),
                LENGTHS,
                Arbitraries.doubles().map(Math::abs),
                Arbitraries.of(true, false))
            .as((key, face, xMm, yMm, turned) -> new HungPiece(key, face, xMm, yMm, 1, 2, turned));
    Arbitrary<PlannedVisit> visit =
        Combinators.combine(NAMES, MINUTES, MINUTES, MINUTES)
            .as((station, setup, start, end) -> new PlannedVisit(station, 1, setup, start, end));
    Arbitrary<PlannedLoad> load =
        Combinators.combine(
                NAMES,
                NAMES,
                MINUTES,
                NAMES.list().ofMaxSize(3),
                visit.list().ofMaxSize(3),
                piece.list().ofMaxSize(3).map(HangPattern::new).optional())
            .as(PlannedLoad::new);
    Arbitrary<PlannedBatch> batch =
        Combinators.combine(NAMES, NAMES, MINUTES, MINUTES, load.list().ofMaxSize(3))
            .as(
                (id, machine, setting, start, loads) ->
                    new PlannedBatch(id, "paint", machine, setting, start, start, start, loads));
    Arbitrary<LeftOut> left =
        Combinators.combine(NAMES, NAMES, MINUTES.map(OptionalInt::of))
            .as((lot, reason, earliest) -> new LeftOut(lot, "code", reason, earliest));
    Arbitrary<Plan> plan =
        Combinators.combine(
                batch.list().ofMaxSize(3), left.list().ofMaxSize(3), Arbitraries.longs())
            .as(
                (batches, out, goal) ->
                    new Plan(
                        batches,
                        out,
                        new PlanFigures(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, goal),
                        new SolveNote(goal, 0, "any")));
    return Combinators.combine(briefs(), plan).as(PlanFiles::of);
  }

  private static Arbitrary<Brief> briefs() {
    Arbitrary<LotBuilder> lot =
        Combinators.combine(NAMES, NAMES, MINUTES, LENGTHS, LENGTHS)
            .as(
                (id, job, ready, across, kg) ->
                    PlanFixtures.powderLot(id)
                        .job(job)
                        .ready(ready)
                        .item(new HangItem(id, 1, across, 300, 50, kg, 1, true)));
    return lot.list()
        .ofMaxSize(4)
        .map(lots -> PlanFixtures.yard().lots(lots.toArray(new LotBuilder[0])).build());
  }

  @Property(tries = 40)
  void everyPlanIsReadBackAsItWas(@ForAll("files") PlanFile file) throws PlanFileException {
    byte[] written = PlanJson.write(file);
    PlanFile read = PlanJson.read(written);
    assertThat(noLimits(read)).isEqualTo(noLimits(file));
    assertThat(PlanJson.write(read)).isEqualTo(written);
  }

  /** An earliest end at the very last minute there is reads as none at all. */
  private static PlanFile noLimits(PlanFile file) {
    List<LeftOut> out =
        file.plan().leftOut().stream()
            .map(
                left ->
                    left.earliestMin().equals(OptionalInt.of(Integer.MAX_VALUE))
                        ? new LeftOut(left.lotId(), left.code(), left.reason(), OptionalInt.empty())
                        : left)
            .toList();
    Plan plan = new Plan(file.plan().batches(), out, file.plan().figures(), file.plan().solve());
    return new PlanFile(
        file.format(),
        file.version(),
        file.weekFolder(),
        file.inputs(),
        file.overlay(),
        file.replanned(),
        file.gates(),
        file.brief(),
        plan,
        file.findings(),
        file.estimates(),
        file.yardstick());
  }

  /** Whatever becomes of the bytes, the answer is a plan that can be audited or a sentence. */
  @Property(tries = 120)
  void damagedBytesAreAPlanOrASentence(
      @ForAll @IntRange(min = 0, max = 1_000_000) int where,
      @ForAll byte[] with,
      @ForAll @IntRange(min = 0, max = 8) int cut) {
    byte[] whole = PlanJson.write(PlanFiles.full());
    int at = where % whole.length;
    int tail = Math.min(whole.length, at + cut);
    byte[] damaged = new byte[at + with.length + whole.length - tail];
    System.arraycopy(whole, 0, damaged, 0, at);
    System.arraycopy(with, 0, damaged, at, with.length);
    System.arraycopy(whole, tail, damaged, at + with.length, whole.length - tail);
    answer(damaged);
  }

  /** The same with digits only, so that most of the files can still be read. */
  @Property(tries = 150)
  void changedNumbersArePlansToAudit(
      @ForAll @IntRange(min = 0, max = 1_000_000) int where,
      @ForAll @IntRange(min = 0, max = 9) int digit) {
    byte[] whole = PlanJson.write(PlanFiles.full());
    int at = where % whole.length;
    while (whole[at] < '0' || whole[at] > '9') {
      at = (at + 1) % whole.length;
    }
    whole[at] = (byte) ('0' + digit);
    answer(whole);
  }

  private static void answer(byte[] bytes) {
    Optional<PlanFile> read;
    try {
      read = Optional.of(PlanJson.read(bytes));
    } catch (PlanFileException refused) {
      assertThat(refused.getMessage()).isNotBlank().doesNotContain("\n", "Exception");
      return;
    }
    read.ifPresent(file -> assertThat(Audit.of(file.brief(), file.plan())).isNotNull());
  }
}
