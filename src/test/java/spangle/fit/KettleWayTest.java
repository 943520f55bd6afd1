package spangle.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spangle.measure.Box;

/** Every station on the way and the crane, each at its limit. */
class KettleWayTest {
  private static final UsableSpace KETTLE = UsableSpace.of("kettle", 4000, 1000, 2000);
  private static final Crane CRANE = new Crane("hall crane", 1100, 3200, 1000);

  private static KettleWay way(Station... others) {
    List<Station> stations = new ArrayList<>(List.of(others));
    stations.add(new Station(Station.Kind.KETTLE, KETTLE));
    return new KettleWay(stations, Optional.of(CRANE));
  }

  private static Station tank(String name, double length, double depth) {
    return new Station(Station.Kind.PRETREATMENT, UsableSpace.of(name, length, 1000, depth));
  }

  private static FitAnswer fit(KettleWay way, double l, double w, double h, double kg) {
    return KettleFit.answer(FitRequest.of(new Box(l, w, h)).withMassKg(kg), way);
  }

  @Test
  void aShorterTankTakesTheStraightLayAndIsNamed() {
    FitAnswer free = fit(way(tank("pickle", 4000, 2000)), 3950, 500, 300, 300);
    assertThat(free.verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(free.limitedBy()).isEmpty();
    FitAnswer tight =
        fit(way(tank("pickle", 3900, 2000), tank("flux", 3950, 2000)), 3950, 500, 300, 300);
    assertThat(tight.verdict()).isEqualTo(Verdict.TILTED);
    assertThat(tight.limitedBy()).contains("pickle");
    assertThat(tight.margin().lengthMm()).isNotNegative();
  }

  @Test
  void aTankThatTakesThePartInNoWayRefusesItAndIsNamed() {
    FitAnswer no = fit(way(tank("rinse", 4000, 400)), 3000, 900, 800, 300);
    assertThat(no.verdict()).isEqualTo(Verdict.NO);
    assertThat(no.limitedBy()).contains("rinse");
    assertThat(no.waysOut()).anyMatch(words -> words.startsWith("Missing: "));
  }

  /** 1000 kg of steel, 10 % of zinc running off: 1100 kg. */
  @Test
  void theCraneLiftsWhatItsPlateSaysAndNoKilogramMore() {
    assertThat(fit(way(), 2000, 500, 500, 1000).verdict()).isEqualTo(Verdict.STRAIGHT);
    FitAnswer heavy = fit(way(), 2000, 500, 500, 1000.1);
    assertThat(heavy.verdict()).isEqualTo(Verdict.NO);
    assertThat(heavy.limitedBy()).contains("hall crane");
    assertThat(heavy.cautions()).anyMatch(words -> words.startsWith("Too heavy for hall crane"));
    assertThat(heavy.waysOut()).anyMatch(words -> words.contains("at most 1000 kg"));
  }

  @Test
  void theJigCountsOnTheCraneButCarriesNoZinc() {
    FitRequest request =
        new FitRequest(
            Body.of(new Box(2000, 500, 500)), OptionalDouble.of(900), 110, FitRules.KETTLE);
    assertThat(KettleFit.answer(request, way()).verdict()).isEqualTo(Verdict.STRAIGHT);
    FitRequest more = new FitRequest(request.body(), request.massKg(), 110.1, FitRules.KETTLE);
    assertThat(KettleFit.answer(more, way()).verdict()).isEqualTo(Verdict.NO);
  }

  /** 200 mm over the rim, the part, 1000 mm of slings: 2000 mm of part need 3200 mm of hook. */
  @Test
  void theHookLowersTheAngleOrRefusesThePart() {
    FitAnswer at = fit(way(), 3900, 900, 300, 300);
    assertThat(at.lift().orElseThrow().hookMm()).isLessThanOrEqualTo(3200);
    Crane low = new Crane("low crane", 1100, 1500, 1000);
    KettleWay way =
        new KettleWay(List.of(new Station(Station.Kind.KETTLE, KETTLE)), Optional.of(low));
    FitAnswer lowered = fit(way, 3000, 500, 300, 300);
    assertThat(lowered.verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(lowered.hangDeg()).isZero();
    assertThat(lowered.lift().orElseThrow().hookMm()).isCloseTo(1500, within(1e-9));
    assertThat(lowered.cautions()).anyMatch(words -> words.contains("low crane is too low"));
    FitAnswer refused = fit(way, 3000, 1000, 300.1, 300);
    assertThat(refused.verdict()).isEqualTo(Verdict.NO);
    assertThat(refused.limitedBy()).contains("low crane");
  }

  @Test
  void aStationThatBearsTooLittleRefusesThePart() {
    Station dryer = new Station(Station.Kind.DRYER, UsableSpace.of("dryer", 4000, 1000, 2000), 500);
    assertThat(fit(way(dryer), 2000, 500, 500, 500).verdict()).isEqualTo(Verdict.STRAIGHT);
    FitAnswer heavy = fit(way(dryer), 2000, 500, 500, 500.1);
    assertThat(heavy.verdict()).isEqualTo(Verdict.NO);
    assertThat(heavy.limitedBy()).contains("dryer");
    assertThat(heavy.waysOut()).anyMatch(words -> words.contains("at most 500 kg"));
  }

  /** Turned over: 3000 high, (3000 + 300) / 2 = 1650; tanks 3900 long need a third pass. */
  @Test
  void twoDipsNeedMorePicklesWhereTanksAreSmallerThanTheKettle() {
    KettleWay high =
        new KettleWay(
            List.of(
                tank("pickle", 4000, 2000),
                tank("short pickle", 3900, 1700),
                new Station(Station.Kind.DRYER, UsableSpace.of("dryer", 4000, 1000, 2000)),
                new Station(Station.Kind.KETTLE, KETTLE)),
            Optional.empty());
    FitAnswer dips = fit(high, 3800, 900, 3000, 400);
    assertThat(dips.verdict()).isEqualTo(Verdict.TWO_DIPS);
    assertThat(dips.dips()).isEqualTo(2);
    assertThat(dips.cautions())
        .anyMatch(words -> words.contains("Two passes through pickle"))
        .anyMatch(words -> words.contains("short pickle") && words.contains("three passes"))
        .anyMatch(words -> words.contains("dryer") && words.contains("dry the end left out"));
  }

  @Test
  void endOutTellsHowHighTheFreeEndStands() {
    Crane tall = new Crane("tall crane", 5000, 9000, 1000);
    KettleWay way =
        new KettleWay(List.of(new Station(Station.Kind.KETTLE, KETTLE)), Optional.of(tall));
    FitAnswer dips = fit(way, 5600, 450, 400, 400);
    assertThat(dips.verdict()).isEqualTo(Verdict.TWO_DIPS);
    TwoDips found = dips.twoDips().orElseThrow();
    double upright =
        found.lMm() * Math.sin(Math.toRadians(dips.hangDeg()))
            + found.hMm() * Math.cos(Math.toRadians(dips.hangDeg()));
    assertThat(dips.lift().orElseThrow().freeEndMm())
        .isCloseTo(upright - 2000 - UsableSpace.USUAL_RIM_MM, within(1e-6));
    assertThat(dips.lift().orElseThrow().hookMm()).isCloseTo(200 + upright + 1000, within(1e-6));
  }

  @Test
  void levelDropAndDrossTakeDepthAndRaiseTheRim() {
    UsableSpace day = KETTLE.onTheDay(40, 60);
    assertThat(day.depthMm()).isEqualTo(1900);
    assertThat(day.rimMm()).isEqualTo(190);
    assertThat(KettleFit.answer(FitRequest.of(new Box(3900, 900, 1900)), day).verdict())
        .isEqualTo(Verdict.STRAIGHT);
    assertThat(KettleFit.answer(FitRequest.of(new Box(3900, 950, 1900.1)), day).verdict())
        .isNotEqualTo(Verdict.STRAIGHT);
  }

  @Test
  void aSplitPartGoesInAndItsLargestPieceIsNamed() {
    FitAnswer no =
        KettleFit.answer(
            FitRequest.of(new Box(3000, 2600, 1200)),
            KettleWay.bare(KETTLE),
            List.of(UsableSpace.of("long kettle", 7000, 1450, 2700)));
    assertThat(no.verdict()).isEqualTo(Verdict.NO);
    assertThat(no.waysOut())
        .anyMatch(words -> words.contains("Split it in") && words.contains("go in whole"))
        .anyMatch(words -> words.equals("It goes into long kettle: straight"))
        .anyMatch(words -> words.contains("200 mm of width"))
        .anyMatch(words -> words.contains("Paint it instead"));
  }

  @Test
  void roomsAndCarriersKnowNoTwoDipsAndNameTheTightOne() {
    Station oven = new Station(Station.Kind.ROOM, UsableSpace.of("oven", 3000, 1500, 2000), 400);
    FitRequest part = FitRequest.of(new Box(2900, 1400, 1900)).withMassKg(400);
    assertThat(KettleFit.room(part, oven).verdict()).isEqualTo(Verdict.STRAIGHT);
    assertThat(KettleFit.room(part.withMassKg(401), oven).verdict()).isEqualTo(Verdict.NO);
    FitAnswer door = KettleFit.room(part, oven.space().behindDoor(1399, 1899));
    assertThat(door.verdict()).isEqualTo(Verdict.NO);
    assertThat(door.waysOut()).noneMatch(words -> words.contains("Paint"));
  }
}
