package spangle.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.measure.Box;

/** Who says no, what is missing, and into how many pieces a part has to be cut. */
class NamedLimitTest {
  private static final UsableSpace KETTLE = UsableSpace.of("kettle", 4000, 1000, 2000);

  private static KettleWay way(Optional<Crane> crane, Station... others) {
    List<Station> stations = new ArrayList<>(List.of(others));
    stations.add(new Station(Station.Kind.KETTLE, KETTLE));
    return new KettleWay(stations, crane);
  }

  private static FitAnswer fit(KettleWay way, double l, double w, double h) {
    return KettleFit.answer(FitRequest.of(new Box(l, w, h)).withMassKg(300), way);
  }

  private static List<String> waysOut(FitRequest request, UsableSpace space) {
    return KettleFit.answer(request, KettleWay.bare(space)).waysOut();
  }

  /** Turned over, 3000 high: (3000 + 300) / 2 = 1650 mm; a rinse of that depth does, less not. */
  @Test
  void aTankThatTwoDipsCannotPassIsTheOneNamed() {
    Station pickle =
        new Station(Station.Kind.PRETREATMENT, UsableSpace.of("pickle", 3800, 1000, 2000));
    Station enough =
        new Station(Station.Kind.PRETREATMENT, UsableSpace.of("rinse", 4000, 1000, 1650));
    Station flat =
        new Station(Station.Kind.PRETREATMENT, UsableSpace.of("rinse", 4000, 1000, 1649.9));
    assertThat(fit(way(Optional.empty(), pickle, enough), 3800, 900, 3000).verdict())
        .isEqualTo(Verdict.TWO_DIPS);
    FitAnswer no = fit(way(Optional.empty(), pickle, flat), 3800, 900, 3000);
    assertThat(no.verdict()).isEqualTo(Verdict.NO);
    assertThat(no.limitedBy()).contains("rinse");
  }

  /**
   * Turned over it hangs 3000 mm high: 200 over the rim and 1000 of slings, 4200 mm of hook; the
   * answer names the crane and says what it lacks at that height.
   */
  @Test
  void aHookTooLowForTwoDipsIsNamedWithItsNumber() {
    Crane high = new Crane("hall crane", 2000, 4200, 1000);
    assertThat(fit(way(Optional.of(high)), 3800, 900, 3000).verdict()).isEqualTo(Verdict.TWO_DIPS);
    Crane low = new Crane("hall crane", 2000, 4199.9, 1000);
    FitAnswer no = fit(way(Optional.of(low)), 3800, 900, 3000);
    assertThat(no.verdict()).isEqualTo(Verdict.NO);
    assertThat(no.limitedBy()).contains("hall crane");
    assertThat(no.lift().orElseThrow().hookMm()).isEqualTo(4200);
    assertThat(no.cautions()).anyMatch(words -> words.contains("must stand 4200 mm above the rim"));
  }

  /**
   * 3000 x 300 mm under a hook that leaves 1000 mm: 3000 sin a + 300 cos a = 1000 at a = asin(1000
   * / 3014.96) - 5.711 = 13.66 degrees. It hangs there, well inside the drain limits, and not
   * level.
   */
  @Test
  void underALowHookItHangsAsSteepAsTheHookAllows() {
    Crane low = new Crane("low crane", 2000, 2200, 1000);
    FitAnswer answer = fit(way(Optional.of(low)), 3000, 500, 300);
    assertThat(answer.hangDeg()).isCloseTo(13.66, within(0.1));
    assertThat(answer.lift().orElseThrow().hookMm()).isLessThanOrEqualTo(2200);
    assertThat(answer.cautions())
        .anyMatch(words -> words.contains("hang at 13.6") && !words.contains("badly"));

    Crane lower = new Crane("low crane", 2000, 1600, 1000);
    FitAnswer level = fit(way(Optional.of(lower)), 3000, 500, 300);
    assertThat(level.hangDeg()).isLessThan(10);
    assertThat(level.cautions()).anyMatch(words -> words.contains("runs off badly"));
  }

  /** (3701 + 300) / 2 - 2000 = 0.5 mm of depth, where one dip lacks 1701. */
  @Test
  void whatTwoDipsLackIsSaidToo() {
    FitAnswer no = fit(way(Optional.empty()), 4000, 500, 3701);
    assertThat(no.verdict()).isEqualTo(Verdict.NO);
    assertThat(no.waysOut())
        .contains(
            "Missing: 1701 mm of depth; take off whatever can be detached",
            "Missing for two dips, turned over: 0.5 mm of depth");
  }

  /**
   * A thin bar of 8400: half of it and of the overlap is 4350 mm. At an angle a the bath has to be
   * D = 4350 sin a deep, and the bar leaves over the rim after (D + 150) / tan a = 4350 cos a + 150
   * / tan a. At 28.7 degrees that is 2089 and 4090 mm: 89 and 90 more than there are.
   */
  @Test
  void whatAnEndOutBarLacksIsSaidAtItsAngle() {
    FitAnswer no = fit(way(Optional.empty()), 8400, 1, 1);
    assertThat(no.verdict()).isEqualTo(Verdict.NO);
    TwoDipShortage dips = TwoDipShortage.of(new Box(8400, 1, 1), KETTLE, 300);
    assertThat(dips.form()).isEqualTo(TwoDips.Form.END_OUT);
    assertThat(dips.tiltDeg()).isCloseTo(28.7, within(0.1));
    assertThat(dips.margin().worstShortageMm()).isCloseTo(90, within(2.0));
    assertThat(no.waysOut())
        .anyMatch(words -> words.startsWith("Missing for two dips, end out at 28.7 degrees: "));
    // A kettle larger by what is missing covers it, one by half of that does not.
    for (double share : new double[] {0.5, 1}) {
      UsableSpace larger =
          UsableSpace.of(
              "kettle",
              4000 - share * dips.margin().lengthMm() + 0.01,
              1000,
              2000 - share * dips.margin().depthMm() + 0.01);
      assertThat(KettleFit.answer(FitRequest.of(new Box(8400, 1, 1)), larger).verdict())
          .isEqualTo(share == 1 ? Verdict.TWO_DIPS : Verdict.NO);
    }
  }

  @Test
  void aRoomLacksHeightAndNothingOfZincIsSaid() {
    UsableSpace oven = new UsableSpace("oven", 3000, 1500, 2000, 0);
    FitAnswer no = KettleFit.room(FitRequest.of(new Box(3000, 1500, 2100)), oven);
    assertThat(no.waysOut())
        .contains(
            "Missing: 100 mm of height; take off whatever can be detached",
            "A room that takes it straight: usable 3000 x 1500 x 2100 mm (length x width x height)")
        .noneMatch(words -> words.contains("zinc") || words.contains("dips"));
  }

  /** Asked again, every piece of the split goes in whole, and a piece longer than said does not. */
  @ParameterizedTest
  @CsvSource({
    "3000, 2600, 1200, 3, 1200, 2600, 3000",
    "9000, 300, 300, 3, 300, 300, 9000",
    "4000, 2000, 1900, 2, 1900, 4000, 2000",
  })
  void thePiecesOfASplitGoIn(
      double l, double w, double h, int pieces, double a, double b, double cut) {
    assertThat(waysOut(FitRequest.of(new Box(l, w, h)), KETTLE))
        .anyMatch(words -> words.startsWith("Split it in " + pieces + " across its " + (int) cut));
    FitAnswer piece = KettleFit.answer(FitRequest.of(new Box(a, b, cut / pieces)), KETTLE);
    assertThat(piece.verdict().whole()).isTrue();
  }

  /** 3800 x 3000 x 200: thirds of 1000 mm stand in 1200 mm of depth, halves of 1900 in 2150. */
  @Test
  void aSheetTooLargeBothWaysIsCutBothWays() {
    UsableSpace small = UsableSpace.of("kettle", 2150, 880, 1200);
    assertThat(waysOut(FitRequest.of(new Box(3800, 3000, 200)), small))
        .anyMatch(
            words ->
                words.startsWith(
                    "Split it in 6: 2 across its 3800 mm side and 3 across its 3000 mm side"));
    assertThat(KettleFit.answer(FitRequest.of(new Box(1900, 1000, 200)), small).verdict())
        .isEqualTo(Verdict.STRAIGHT);
    // Nothing reasonable cuts a block of everything too large.
    assertThat(waysOut(FitRequest.of(new Box(90_000, 90_000, 90_000)), small))
        .noneMatch(words -> words.startsWith("Split"));
  }

  /** Across its axis: 3000 / 3 = 1000 mm lie across, the round of 1200 mm stands in the depth. */
  @Test
  void aRoundPartIsCutAcrossItsAxisOnly() {
    FitRequest round =
        new FitRequest(Body.cylinder(1200, 3000), OptionalDouble.empty(), 0, FitRules.KETTLE);
    assertThat(waysOut(round, KETTLE))
        .anyMatch(
            words ->
                words.startsWith(
                    "Split it in 3 across its 3000 mm side: pieces up to 1000 mm go in whole"));
    FitRequest wide =
        new FitRequest(Body.cylinder(2300, 3000), OptionalDouble.empty(), 0, FitRules.KETTLE);
    assertThat(waysOut(wide, KETTLE)).noneMatch(words -> words.startsWith("Split"));
  }
}
