package spangle.part.flat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Where a part lies, which way round its lines run and in how many pieces changes nothing. */
class LayoutProperties {
  /** A star-shaped outline of lines, arcs and Bezier curves, with one round hole. */
  private static List<Curve> outline(Random random) {
    int corners = 3 + random.nextInt(8);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.3 * random.nextDouble()) / corners;
      double radius = 80 + 60 * random.nextDouble();
      points.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % corners);
      Point out = a.middle(b).times(1.05);
      curves.add(
          switch (random.nextInt(3)) {
            case 0 -> new Segment(a, b);
            case 1 -> Arc.bulge(a, b, 0.2 * random.nextDouble());
            default -> Bezier.of(List.of(a, a.middle(out), b.middle(out), b));
          });
    }
    return curves;
  }

  private static FlatLayout layout(List<Curve> curves, Affine affine) {
    List<Stroke> strokes = new ArrayList<>();
    for (Curve curve : curves) {
      strokes.add(LayoutTest.cut(curve.transformed(affine)));
    }
    strokes.add(LayoutTest.cut(Arc.circle(new Point(3, -2), 20).transformed(affine)));
    return LayoutBuilder.of(strokes);
  }

  @Property(tries = 150)
  void movedTurnedMirroredScaled(
      @ForAll @IntRange(max = 1_000_000) int seed,
      @ForAll @DoubleRange(min = -180, max = 180) double turn,
      @ForAll @DoubleRange(min = -50_000, max = 50_000) double shift,
      @ForAll @DoubleRange(min = 0.3, max = 8) double scale,
      @ForAll boolean mirror) {
    List<Curve> curves = outline(new Random(seed));
    FlatLayout one = layout(curves, Affine.IDENTITY);
    Affine moved =
        Affine.scale(mirror ? -scale : scale, scale)
            .then(Affine.turn(turn))
            .then(Affine.shift(shift, -2 * shift));
    FlatLayout other = layout(curves, moved);
    double square = scale * scale;
    assertThat(one.holes()).hasSize(1);
    assertThat(other.holes()).hasSize(1);
    assertThat(other.netAreaMm2() / square)
        .isEqualTo(one.netAreaMm2(), within(1e-7 * one.netAreaMm2()));
    assertThat(other.cutEdgeMm() / scale)
        .isEqualTo(one.cutEdgeMm(), within(1e-7 * one.cutEdgeMm()));
  }

  @Property(tries = 150)
  void turnedRoundSplitAndShuffled(@ForAll @IntRange(max = 1_000_000) int seed) {
    Random random = new Random(seed);
    List<Curve> curves = outline(random);
    FlatLayout one = layout(curves, Affine.IDENTITY);
    List<Curve> pieces = new ArrayList<>();
    for (Curve curve : curves) {
      Curve way = random.nextBoolean() ? curve : curve.reversed();
      if (way instanceof Segment s) {
        Point at = s.start().plus(s.end().minus(s.start()).times(0.37));
        pieces.add(new Segment(s.start(), at));
        pieces.add(new Segment(s.end(), at));
      } else if (way instanceof Arc a) {
        pieces.add(new Arc(a.centre(), a.u(), a.v(), a.from(), 0.4 * a.sweep()));
        pieces.add(new Arc(a.centre(), a.u(), a.v(), a.from() + 0.4 * a.sweep(), 0.6 * a.sweep()));
      } else {
        pieces.add(way);
      }
    }
    Collections.shuffle(pieces, random);
    FlatLayout other = layout(pieces, Affine.IDENTITY);
    assertThat(other.contours()).isEqualTo(one.contours());
    // A joint set by rounding lies some 1e-7 mm beside the curve, along hundreds of millimetres.
    assertThat(other.netAreaMm2()).isEqualTo(one.netAreaMm2(), within(1e-8 * one.netAreaMm2()));
    assertThat(other.cutEdgeMm()).isEqualTo(one.cutEdgeMm(), within(1e-8 * one.cutEdgeMm()));
  }

  /** The exact area lies near that of a fine polygon, found by another way. */
  @Property(tries = 60)
  void nearTheFinePolygon(@ForAll @IntRange(max = 1_000_000) int seed) {
    Contour contour = new Contour(outline(new Random(seed)), "test");
    double fine = Ring.of(contour, 1e-4).polygon().getArea();
    assertThat(contour.areaMm2()).isEqualTo(fine, within(1e-4 * fine));
  }
}
