package spangle.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static spangle.plan.PlanFixtures.OPEN;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Three loads on one rack: 10 minutes of hanging before the oven, 5 of unloading after it. */
class CarrierRunTest {
  private static final Plan THREE =
      plan(
          List.of(
              simpleBake("oven-1 #1", "P1", OPEN + 60, "A"),
              simpleBake("oven-1 #2", "P2", OPEN + 120, "B"),
              simpleBake("oven-1 #3", "P3", OPEN + 180, "C")),
          List.of());

  private static List<CarrierRun> runs(int stripAfter, int stripMin) {
    Brief brief = yard().lots(powderLot("A"), powderLot("B"), powderLot("C")).build();
    List<CarrierSpec> carriers =
        brief.carriers().stream()
            .map(
                c ->
                    new CarrierSpec(
                        c.id(),
                        c.name(),
                        c.lineId(),
                        c.face(),
                        c.owned(),
                        c.floorUnits(),
                        c.ownMassKg(),
                        stripAfter,
                        stripMin))
            .toList();
    return CarrierRun.of(
        new Brief(
            brief.name(),
            brief.monday(),
            brief.horizonMin(),
            brief.lines(),
            carriers,
            brief.lots(),
            brief.kits(),
            brief.supplies(),
            brief.goals(),
            brief.frozen(),
            brief.announced(),
            brief.baths()),
        THREE);
  }

  @Test
  void everySecondLoadSendsTheRackToBeStripped() {
    assertThat(runs(2, 480))
        .extracting(CarrierRun::loadId, CarrierRun::cycle, CarrierRun::stripped)
        .containsExactly(tuple("P1", 1, false), tuple("P2", 2, true), tuple("P3", 3, false));
    CarrierRun second = runs(2, 480).get(1);
    assertThat(second.backMin()).isEqualTo(second.untilMin() + 480);
  }

  @Test
  void aRackThatIsNeverStrippedIsBackAtOnce() {
    assertThat(runs(0, 480))
        .isNotEmpty()
        .allSatisfy(r -> assertThat(r.backMin()).isEqualTo(r.untilMin()));
  }

  @Test
  void oneThatIsBeingStrippedIsAwayLikeOneThatIsLoaded() {
    assertThat(CarrierRun.most(runs(0, 0)).count()).isEqualTo(1);
    CarrierRun.Most most = CarrierRun.most(runs(1, 50));
    assertThat(most.count()).isEqualTo(2);
    assertThat(most.atMin()).isEqualTo(runs(1, 50).get(1).fromMin());
  }
}
