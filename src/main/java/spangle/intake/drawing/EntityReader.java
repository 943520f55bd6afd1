package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spangle.intake.drawing.RawEntity.BadNumber;
import spangle.part.ShapeException;
import spangle.part.flat.Affine;
import spangle.part.flat.Arc;
import spangle.part.flat.Curve;
import spangle.part.flat.Point;
import spangle.part.flat.Segment;

/** Turns one entity into what it draws. */
final class EntityReader {
  /** Entities that speak or help and are never cut. */
  private static final Set<String> SILENT =
      Set.of(
          "DIMENSION",
          "ARC_DIMENSION",
          "LARGE_RADIAL_DIMENSION",
          "LEADER",
          "MLEADER",
          "MULTILEADER",
          "TOLERANCE",
          "HATCH",
          "POINT",
          "VIEWPORT",
          "IMAGE",
          "WIPEOUT",
          "OLE2FRAME",
          "OLEFRAME",
          "XLINE",
          "RAY",
          "SOLID",
          "TRACE",
          "SHAPE",
          "LIGHT",
          "SEQEND",
          "VERTEX",
          "ATTDEF",
          "ATTRIB",
          "PDFUNDERLAY",
          "DWFUNDERLAY",
          "DGNUNDERLAY");

  private static final double PLANE = 1e-6;

  private final Faults faults;
  private final SplineReader splines = new SplineReader();

  EntityReader(Faults faults) {
    this.faults = faults;
  }

  /** What the entity draws; empty for what draws nothing or cannot be drawn, which is noted. */
  Optional<Drawn> read(RawEntity entity) {
    try {
      if (entity.whole(67, 0) == 1 || entity.whole(60, 0) == 1) {
        return Optional.empty();
      }
      return switch (entity.type()) {
        case "LINE" -> line(entity);
        case "CIRCLE", "ARC" -> circle(entity);
        case "ELLIPSE" -> ellipse(entity);
        case "LWPOLYLINE" -> lightPolyline(entity);
        case "SPLINE" -> spline(entity);
        case "INSERT" -> insert(entity);
        case "TEXT", "MTEXT" -> words(entity);
        default -> other(entity);
      };
    } catch (BadNumber bad) {
      faults.broken(
          entity.type()
              + " with '"
              + shortened(bad.tag().value())
              + "' where a number up to 1e9 should be",
          bad.tag().line());
    } catch (ShapeException impossible) {
      faults.broken(entity.type() + ", " + impossible.sentence(), entity.line());
    }
    return Optional.empty();
  }

  private static String shortened(String text) {
    return text.length() <= 30 ? text : text.substring(0, 27) + "...";
  }

  private Optional<Drawn> other(RawEntity entity) {
    if (!SILENT.contains(entity.type()) && !entity.type().endsWith("_TABLE")) {
      faults.notRead(entity.type(), entity.line());
    }
    return Optional.empty();
  }

  private Optional<Drawn> line(RawEntity e) throws BadNumber {
    Point start = e.point(10);
    Point end = e.point(11);
    double rise = Math.abs(e.number(31, 0) - e.number(30, 0));
    if (rise > 1e-3 * start.distance(end) + PLANE) {
      return tilted(e);
    }
    return figure(e, List.of(new Segment(start, end)), false);
  }

  private Optional<Drawn> circle(RawEntity e) throws BadNumber {
    double radius = e.number(40, 0);
    if (!(radius > 0)) {
      faults.broken(e.type() + " without a radius", e.line());
      return Optional.empty();
    }
    if (e.type().equals("CIRCLE")) {
      return inPlane(e, List.of(Arc.circle(e.point(10), radius)), true);
    }
    double from = Math.toRadians(e.number(50, 0));
    double to = Math.toRadians(e.number(51, 360));
    Arc arc = Arc.circle(e.point(10), radius, from, sweep(from, to));
    return inPlane(e, List.of(arc), arc.whole());
  }

  /** Arcs run counter-clockwise; equal angles are a whole turn. */
  private static double sweep(double from, double to) {
    double turn = (to - from) % (2 * Math.PI);
    double positive = turn < 0 ? turn + 2 * Math.PI : turn;
    return positive < 1e-9 ? 2 * Math.PI : positive;
  }

  private Optional<Drawn> ellipse(RawEntity e) throws BadNumber {
    Point major = e.point(11);
    double ratio = e.number(40, 0);
    if (!(major.length() > 0) || !(Math.abs(ratio) > 1e-9)) {
      faults.broken("ELLIPSE without axes", e.line());
      return Optional.empty();
    }
    int facing = facing(e);
    if (facing == 0) {
      return tilted(e);
    }
    Point minor = new Point(-major.y(), major.x()).times(ratio * facing);
    double from = e.number(41, 0);
    double to = e.number(42, 2 * Math.PI);
    Arc arc = new Arc(e.point(10), major, minor, from, sweep(from, to));
    return figure(e, List.of(arc), arc.whole());
  }

  private Optional<Drawn> lightPolyline(RawEntity e) throws BadNumber {
    Polyline polyline = new Polyline();
    Double x = null;
    double y = 0;
    double bulge = 0;
    for (Tag tag : e.tags()) {
      if (tag.code() == 10) {
        if (x != null) {
          polyline.add(new Point(x, y), bulge);
        }
        x = RawEntity.number(tag);
        y = 0;
        bulge = 0;
      } else if (tag.code() == 20) {
        y = RawEntity.number(tag);
      } else if (tag.code() == 42) {
        bulge = RawEntity.number(tag);
      }
    }
    if (x != null) {
      polyline.add(new Point(x, y), bulge);
    }
    return polyline(e, polyline, (e.whole(70, 0) & 1) == 1);
  }

  /** A polyline of the old kind, whose vertices are entities of their own. */
  Optional<Drawn> oldPolyline(RawEntity head, List<RawEntity> vertices) {
    try {
      int flags = head.whole(70, 0);
      if (head.whole(67, 0) == 1 || head.whole(60, 0) == 1) {
        return Optional.empty();
      }
      if ((flags & (16 | 64)) != 0) {
        faults.notRead("POLYLINE mesh", head.line());
        return Optional.empty();
      }
      boolean smoothed = (flags & 4) != 0;
      boolean spatial = (flags & 8) != 0;
      Polyline polyline = new Polyline();
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (RawEntity vertex : vertices) {
        boolean frame = (vertex.whole(70, 0) & 16) != 0;
        if (!(smoothed && frame)) {
          polyline.add(vertex.point(10), vertex.number(42, 0));
          low = Math.min(low, vertex.number(30, 0));
          high = Math.max(high, vertex.number(30, 0));
        }
      }
      boolean closed = (flags & 1) != 0;
      if (spatial) {
        return high - low > PLANE + 1e-3 * polyline.size()
            ? tilted(head)
            : figure(head, polyline.curves(closed), closed);
      }
      return polyline(head, polyline, closed);
    } catch (BadNumber bad) {
      faults.broken(
          "POLYLINE with '" + shortened(bad.tag().value()) + "' where a number up to 1e9 should be",
          bad.tag().line());
      return Optional.empty();
    }
  }

  private Optional<Drawn> polyline(RawEntity e, Polyline polyline, boolean closed)
      throws BadNumber {
    if (polyline.points() < 2) {
      faults.broken(e.type() + " with fewer than two points", e.line());
      return Optional.empty();
    }
    return inPlane(e, polyline.curves(closed), closed);
  }

  private Optional<Drawn> spline(RawEntity e) throws BadNumber {
    List<Curve> curves = splines.curves(e);
    boolean closed = curves.get(0).start().distance(curves.get(curves.size() - 1).end()) <= 1e-9;
    return figure(e, curves, closed);
  }

  private Optional<Drawn> insert(RawEntity e) throws BadNumber {
    int facing = facing(e);
    if (facing == 0) {
      return tilted(e);
    }
    double turn = e.number(50, 0);
    Affine scale = Affine.scale(e.number(41, 1), e.number(42, 1));
    Affine turned = Affine.turn(turn);
    Point at = e.point(10);
    Affine mirror = Affine.scale(facing, 1);
    Affine place = scale.then(turned).then(Affine.shift(at.x(), at.y())).then(mirror);
    Affine steps = turned.then(mirror);
    Point step = steps.vector(new Point(e.number(44, 0), 0));
    Point rise = steps.vector(new Point(0, e.number(45, 0)));
    int columns = Math.max(1, e.whole(70, 1));
    int rows = Math.max(1, e.whole(71, 1));
    return Optional.of(
        new Drawn.Insert(
            e.text(2, ""),
            place,
            columns,
            rows,
            step,
            rise,
            e.text(8, "0"),
            e.text(6, ""),
            e.line()));
  }

  private static Optional<Drawn> words(RawEntity e) throws BadNumber {
    StringBuilder words = new StringBuilder();
    for (Tag tag : e.tags()) {
      boolean text = tag.code() == 1 || (tag.code() == 3 && e.type().equals("MTEXT"));
      if (text && words.length() < 500) {
        words.append(tag.value());
      }
    }
    return Optional.of(new Drawn.Words(words.toString(), e.point(10), e.text(8, "0")));
  }

  /** An entity whose points are in its own plane: mirrored when seen from behind. */
  private Optional<Drawn> inPlane(RawEntity e, List<? extends Curve> curves, boolean closed)
      throws BadNumber {
    int facing = facing(e);
    if (facing == 0) {
      return tilted(e);
    }
    List<Curve> placed = new ArrayList<>(curves.size());
    Affine mirror = Affine.scale(-1, 1);
    for (Curve curve : curves) {
      placed.add(facing < 0 ? curve.transformed(mirror) : curve);
    }
    return figure(e, placed, closed);
  }

  /** 1 towards the viewer, -1 away, 0 when the entity's plane is tilted. */
  private static int facing(RawEntity e) throws BadNumber {
    double x = e.number(210, 0);
    double y = e.number(220, 0);
    double z = e.number(230, 1);
    boolean level = Math.hypot(x, y) <= PLANE * Math.max(1, Math.abs(z)) && z != 0;
    return level ? (int) Math.signum(z) : 0;
  }

  private Optional<Drawn> tilted(RawEntity e) {
    faults.broken(e.type() + " does not lie in the plane of the drawing", e.line());
    return Optional.empty();
  }

  private static Optional<Drawn> figure(RawEntity e, List<? extends Curve> curves, boolean closed) {
    String layer = e.text(8, "0");
    String shown = layer.length() <= 40 ? layer : layer.substring(0, 37) + "...";
    String label = e.type() + " on layer '" + shown + "', line " + e.line();
    return Optional.of(new Drawn.Figure(List.copyOf(curves), closed, layer, e.text(6, ""), label));
  }
}
