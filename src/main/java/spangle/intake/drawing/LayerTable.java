package spangle.intake.drawing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spangle.part.flat.Stroke;

/**
 * Layers and line kinds of a drawing, and what they say of a line. Words on layers are common
 * practice in several languages, no standard: whatever is on no such layer is to be cut.
 */
final class LayerTable {
  private static final List<String> BEND_WORDS =
      List.of("bend", "bent", "fold", "bieg", "abkant", "knick", "pliage", "plieg", "crease");
  private static final List<String> MARK_WORDS =
      List.of(
          "dim",
          "text",
          "txt",
          "note",
          "anno",
          "mark",
          "etch",
          "engrav",
          "scrib",
          "grav",
          "bemass",
          "bemaß",
          "title",
          "titel",
          "frame",
          "rahmen",
          "legend",
          "center",
          "centre",
          "centerline",
          "axis",
          "axes",
          "achse",
          "hatch",
          "constr",
          "hilfs",
          "defpoints",
          "hidden",
          "symbol",
          "beschrift",
          "viewport");
  private static final List<String> BROKEN_WORDS =
      List.of("center", "centre", "dash", "hidden", "phantom", "dot", "divide", "border");

  private final Set<String> off = new HashSet<>();
  private final Map<String, String> kindOfLayer = new HashMap<>();
  private final Map<String, Boolean> broken = new HashMap<>();

  /** A layer as the tables give it. */
  void layer(String name, boolean shown, String lineKind) {
    if (!shown) {
      off.add(key(name));
    }
    kindOfLayer.put(key(name), lineKind);
  }

  /** A line kind as the tables give it. */
  void lineKind(String name, boolean dashes) {
    broken.put(key(name), dashes);
  }

  boolean shown(String layer) {
    return !off.contains(key(layer));
  }

  /** What a line on this layer and of this kind is for. */
  Stroke.Role role(String layer, String lineKind) {
    for (String word : key(layer).split("[^\\p{L}]+", -1)) {
      if (BEND_WORDS.stream().anyMatch(word::startsWith)) {
        return Stroke.Role.BEND;
      }
      if (MARK_WORDS.stream().anyMatch(word::startsWith)) {
        return Stroke.Role.MARK;
      }
    }
    boolean byLayer = lineKind.isEmpty() || key(lineKind).equals("bylayer");
    String kind = byLayer ? kindOfLayer.getOrDefault(key(layer), "") : lineKind;
    return brokenKind(kind) ? Stroke.Role.BROKEN : Stroke.Role.CUT;
  }

  private boolean brokenKind(String kind) {
    Boolean known = broken.get(key(kind));
    return known != null ? known : BROKEN_WORDS.stream().anyMatch(key(kind)::contains);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
