package spangle.report.fitsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import spangle.equipment.KettleProfile;
import spangle.equipment.Manning;
import spangle.fit.Body;
import spangle.fit.Crane;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.FitRules;
import spangle.fit.KettleFit;
import spangle.fit.KettleWay;
import spangle.fit.Silhouette.Corner;
import spangle.fit.Station;
import spangle.fit.UsableSpace;
import spangle.fit.Verdict;
import spangle.fit.vent.HolePlaces;
import spangle.fit.vent.HungHollow;
import spangle.measure.Box;

/**
 * Parts that go in by their real outline where their box does not: what a person reads off the
 * drawing must be true of the outline drawn, measured on the drawing itself.
 */
class OutlineDrawingTest {
  private static final UsableSpace KETTLE = UsableSpace.of("kettle", 2500, 900, 1000);
  private static final Crane CRANE = new Crane("crane", 2000, 9000, 1000);

  /** 3300 long, 420 high, both ends cut back underneath. */
  private static final List<Corner> TAPERED =
      List.of(new Corner(900, 0), new Corner(2400, 0), new Corner(3300, 420), new Corner(0, 420));

  /** 2700 long, cut back at one end only: not its own mirror, and 7 mm from too deep. */
  private static final List<Corner> WEDGE =
      List.of(new Corner(900, 0), new Corner(2700, 0), new Corner(2700, 420), new Corner(0, 420));

  private static FitAnswer endOut(List<Corner> outline) {
    FitAnswer answer =
        KettleFit.answer(
            new FitRequest(Body.prism(outline, 400), OptionalDouble.of(300), 50, FitRules.KETTLE),
            new KettleWay(List.of(new Station(Station.Kind.KETTLE, KETTLE)), Optional.of(CRANE)));
    assertThat(answer.verdict()).isEqualTo(Verdict.TWO_DIPS);
    assertThat(answer.twoDips().orElseThrow().outline()).isPresent();
    return answer;
  }

  private static Drawn draw(FitAnswer answer) throws Exception {
    return new Drawn(KettleDrawing.of(answer, Optional.empty(), List.of()));
  }

  /** A drawing read back. */
  private static final class Drawn {
    private final Document svg;

    Drawn(String text) throws Exception {
      svg =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private List<Element> all(String tag) {
      NodeList nodes = svg.getElementsByTagName(tag);
      List<Element> found = new ArrayList<>();
      for (int i = 0; i < nodes.getLength(); i++) {
        found.add((Element) nodes.item(i));
      }
      return found;
    }

    List<String> words() {
      return all("text").stream().map(Element::getTextContent).toList();
    }

    /** Where a word stands each time. */
    List<Corner> word(String word) {
      return all("text").stream()
          .filter(t -> t.getTextContent().equals(word))
          .map(t -> new Corner(number(t, "x"), number(t, "y")))
          .toList();
    }

    /** Outlines in the order they are drawn; y counts down. */
    List<Corner> shape(int index) {
      List<Corner> corners = new ArrayList<>();
      for (String point : all("polygon").get(index).getAttribute("points").strip().split(" ")) {
        String[] xy = point.split(",");
        corners.add(new Corner(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
      }
      return corners;
    }

    /** Usable space of a view: left, surface, right, floor. */
    double[] usable(int index) {
      Element box =
          all("rect").stream()
              .filter(r -> r.getAttribute("fill").equals("none"))
              .toList()
              .get(index);
      double x = number(box, "x");
      double y = number(box, "y");
      return new double[] {x, y, x + number(box, "width"), y + number(box, "height")};
    }

    /** Dashed lines across the part where the dips overlap. */
    List<Corner[]> bands() {
      return all("line").stream()
          .filter(l -> l.getAttribute("stroke-dasharray").equals("5 4"))
          .map(
              l ->
                  new Corner[] {
                    new Corner(number(l, "x1"), number(l, "y1")),
                    new Corner(number(l, "x2"), number(l, "y2"))
                  })
          .toList();
    }

    private static double number(Element element, String name) {
      return Double.parseDouble(element.getAttribute(name));
    }
  }

  private static double scale(double[] usable) {
    return (usable[2] - usable[0]) / KETTLE.lengthMm();
  }

  /**
   * The outline lies as the answer says: its long underside at the angle, its lowest point down.
   */
  @Test
  void bothDipsShowTheOutlineAtTheAngleSwungEndForEnd() throws Exception {
    FitAnswer answer = endOut(TAPERED);
    Drawn drawn = draw(answer);
    for (int dip = 0; dip < 2; dip++) {
      List<Corner> part = drawn.shape(dip);
      double[] usable = drawn.usable(dip);
      assertThat(part).hasSize(4);
      double under = edge(part, 1500 * scale(usable));
      assertThat(under).isCloseTo(answer.hangDeg(), within(0.1));
      assertThat(part.stream().mapToDouble(Corner::yMm).max().orElseThrow())
          .isCloseTo(usable[3], within(0.02));
      assertThat(part.stream().mapToDouble(Corner::xMm).min().orElseThrow())
          .isCloseTo(usable[0], within(0.02));
    }
    assertThat(drawn.words()).contains("first dip", "second dip", "overlap 300");
    String angle = KettleDrawing.mm(answer.hangDeg()) + "\u00b0";
    assertThat(drawn.word(angle)).hasSize(2);
  }

  /** Rise in degrees of the edge that is so long. */
  private static double edge(List<Corner> part, double length) {
    for (int i = 0; i < part.size(); i++) {
      Corner one = part.get(i);
      Corner other = part.get((i + 1) % part.size());
      double dx = Math.abs(other.xMm() - one.xMm());
      double dy = Math.abs(other.yMm() - one.yMm());
      if (Math.abs(Math.hypot(dx, dy) - length) < 0.05) {
        return Math.toDegrees(Math.atan2(dy, dx));
      }
    }
    throw new AssertionError("no edge " + length + " long in " + part);
  }

  /**
   * On the sheet every point of the outline lies under the zinc's surface in one of its two views,
   * and what is below the rim, 150 over the surface, lies inside the usable length.
   */
  @Test
  void everyPointIsUnderZincInOneOfTheTwoViews() throws Exception {
    for (List<Corner> outline : List.of(TAPERED, WEDGE)) {
      Drawn drawn = draw(endOut(outline));
      for (int i = 0; i < 4; i++) {
        for (double share = 0; share < 1; share += 0.02) {
          boolean covered = false;
          for (int dip = 0; dip < 2; dip++) {
            double[] usable = drawn.usable(dip);
            Corner at = along(drawn.shape(dip), i, share);
            covered |= at.yMm() >= usable[1] - 0.02;
            if (at.yMm() > usable[1] - KETTLE.rimMm() * scale(usable) + 0.02) {
              assertThat(at.xMm()).isLessThanOrEqualTo(usable[2] + 0.02);
            }
          }
          assertThat(covered).as("edge %d at %.2f", i, share).isTrue();
        }
      }
    }
  }

  private static Corner along(List<Corner> part, int edge, double share) {
    Corner one = part.get(edge);
    Corner other = part.get((edge + 1) % part.size());
    return new Corner(
        one.xMm() + share * (other.xMm() - one.xMm()),
        one.yMm() + share * (other.yMm() - one.yMm()));
  }

  /** Two lines in each view, the overlap apart, both all under zinc: there it is covered twice. */
  @Test
  void theOverlapIsDrawnWhereBothDipsCoverIt() throws Exception {
    for (List<Corner> outline : List.of(TAPERED, WEDGE)) {
      Drawn drawn = draw(endOut(outline));
      List<Corner[]> bands = drawn.bands();
      assertThat(bands).hasSize(4);
      for (int dip = 0; dip < 2; dip++) {
        double[] usable = drawn.usable(dip);
        Corner[] one = bands.get(2 * dip);
        Corner[] other = bands.get(2 * dip + 1);
        assertThat(
                Math.hypot(one[0].xMm() - other[0].xMm(), one[0].yMm() - other[0].yMm())
                    / scale(usable))
            .isCloseTo(300, within(0.3));
        for (Corner end : new Corner[] {one[0], one[1], other[0], other[1]}) {
          assertThat(end.yMm()).isGreaterThanOrEqualTo(usable[1] - 0.05);
        }
      }
    }
  }

  /** A is the end that goes in first, B the other: each stands lower in its own dip. */
  @Test
  void endsKeepTheirLettersAndChangePlaces() throws Exception {
    for (List<Corner> outline : List.of(TAPERED, WEDGE)) {
      Drawn drawn = draw(endOut(outline));
      List<Corner> a = drawn.word("A");
      List<Corner> b = drawn.word("B");
      assertThat(a).hasSize(2);
      assertThat(b).hasSize(2);
      assertThat(a.get(0).yMm()).isGreaterThan(b.get(0).yMm());
      assertThat(b.get(1).yMm()).isGreaterThan(a.get(1).yMm());
    }
  }

  /**
   * 200 clear of the rim, 1000 of beam and slings, and the outline from its lowest to its highest
   * point: 3300 sin a + 420 cos a less the lower of its two undersides, 900 sin a and 420 cos a.
   */
  @Test
  void theHookStandsAsHighAsTheOutlineAsks() throws Exception {
    FitAnswer answer = endOut(TAPERED);
    double a = Math.toRadians(answer.hangDeg());
    double low = Math.min(900 * Math.sin(a), 420 * Math.cos(a));
    double hook = 200 + 1000 + 3300 * Math.sin(a) + 420 * Math.cos(a) - low;
    assertThat(draw(answer).words())
        .filteredOn(word -> word.startsWith("hook"))
        .hasSize(2)
        .containsOnly("hook at least " + Math.round(hook) + " mm above the rim");
  }

  /**
   * A triangle of 1000 x 1000, 1200 long, goes in only on its long edge of 1414, 707 across. From
   * the end it is a triangle inside the usable space, as high as it is from the side.
   */
  @Test
  void aRolledOutlineStandsRolledInTheEndView() throws Exception {
    UsableSpace kettle = UsableSpace.of("kettle", 2500, 900, 1450);
    FitAnswer answer =
        KettleFit.answer(
            new FitRequest(
                Body.prism(
                    List.of(new Corner(0, 0), new Corner(1000, 0), new Corner(0, 1000)), 1200),
                OptionalDouble.empty(),
                0,
                FitRules.KETTLE),
            kettle);
    assertThat(answer.rollDeg()).isPresent();
    Drawn drawn = draw(answer);
    List<Corner> section = drawn.shape(2);
    double[] usable = drawn.usable(1);
    double scale = (usable[2] - usable[0]) / 900;
    assertThat(section).hasSize(3);
    double left = section.stream().mapToDouble(Corner::xMm).min().orElseThrow();
    double right = section.stream().mapToDouble(Corner::xMm).max().orElseThrow();
    assertThat(left).isGreaterThanOrEqualTo(usable[0] - 0.02);
    assertThat(right).isLessThanOrEqualTo(usable[2] + 0.02);
    double needed = answer.whole().orElseThrow().neededWidthMm();
    assertThat((right - left) / scale).isCloseTo(needed, within(0.3));
    assertThat(drawn.words()).contains(KettleDrawing.mm(needed));
    assertThat(edge(section, 1000 * Math.sqrt(2) * scale)).isGreaterThan(70);
  }

  /**
   * Lowest of the wedge at its angle is not the underside's near corner that the words name: no
   * hole is marked on it. On its box it is.
   */
  @Test
  void holesAreMarkedOnABoxOnly() throws Exception {
    FitAnswer wedge = endOut(WEDGE);
    HungHollow hung = new HungHollow(2700, 420, wedge.hangDeg(), HungHollow.Second.END_FOR_END);
    UsableSpace large = UsableSpace.of("kettle", 4000, 1000, 2000);
    Body body = Body.prism(WEDGE, 400);
    for (Body shape : List.of(body, Body.of(body.box()))) {
      FitAnswer whole =
          KettleFit.answer(
              new FitRequest(shape, OptionalDouble.empty(), 0, FitRules.KETTLE), large);
      List<String> words =
          new Drawn(KettleDrawing.of(whole, Optional.empty(), HolePlaces.of(hung))).words();
      assertThat(words.contains("drain")).isEqualTo(shape != body);
      assertThat(words.contains("vent")).isEqualTo(shape != body);
    }
  }

  /** The layer of dross is named and hatched where the kettle is known, and only there. */
  @Test
  void aKnownKettleShowsItsDross() throws Exception {
    FitAnswer answer = endOut(TAPERED);
    KettleProfile kettle =
        new KettleProfile(
            "k",
            "Kettle",
            new Box(2800, 1000, 1500),
            new Box(2500, 900, 1000),
            150,
            450,
            20_000,
            800,
            2_000,
            1,
            10,
            2,
            0.5,
            3,
            10,
            45,
            Manning.PEOPLE,
            List.of());
    assertThat(new Drawn(KettleDrawing.of(answer, Optional.of(kettle), List.of())).words())
        .contains("dross");
    assertThat(draw(answer).words()).doesNotContain("dross");
  }
}
