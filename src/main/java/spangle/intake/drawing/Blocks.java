package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spangle.intake.problem.Place;
import spangle.intake.source.UnreadableException;
import spangle.part.flat.Affine;
import spangle.part.flat.Bezier;
import spangle.part.flat.Curve;
import spangle.part.flat.Point;
import spangle.part.flat.Stroke;

/** Blocks by name, and how they are put in place within one another. */
final class Blocks {
  /** Before hatches were entities they were blocks without a name of their own. */
  private static final String HATCH = "*x";

  private record Block(Point base, List<Drawn> drawn) {}

  /** Everything where it belongs. */
  record Placed(List<Stroke> strokes, List<Drawing.Note> words) {}

  private final Map<String, Block> blocks = new HashMap<>();
  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Drawing.Note> words = new ArrayList<>();
  private int curves;
  private int inserts;

  void add(String name, Point base, List<Drawn> drawn) {
    blocks.put(name.toLowerCase(Locale.ROOT), new Block(base, drawn));
  }

  /** Where what a thing inherits comes from: the layer and line kind of the block it stands in. */
  private record Scope(Affine place, String layer, String lineKind, int depth) {}

  Placed place(List<Drawn> top, LayerTable layers, Faults faults) throws UnreadableException {
    place(top, new Scope(Affine.IDENTITY, "0", "", 0), layers, faults);
    return new Placed(strokes, words);
  }

  private void place(List<Drawn> drawn, Scope scope, LayerTable layers, Faults faults)
      throws UnreadableException {
    for (Drawn thing : drawn) {
      String layer = thing.layer().equals("0") ? scope.layer : thing.layer();
      if (!layers.shown(layer)) {
        continue;
      }
      if (thing instanceof Drawn.Figure figure) {
        figure(figure, layer, scope, layers, faults);
      } else if (thing instanceof Drawn.Insert insert) {
        insert(insert, layer, scope, layers, faults);
      } else if (thing instanceof Drawn.Words text && words.size() < DrawingLimits.TEXTS) {
        words.add(new Drawing.Note(text.words(), scope.place.point(text.at())));
      }
    }
  }

  private void figure(
      Drawn.Figure figure, String layer, Scope scope, LayerTable layers, Faults faults)
      throws UnreadableException {
    curves += effort(figure);
    if (curves > DrawingLimits.CURVES) {
      throw UnreadableException.tooLarge(
          Place.file(faults.file()),
          "the drawing has too many lines once its blocks are in place",
          DrawingLimits.CURVES
              + " lines and arcs, a piece of a spline counted "
              + DrawingLimits.SPLINE_EFFORT
              + " times");
    }
    String kind = byBlock(figure.lineKind()) ? scope.lineKind : figure.lineKind();
    Stroke stroke =
        new Stroke(figure.curves(), figure.closed(), layers.role(layer, kind), figure.label());
    Stroke placed = scope.depth == 0 ? stroke : stroke.transformed(scope.place);
    for (Curve curve : placed.curves()) {
      if (!curve.start().finite() || !curve.end().finite()) {
        faults.broken(figure.label() + " lies beyond the world of drawings", 0);
        return;
      }
    }
    strokes.add(placed);
  }

  /** A piece of a spline takes as much reckoning as several lines. */
  private static int effort(Drawn.Figure figure) {
    int effort = 0;
    for (Curve curve : figure.curves()) {
      effort += curve instanceof Bezier ? DrawingLimits.SPLINE_EFFORT : 1;
    }
    return effort;
  }

  private static boolean byBlock(String kind) {
    return kind.equalsIgnoreCase("BYBLOCK");
  }

  private void insert(
      Drawn.Insert insert, String layer, Scope scope, LayerTable layers, Faults faults)
      throws UnreadableException {
    if (insert.block().toLowerCase(Locale.ROOT).startsWith(HATCH)) {
      faults.hatch(insert.line());
      return;
    }
    Block block = blocks.get(insert.block().toLowerCase(Locale.ROOT));
    if (block == null) {
      faults.broken(
          "INSERT of a block '" + shown(insert.block()) + "' that is not in the file",
          insert.line());
      return;
    }
    if (scope.depth >= DrawingLimits.DEPTH) {
      throw UnreadableException.tooLarge(
          Place.at(faults.file(), insert.line(), 0),
          "blocks stand in blocks too deep, or in themselves",
          DrawingLimits.DEPTH + " blocks in one another");
    }
    long places = (long) insert.columns() * insert.rows();
    if (places + inserts > DrawingLimits.INSERTS) {
      throw UnreadableException.tooLarge(
          Place.at(faults.file(), insert.line(), 0),
          "blocks are put in place too many times",
          DrawingLimits.INSERTS + " blocks put in place");
    }
    inserts += (int) places;
    String kind = byBlock(insert.lineKind()) ? scope.lineKind : insert.lineKind();
    Affine base = Affine.shift(-block.base.x(), -block.base.y());
    for (int row = 0; row < insert.rows(); row++) {
      for (int column = 0; column < insert.columns(); column++) {
        Point shift = insert.step().times(column).plus(insert.rise().times(row));
        Affine place =
            base.then(insert.place()).then(Affine.shift(shift.x(), shift.y())).then(scope.place);
        place(block.drawn, new Scope(place, layer, kind, scope.depth + 1), layers, faults);
      }
    }
  }

  private static String shown(String name) {
    return name.length() <= 40 ? name : name.substring(0, 37) + "...";
  }
}
