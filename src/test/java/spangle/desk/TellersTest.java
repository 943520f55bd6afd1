package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.WeekReader;
import spangle.plan.Brief;
import spangle.plan.Held;
import spangle.plan.LeftOut;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.LotBuilder;
import spangle.plan.PlannedBatch;

/** Lots of job F-1, ordered by Breakwater Yard and due Tuesday 14:00, minute 2280. */
class TellersTest {
  private static final int DUE = 2280;
  private static final int NEXT_DAY = DUE + 1440;
  private static final String SALES = "sales (Breakwater Yard)";
  private static PreparedWeek week;

  @BeforeAll
  static void read() {
    week =
        BriefMaker.prepare(WeekReader.read(Path.of("samples/first-steps")).input().orElseThrow());
  }

  private static LotBuilder lot(String id) {
    return powderLot(id).of("F-1", "LB-20").line(line(LineKind.POWDER)).due(DUE);
  }

  private static String line(LineKind kind) {
    return week.brief().lines().stream()
        .filter(l -> l.kind() == kind)
        .map(LineSpec::id)
        .findFirst()
        .orElseThrow();
  }

  private static LoadMatch.Spot done(String lot, int endMin) {
    PlannedBatch batch = bake("B1", "oven-1", 0, endMin - 20, endMin, load("P01", "rack", lot));
    return new LoadMatch.Spot(batch, batch.loads().get(0));
  }

  private static Map<String, LoadMatch.Spot> spot(String lot, Optional<Integer> endMin) {
    return endMin.map(end -> Map.of(lot, done(lot, end))).orElseGet(Map::of);
  }

  private static String told(
      LotBuilder lot, Optional<Integer> was, Optional<Integer> is, String kind) {
    return told(week, lot, was, is, kind, List.of());
  }

  private static String told(
      PreparedWeek prepared,
      LotBuilder lot,
      Optional<Integer> was,
      Optional<Integer> is,
      String kind,
      List<LeftOut> out) {
    Brief before = yard().lots(lot).build();
    String id = lot.build().id();
    return String.join(
        ", ",
        new Tellers(prepared, before, spot(id, was), spot(id, is), out)
            .of(List.of(id), ChangeList.Kind.valueOf(kind)));
  }

  private static String moved(int was, int is) {
    return told(lot("a"), Optional.of(was), Optional.of(is), "MOVED");
  }

  @Test
  void salesHearWhatChangesTheAnswerToTheCustomer() {
    assertThat(moved(DUE - 100, DUE + 1)).endsWith(SALES);
    assertThat(moved(DUE + 1, DUE)).endsWith(SALES);
    assertThat(moved(DUE + 30, NEXT_DAY)).endsWith(SALES);

    assertThat(moved(DUE - 100, DUE)).doesNotContain("sales");
    assertThat(moved(DUE + 30, DUE + 300)).doesNotContain("sales");
    assertThat(told(lot("a").earlierLeg(), Optional.of(DUE), Optional.of(DUE + 1), "MOVED"))
        .doesNotContain("sales");
  }

  @Test
  void whatComesBackIntoTheWeekIsNewsForTheCustomerAndReworkInTimeIsNot() {
    LotBuilder rework = lot("F-1/LB-20#r4");

    assertThat(told(lot("a"), Optional.empty(), Optional.of(DUE), "NEW")).endsWith(SALES);
    assertThat(told(rework, Optional.empty(), Optional.of(DUE), "NEW")).doesNotContain("sales");
    assertThat(told(rework, Optional.empty(), Optional.of(DUE + 1), "NEW")).endsWith(SALES);
    assertThat(told(lot("a"), Optional.empty(), Optional.of(DUE), "SPLIT")).doesNotContain("sales");
  }

  @Test
  void whatFallsOutIsSaidToThoseWhoCanBringItBack() {
    LotBuilder lot = lot("a");
    Held counted =
        new Held(
            "F-1",
            "LB-20",
            "ladder bracket",
            4,
            "not-arrived",
            "short",
            "a count",
            "bending",
            2,
            DUE);
    PreparedWeek held =
        new PreparedWeek(week.input(), week.brief(), week.parts(), List.of(counted), week.gates());
    LeftOut noPowder = new LeftOut("a", "no-supply", "none", OptionalInt.empty());
    LeftOut noTime = new LeftOut("a", "no-time", "none", OptionalInt.empty());

    assertThat(told(held, lot, Optional.of(DUE), Optional.empty(), "DROPPED", List.of()))
        .isEqualTo("hangers, sprayer, oven, bending, " + SALES);
    assertThat(told(held, lot, Optional.of(DUE), Optional.empty(), "DROPPED", List.of(noPowder)))
        .isEqualTo("hangers, sprayer, oven, purchasing, " + SALES);
    assertThat(told(held, lot, Optional.of(DUE), Optional.empty(), "DROPPED", List.of(noTime)))
        .isEqualTo("hangers, sprayer, oven, " + SALES);
    assertThat(told(held, lot, Optional.of(DUE), Optional.of(DUE), "MOVED", List.of()))
        .isEqualTo("hangers, sprayer, oven");
  }

  @Test
  void eachLineHasItsCrewAndKitsWaitInAssembly() {
    LotBuilder zinc = lot("a").line(line(LineKind.ZINC)).kits("K-1");
    LineSpec own =
        week.brief().lines().stream()
            .filter(l -> l.kind() == LineKind.ZINC)
            .findFirst()
            .orElseThrow();

    assertThat(told(zinc, Optional.of(DUE - 61), Optional.of(DUE), "MOVED"))
        .isEqualTo("kettle crew, assembly (K-1)");
    assertThat(told(zinc, Optional.of(DUE - 60), Optional.of(DUE), "MOVED"))
        .isEqualTo("kettle crew");
    assertThat(crewOf(own, LineKind.OUTSIDE, zinc)).isEqualTo("dispatch, assembly (K-1)");
    assertThat(crewOf(own, LineKind.LIQUID, zinc)).isEqualTo("hangers, painter, assembly (K-1)");
  }

  private static String crewOf(LineSpec own, LineKind kind, LotBuilder lot) {
    LineSpec other =
        new LineSpec(
            own.id(),
            own.name(),
            kind,
            own.before(),
            own.machines(),
            own.after(),
            own.settings(),
            own.settingChange());
    Brief brief = BriefChange.lines(week.brief(), l -> l.equals(own) ? other : l);
    PreparedWeek prepared =
        new PreparedWeek(week.input(), brief, week.parts(), week.held(), week.gates());
    return told(prepared, lot, Optional.of(DUE - 90), Optional.of(DUE), "MOVED", List.of());
  }
}
