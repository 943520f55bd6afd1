package spangle.report.fitsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.KettleFit;
import spangle.fit.UsableSpace;
import spangle.fit.Verdict;
import spangle.fit.vent.HolePlaces;
import spangle.fit.vent.Hollow;
import spangle.fit.vent.HungHollow;
import spangle.fit.vent.Vents;
import spangle.measure.Box;

/** The drawing says what the answer says, to scale. */
class KettleDrawingTest {
  private static final UsableSpace KETTLE = UsableSpace.of("kettle", 3700, 1100, 1900);
  private static final Pattern POINTS = Pattern.compile("<polygon points=\"([^\"]*)\"");
  private static final Pattern DASHED =
      Pattern.compile(
          "<rect x=\"([^\"]*)\" y=\"([^\"]*)\" width=\"([^\"]*)\" height=\"([^\"]*)\" fill=\"none\"");

  private static FitAnswer fit(double l, double w, double h) {
    return KettleFit.answer(FitRequest.of(new Box(l, w, h)), KETTLE);
  }

  private static String drawn(FitAnswer answer) {
    return KettleDrawing.of(answer, Optional.empty(), List.of());
  }

  private static double[][] polygon(String svg, int index) {
    Matcher points = POINTS.matcher(svg);
    for (int i = 0; i <= index; i++) {
      assertThat(points.find()).isTrue();
    }
    List<double[]> found = new ArrayList<>();
    for (String point : points.group(1).strip().split(" ")) {
      String[] xy = point.split(",");
      found.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
    }
    return found.toArray(double[][]::new);
  }

  private static double[] usable(String svg, int index) {
    Matcher dashed = DASHED.matcher(svg);
    for (int i = 0; i <= index; i++) {
      assertThat(dashed.find()).isTrue();
    }
    return new double[] {
      Double.parseDouble(dashed.group(1)),
      Double.parseDouble(dashed.group(2)),
      Double.parseDouble(dashed.group(3)),
      Double.parseDouble(dashed.group(4))
    };
  }

  @Test
  void aPartThatGoesInLiesInsideTheUsableSpaceAtItsAngle() {
    FitAnswer answer = fit(4000, 300, 200);
    assertThat(answer.verdict()).isEqualTo(Verdict.TILTED);
    String svg = drawn(answer);
    double[] space = usable(svg, 0);
    double[][] part = polygon(svg, 0);
    for (double[] corner : part) {
      assertThat(corner[0]).isBetween(space[0] - 0.02, space[0] + space[2] + 0.02);
      assertThat(corner[1]).isBetween(space[1] - 0.02, space[1] + space[3] + 0.02);
    }
    double angle = Math.toDegrees(Math.atan2(part[0][1] - part[1][1], part[1][0] - part[0][0]));
    assertThat(angle).isCloseTo(answer.hangDeg(), within(0.05));
    assertThat(space[2] / space[3]).isCloseTo(3700.0 / 1900, within(0.001));
  }

  @Test
  void marginsInTheDrawingAreThoseOfTheHungAngle() {
    FitAnswer answer = fit(2000, 1200, 500);
    String svg = drawn(answer);
    double along = answer.whole().orElseThrow().side().alongMm(answer.hangDeg());
    assertThat(svg).contains(KettleDrawing.mm(along) + ", " + KettleDrawing.mm(3700 - along));
    assertThat(svg).contains("600 to spare");
  }

  @Test
  void twoDipsHaveTwoSideViewsWithEndsExchanged() {
    String endOut = drawn(fit(5200, 450, 300));
    assertThat(endOut).contains("first dip", "second dip", "overlap 300", ">A<", ">B<");
    assertThat(endOut.indexOf(">A<")).isLessThan(endOut.indexOf(">B<"));
    double[][] part = polygon(endOut, 0);
    double[] space = usable(endOut, 0);
    double lowest = 0;
    for (double[] corner : part) {
      lowest = Math.max(lowest, corner[1]);
    }
    assertThat(lowest).isCloseTo(space[1] + space[3], within(0.02));
    assertThat(drawn(fit(3600, 2600, 500))).contains("first dip", "second dip", ">1<", ">2<");
  }

  @Test
  void whatIsMissingIsSaidAndNothingHangs() {
    String svg = drawn(fit(3000, 2200, 1300));
    assertThat(svg).contains("200 MISSING", "300 MISSING").doesNotContain("hook at least");
  }

  @Test
  void aRolledPartIsTurnedInTheEndView() {
    UsableSpace space = UsableSpace.of("kettle", 2500, 1000, 1000);
    FitAnswer answer = KettleFit.answer(FitRequest.of(new Box(2400, 1250, 20)), space);
    assertThat(answer.rollDeg()).isPresent();
    double[][] section = polygon(drawn(answer), 2);
    double angle =
        Math.toDegrees(Math.atan2(section[0][1] - section[1][1], section[1][0] - section[0][0]));
    assertThat(angle).isCloseTo(answer.rollDeg().get().middle(), within(0.6));
  }

  @Test
  void holesAreMarkedAtHighAndLowCorner() {
    FitAnswer answer = fit(2000, 300, 300);
    HungHollow hung = new HungHollow(2000, 300, answer.hangDeg(), HungHollow.Second.NONE);
    String svg = KettleDrawing.of(answer, Optional.empty(), HolePlaces.of(hung));
    assertThat(svg).contains(">vent<", ">drain<");
    String sketch =
        HoleSketch.of(
            hung,
            Vents.of(new Hollow.Vessel(1.2, OptionalDouble.empty(), OptionalDouble.empty())),
            HolePlaces.of(hung));
    assertThat(sketch).contains(">vent<", ">drain<", "1.2 m3", "120 mm");
  }

  /** A blank is 0.28 of the size and its comma as much: a narrower rim lets the line through. */
  @Test
  void aLineOfMeasureStopsAtItsWords() {
    Pencil pencil = new Pencil();
    pencil.measure(0, 0, 500, 0, 10, "4159.6, 40.4 to spare");
    pencil.measure(0, 0, 0, 500, 10, "1718.6, 181.4 to spare");
    assertThat(pencil.svg(500, 500, "measures").split("stroke-width=\"9\"", -1)).hasSize(3);
  }
}
