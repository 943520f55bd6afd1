package spangle.report.week;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleLoad;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.Kit;
import spangle.plan.Supply.Arrival;
import spangle.report.WeekReport;

/** What the kit board says of the powder of a kit, and how far apart its parts finish. */
class KitPowderTest {
  private static Kit kit(boolean oneLot) {
    return new Kit(
        "K",
        "gate set",
        4,
        2280,
        1,
        oneLot,
        List.of(
            new Kit.KitLine("part-A", "job-A", 1, 0), new Kit.KitLine("part-B", "job-B", 1, 0)));
  }

  private static BriefBuilder week(boolean oneLot) {
    return yard().lots(powderLot("A").kits("K"), powderLot("B").kits("K")).kit(kit(oneLot));
  }

  private static KitStatus status(Brief brief) {
    WeekReport report =
        WeekReport.bare(
            brief,
            plan(
                simpleBake("oven-1 #1", "P01", 360, "A"),
                bake("oven-2 #1", "oven-2", 0, 415, 435, simpleLoad("P02", 400, "B"))));
    return KitBoard.of(new WeekIndex(report)).get(0);
  }

  @Test
  void theOnlyLotThereIsIsTheLot() {
    assertThat(
            status(week(true).supply("powder-grey", new Arrival(0, 9, "K1")).build()).powderLots())
        .containsExactly("shelter grey from lot K1");
  }

  @Test
  void ofTwoLotsNeitherIsNamedWhereNoneIsKept() {
    Brief brief =
        week(true)
            .supply("powder-grey", new Arrival(0, 0.5, "K1"), new Arrival(0, 0.5, "K2"))
            .build();
    assertThat(status(brief).powderLots())
        .containsExactly("shelter grey NOT from one lot: shades may differ");
  }

  @Test
  void theLotThatIsKeptIsNamed() {
    Brief brief =
        yard()
            .lots(powderLot("A").kits("K").fromLot("K2"), powderLot("B").kits("K").fromLot("K2"))
            .kit(kit(true))
            .supply("powder-grey", new Arrival(0, 9, "K1"))
            .kept("powder-grey", "K2", new Arrival(0, 0.8, "K2"))
            .build();
    assertThat(status(brief).powderLots()).containsExactly("shelter grey from lot K2");
  }

  @Test
  void rejectedPiecesMakeSetsOnlyOnceTheirReworkIsFinished() {
    Brief brief =
        yard()
            .lots(powderLot("J/P#1").of("J", "P"), powderLot("J/P#r3").of("J", "P"))
            .kit(new Kit("K", "gate set", 4, 2280, 1, List.of(new Kit.KitLine("P", "J", 1, 0))))
            .build();
    WeekReport report =
        WeekReport.bare(
            brief,
            plan(
                simpleBake("oven-1 #1", "P01", 360, "J/P#1"),
                simpleBake("oven-1 #2", "P02", 1800, "J/P#r3")));
    KitStatus status = KitBoard.of(new WeekIndex(report)).get(0);
    assertThat(status.setsByDay()).startsWith(0, 4);
    assertThat(status.completeMin()).hasValue(1840);
  }

  @Test
  void aKitThatDoesNotAskHasNone() {
    assertThat(status(week(false).build()).powderLots()).isEmpty();
  }

  /** The second batch leaves its oven and is unloaded 40 minutes behind the first. */
  @Test
  void theSpreadIsFromTheFirstPieceToTheLast() {
    assertThat(status(week(false).build()).spreadMin()).hasValue(40);
    assertThat(status(week(false).build()).setsByDay().get(0)).isEqualTo(4);
  }
}
