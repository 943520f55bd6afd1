package spangle.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spangle.measure.Box;
import spangle.part.section.SectionProfile;
import spangle.part.section.SectionTable;

/** A piece whose lengths were read in the wrong unit: lengths grow, gauges stay; hand sums. */
class ScaledShapesTest {
  private static final double STEEL = 7850;

  static List<Shape> pieces() {
    return List.of(
        new Plate(300, 200, 2, List.of(Hole.round(2, 10), Hole.slot(1, 30, 12))),
        new ClosedBox(300, 200, 100, 2),
        OpenBox.openFront(300, 200, 100, 2),
        new RectTube(60, 40, 1000, 3),
        new RoundTube(48.3, 1000, 3),
        Bar.round(20, 500),
        Bar.hexagon(17, 500),
        Bar.square(20, 500),
        Bar.flat(50, 10, 500),
        new FlatPattern(9000, 420, 2, 110, 100, 0, Optional.empty()),
        FoldedBlank.angle(50, 40, 300, 2),
        new Section(SectionTable.standard().find("L50x50x5").orElseThrow(), 600),
        new Solid(60000, 54150, 142625, 1, 857375, new Box(100, 90, 80)));
  }

  /** A factor of one changes nothing at all. */
  @ParameterizedTest
  @MethodSource("pieces")
  void oneTimesIsTheSame(Shape piece) {
    assertThat(piece.withLengthsTimes(1)).isEqualTo(piece);
  }

  /** Three times, then a third: back where it was. */
  @ParameterizedTest
  @MethodSource("pieces")
  void thereAndBackIsTheSamePiece(Shape piece) {
    Measured before = piece.measure(STEEL);
    Measured back = piece.withLengthsTimes(3).withLengthsTimes(1.0 / 3).measure(STEEL);

    assertThat(back.areaM2()).isEqualTo(before.areaM2(), within(1e-9 * before.areaM2()));
    assertThat(back.massKg()).isEqualTo(before.massKg(), within(1e-9 * before.massKg()));
    assertThat(back.envelopeMm().lengthMm())
        .isEqualTo(before.envelopeMm().lengthMm(), within(1e-9));
  }

  @Test
  void aPlateGrowsWithItsHolesAndKeepsItsGauge() {
    Plate twice =
        new Plate(300, 200, 2, List.of(Hole.round(2, 10), Hole.slot(1, 30, 12)))
            .withLengthsTimes(2);

    assertThat(twice)
        .isEqualTo(new Plate(600, 400, 2, List.of(Hole.round(2, 20), Hole.slot(1, 60, 24))));
  }

  @Test
  void boxesAndTubesKeepTheirWalls() {
    assertThat(new ClosedBox(300, 200, 100, 2).withLengthsTimes(2))
        .isEqualTo(new ClosedBox(600, 400, 200, 2));
    assertThat(OpenBox.openFront(300, 200, 100, 2).withLengthsTimes(2))
        .isEqualTo(OpenBox.openFront(600, 400, 200, 2));
    assertThat(new RectTube(60, 40, 1000, 3).withLengthsTimes(2))
        .isEqualTo(new RectTube(120, 80, 2000, 3));
    assertThat(new RoundTube(48, 1000, 3).withLengthsTimes(2))
        .isEqualTo(new RoundTube(96, 2000, 3));
  }

  /** A flat bar has a gauge; a round, a hexagon and a square are drawn. */
  @Test
  void onlyAFlatBarKeepsItsThickness() {
    assertThat(Bar.flat(50, 10, 500).withLengthsTimes(2)).isEqualTo(Bar.flat(100, 10, 1000));
    assertThat(Bar.square(20, 500).withLengthsTimes(2)).isEqualTo(Bar.square(40, 1000));
    assertThat(Bar.round(20, 500).withLengthsTimes(2)).isEqualTo(Bar.round(40, 1000));
    assertThat(Bar.hexagon(17, 500).withLengthsTimes(2)).isEqualTo(Bar.hexagon(34, 1000));
  }

  @Test
  void areasGrowByTheSquareAndVolumesByTheCube() {
    FlatPattern flat =
        new FlatPattern(
            9000,
            420,
            2,
            110,
            100,
            3,
            Optional.of(new Folded(new Box(90, 60, 40), List.of(new Folded.Corner(90, 60, 40)))));
    assertThat(flat.withLengthsTimes(2))
        .isEqualTo(
            new FlatPattern(
                36000,
                840,
                2,
                220,
                200,
                3,
                Optional.of(
                    new Folded(new Box(180, 120, 80), List.of(new Folded.Corner(180, 120, 80))))));
    assertThat(new FoldedBlank(9000, 420, 2, 3, new Box(90, 60, 40)).withLengthsTimes(2))
        .isEqualTo(new FoldedBlank(36000, 840, 2, 3, new Box(180, 120, 80)));
    assertThat(new Solid(60000, 54150, 142625, 1, 857375, new Box(100, 90, 80)).withLengthsTimes(2))
        .isEqualTo(new Solid(240000, 216600, 1141000, 1, 6859000, new Box(200, 180, 160)));
  }

  @Test
  void aStandardSectionOnlyGetsLonger() {
    SectionProfile angle = SectionTable.standard().find("L50x50x5").orElseThrow();

    assertThat(new Section(angle, 600).withLengthsTimes(2)).isEqualTo(new Section(angle, 1200));
  }

  @Test
  void whatGrowsOverAKilometreIsRefused() {
    assertThatThrownBy(() -> new Plate(50_000, 100, 2).withLengthsTimes(25.4))
        .isInstanceOf(ShapeException.class)
        .hasMessageContaining("plate length 1270000");
  }
}
