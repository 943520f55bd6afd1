package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleLoad;
import static spangle.plan.PlanFixtures.yard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.Kit;
import spangle.plan.LeftOut;
import spangle.plan.LoadTimes;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.clock.Floor;

/**
 * A plan people already know is kept: its order where nothing else is asked, and what is frozen.
 */
class RecallTest {
  private static final PlannedBatch FIRST = simpleBake("oven-1 #1", "P1", 360, "B");
  private static final PlannedBatch SECOND = simpleBake("oven-1 #2", "P2", 380, "A");

  private static Plan solve(Brief brief, List<PlannedBatch> earlier, long steps) {
    return new Solver().solve(brief, earlier, new SolveOptions(60, steps, 1, 1), p -> {});
  }

  private static List<String> lotsInTime(Plan plan) {
    return plan.batches().stream()
        .sorted(Comparator.comparingInt(PlannedBatch::startMin))
        .flatMap(b -> b.loads().stream())
        .flatMap(l -> l.lotIds().stream())
        .toList();
  }

  @Test
  void theSearchStartsFromTheOrderPeopleKnow() {
    Brief brief = yard().lots(powderLot("A"), powderLot("B")).build();
    assertThat(lotsInTime(solve(brief, List.of(FIRST, SECOND), 1))).containsExactly("B", "A");
    assertThat(lotsInTime(solve(brief, List.of(SECOND), 1))).startsWith("A");
  }

  /** Two pieces fewer came: a new lot, and the load stays where people know it. */
  @Test
  void piecesThatComeInAnotherCountKeepTheirLoad() {
    PlannedBatch known = simpleBake("oven-1 #1", "P1", 360, "J/A#1");
    PlannedBatch next = simpleBake("oven-1 #2", "P2", 400, "B");
    Brief brief = yard().lots(powderLot("B"), powderLot("J/A#3")).build();
    assertThat(lotsInTime(solve(brief, List.of(known, next), 1))).containsExactly("J/A#3", "B");
    // Where they come later than the load was to run, nothing waits for them.
    Brief late = yard().lots(powderLot("B"), powderLot("J/A#3").ready(500)).build();
    assertThat(lotsInTime(solve(late, List.of(known, next), 1))).containsExactly("B", "J/A#3");
  }

  @Test
  void workThatIsGoneOrFrozenIsNotRecalledTwice() {
    Brief brief = yard().lots(powderLot("B"), powderLot("C")).frozen(FIRST).build();
    Plan plan = solve(brief, List.of(FIRST, SECOND), 200);
    assertThat(plan.batches()).contains(FIRST);
    assertThat(lotsInTime(plan)).containsExactly("B", "C");
    assertThat(plan.leftOut()).isEmpty();
    assertThat(Audit.of(brief, plan)).isEmpty();
  }

  @Test
  void aRackIsFreeWhenTheLastLoadReportedOnItIs() {
    // By the log B hung on the only rack after A and was off it before A is.
    PlannedBatch held =
        bake(
            "oven-1 #1",
            "oven-1",
            0,
            375,
            395,
            load("P1", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 370, 375)
                .visit("unload", 480, 485));
    PlannedBatch off = bake("oven-2 #1", "oven-2", 0, 395, 415, simpleLoad("P2", 380, "B"));
    Brief brief =
        yard()
            .lots(powderLot("A"), powderLot("B"), powderLot("C"))
            .carrier("rack", c -> c.owning(1))
            .frozen(held, off)
            .build();
    Plan plan = solve(brief, List.of(), 200);
    PlannedBatch last =
        plan.batches().stream()
            .filter(b -> b.loads().get(0).lotIds().contains("C"))
            .findFirst()
            .orElseThrow();
    assertThat(LoadTimes.first(last)).isEqualTo(485);
    assertThat(Audit.of(brief, plan)).isEmpty();
  }

  @Test
  void aLoadThatMayNotRunAnyMoreIsPlannedAnew() {
    // Oven 1 is not among the machines of A any more.
    Brief brief = yard().lots(powderLot("A").machines("oven-2"), powderLot("B")).build();
    Plan plan = solve(brief, List.of(FIRST, SECOND), 200);
    assertThat(plan.leftOut()).extracting(LeftOut::lotId).isEmpty();
    assertThat(Audit.of(brief, plan)).isEmpty();
  }

  @Test
  void lotsThatGetAnotherFinishNowDoNotStayOnOneCarrier() {
    // A and B hung together in the plan so far; since then B is wanted in yellow.
    PlannedBatch together =
        bake(
            "oven-1 #1",
            "oven-1",
            0,
            375,
            395,
            load("P1", "rack", "A", "B")
                .visit("hang", 360, 370)
                .visit("booth", 370, 375)
                .visit("unload", 395, 400));
    Brief brief = yard().lots(powderLot("A"), powderLot("B").yellow()).build();
    Plan plan = solve(brief, List.of(together), 1);
    assertThat(Audit.of(brief, plan)).isEmpty();
    assertThat(lotsInTime(plan)).containsExactlyInAnyOrder("A", "B");
  }

  @Test
  void anAnnouncedLoadStaysWhereMovingItGainsLittle() {
    // Weight 200 for a moved load; without it the search would be free to swap the two.
    Brief brief = yard().lots(powderLot("A"), powderLot("B")).announced(FIRST, SECOND).build();
    Plan plan = solve(brief, List.of(FIRST, SECOND), 20_000);
    assertThat(plan.figures().moved()).isZero();
    assertThat(Audit.of(brief, plan)).isEmpty();
  }

  /** On the frame, hotter and shorter they would gain a few minutes; they stay as people know. */
  @Test
  void anAnnouncedLoadKeepsItsCarrierItsHeatAndItsHour() {
    Brief brief = yard().lots(powderLot("A"), powderLot("B")).build();
    Plan known = solve(brief, List.of(FIRST, SECOND), 1);
    Brief again =
        yard()
            .lots(powderLot("A"), powderLot("B"))
            .announced(known.batches().toArray(PlannedBatch[]::new))
            .build();
    Plan plan = solve(again, known.batches(), 20_000);
    assertThat(plan.figures().moved()).isZero();
    assertThat(plan.batches()).allMatch(b -> b.setting() == 0);
    assertThat(plan.batches())
        .flatExtracting(PlannedBatch::loads)
        .allMatch(l -> l.carrierId().equals("rack"));
    assertThat(Audit.of(again, plan)).isEmpty();
  }

  /** Two loads alike in one oven: else the list would say that they exchange their carriers. */
  @Test
  void ofTwoLoadsAlikeEachKeepsItsCarrierWithItsNumber() {
    PlannedBatch known =
        bake("oven-1 #1", "oven-1", 0, 375, 395, load("P1", "frame", "A"), load("P2", "rack", "B"));
    Brief brief =
        yard()
            .lots(
                powderLot("A").of("J", "P").carriers("rack", "frame"),
                powderLot("B").of("J", "P").carriers("rack", "frame"))
            .build();
    Floor floor = Floor.of(brief);
    KeptRows rows = new KeptRows(floor);
    List<KnownNumbers.Wanted> wanted = new ArrayList<>();
    for (String carrier : List.of("rack", "frame")) {
      int kind = 0;
      while (!floor.carriers[kind].spec.id().equals(carrier)) {
        kind++;
      }
      int lot = rows.lot(carrier.equals("rack") ? "A" : "B");
      wanted.add(new KnownNumbers.Wanted(floor.load(kind, new int[] {lot}), "oven-1", 375, 360));
    }
    assertThat(new KnownNumbers(floor, List.of(known)).of("paint", wanted))
        .containsExactly(Optional.of("P2"), Optional.of("P1"));
  }

  @Test
  void aKitIsNotADayLaterForNothingAndCountsWhereItMustBe() {
    Kit kit =
        new Kit(
            "K",
            "cabinet",
            1,
            5000,
            1,
            List.of(
                new Kit.KitLine("part-A", "job-A", 4, 0),
                new Kit.KitLine("part-B", "job-B", 4, 0)));
    Brief same =
        yard().lots(powderLot("A"), powderLot("B")).kit(kit).announced(FIRST, SECOND).build();
    assertThat(solve(same, List.of(FIRST, SECOND), 20_000).figures().moved()).isZero();
    Brief late =
        yard()
            .lots(powderLot("A"), powderLot("B").ready(1440 + 360))
            .kit(kit)
            .announced(FIRST, SECOND)
            .build();
    Plan plan = solve(late, List.of(FIRST, SECOND), 20_000);
    // B of today and its kit; A stays where it is.
    assertThat(plan.figures().moved()).isEqualTo(5 + 50);
    assertThat(Audit.of(late, plan)).isEmpty();
  }

  @Test
  void whatTheEarlierPlanHasNotPushesNobodyAside() {
    List<PlannedBatch> earlier =
        solve(yard().lots(powderLot("A"), powderLot("B")).build(), List.of(FIRST, SECOND), 1)
            .batches();
    Brief brief =
        yard()
            .lots(powderLot("A"), powderLot("B"), powderLot("C"), powderLot("D"), powderLot("E"))
            .announced(earlier.toArray(PlannedBatch[]::new))
            .build();
    Plan plan = solve(brief, earlier, 1);
    assertThat(plan.figures().moved()).isZero();
    assertThat(lotsInTime(plan)).hasSize(5).startsWith("B");
    assertThat(Audit.of(brief, plan)).isEmpty();
  }
}
