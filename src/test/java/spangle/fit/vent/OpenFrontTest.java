package spangle.fit.vent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Boxes open at the front with returns folded inward; every number can be checked by hand. */
class OpenFrontTest {
  /** 2 mm sheet, 1004 x 504 x 304 outside: 1000 x 500 x 300 inside, gutters 20 mm wide. */
  private static OpenFront box(double tiltDeg) {
    return new OpenFront(1004, 504, 304, 22, 2, tiltDeg);
  }

  private static List<Need> needs(VentAnswer answer, String rule) {
    return answer.needs().stream().filter(n -> n.rule().contains(rule)).toList();
  }

  /** Trade design guides: stiffener corners have 13 mm holes or are cropped by 19 mm. */
  @Test
  void eachCornerNeedsThirteenMillimetres() {
    VentAnswer answer = Vents.of(box(20));
    assertThat(answer.vent().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 13));
    assertThat(answer.drain().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 13));
    assertThat(answer.drain().orElseThrow().winner().rule()).contains("19 mm");
  }

  /** Trade design guides: no hole smaller than 10 mm or the steel it goes through. */
  @Test
  void noHoleIsSmallerThanTheSteel() {
    assertThat(needs(Vents.of(box(20)), "least hole"))
        .extracting(Need::eachMm)
        .containsExactly(10.0, 10.0);
    VentAnswer thick = Vents.of(new OpenFront(1000, 500, 300, 60, 15, 20));
    assertThat(thick.drain().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 15));
  }

  /** Older trade guide: vent 12 mm and drain 25 mm are preferred; a wish, so it never wins. */
  @Test
  void preferredSizesAreShownButNotCounted() {
    assertThat(needs(Vents.of(box(20)), "preferred"))
        .extracting(Need::task, Need::eachMm, Need::counted)
        .containsExactly(tuple(Task.VENT, 12.0, false), tuple(Task.DRAIN, 25.0, false));
  }

  /** No rule for closed vessels speaks of a box that is open: 0.15 m3 would ask for 50 mm. */
  @Test
  void noVesselRuleIsApplied() {
    assertThat(Vents.of(box(20)).needs()).isNotEmpty().allMatch(need -> need.eachMm() <= 25);
  }

  /**
   * Level the gutter is full to its lip: 20 x 1000 x 300 mm = 6 l. Upright 20 x 500 x 300 = 3 l.
   */
  @Test
  void aLevelGutterIsFullToItsLip() {
    assertThat(box(0).trappedMm3()).isCloseTo(6.0e6, within(1e-3));
    assertThat(box(90).trappedMm3()).isCloseTo(3.0e6, within(1e-3));
  }

  /** At 45 degrees the level is 20 x 1.4142 over the corner: a triangle of 800 mm2 x 300 mm. */
  @Test
  void aTiltLeavesATriangleInTheCorner() {
    assertThat(box(45).trappedMm3()).isCloseTo(240_000, within(1e-3));
  }

  /** At atan(1/2): level 20 x 3/sqrt5, triangle 36 x 20 x 20 / (5 x 2 x 2/5) = 900 mm2 x 300 mm. */
  @Test
  void theTriangleFollowsTheTilt() {
    double tilt = Math.toDegrees(Math.atan(0.5));
    assertThat(box(tilt).trappedMm3()).isCloseTo(270_000, within(1e-3));
  }

  /**
   * At atan(1/100) the level meets the long wall 2020 mm away, past its end at 1000: by hand the
   * depths are 20.2 mm at the corner and 10.2 mm at the end, so 15.2 x 1000 x 300 mm.
   */
  @Test
  void aShallowTiltIsCutOffByTheFarWall() {
    double tilt = Math.toDegrees(Math.atan(0.01));
    assertThat(box(tilt).trappedMm3()).isCloseTo(15.2 * 1000 * 300, within(1e-2));
  }

  @Test
  void holesStandInTheHighestAndTheLowestReturnCorner() {
    List<HolePlace> tilted = places(20, HungHollow.Second.NONE);
    assertThat(tilted).hasSize(2);
    assertThat(tilted.get(0).task()).isEqualTo(Task.DRAIN);
    assertThat(tilted.get(0).farEnd()).isFalse();
    assertThat(tilted.get(0).topSide()).isFalse();
    assertThat(tilted.get(1).farEnd()).isTrue();
    assertThat(tilted.get(1).topSide()).isTrue();
    assertThat(tilted).allMatch(place -> place.words().contains("where the returns meet"));
  }

  @Test
  void levelAndUprightBothCornersOfAGutterNeedAHole() {
    assertThat(places(0, HungHollow.Second.NONE))
        .hasSize(4)
        .allMatch(place -> place.topSide() == (place.task() == Task.VENT));
    assertThat(places(90, HungHollow.Second.NONE))
        .hasSize(4)
        .allMatch(place -> place.farEnd() == (place.task() == Task.VENT));
    assertThat(places(90, HungHollow.Second.END_FOR_END)).hasSize(8);
  }

  private static List<HolePlace> places(double tiltDeg, HungHollow.Second second) {
    return HolePlaces.inReturns(new HungHollow(1004, 504, tiltDeg, second));
  }

  /** Common practice: at least 10 degrees, so that no gutter lies level. */
  @Test
  void aNearlyLevelGutterIsWarnedOf() {
    assertThat(Vents.of(box(9)).cautions()).anyMatch(c -> c.contains("10 degrees or more"));
    assertThat(Vents.of(box(81)).cautions()).anyMatch(c -> c.contains("10 degrees or more"));
    assertThat(Vents.of(box(10)).cautions()).noneMatch(c -> c.contains("10 degrees or more"));
  }

  /** 13 mm goes through a gutter of 13 mm and not through one of 12. */
  @Test
  void aHoleWiderThanTheReturnIsSaid() {
    assertThat(Vents.of(new OpenFront(1004, 504, 304, 14, 2, 20)).cautions())
        .anyMatch(c -> c.contains("wider than"));
    assertThat(Vents.of(new OpenFront(1004, 504, 304, 15, 2, 20)).cautions())
        .noneMatch(c -> c.contains("wider than"));
  }

  @Test
  void impossibleReturnsAreRefused() {
    assertThatThrownBy(() -> new OpenFront(1004, 504, 304, 2, 2, 20))
        .hasMessageContaining("nothing is folded");
    assertThatThrownBy(() -> new OpenFront(1004, 504, 304, 252, 2, 20))
        .hasMessageContaining("closed box");
    assertThatThrownBy(() -> new OpenFront(1004, 504, 4, 22, 2, 20))
        .hasMessageContaining("no space inside");
  }
}
