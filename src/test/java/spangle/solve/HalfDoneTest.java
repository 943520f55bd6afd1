package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.Supply;

/** Zinc, then a powder that never comes. */
class HalfDoneTest {
  private static Brief duplex(int maxGapMin, PlannedBatch... frozen) {
    return yard()
        .lots(zincLot("z").earlierLeg(), powderLot("p").after("z", 0, maxGapMin), zincLot("other"))
        .supply("powder-grey", new Supply.Arrival(0, 0.1, "K1"))
        .frozen(frozen)
        .build();
  }

  private static Plan solved(Brief brief) {
    Plan plan = new Solver().solve(brief, new SolveOptions(0, 2000, 1, 1), ProgressListener.NOBODY);
    assertThat(Audit.of(brief, plan)).isEmpty();
    return plan;
  }

  private static List<String> out(Plan plan) {
    return plan.leftOut().stream().map(LeftOut::lotId).toList();
  }

  private static Brief anyway(Brief brief) {
    return new Brief(
        brief.name(),
        brief.monday(),
        brief.horizonMin(),
        brief.lines(),
        brief.carriers(),
        brief.lots().stream().map(Lot::startedAnyway).toList(),
        brief.kits(),
        brief.supplies(),
        brief.goals(),
        brief.frozen(),
        brief.announced(),
        List.of());
  }

  @Test
  void nothingIsGalvanizedForAPowderThatDoesNotComeInTime() {
    Plan plan = solved(duplex(720));
    assertThat(out(plan)).containsExactlyInAnyOrder("z", "p");
    LeftOut zinc =
        plan.leftOut().stream().filter(l -> l.lotId().equals("z")).findFirst().orElseThrow();
    assertThat(zinc.code()).isEqualTo("half-route");
    assertThat(zinc.reason())
        .startsWith("\"shelter grey\" after it finds no place in the plan (0.40 kg of shelter grey")
        .contains("longer than the 12 h its surface keeps");
    assertThat(plan.figures().leftOut()).isEqualTo(2);
  }

  /**
   * From 2229 to the end of the week's last shift, 2280, one dip has time: 30 in the pickle, 2 in
   * flux, 4 in zinc, 10 of cooling. The search gives it to what counts double, for nothing.
   */
  @Test
  void theRoomOfWhatIsTakenOutGoesToWhatWasLeftOut() {
    Brief brief =
        yard()
            .lots(
                zincLot("z").earlierLeg().alone().ready(2229).weight(2),
                powderLot("p").after("z", 0, 720),
                zincLot("other").alone().ready(2229))
            .supply("powder-grey", new Supply.Arrival(0, 0.1, "K1"))
            .build();
    Plan plan = solved(brief);
    assertThat(out(plan)).containsExactlyInAnyOrder("z", "p");
    assertThat(plan.batches())
        .singleElement()
        .satisfies(b -> assertThat(b.endMin()).isEqualTo(2265));
    assertThat(plan.figures().leftOut()).isEqualTo(3);
  }

  @Test
  void whatKeepsIsGalvanized() {
    assertThat(out(solved(duplex(Integer.MAX_VALUE)))).containsExactly("p");
  }

  @Test
  void whoWantsItAnywayGetsIt() {
    assertThat(out(solved(anyway(duplex(720))))).containsExactly("p");
  }

  @Test
  void whatHasStartedStays() {
    assertThat(out(solved(duplex(720, simpleDip("kettle #1", "Z01", 360, "z")))))
        .containsExactly("p");
  }

  @Test
  void aWholeChainIsLeftOutTogether() {
    Brief brief =
        yard()
            .lots(
                zincLot("z").earlierLeg(),
                powderLot("d")
                    .after("z", 0, 720)
                    .earlierLeg()
                    .finish(new Finish(0, "degas", "degassing bake", FinishKind.DEGAS, "")),
                powderLot("p").after("d", 0, 720))
            .supply("powder-grey", new Supply.Arrival(0, 0.1, "K1"))
            .build();
    Plan plan = solved(brief);
    assertThat(out(plan)).containsExactlyInAnyOrder("z", "d", "p");
    assertThat(plan.batches()).isEmpty();
    assertThat(plan.leftOut())
        .filteredOn(l -> l.lotId().equals("z"))
        .allMatch(l -> l.reason().endsWith("nor what comes after that"));
  }

  @Test
  void theAuditFindsWorkDoneForNothing() {
    Plan half = plan(List.of(simpleDip("kettle #1", "Z01", 360, "z")), List.of(leftOut("p")));
    assertThat(Audit.of(duplex(720), half)).extracting(Finding::rule).contains("nothing-half-done");
    assertThat(Audit.of(duplex(Integer.MAX_VALUE), half))
        .extracting(Finding::rule)
        .doesNotContain("nothing-half-done");
    assertThat(Audit.of(anyway(duplex(720)), half))
        .extracting(Finding::rule)
        .doesNotContain("nothing-half-done");
  }
}
