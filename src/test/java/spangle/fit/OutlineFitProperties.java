package spangle.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import spangle.fit.Silhouette.Corner;
import spangle.measure.Interval;

/**
 * Real outlines rolled and in two dips, against corners turned and zinc measured by brute force.
 */
class OutlineFitProperties {
  private static final UsableSpace KETTLE = UsableSpace.of("kettle", 2500, 900, 1000);

  private static List<Corner> ell(double length, double height, double leg) {
    return List.of(
        new Corner(0, 0),
        new Corner(length, 0),
        new Corner(length, leg),
        new Corner(leg, height),
        new Corner(0, height));
  }

  /** Room that points need along, across and up after a roll and a tilt. */
  private static double[] room(
      List<Body.Point> points, int axis, boolean mirrored, double rollDeg, double tiltDeg) {
    double[] low = {1e99, 1e99, 1e99};
    double[] high = {-1e99, -1e99, -1e99};
    double r = Math.toRadians(rollDeg);
    double a = Math.toRadians(tiltDeg);
    for (Body.Point p : points) {
      double y = (mirrored ? -1 : 1) * p.on((axis + 1) % 3);
      double z = p.on((axis + 2) % 3);
      double across = y * Math.cos(r) - z * Math.sin(r);
      double up = y * Math.sin(r) + z * Math.cos(r);
      double x = p.on(axis);
      double[] turned = {
        x * Math.cos(a) - up * Math.sin(a), across, x * Math.sin(a) + up * Math.cos(a)
      };
      for (int i = 0; i < 3; i++) {
        low[i] = Math.min(low[i], turned[i]);
        high[i] = Math.max(high[i], turned[i]);
      }
    }
    return new double[] {high[0] - low[0], high[1] - low[1], high[2] - low[2]};
  }

  private static boolean someTilt(List<Body.Point> points, double rollDeg) {
    for (int axis = 0; axis < 3; axis++) {
      for (boolean mirrored : new boolean[] {false, true}) {
        for (double tilt = -90; tilt <= 90; tilt += 0.1) {
          double[] need = room(points, axis, mirrored, rollDeg, tilt);
          if (need[0] <= KETTLE.lengthMm() + 3
              && need[1] <= KETTLE.widthMm() + 1e-3
              && need[2] <= KETTLE.depthMm() + 3) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** The slack of 3 mm is what a tenth of a degree moves a corner 1.7 m from the middle. */
  @Property(tries = 25)
  void aRollThatIsSaidToDoIsNeverRefutedByTheSweep(
      @ForAll @DoubleRange(min = 900, max = 2400) double length,
      @ForAll @DoubleRange(min = 900, max = 1700) double height,
      @ForAll @DoubleRange(min = 20, max = 200) double leg,
      @ForAll @DoubleRange(min = 950, max = 1500) double across) {
    Body body = Body.prism(ell(length, height, leg), across);
    for (Attitude attitude : OutlineRoll.find(body.points(), KETTLE)) {
      Interval roll = attitude.rollDeg().orElseThrow();
      for (double share : new double[] {0, 0.5, 1}) {
        assertThat(someTilt(body.points(), roll.min() + share * roll.width())).isTrue();
      }
      assertThat(attitude.neededWidthMm()).isLessThanOrEqualTo(KETTLE.widthMm() + 1e-6);
      for (Interval tilt : attitude.windowsDeg()) {
        assertThat(attitude.side().alongMm(tilt.middle()))
            .isLessThanOrEqualTo(KETTLE.lengthMm() + 1e-6);
        assertThat(attitude.side().uprightMm(tilt.middle()))
            .isLessThanOrEqualTo(KETTLE.depthMm() + 1e-6);
      }
    }
  }

  /** Bodies of a drawing: six points in space, no two faces alike. */
  @Test
  void rolledBodiesOfFreePointsAreNeverRefutedByTheSweep() {
    int rolled = 0;
    for (int seed = 1; seed <= 12; seed++) {
      Random random = new Random(seed);
      List<double[]> points = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        points.add(
            new double[] {
              1800 * random.nextDouble(), 1200 * random.nextDouble(), 1200 * random.nextDouble()
            });
      }
      Body body = Body.points(points);
      for (Attitude attitude : OutlineRoll.find(body.points(), KETTLE)) {
        rolled++;
        Interval roll = attitude.rollDeg().orElseThrow();
        assertThat(someTilt(body.points(), roll.min())).isTrue();
        assertThat(someTilt(body.points(), roll.middle())).isTrue();
        assertThat(someTilt(body.points(), roll.max())).isTrue();
      }
    }
    assertThat(rolled).isGreaterThan(12);
  }

  /**
   * A triangular bracket, legs of 1000, 1200 long. Its long edge is 1414, the height over it 707:
   * with the long edge level it needs 707 across and 1414 is more than the depth; upright on the
   * long edge the 707 lies across. As a box of 1200 x 1000 x 1000 no side but 1000 is across of 900
   * and no roll helps: 1000 cos r + 1000 sin r is never less than 1000.
   */
  @Test
  void aTriangleGoesInRolledWhereItsBoxDoesNot() {
    UsableSpace kettle = UsableSpace.of("kettle", 2500, 900, 1450);
    Body triangle =
        Body.prism(List.of(new Corner(0, 0), new Corner(1000, 0), new Corner(0, 1000)), 1200);

    assertThat(WholeFit.best(Body.of(triangle.box()), kettle, FitRules.KETTLE)).isEmpty();
    Attitude rolled = WholeFit.best(triangle, kettle, FitRules.KETTLE).orElseThrow();
    assertThat(rolled.rollDeg().orElseThrow().min()).isLessThan(45);
    assertThat(rolled.rollDeg().orElseThrow().max()).isGreaterThan(45);
    assertThat(rolled.neededWidthMm()).isLessThanOrEqualTo(900);
  }

  /**
   * Every point of the outline is under zinc in one of the dips, seen by brute force along all
   * edges, and nothing below the rim stands beyond the end wall.
   */
  @Property(tries = 60)
  void twoDipsByOutlineCoverEveryEdgeAndClearTheRim(
      @ForAll @DoubleRange(min = 2600, max = 5200) double length,
      @ForAll @DoubleRange(min = 200, max = 1500) double height,
      @ForAll @DoubleRange(min = 0.02, max = 0.6) double leg,
      @ForAll @DoubleRange(min = 0, max = 300) double overlap) {
    Body body = Body.prism(ell(length, height, leg * height), 400);
    List<TwoDips> found = OutlineDips.find(body, KETTLE, overlap);
    Assume.that(!found.isEmpty());
    for (TwoDips dips : found) {
      Interval range = dips.dipTiltDeg().orElseThrow();
      for (double share : new double[] {0, 0.31, 0.5, 0.77, 1}) {
        double deg = range.min() + share * range.width();
        covers(dips.side().corners(), deg);
      }
    }
  }

  /** 3300 long, 420 high, both ends cut back underneath: its box cannot be covered. */
  @Test
  void aTaperedBracketGoesEndOutWhereItsBoxDoesNot() {
    Body tapered = Body.prism(TAPERED, 400);

    assertThat(TwoDipSearch.find(Body.of(tapered.box()), KETTLE, 300)).isEmpty();
    TwoDips dips = TwoDipSearch.find(tapered, KETTLE, 300).orElseThrow();
    assertThat(dips.form()).isEqualTo(TwoDips.Form.END_OUT);
    assertThat(dips.margin().worstShortageMm()).isLessThanOrEqualTo(0);
    covers(dips.side().corners(), dips.hangDeg());
  }

  private static final List<Corner> TAPERED =
      List.of(new Corner(900, 0), new Corner(2400, 0), new Corner(3300, 420), new Corner(0, 420));

  private static void covers(List<Corner> corners, double deg) {
    List<Corner> swung = corners.stream().map(c -> new Corner(-c.xMm(), c.yMm())).toList();
    for (List<Corner> dip : List.of(corners, swung)) {
      double left = dip.stream().mapToDouble(c -> c.turned(deg).xMm()).min().orElseThrow();
      double low = dip.stream().mapToDouble(c -> c.turned(deg).yMm()).min().orElseThrow();
      along(
          dip,
          p -> {
            Corner turned = p.turned(deg);
            if (turned.yMm() - low < KETTLE.depthMm() + KETTLE.rimMm()) {
              assertThat(turned.xMm() - left).isLessThanOrEqualTo(KETTLE.lengthMm() + 1e-3);
            }
          });
    }
    double low = corners.stream().mapToDouble(c -> c.turned(deg).yMm()).min().orElseThrow();
    double lowSwung = swung.stream().mapToDouble(c -> c.turned(deg).yMm()).min().orElseThrow();
    along(
        corners,
        p -> {
          double first = p.turned(deg).yMm() - low;
          double second = new Corner(-p.xMm(), p.yMm()).turned(deg).yMm() - lowSwung;
          assertThat(Math.min(first, second)).isLessThanOrEqualTo(KETTLE.depthMm() + 1e-3);
        });
  }

  private static void along(List<Corner> corners, Consumer<Corner> check) {
    for (int i = 0; i < corners.size(); i++) {
      Corner one = corners.get(i);
      Corner other = corners.get((i + 1) % corners.size());
      for (double share = 0; share < 1; share += 0.01) {
        check.accept(
            new Corner(
                one.xMm() + share * (other.xMm() - one.xMm()),
                one.yMm() + share * (other.yMm() - one.yMm())));
      }
    }
  }
}
