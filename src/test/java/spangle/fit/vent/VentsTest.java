package spangle.fit.vent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spangle.fit.vent.Hollow.BoxSection;
import spangle.fit.vent.Hollow.HollowSection;
import spangle.fit.vent.Hollow.HollowSection.Use;
import spangle.fit.vent.Hollow.Overlap;
import spangle.fit.vent.Hollow.Returns;
import spangle.fit.vent.Hollow.Vessel;

class VentsTest {
  private static Need need(VentAnswer answer, String rule, Task task) {
    return answer.needs().stream()
        .filter(n -> n.rule().contains(rule) && n.task() == task)
        .findFirst()
        .orElseThrow();
  }

  private static HollowSection section(double bore, double length, double wall, Use use) {
    return new HollowSection(
        bore, bore, false, OptionalDouble.of(length), OptionalDouble.of(wall), use);
  }

  /**
   * Trade design guides: a quarter of the bore diagonal, 62.2 mm at 44 x 44, so 15.56, drill 16.
   */
  @Test
  void aSquareSectionNeedsAQuarterOfItsDiagonal() {
    VentAnswer answer = Vents.of(HollowSection.bore(44, 44));
    Need quarter = need(answer, "quarter", Task.VENT);
    assertThat(quarter.eachMm()).isCloseTo(15.556, within(0.001));
    assertThat(Drills.nextMm(quarter.eachMm())).isEqualTo(16);
    assertThat(answer.vent().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 16));
    assertThat(answer.drain().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 16));
  }

  /** Three published vessel rules that disagree: 3 x 50 mm, 120 mm, 1500 mm2. */
  @Test
  void theLargestAreaWinsForAVessel() {
    VentAnswer answer = Vents.of(new Vessel(1.2, OptionalDouble.empty(), OptionalDouble.empty()));
    Need fifty = need(answer, "50 mm for every 0.5", Task.DRAIN);
    assertThat(fifty.holes()).isEqualTo(3);
    assertThat(fifty.areaMm2()).isCloseTo(5890, within(1.0));
    Need hundred = need(answer, "100 mm of diameter", Task.VENT);
    assertThat(hundred.eachMm()).isCloseTo(120, within(1e-9));
    assertThat(hundred.areaMm2()).isCloseTo(11310, within(1.0));
    Need asArea = need(answer, "read as area", Task.VENT);
    assertThat(asArea.eachMm()).isCloseTo(109.5, within(0.1));
    assertThat(asArea.counted()).isFalse();
    Need older = need(answer, "1250", Task.VENT);
    assertThat(older.areaMm2()).isCloseTo(1500, within(1e-6));
    assertThat(older.eachMm()).isCloseTo(43.7, within(0.05));
    assertThat(answer.needs()).noneMatch(n -> n.rule().contains("1250") && n.task() == Task.DRAIN);
    assertThat(answer.vent().orElseThrow().winner()).isEqualTo(hundred);
    assertThat(answer.drain().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 120));
  }

  @Test
  void aSmallVesselStillNeedsFiftyEachWay() {
    VentAnswer answer = Vents.of(new Vessel(0.2, OptionalDouble.empty(), OptionalDouble.empty()));
    assertThat(answer.vent().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 50));
    VentAnswer tank = Vents.of(new Vessel(0.5, OptionalDouble.of(1300), OptionalDouble.empty()));
    assertThat(tank.vent().orElseThrow().winner().eachMm()).isCloseTo(108.29, within(0.01));
    assertThat(tank.cautions()).anyMatch(words -> words.contains("manhole"));
  }

  /** Plant table after ISO 14713-2: inside size under 30: 12 mm, under 60: 20 mm, under 100: 30. */
  @Test
  void theTableGoesByInsideSize() {
    assertThat(need(Vents.of(HollowSection.bore(29.9, 29.9)), "table", Task.VENT).eachMm())
        .isEqualTo(12);
    assertThat(need(Vents.of(HollowSection.bore(30, 30)), "table", Task.VENT).eachMm())
        .isEqualTo(14);
    assertThat(need(Vents.of(HollowSection.bore(54, 54)), "table", Task.VENT).eachMm())
        .isEqualTo(20);
    assertThat(need(Vents.of(HollowSection.bore(94, 94)), "table", Task.VENT).eachMm())
        .isEqualTo(30);
    assertThat(Vents.of(HollowSection.bore(600, 600)).needs())
        .noneMatch(n -> n.rule().contains("table"));
  }

  /** 30 % of 44 x 44 = 580.8 mm2, one hole of 27.2 mm; it holds only above 2.8 m. */
  @Test
  void aLongSectionNeedsThirtyPerCent() {
    VentAnswer longer = Vents.of(section(44, 2801, 3, Use.PLAIN));
    assertThat(longer.vent().orElseThrow().winner().eachMm()).isCloseTo(27.19, within(0.01));
    assertThat(longer.vent().orElseThrow().asRuled().drillMm()).isEqualTo(28);
    assertThat(longer.vent().orElseThrow().otherwise())
        .containsExactly(new Holes.Choice(2, 20), new Holes.Choice(4, 14));
    assertThat(Vents.of(section(44, 2800, 3, Use.PLAIN)).vent().orElseThrow().asRuled().drillMm())
        .isEqualTo(16);
  }

  @Test
  void theLeastHoleIsTenOrTheThickness() {
    assertThat(Vents.of(section(16, 500, 2, Use.PLAIN)).vent().orElseThrow().asRuled().drillMm())
        .isEqualTo(10);
    assertThat(Vents.of(section(30, 500, 16, Use.PLAIN)).vent().orElseThrow().asRuled().drillMm())
        .isEqualTo(16);
  }

  @Test
  void tradesHaveRulesOfTheirOwn() {
    assertThat(need(Vents.of(section(50, 900, 3, Use.TRUSS)), "truss", Task.DRAIN).areaMm2())
        .isCloseTo(750, within(1e-6));
    assertThat(need(Vents.of(section(76, 900, 3, Use.POLE)), "pole", Task.VENT).areaMm2())
        .isCloseTo(0.30 * 76 * 76, within(1e-6));
    assertThat(need(Vents.of(section(75, 900, 3, Use.POLE)), "pole", Task.VENT).areaMm2())
        .isCloseTo(0.45 * 75 * 75, within(1e-6));
    assertThat(need(Vents.of(section(38, 900, 3, Use.RAIL)), "rails", Task.VENT).holes())
        .isEqualTo(2);
    assertThat(need(Vents.of(section(40, 900, 3, Use.HIDDEN)), "hidden", Task.VENT).areaMm2())
        .isCloseTo(800, within(1e-6));
  }

  /** ASTM A385 steps at H + W of 24, 16 and 8 inches: 25, 30, 40 per cent, then fully open. */
  @Test
  void boxSectionsOpenByTheirSizes() {
    assertThat(share(305, 305)).isCloseTo(0.25, within(1e-9));
    assertThat(share(304, 304)).isCloseTo(0.30, within(1e-9));
    assertThat(share(203, 203)).isCloseTo(0.40, within(1e-9));
    assertThat(share(101, 101)).isCloseTo(1, within(1e-9));
    VentAnswer square = Vents.of(new BoxSection(304.8, 304.8, OptionalDouble.empty()));
    assertThat(need(square, "centre hole", Task.VENT).eachMm()).isCloseTo(127, within(1e-9));
    assertThat(square.vent().orElseThrow().winner().rule()).contains("open share");
  }

  private static double share(double h, double w) {
    return need(Vents.of(new BoxSection(h, w, OptionalDouble.empty())), "open", Task.VENT).areaMm2()
        / (h * w);
  }

  @Test
  void anOverlapUpToAHundredSquareCentimetresNeedsNoHole() {
    VentAnswer small = Vents.of(new Overlap(100, 3, 8, OptionalDouble.empty()));
    assertThat(small.needs()).isEmpty();
    assertThat(small.vent()).isEmpty();
    VentAnswer larger = Vents.of(new Overlap(100.1, 3, 8, OptionalDouble.empty()));
    assertThat(larger.vent().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 11));
    assertThat(larger.drain()).isEmpty();
  }

  /** Trade guide: one hole for every metre or part, so 7 at 6.5 m. */
  @Test
  void aLongOverlapNeedsAHoleForEveryMetre() {
    VentAnswer answer = Vents.of(new Overlap(6500, 10, 12, OptionalDouble.of(6500)));
    assertThat(answer.vent().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(7, 22));
  }

  @Test
  void returnsNeedAHoleAtEachPocket() {
    VentAnswer answer = Vents.of(new Returns(4, OptionalDouble.of(2)));
    assertThat(answer.drain().orElseThrow().asRuled()).isEqualTo(new Holes.Choice(1, 13));
    assertThat(answer.hollow().scope()).isEqualTo("at each pocket");
  }

  @Test
  void drillsAlwaysGoUp() {
    assertThat(Drills.nextMm(15.56)).isEqualTo(16);
    assertThat(Drills.nextMm(16)).isEqualTo(16);
    assertThat(Drills.nextMm(16.01)).isEqualTo(17);
    assertThat(Drills.nextMm(32)).isEqualTo(32);
    assertThat(Drills.nextMm(32.1)).isEqualTo(35);
    assertThat(Drills.nextMm(43.7)).isEqualTo(45);
  }

  /** Turned by 20 degrees the corner both sides point to is highest, its opposite lowest. */
  @Test
  void holesStandAtTheHighestAndTheLowestCorner() {
    List<HolePlace> tilted = HolePlaces.of(new HungHollow(1000, 100, 20, HungHollow.Second.NONE));
    assertThat(tilted).hasSize(2);
    assertThat(tilted.get(0).task()).isEqualTo(Task.DRAIN);
    assertThat(tilted.get(0).farEnd()).isFalse();
    assertThat(tilted.get(0).topSide()).isFalse();
    assertThat(tilted.get(1).farEnd()).isTrue();
    assertThat(tilted.get(1).topSide()).isTrue();
    assertThat(HolePlaces.of(new HungHollow(1000, 100, 0, HungHollow.Second.NONE))).hasSize(4);
  }

  @Test
  void twoDipsNeedHolesForBothAttitudes() {
    List<HolePlace> swung =
        HolePlaces.of(new HungHollow(5000, 400, 30, HungHollow.Second.END_FOR_END));
    assertThat(swung).hasSize(4);
    assertThat(swung.get(2).task()).isEqualTo(Task.DRAIN);
    assertThat(swung.get(2).farEnd()).isTrue();
    assertThat(swung.get(2).topSide()).isFalse();
    List<HolePlace> over =
        HolePlaces.of(new HungHollow(3000, 3000, 0, HungHollow.Second.TURNED_OVER));
    assertThat(over).hasSize(8);
    assertThat(over.get(4).task()).isEqualTo(Task.DRAIN);
    assertThat(over.get(4).topSide()).isTrue();
  }

  /** 1000 cm3 is a cube of 100 mm; a hole of 50 mm goes into it, into one of 27 mm it does not. */
  @Test
  void aTinIsNotToldAHoleLargerThanItself() {
    Hollow litre = new Hollow.Vessel(0.001, OptionalDouble.empty(), OptionalDouble.of(2));
    Hollow thimble = new Hollow.Vessel(0.00002, OptionalDouble.empty(), OptionalDouble.of(2));
    assertThat(Vents.of(litre).cautions()).noneMatch(c -> c.contains("does not go into"));
    assertThat(Vents.of(thimble).cautions()).anyMatch(c -> c.contains("does not go into"));
  }
}
