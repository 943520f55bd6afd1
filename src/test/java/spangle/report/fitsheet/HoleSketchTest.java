package spangle.report.fitsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import spangle.fit.vent.HolePlaces;
import spangle.fit.vent.Hollow;
import spangle.fit.vent.HungHollow;
import spangle.fit.vent.OpenFront;
import spangle.fit.vent.Vents;

/** A hollow alone, as it hangs, with its holes. */
class HoleSketchTest {
  private static final Pattern POINTS = Pattern.compile("<polygon points=\"([^\"]*)\"");

  private static List<double[][]> polygons(String svg) {
    List<double[][]> found = new ArrayList<>();
    Matcher points = POINTS.matcher(svg);
    while (points.find()) {
      String[] pairs = points.group(1).strip().split(" ");
      double[][] corners = new double[pairs.length][];
      for (int i = 0; i < pairs.length; i++) {
        String[] xy = pairs[i].split(",");
        corners[i] = new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])};
      }
      found.add(corners);
    }
    return found;
  }

  private static double side(double[][] shape, int from, int to) {
    return Math.hypot(shape[to][0] - shape[from][0], shape[to][1] - shape[from][1]);
  }

  /** Returns of 25 round a front of 800 x 600: the opening is 750 x 550, all round the same. */
  @Test
  void theOpeningOfAnOpenFrontLiesInsideItsReturns() {
    OpenFront front = new OpenFront(800, 600, 250, 25, 1.5, 30);
    HungHollow hung = new HungHollow(800, 600, 30, HungHollow.Second.NONE);
    String svg = HoleSketch.of(hung, Vents.of(front), HolePlaces.inReturns(hung));
    List<double[][]> shapes = polygons(svg);
    assertThat(shapes).hasSize(2);
    double[][] outer = shapes.get(0);
    double[][] inner = shapes.get(1);
    double scale = side(outer, 0, 1) / 800;
    assertThat(side(outer, 1, 2) / scale).isCloseTo(600, within(0.2));
    assertThat(side(inner, 0, 1) / scale).isCloseTo(750, within(0.2));
    assertThat(side(inner, 1, 2) / scale).isCloseTo(550, within(0.2));
    for (int i = 0; i < 4; i++) {
      double corner = Math.hypot(inner[i][0] - outer[i][0], inner[i][1] - outer[i][1]) / scale;
      assertThat(corner).isCloseTo(25 * Math.sqrt(2), within(0.2));
    }
    assertThat(svg).contains(">vent<", ">drain<", "30\u00b0", "at each return corner named");
  }

  /** A closed vessel has no opening to draw. */
  @Test
  void aClosedVesselIsOneShape() {
    HungHollow hung = new HungHollow(2000, 500, 20, HungHollow.Second.NONE);
    String svg =
        HoleSketch.of(
            hung,
            Vents.of(new Hollow.Vessel(0.5, OptionalDouble.empty(), OptionalDouble.empty())),
            HolePlaces.of(hung));
    assertThat(polygons(svg)).hasSize(1);
    assertThat(svg).contains("0.5 m3").doesNotContain("return");
  }

  /** The sketch shows the first dip only: what is low then is high the second time. */
  @Test
  void holesOfTheSecondDipAreLeftToTheWords() {
    HungHollow hung = new HungHollow(2000, 500, 20, HungHollow.Second.END_FOR_END);
    assertThat(HolePlaces.of(hung)).hasSize(4);
    String svg =
        HoleSketch.of(
            hung,
            Vents.of(new Hollow.Vessel(0.5, OptionalDouble.empty(), OptionalDouble.empty())),
            HolePlaces.of(hung));
    assertThat(svg.split(">vent<", -1)).hasSize(2);
    assertThat(svg.split(">drain<", -1)).hasSize(2);
  }
}
