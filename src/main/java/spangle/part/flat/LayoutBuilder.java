package spangle.part.flat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.TopologyException;
import spangle.part.ShapeException;
import spangle.part.flat.Chains.Chain;
import spangle.part.flat.Chains.Edge;

/** Turns drawn lines into outline, holes and bend lines, and says what a person should look at. */
public final class LayoutBuilder {
  /** Curves one drawing may have. */
  public static final int MOST_CURVES = 200_000;

  /** An open chain that lacks less than this share of its length is closed to reckon with. */
  private static final double ALMOST_CLOSED = 0.02;

  private final Tolerances tolerances;
  private final List<Defect> defects = new ArrayList<>();
  private final List<Contour> contours = new ArrayList<>();
  private final List<Edge> loose = new ArrayList<>();
  private final List<Chain> acrossSheet = new ArrayList<>();
  private final List<Stroke> maybeBends = new ArrayList<>();
  private final List<Curve> marks = new ArrayList<>();
  private final List<Curve> open = new ArrayList<>();
  private final Snap joints;

  private LayoutBuilder(Tolerances tolerances) {
    this.tolerances = tolerances;
    this.joints = new Snap(tolerances.joinMm());
  }

  /**
   * The layout of a drawing.
   *
   * @throws ShapeException when there are too many curves, or contours too many deep
   */
  public static FlatLayout of(List<Stroke> strokes) {
    int curves = strokes.stream().mapToInt(s -> s.curves().size()).sum();
    if (curves > MOST_CURVES) {
      throw new ShapeException(
          "number of curves",
          curves,
          "at most " + MOST_CURVES,
          "leave out what is not cut, or give the figures by hand");
    }
    List<Stroke> cut = cutOrAll(strokes);
    double diagonal =
        cut.stream()
            .filter(s -> s.role() == Stroke.Role.CUT)
            .flatMap(s -> s.curves().stream())
            .map(Curve::extent)
            .reduce(Extent::with)
            .map(Extent::diagonal)
            .orElse(1.0);
    try {
      return new LayoutBuilder(Tolerances.of(diagonal)).layout(cut);
    } catch (TopologyException tangled) {
      throw new ShapeException(
          "outline", curves, "lines that can be told apart", "draw the outline again");
    }
  }

  /** Where every line stands on a layer for other things, all of them may be meant to be cut. */
  private static List<Stroke> cutOrAll(List<Stroke> strokes) {
    if (strokes.stream().anyMatch(s -> s.role() == Stroke.Role.CUT)) {
      return strokes;
    }
    return strokes.stream()
        .map(s -> s.role() == Stroke.Role.BEND ? s : s.as(Stroke.Role.CUT))
        .toList();
  }

  private FlatLayout layout(List<Stroke> strokes) {
    for (Stroke stroke : strokes) {
      sort(stroke);
    }
    Chains chains = new Chains();
    Branches branches = new Branches(withoutDoubles(), joints, tolerances);
    defects.addAll(branches.defects);
    chains.walk(branches.boundary);
    for (Edge edge : branches.across) {
      acrossSheet.add(new Chain(List.of(edge.curve), edge.label));
    }
    chains.closeGaps(tolerances.gapMm());
    defects.addAll(chains.defects);
    contours.addAll(chains.contours);
    List<Chain> rest = new ArrayList<>(chains.open());
    almostClosed(rest);
    List<Ring> rings = new ArrayList<>();
    for (Contour contour : new Doubles(tolerances).removed(contours, defects)) {
      if (contour.areaMm2() > tolerances.joinMm() * tolerances.joinMm()) {
        rings.add(Ring.of(contour, tolerances.chordMm()));
      } else {
        defects.add(
            new Defect(Defect.Kind.OPEN, contour.curves().get(0).start(), 0, contour.label()));
        open.addAll(contour.curves());
      }
    }
    Nest nest = new Nest(rings);
    defects.addAll(nest.defects);
    BendFinder bends = new BendFinder(nest.atDepth(0, 0), rings, tolerances);
    for (Stroke stroke : maybeBends) {
      bends.tell(stroke, marks);
    }
    rest.addAll(acrossSheet);
    for (Chain chain : rest) {
      bends.leftOver(chain, defects, open);
    }
    return layout(nest, bends.merged());
  }

  private FlatLayout layout(Nest nest, List<BendLine> bends) {
    List<Contour> outers = contours(nest.atDepth(0, 0));
    List<Contour> islands = contours(nest.atDepth(2, Integer.MAX_VALUE));
    if (outers.size() > 1) {
      defects.add(
          new Defect(
              Defect.Kind.SEVERAL_PARTS,
              outers.get(1).curves().get(0).start(),
              outers.size(),
              outers.get(1).label()));
    }
    if (!islands.isEmpty()) {
      Contour first = islands.get(0);
      defects.add(
          new Defect(
              Defect.Kind.ISLAND, first.curves().get(0).start(), islands.size(), first.label()));
    }
    return new FlatLayout(
        outers,
        contours(nest.atDepth(1, 1)),
        islands,
        nest.islandsNetMm2(),
        bends,
        open,
        marks,
        defects);
  }

  private static List<Contour> contours(List<Ring> rings) {
    return rings.stream().map(r -> r.contour).toList();
  }

  private void sort(Stroke stroke) {
    List<Curve> curves = new ArrayList<>();
    for (Curve curve : stroke.curves()) {
      if (curve.lengthMm() > tolerances.joinMm() / 10) {
        curves.add(curve);
      }
    }
    if (curves.isEmpty()) {
      return;
    }
    if (stroke.role() != Stroke.Role.CUT) {
      if (stroke.role() == Stroke.Role.MARK) {
        marks.addAll(curves);
      } else {
        maybeBends.add(new Stroke(curves, stroke.closed(), stroke.role(), stroke.label()));
      }
      return;
    }
    Point start = curves.get(0).start();
    Point end = curves.get(curves.size() - 1).end();
    boolean meets = start.distance(end) <= tolerances.joinMm();
    boolean closes = meets && (curves.size() > 1 || !(curves.get(0) instanceof Segment));
    if (stroke.closed() || closes) {
      contours.add(new Contour(curves, stroke.label()));
      return;
    }
    for (Curve curve : curves) {
      int from = joints.number(curve.start());
      int to = joints.number(curve.end());
      if (from != to || !(curve instanceof Segment)) {
        loose.add(new Edge(curve, stroke.label(), from, to));
      }
    }
  }

  private List<Edge> withoutDoubles() {
    Map<Long, List<Edge>> between = new HashMap<>();
    List<Edge> single = new ArrayList<>();
    for (Edge edge : loose) {
      long low = Math.min(edge.from, edge.to);
      long high = Math.max(edge.from, edge.to);
      List<Edge> same = between.computeIfAbsent(low << 32 | high, k -> new ArrayList<>(1));
      Point middle = edge.curve.middle();
      boolean drawn =
          same.stream().anyMatch(e -> e.curve.middle().distance(middle) <= 2 * tolerances.joinMm());
      if (drawn) {
        defects.add(new Defect(Defect.Kind.DOUBLED, middle, edge.curve.lengthMm(), edge.label));
      } else {
        same.add(edge);
        single.add(edge);
      }
    }
    return single;
  }

  /** What lacks little is closed straight to have a figure to show, and asked about. */
  private void almostClosed(List<Chain> rest) {
    List<Chain> still = new ArrayList<>();
    for (Chain chain : rest) {
      double gap = chain.gapMm();
      boolean bent = chain.curves().size() > 1 || !(chain.curves().get(0) instanceof Segment);
      if (bent && gap <= ALMOST_CLOSED * chain.lengthMm()) {
        contours.add(new Contour(chain.curves(), chain.label()));
        Point middle = chain.start().middle(chain.end());
        defects.add(new Defect(Defect.Kind.OPEN_CLOSED_FOR_NOW, middle, gap, chain.label()));
      } else {
        still.add(chain);
      }
    }
    rest.clear();
    rest.addAll(still);
  }
}
