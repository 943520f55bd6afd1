package spangle.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.api.Assertions;
import spangle.measure.Box;
import spangle.measure.Interval;

/** The closed forms against dense sweeps of turned corners. */
class WholeFitProperties {
  private static final double STEP_DEG = 0.25;

  /** Size of the corners of a body after turning them, by brute force. */
  private static double[] swept(List<double[]> corners, double tiltDeg, double rollDeg) {
    double[] low = {1e99, 1e99, 1e99};
    double[] high = {-1e99, -1e99, -1e99};
    double a = Math.toRadians(tiltDeg);
    double r = Math.toRadians(rollDeg);
    for (double[] c : corners) {
      double across = c[1] * Math.cos(r) - c[2] * Math.sin(r);
      double up = c[1] * Math.sin(r) + c[2] * Math.cos(r);
      double[] turned = {
        c[0] * Math.cos(a) - up * Math.sin(a), across, c[0] * Math.sin(a) + up * Math.cos(a)
      };
      for (int i = 0; i < 3; i++) {
        low[i] = Math.min(low[i], turned[i]);
        high[i] = Math.max(high[i], turned[i]);
      }
    }
    return new double[] {high[0] - low[0], high[1] - low[1], high[2] - low[2]};
  }

  private static List<double[]> box(double l, double w, double h) {
    List<double[]> corners = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      corners.add(new double[] {(i & 1) * l, (i >> 1 & 1) * w, (i >> 2) * h});
    }
    return corners;
  }

  private static boolean inside(double[] need, UsableSpace space, double slackMm) {
    return need[0] <= space.lengthMm() + slackMm
        && need[1] <= space.widthMm() + slackMm
        && need[2] <= space.depthMm() + slackMm;
  }

  private static boolean within(List<Interval> windows, double deg, double slackDeg) {
    return windows.stream().anyMatch(w -> deg >= w.min() - slackDeg && deg <= w.max() + slackDeg);
  }

  @Property(tries = 100)
  void everyReportedAngleGoesInAndNoOtherDoes(
      @ForAll @DoubleRange(min = 50, max = 4500) double a,
      @ForAll @DoubleRange(min = 50, max = 2500) double b,
      @ForAll @DoubleRange(min = 10, max = 1500) double c) {
    UsableSpace space = UsableSpace.of("kettle", 3700, 1100, 1900);
    double[][] lays = {{a, b, c}, {b, a, c}, {c, a, b}};
    FitAnswer answer = KettleFit.answer(FitRequest.of(new Box(a, b, c)), space);
    boolean anyWhole = false;
    boolean anyStraight = false;
    for (double[] lay : lays) {
      List<double[]> corners = box(Math.max(lay[1], lay[2]), lay[0], Math.min(lay[1], lay[2]));
      boolean reported =
          answer.whole().isPresent() && answer.rollDeg().isEmpty() && answer.acrossMm() == lay[0];
      for (double deg = 0; deg <= 90; deg += STEP_DEG) {
        double[] need = swept(corners, deg, 0);
        boolean fits = inside(need, space, 0);
        anyWhole |= fits;
        anyStraight |= fits && (deg == 0 || deg == 90);
        if (reported && within(answer.tiltWindowsDeg(), deg, 0)) {
          assertThat(inside(need, space, 1e-6)).as("%s at %s", lay[0], deg).isTrue();
        }
        if (reported && fits) {
          assertThat(within(answer.tiltWindowsDeg(), deg, 1e-9)).isTrue();
        }
      }
      if (reported) {
        for (Interval window : answer.tiltWindowsDeg()) {
          assertThat(inside(swept(corners, window.min(), 0), space, 1e-6)).isTrue();
          assertThat(inside(swept(corners, window.max(), 0), space, 1e-6)).isTrue();
        }
      }
    }
    if (anyWhole) {
      assertThat(answer.verdict().whole()).isTrue();
      assertThat(answer.rollDeg()).isEmpty();
    }
    assertThat(answer.verdict() == Verdict.STRAIGHT).isEqualTo(anyStraight);
    if (answer.verdict() == Verdict.NO) {
      assertThat(answer.margin().worstShortageMm()).isPositive();
    }
  }

  @Property(tries = 100)
  void aRolledAnswerHoldsInSpaceAndASweepFindsNoOther(
      @ForAll @DoubleRange(min = 500, max = 2500) double a,
      @ForAll @DoubleRange(min = 800, max = 2000) double b,
      @ForAll @DoubleRange(min = 5, max = 200) double c) {
    UsableSpace space = UsableSpace.of("kettle", 2500, 900, 1000);
    FitAnswer answer = KettleFit.answer(FitRequest.of(new Box(a, b, c)), space);
    double[][] turns = {{a, b, c}, {b, c, a}, {c, a, b}};
    boolean found = false;
    for (double[] turn : turns) {
      List<double[]> corners = box(turn[0], Math.min(turn[1], turn[2]), Math.max(turn[1], turn[2]));
      for (double roll = 0; roll <= 90 && !found; roll += 2) {
        for (double tilt = 0; tilt <= 90 && !found; tilt += 2) {
          found = inside(swept(corners, tilt, roll), space, 0);
        }
      }
    }
    if (found) {
      assertThat(answer.verdict().whole()).isTrue();
    }
    answer
        .rollDeg()
        .ifPresent(
            roll -> {
              Attitude attitude = answer.whole().orElseThrow();
              double w = attitude.acrossMm();
              double l = ((RectangleSilhouette) attitude.side()).lMm();
              double h = Math.abs(a * b * c / (w * l));
              for (Interval tilt : attitude.windowsDeg()) {
                assertThat(inside(swept(box(l, w, h), tilt.middle(), roll.middle()), space, 1e-4))
                    .isTrue();
              }
              assertThat(answer.verdict()).isEqualTo(Verdict.TILTED);
            });
  }

  @Property(tries = 100)
  void anOutlineGoesInExactlyWhereItsCornersDo(
      @ForAll @DoubleRange(min = 300, max = 4200) double length,
      @ForAll @DoubleRange(min = 200, max = 2000) double height,
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double notch) {
    UsableSpace space = UsableSpace.of("kettle", 3700, 1100, 1900);
    List<Silhouette.Corner> ell =
        List.of(
            new Silhouette.Corner(0, 0),
            new Silhouette.Corner(length, 0),
            new Silhouette.Corner(length, height * notch),
            new Silhouette.Corner(length * notch, height * notch),
            new Silhouette.Corner(length * notch, height),
            new Silhouette.Corner(0, height));
    Body body = Body.prism(ell, 400);
    for (Lay lay : body.lays()) {
      List<Interval> windows = lay.side().windowsDeg(space.lengthMm(), space.depthMm());
      for (double deg = 0; deg <= 90; deg += STEP_DEG) {
        double tilt = deg;
        double along = spread(lay.side(), c -> c.turned(tilt).xMm());
        double upright = spread(lay.side(), c -> c.turned(tilt).yMm());
        assertThat(lay.side().alongMm(deg)).isCloseTo(along, Assertions.within(1e-8));
        boolean fits = along <= space.lengthMm() && upright <= space.depthMm();
        if (fits) {
          assertThat(within(windows, deg, 1e-9)).isTrue();
        } else if (along > space.lengthMm() + 1e-6 || upright > space.depthMm() + 1e-6) {
          assertThat(within(windows, deg, 0)).isFalse();
        }
      }
    }
  }

  private static double spread(Silhouette side, ToDoubleFunction<Silhouette.Corner> reach) {
    double low = side.corners().stream().mapToDouble(reach).min().orElseThrow();
    double high = side.corners().stream().mapToDouble(reach).max().orElseThrow();
    return high - low;
  }

  @Property(tries = 100)
  void aSmallerPartNeverFitsWorse(
      @ForAll @DoubleRange(min = 100, max = 7000) double a,
      @ForAll @DoubleRange(min = 100, max = 4000) double b,
      @ForAll @DoubleRange(min = 10, max = 1500) double c,
      @ForAll @DoubleRange(min = 0.5, max = 1) double less) {
    UsableSpace space = UsableSpace.of("kettle", 3700, 1100, 1900);
    Verdict large = KettleFit.answer(FitRequest.of(new Box(a, b, c)), space).verdict();
    Verdict small = KettleFit.answer(FitRequest.of(new Box(a * less, b, c)), space).verdict();
    assertThat(small).isLessThanOrEqualTo(large);
  }

  @Property(tries = 100)
  void twoDipsHoldByTheDrawnCorners(
      @ForAll @DoubleRange(min = 3000, max = 9000) double a,
      @ForAll @DoubleRange(min = 50, max = 2500) double b,
      @ForAll @DoubleRange(min = 20, max = 1100) double c) {
    UsableSpace space = UsableSpace.of("kettle", 3700, 1100, 1900);
    FitAnswer answer = KettleFit.answer(FitRequest.of(new Box(a, b, c)), space);
    answer
        .dipTiltDeg()
        .ifPresent(
            tilt -> {
              TwoDips dips = answer.twoDips().orElseThrow();
              for (double deg : new double[] {tilt.min(), tilt.middle(), tilt.max()}) {
                assertEndOut(dips, Math.toRadians(deg), space);
              }
            });
  }

  /**
   * Low corner placed so that the leaning end face touches the wall x = 0; zinc from y = 0 to D.
   */
  private static void assertEndOut(TwoDips dips, double a, UsableSpace space) {
    double footX = dips.hMm() * Math.sin(a);
    double rim = space.depthMm() + space.rimMm();
    double undersideAtWall = (space.lengthMm() - footX) * Math.tan(a);
    assertThat(undersideAtWall).isGreaterThanOrEqualTo(rim - 1e-3);
    double middle = dips.reachMm();
    double topSideThere = dips.hMm() * Math.cos(a) + middle * Math.sin(a);
    assertThat(topSideThere).isLessThanOrEqualTo(space.depthMm() + 1e-3);
    double xOfTopSideThere = footX - dips.hMm() * Math.sin(a) + middle * Math.cos(a);
    assertThat(xOfTopSideThere).isBetween(0.0, space.lengthMm());
  }
}
