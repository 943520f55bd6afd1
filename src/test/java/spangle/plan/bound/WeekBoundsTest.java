package spangle.plan.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.WeekOf.LotOf.lot;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import spangle.fit.hang.CarrierFace;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.LineKind;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.SetupTable;
import spangle.plan.Supply;
import spangle.plan.WeekOf;

/** Floors of weeks small enough to be counted on the fingers. */
class WeekBoundsTest {
  private static final int DAY = 24 * 60;

  /** One oven of two places; a rack is a square metre without gaps and takes one place. */
  private static WeekOf shop(SetupTable settings) {
    return new WeekOf()
        .line(
            "powder",
            LineKind.POWDER,
            List.of(WeekOf.booth("booth", 4, 15)),
            List.of(WeekOf.oven("oven", 2, WeekOf.always())),
            List.of(WeekOf.station("cool", 4)),
            settings)
        .rack("rack", "powder", 9);
  }

  private static WeekOf shop() {
    return shop(WeekOf.changes(2, 30));
  }

  private static WeekOf.LotOf piece(String id) {
    return lot(id, "powder").dwell(0, 20, 40).in("oven").on("rack").visit("booth", 5, 0);
  }

  private static WeekBounds floors(WeekOf week) {
    Brief brief = week.brief();
    Set<String> all = brief.lots().stream().map(Lot::id).collect(Collectors.toSet());
    return WeekBounds.of(brief, all);
  }

  @Test
  void fiveQuartersOfARackNeedTwoRacksAndOneBatch() {
    WeekOf week = shop();
    for (int k = 0; k < 5; k++) {
      week.lot(piece("lot " + k).side(500));
    }

    WeekBounds floor = floors(week);

    assertThat(floor.loads()).isEqualTo(2);
    assertThat(floor.ovenBatches()).isEqualTo(1);
    assertThat(floor.machineMinutes()).isEqualTo(20);
    assertThat(floor.lines().get(0).groups().get(0).byRoom()).isEqualTo(2);
  }

  @Test
  void piecesWiderThanHalfTheRackNeedARackEach() {
    WeekOf week = shop();
    for (int k = 0; k < 5; k++) {
      week.lot(piece("lot " + k).side(501));
    }

    WeekBounds floor = floors(week);

    assertThat(floor.loads()).isEqualTo(5);
    assertThat(floor.ovenBatches()).as("two places").isEqualTo(3);
    assertThat(floor.machineMinutes()).isEqualTo(60);
  }

  @Test
  void whatTravelsAloneTakesARackForItself() {
    WeekBounds floor = floors(shop().lot(piece("a").side(10).alone()).lot(piece("b").side(10)));

    assertThat(floor.loads()).isEqualTo(2);
    assertThat(floor.ovenBatches()).isEqualTo(1);
  }

  /** A heavy piece and a large one fill a rack together; mass and room are never added up. */
  @Test
  void heavyAndLargePiecesShareRacks() {
    CarrierFace face =
        new CarrierFace(
            1000, 1000, 100, 1, 0, 0, 0, 0, 100, Integer.MAX_VALUE, CarrierFace.Style.FREE);
    WeekOf week = shop().carrier(new CarrierSpec("cart", "cart", "powder", face, 9, 1, 0, 0, 0));
    for (int k = 0; k < 2; k++) {
      week.lot(
          lot("heavy " + k, "powder").dwell(0, 20, 40).in("oven").on("cart").side(50).mass(89));
      week.lot(
          lot("large " + k, "powder").dwell(0, 20, 40).in("oven").on("cart").side(940).mass(11));
    }

    WeekBounds floor = floors(week);

    assertThat(floor.loads()).isEqualTo(2);
    assertThat(floor.ovenBatches()).isEqualTo(1);
  }

  @Test
  void everyColourNeedsARackOfItsOwn() {
    WeekBounds floor = floors(shop().lot(piece("a").finish(1)).lot(piece("b").finish(2)));

    assertThat(floor.loads()).isEqualTo(2);
  }

  @Test
  void dwellWindowsThatDoNotMeetAreCountedApart() {
    WeekOf week =
        shop()
            .lot(piece("thin"))
            .lot(lot("thick", "powder").dwell(0, 50, 90).in("oven").on("rack"))
            .lot(lot("hot", "powder").dwell(1, 10, 20).in("oven").on("rack"));

    WeekBounds floor = floors(week);

    assertThat(floor.ovenBatches()).isEqualTo(3);
    assertThat(floor.machineMinutes()).isEqualTo(20 + 50 + 10);
    assertThat(floor.settingMinutes()).as("once to the other setting").isEqualTo(30);
    assertThat(floor.lines().get(0).kinds().get(0).byConflict()).isEqualTo(3);
  }

  @Test
  void aChainOfWindowsCountsTheTwoThatNeverMeet() {
    WeekOf week =
        shop()
            .lot(piece("short"))
            .lot(lot("middle", "powder").dwell(0, 35, 70).in("oven").on("rack"))
            .lot(lot("long", "powder").dwell(0, 60, 90).in("oven").on("rack"));

    WeekBounds floor = floors(week);

    assertThat(floor.ovenBatches()).isEqualTo(2);
    assertThat(floor.machineMinutes()).as("60 with the middle one, and 20").isEqualTo(80);
  }

  @Test
  void longDwellsFillTheirOwnBatches() {
    WeekOf week = shop();
    for (int k = 0; k < 3; k++) {
      week.lot(lot("long " + k, "powder").dwell(0, 30, 90).in("oven").on("rack").alone());
    }
    week.lot(lot("short", "powder").dwell(0, 10, 90).in("oven").on("rack").alone());

    WeekBounds floor = floors(week);

    assertThat(floor.ovenBatches()).isEqualTo(2);
    assertThat(floor.machineMinutes()).as("three long ones take two batches").isEqualTo(60);
  }

  @Test
  void anOvenIsFilledByMassAsWell() {
    WeekOf week =
        new WeekOf()
            .line(
                "powder",
                LineKind.POWDER,
                List.of(),
                List.of(new MachineSpec("oven", "oven", 9, 100, WeekOf.always(), 0, 0, 0)),
                List.of(),
                WeekOf.changes(1, 0))
            .rack("rack", "powder", 9);
    for (int k = 0; k < 4; k++) {
      week.lot(lot("lot " + k, "powder").dwell(0, 20, 40).in("oven").on("rack").alone().mass(31));
    }

    assertThat(floors(week).ovenBatches()).as("51 kg each with the rack").isEqualTo(4);
  }

  @Test
  void coloursBeyondTheOneInTheGunAreChanges() {
    WeekOf week =
        shop()
            .lot(piece("a").finish(0))
            .lot(piece("b").finish(1))
            .lot(piece("c").finish(2))
            .lot(piece("d").finish(2));

    WeekBounds floor = floors(week);

    assertThat(floor.colourChanges()).isEqualTo(2);
    assertThat(floor.colourCost()).isEqualTo(2 * 15);
  }

  @Test
  void aColourThatCostsTimeEvenAfterItselfCostsItAtEveryRack() {
    List<Integer> row = List.of(7, 9);
    SetupTable table = new SetupTable(List.of("x", "y"), List.of(row, row), List.of(row, row));

    assertThat(SetupFloor.of(Map.of(1, 3), Set.of(0), Set.of(), table::cost)).isEqualTo(3 * 9);
    assertThat(SetupFloor.of(Map.of(0, 3), Set.of(0), Set.of(), table::cost)).isEqualTo(3 * 7);
  }

  @Test
  void aJobThatIsLateOnAnEmptyLineIsLateInEveryPlan() {
    WeekOf week =
        shop()
            .lot(piece("late").visit("cool", 30, 0).ready(600).due(600 + 5 + 20 + 29))
            .lot(piece("just").visit("cool", 30, 0).ready(600).due(600 + 5 + 20 + 30));

    WeekBounds floor = floors(week);

    assertThat(floor.lateLots()).isEqualTo(1);
    assertThat(floor.lateMinutes()).isEqualTo(1);
  }

  @Test
  void materialAndTheLegBeforeCountAsWell() {
    WeekOf week =
        shop()
            .supply(new Supply("blue", "blue", List.of(new Supply.Arrival(DAY, 5, "a"))))
            .lot(piece("waits").draws("blue", 1).due(DAY + 19))
            .lot(piece("first").firstLeg().due(DAY))
            .lot(piece("second").after("first", 100, 5000).due(25 + 100 + 24));

    assertThat(floors(week).lateLots()).isEqualTo(2);
  }

  @Test
  void whenAnHourHoldsThreeBatchesTheFourthLotIsLate() {
    WeekOf week = shop();
    for (int k = 0; k < 8; k++) {
      week.lot(lot("lot " + k, "powder").dwell(0, 20, 40).in("oven").on("rack").alone().due(60));
    }

    assertThat(floors(week).lateLots()).as("six find a place in time").isEqualTo(2);
  }

  @Test
  void aKitIsLateWithItsLatestPart() {
    WeekOf week =
        shop()
            .kit("kit", 1, 100, 3, "a", 1, "b", 1)
            .lot(piece("a").kit("kit").due(DAY))
            .lot(piece("b").kit("kit").ready(90).due(DAY));

    assertThat(floors(week).lateKits()).isEqualTo(3);
  }

  @Test
  void whatHasStartedCountsAsItIs() {
    PlannedLoad load =
        new PlannedLoad("P1", "rack", 1, List.of("a"), List.of(), java.util.Optional.empty());
    PlannedBatch started =
        new PlannedBatch("oven #1", "powder", "oven", 0, 0, 0, 33, List.of(load));
    WeekOf week = shop().lot(piece("a").due(30)).lot(piece("b").due(DAY)).frozen(List.of(started));

    WeekBounds floor = floors(week);

    assertThat(floor.loads()).isEqualTo(2);
    assertThat(floor.ovenBatches()).isEqualTo(2);
    assertThat(floor.machineMinutes()).isEqualTo(33 + 20);
    assertThat(floor.lateLots()).isEqualTo(1);
  }

  @Test
  void dipsAreCountedApartFromOvenBatches() {
    WeekOf week =
        new WeekOf()
            .line(
                "zinc",
                LineKind.ZINC,
                List.of(),
                List.of(WeekOf.oven("kettle", 1, WeekOf.always())),
                List.of(),
                WeekOf.changes(1, 0))
            .rack("beam", "zinc", 2);
    for (int k = 0; k < 3; k++) {
      week.lot(lot("lot " + k, "zinc").dwell(0, 5, 9).in("kettle").on("beam").alone());
    }

    WeekBounds floor = floors(week);

    assertThat(floor.dips()).isEqualTo(3);
    assertThat(floor.ovenBatches()).isZero();
  }

  @Test
  void theGoalIsWeighedFromAllFloorsAndWhatIsLeftOut() {
    Brief brief = shop().lot(piece("a")).lot(piece("b").weight(2)).brief();

    WeekBounds floor = WeekBounds.of(brief, Set.of("a"));

    assertThat(floor.goal())
        .isEqualTo(
            20L * brief.goals().runMinute() + brief.goals().load() + 2L * brief.goals().leftOut());
  }
}
