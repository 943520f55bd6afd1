package spangle.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import spangle.measure.Box;
import spangle.part.section.SectionTable;

class ShapesTest {
  private static final double STEEL = 7850;
  private static final Offset<Double> EXACT = within(1e-12);

  /** Hand: 2 x 0.12 x 0.12 + 4 x 0.12 x 0.003. */
  @Test
  void aPlateHasTwoFacesAndItsEdges() {
    Measured plate = new Plate(120, 120, 3).measure(STEEL);
    assertThat(plate.areaM2()).isEqualTo(0.03024, EXACT);
    assertThat(plate.oneSideM2()).isEqualTo(0.01584, EXACT);
    assertThat(plate.cutEdgeM()).isEqualTo(0.48, EXACT);
    assertThat(plate.massKg()).isEqualTo(0.33912, EXACT);
    assertThat(plate.envelopeMm()).isEqualTo(new Box(120, 120, 3));
    assertThat(plate.skinThicknessMm()).isEqualTo(3);
    assertThat(plate.hollow()).isEqualTo(HollowKind.NONE);
    assertThat(plate.enclosedVolumeL()).isZero();
    assertThat(plate.working())
        .isEqualTo(
            "two faces of 0.0144 m2 + cut edges 0.00144 m2 = 0.03024 m2;"
                + " metal 0.0432 dm3 x 7850 kg/m3 = 0.33912 kg");
  }

  @Test
  void edgesMayBeLeftOutAndAreThenSaid() {
    Measured plate = new Plate(120, 120, 3).measure(STEEL, Edges.IGNORED);
    assertThat(plate.areaM2()).isEqualTo(0.0288, EXACT);
    assertThat(plate.oneSideM2()).isEqualTo(0.0144, EXACT);
    assertThat(plate.cutEdgeM()).isEqualTo(0.48, EXACT);
    assertThat(plate.massKg()).isEqualTo(0.33912, EXACT);
    assertThat(plate.working()).contains("(cut edges of 0.00144 m2 left out)");
  }

  /** Four holes of 20 mm in 5 mm plate: each takes 2 x 314.16 mm2 and gives 314.16 mm2 of wall. */
  @Test
  void aHoleTakesItsFacesAndGivesItsWall() {
    Measured solid = new Plate(200, 100, 5).measure(STEEL);
    Measured drilled = new Plate(200, 100, 5, List.of(Hole.round(4, 20))).measure(STEEL);
    double change = 4 * (-2 * Math.PI * 100 + Math.PI * 20 * 5) / 1e6;
    assertThat(drilled.areaM2() - solid.areaM2()).isEqualTo(change, EXACT);
    assertThat(drilled.massKg()).isEqualTo((20000 - 400 * Math.PI) * 5e-9 * STEEL, EXACT);
    assertThat(drilled.cutEdgeM()).isEqualTo(0.6 + 0.08 * Math.PI, EXACT);
  }

  @Test
  void slotsAndRectanglesByTheirOwnGeometry() {
    Hole slot = Hole.slot(2, 30, 10);
    assertThat(slot.areaMm2()).isEqualTo(200 + 25 * Math.PI, EXACT);
    assertThat(slot.perimeterMm()).isEqualTo(40 + 10 * Math.PI, EXACT);
    assertThat(slot.totalAreaMm2()).isEqualTo(400 + 50 * Math.PI, EXACT);
    assertThat(Hole.slot(1, 10, 10)).isEqualTo(Hole.round(1, 10));
    assertThat(Hole.rectangle(1, 30, 20)).isEqualTo(new Hole(1, 600, 100));
  }

  @Test
  void impossibleHolesAreRefused() {
    assertThatThrownBy(() -> new Plate(100, 100, 2, List.of(Hole.rectangle(1, 100, 100))))
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("area of all holes");
    assertThatThrownBy(() -> new Hole(1, 100, 10)).hasMessageContaining("possible within an edge");
    assertThatThrownBy(() -> Hole.slot(1, 9, 10)).hasMessageContaining("slot length");
    assertThatThrownBy(() -> new Hole(0, 100, 100)).hasMessageContaining("number of holes");
    assertThatThrownBy(() -> Hole.round(1, -3)).hasMessageContaining("hole diameter");
  }

  /**
   * Enclosure of 800 x 1000 x 300 x 2 mm, six sheet faces, arithmetic: 2.68 m2 of sheet, 42.08 kg,
   * 5.36 m2 wetted.
   */
  @Test
  void aClosedBoxIsSixFacesBothSides() {
    Measured box = new ClosedBox(800, 1000, 300, 2).measure(STEEL);
    assertThat(box.areaM2()).isEqualTo(5.36, EXACT);
    assertThat(box.oneSideM2()).isEqualTo(2.68, EXACT);
    assertThat(box.massKg()).isEqualTo(42.076, within(1e-9));
    assertThat(box.hollow()).isEqualTo(HollowKind.CLOSED);
    assertThat(box.enclosedVolumeL()).isEqualTo(0.796 * 0.996 * 0.296 * 1000, within(1e-9));
    assertThat(box.cutEdgeM()).isZero();
  }

  @Test
  void anOpenFrontIsOneOfTheLargestFacesWhicheverWayTheBoxIsGiven() {
    double five = 2 * 2.68 - 2 * 0.8;
    double rim = 3.6 * 0.002;
    double inside = 0.796 * 0.996 * 0.298 * 1000;
    for (OpenBox box :
        List.of(
            OpenBox.openFront(800, 1000, 300, 2),
            OpenBox.openFront(800, 300, 1000, 2),
            OpenBox.openFront(300, 800, 1000, 2))) {
      Measured measured = box.measure(STEEL);
      assertThat(measured.areaM2()).isEqualTo(five + rim, EXACT);
      assertThat(measured.oneSideM2()).isEqualTo(five / 2 + rim, EXACT);
      assertThat(measured.massKg()).isEqualTo(1.88 * 0.002 * STEEL, within(1e-9));
      assertThat(measured.enclosedVolumeL()).isEqualTo(inside, within(1e-9));
      assertThat(measured.hollow()).isEqualTo(HollowKind.OPEN);
      assertThat(measured.envelopeMm())
          .isEqualTo(new Box(box.lengthMm(), box.widthMm(), box.heightMm()));
    }
  }

  @Test
  void aRectangularTubeHasSharpCornersABoreAndTwoCutEnds() {
    Measured tube = new RectTube(60, 40, 1000, 3).measure(STEEL);
    double metal = 60 * 40 - 54 * 34;
    assertThat(tube.areaM2()).isEqualTo(0.2 + 0.176 + 2 * metal / 1e6, EXACT);
    assertThat(tube.oneSideM2()).isEqualTo(0.2 + 2 * metal / 1e6, EXACT);
    assertThat(tube.massKg()).isEqualTo(metal * 1e-6 * STEEL, EXACT);
    assertThat(tube.enclosedVolumeL()).isEqualTo(0.54 * 0.34 * 10, EXACT);
    assertThat(tube.hollow()).isEqualTo(HollowKind.OPEN);
    assertThat(tube.envelopeMm()).isEqualTo(new Box(1000, 60, 40));
    assertThat(tube.cutEdgeM()).isEqualTo(0.752, EXACT);
    assertThat(new RectTube(60, 40, 1000, 3).measure(STEEL, Edges.IGNORED).areaM2())
        .isEqualTo(0.376, EXACT);
  }

  @Test
  void aRoundTubeInAndOut() {
    Measured tube = new RoundTube(50, 2000, 5).measure(STEEL);
    double ends = 2 * Math.PI * (625 - 400) / 1e6;
    assertThat(tube.areaM2()).isEqualTo(Math.PI * (0.1 + 0.08) + ends, EXACT);
    assertThat(tube.oneSideM2()).isEqualTo(Math.PI * 0.1 + ends, EXACT);
    assertThat(tube.massKg()).isEqualTo(Math.PI * 225e-6 * 2 * STEEL, within(1e-9));
    assertThat(tube.enclosedVolumeL()).isEqualTo(Math.PI * 0.4 * 2, EXACT);
    assertThat(tube.working()).startsWith("outside 0.31416 m2 + bore 0.25133 m2 + cut edges");
  }

  @Test
  void barsRoundFlatSquareAndHexagon() {
    Measured round = Bar.round(20, 1000).measure(STEEL);
    assertThat(round.areaM2()).isEqualTo(Math.PI * (0.02 + 2e-4), EXACT);
    assertThat(round.massKg()).isEqualTo(Math.PI * 1e-4 * STEEL, EXACT);
    assertThat(round.skinThicknessMm()).isEqualTo(20);

    Measured flat = Bar.flat(50, 10, 1000).measure(STEEL);
    assertThat(flat.areaM2()).isEqualTo(0.12 + 0.001, EXACT);
    assertThat(flat.skinThicknessMm()).isEqualTo(10);
    assertThat(flat.massKg()).isEqualTo(3.925, EXACT);

    assertThat(Bar.square(20, 500).measure(STEEL).areaM2()).isEqualTo(0.04 + 0.0008, EXACT);

    Measured hexagon = Bar.hexagon(17, 100).measure(STEEL);
    double side = 17 / Math.sqrt(3);
    assertThat(hexagon.massKg()).isEqualTo(1.5 * Math.sqrt(3) * side * side * 1e-7 * STEEL, EXACT);
    assertThat(hexagon.areaM2())
        .isEqualTo(6 * side * 1e-4 + 3 * Math.sqrt(3) * side * side * 1e-6, EXACT);
    assertThat(hexagon.envelopeMm().heightMm()).isEqualTo(2 * side, EXACT);
    assertThat(hexagon.working()).doesNotContain("bore");
    assertThatThrownBy(() -> new Bar(Bar.BarProfile.ROUND, 20, 19, 100))
        .hasMessageContaining("bar thickness 19");
  }

  @Test
  void aSectionTakesItsFiguresFromTheTable() {
    Section angle = new Section(SectionTable.standard().find("L50x50x5").orElseThrow(), 2000);
    Measured measured = angle.measure(STEEL);
    double ends = 2 * angle.profile().metalMm2() / 1e6;
    assertThat(measured.areaM2()).isEqualTo(2 * angle.profile().outerM2PerMetre() + ends, EXACT);
    assertThat(measured.massKg()).isEqualTo(2 * angle.profile().massPerMetreKg(STEEL), EXACT);
    assertThat(measured.hollow()).isEqualTo(HollowKind.NONE);
    Section tube = new Section(SectionTable.standard().find("SHS40x40x3").orElseThrow(), 1000);
    assertThat(tube.measure(STEEL).hollow()).isEqualTo(HollowKind.OPEN);
    assertThat(tube.measure(STEEL, Edges.IGNORED).areaM2())
        .isEqualTo(tube.profile().wettedM2PerMetre(), EXACT);
    assertThat(tube.measure(STEEL).enclosedVolumeL())
        .isEqualTo(tube.profile().boreMm2() / 1000, EXACT);
  }

  /** DIN 6935 (from memory): r = t = 2 mm, k = 0.65: pi/2 (2 + 0.65) - 8 = -3.837 mm. */
  @Test
  void aBendTakesLengthOutOfTheBlank() {
    assertThat(BendAllowance.squareBendMm(2)).isEqualTo(Math.PI / 2 * 2.65 - 8, EXACT);
    assertThat(BendAllowance.correctionMm(90, 10, 1)).isEqualTo(Math.PI / 2 * 10.5 - 22, EXACT);
    assertThat(BendAllowance.correctionMm(45, 2, 2))
        .isEqualTo(Math.PI / 4 * 2.65 - 8 * Math.tan(Math.PI / 8), EXACT);
    assertThat(BendAllowance.correctionMm(135, 2, 2)).isEqualTo(0.75 * Math.PI * 2.65 - 8, EXACT);
    assertThatThrownBy(() -> BendAllowance.correctionMm(170, 2, 2))
        .hasMessageContaining("bend angle 170");
    assertThatThrownBy(() -> BendAllowance.correctionMm(0, 2, 2))
        .isInstanceOf(ShapeException.class);
  }

  @Test
  void foldedPartsHaveTheAreaOfTheirBlankAndTheEnvelopeOfTheFold() {
    double bend = BendAllowance.squareBendMm(2);
    Measured angle = FoldedBlank.angle(50, 40, 300, 2).measure(STEEL);
    assertThat(angle.massKg()).isEqualTo((90 + bend) * 300 * 2e-9 * STEEL, EXACT);
    assertThat(angle.areaM2())
        .isEqualTo((2 * (90 + bend) * 300 + 2 * (390 + bend) * 2) / 1e6, EXACT);
    assertThat(angle.envelopeMm()).isEqualTo(new Box(300, 50, 40));

    FoldedBlank channel = FoldedBlank.channel(100, 40, 300, 2);
    assertThat(channel.netAreaMm2()).isEqualTo((180 + 2 * bend) * 300, within(1e-9));
    assertThat(channel.bends()).isEqualTo(2);
    assertThat(channel.foldedMm()).isEqualTo(new Box(300, 100, 40));

    FoldedBlank tray = FoldedBlank.tray(400, 300, 50, 2);
    assertThat(tray.netAreaMm2()).isEqualTo(120000 + 1400 * (50 + bend), within(1e-9));
    assertThat(tray.cutEdgeMm()).isEqualTo(1400 + 8 * (50 + bend), within(1e-9));
    assertThat(tray.foldedMm()).isEqualTo(new Box(400, 300, 50));
    assertThatThrownBy(() -> FoldedBlank.angle(50, 3.9, 300, 2))
        .hasMessageContaining("at least twice the thickness");
  }

  @Test
  void aFlatPatternAsksForItsFoldedSizeOnlyWhenItIsBent() {
    FlatPattern flat = new FlatPattern(9000, 420, 2, 100, 100, 0, Optional.empty());
    assertThat(flat.foldedSizeUnknown()).isFalse();
    assertThat(flat.envelopeMm()).isEqualTo(new Box(100, 100, 2));
    assertThat(flat.measure(STEEL).areaM2()).isEqualTo(0.01884, EXACT);
    FlatPattern bent = new FlatPattern(9000, 420, 2, 100, 100, 1, Optional.empty());
    assertThat(bent.foldedSizeUnknown()).isTrue();
    Box folded = new Box(100, 60, 40);
    FlatPattern known =
        new FlatPattern(9000, 420, 2, 100, 100, 1, Optional.of(Folded.sizeOnly(folded)));
    assertThat(known.foldedSizeUnknown()).isFalse();
    assertThat(known.measure(STEEL).envelopeMm()).isEqualTo(folded);
    assertThatThrownBy(() -> new FlatPattern(10001, 420, 2, 100, 100, 0, Optional.empty()))
        .hasMessageContaining("at most the hull");
  }

  @Test
  void aSolidWithAVoidIsClosedHollow() {
    Box cube = new Box(100, 100, 100);
    Measured full = new Solid(60000, 0, 1e6, 0, 0, cube).measure(STEEL);
    assertThat(full.areaM2()).isEqualTo(0.06, EXACT);
    assertThat(full.massKg()).isEqualTo(7.85, EXACT);
    assertThat(full.hollow()).isEqualTo(HollowKind.NONE);
    Measured hollow = new Solid(60000, 54150, 142625, 1, 857375, cube).measure(STEEL);
    assertThat(hollow.areaM2()).isEqualTo(0.11415, EXACT);
    assertThat(hollow.oneSideM2()).isEqualTo(0.06, EXACT);
    assertThat(hollow.enclosedVolumeL()).isEqualTo(0.857375, EXACT);
    assertThat(hollow.hollow()).isEqualTo(HollowKind.CLOSED);
    assertThat(hollow.skinThicknessMm()).isEqualTo(2 * 142625 / 114150.0, EXACT);
    assertThat(hollow.working()).contains("1 closed inner space(s)");
  }

  @Test
  void aWallMustLeaveABore() {
    assertThatThrownBy(() -> new RoundTube(20, 100, 10))
        .hasMessageContaining("thickness 10 is not less than half the smallest outside size");
    assertThat(new RoundTube(20, 100, 9.99).measure(STEEL).enclosedVolumeL()).isPositive();
    assertThatThrownBy(() -> new RectTube(60, 20, 100, 10)).isInstanceOf(ShapeException.class);
    assertThatThrownBy(() -> new ClosedBox(60, 20, 100, 10)).isInstanceOf(ShapeException.class);
    assertThatThrownBy(() -> OpenBox.openFront(60, 20, 100, 10)).isInstanceOf(ShapeException.class);
  }

  @Test
  void dimensionsAreOfThisWorld() {
    assertThatThrownBy(() -> new Plate(0, 10, 1)).hasMessageContaining("plate length 0");
    assertThatThrownBy(() -> new Plate(10, Double.NaN, 1)).hasMessageContaining("plate width NaN");
    assertThatThrownBy(() -> new Plate(10, 10, -1)).hasMessageContaining("thickness -1");
    assertThatThrownBy(() -> new Plate(1_000_001, 10, 1)).isInstanceOf(ShapeException.class);
    assertThat(new Plate(1_000_000, 10, 1).measure(STEEL).massKg()).isPositive();
    ShapeException refused = new ShapeException("what", 1.23456, "limit", "remedy");
    assertThat(refused.what()).isEqualTo("what");
    assertThat(refused.value()).isEqualTo("1.235");
    assertThat(refused.limit()).isEqualTo("limit");
    assertThat(refused.remedy()).isEqualTo("remedy");
  }

  @Test
  void densityIsOfThisWorldAndKnown() {
    Plate plate = new Plate(100, 100, 1);
    assertThat(plate.measure(Material.ALUMINIUM, Edges.COUNTED).massKg()).isEqualTo(0.027, EXACT);
    assertThatThrownBy(() -> plate.measure(7.85)).hasMessageContaining("kg/m3, steel is 7850");
    assertThatThrownBy(() -> plate.measure(25_001)).isInstanceOf(ShapeException.class);
    assertThat(plate.measure(100).massKg()).isEqualTo(0.001, EXACT);
    assertThat(plate.measure(25_000).massKg()).isEqualTo(0.25, EXACT);
    assertThatThrownBy(() -> plate.measure(Material.OTHER, Edges.COUNTED))
        .hasMessageContaining("material 'other'");
  }
}
