package spangle.intake.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spangle.measure.QuantityKind;

/**
 * Names of the columns of job files: the program's own, and the ones people usually write. A
 * heading may carry its unit: {@code Thickness (mm)}, {@code Dicke in mm}, {@code width_in}.
 */
final class JobColumns {
  private static final Pattern BRACKETED =
      Pattern.compile("(.*?)\\s*[(\\[]\\s*([^)\\]]*)\\s*[)\\]]\\s*");

  private static final Pattern IN_UNIT = Pattern.compile(" (in|je|per)$");

  /** Columns with a kind of quantity; the others are plain. */
  private static final Map<String, QuantityKind> KINDS = kinds();

  private static final List<String> NAMES =
      List.of(
          "job",
          "customer",
          "part",
          "description",
          "revision",
          "qty",
          "material",
          "grade",
          "thickness",
          "thickest",
          "gauge",
          "shape",
          "length",
          "width",
          "height",
          "area",
          "mass",
          "drawing",
          "drawing_unit",
          "route",
          "finish",
          "film",
          "ready",
          "due",
          "arrivals",
          "priority",
          "welded",
          "hollow",
          "vents_checked",
          "overlaps",
          "pockets",
          "soldered",
          "certificate",
          "si_pct",
          "p_pct",
          "al_pct",
          "heat_sensitive",
          "heat_limit",
          "moving_parts",
          "hooks",
          "show_face",
          "masking",
          "masked_area",
          "spin",
          "carriers",
          "may_turn",
          "strength_mpa",
          "bend_radius",
          "note");

  private static final Map<String, String> ALIASES = aliases();

  private JobColumns() {}

  /** All names in the order of the template. */
  static List<String> names() {
    return List.copyOf(NAMES);
  }

  /** The kind of quantity a column holds, where it holds one. */
  static Optional<QuantityKind> kind(String name) {
    return Optional.ofNullable(KINDS.get(name));
  }

  /** The name of a key without its unit: {@code thickness} of {@code thickness_mm}. */
  static String stem(String key) {
    int cut = key.lastIndexOf('_');
    if (cut < 0) {
      return key;
    }
    QuantityKind kind = KINDS.get(key.substring(0, cut));
    return kind != null && kind.symbols().contains(key.substring(cut + 1))
        ? key.substring(0, cut)
        : key;
  }

  /**
   * The program's key for a heading.
   *
   * @param heading as written
   * @param learned names of this customer, heading to key, headings in small letters
   * @return empty where the heading is not known
   */
  static Optional<String> key(String heading, Map<String, String> learned) {
    String written = heading.strip().toLowerCase(Locale.ROOT);
    String taught = learned.get(written);
    if (taught != null) {
      return Optional.of(taught);
    }
    if (written.isEmpty() || written.length() > 80) {
      return Optional.empty();
    }
    Matcher bracketed = BRACKETED.matcher(written);
    if (bracketed.matches()) {
      return withUnit(bracketed.group(1), bracketed.group(2), true);
    }
    Optional<String> whole = Optional.ofNullable(ALIASES.get(plain(written)));
    if (whole.isPresent()) {
      return whole;
    }
    int cut = lastGap(written);
    return cut < 0
        ? Optional.empty()
        : withUnit(written.substring(0, cut), written.substring(cut + 1), false);
  }

  private static int lastGap(String text) {
    return Math.max(text.lastIndexOf(' '), text.lastIndexOf('_'));
  }

  private static Optional<String> withUnit(String base, String unit, boolean inBrackets) {
    String whole = plain(base);
    String stem = IN_UNIT.matcher(whole).replaceFirst("");
    String name = ALIASES.getOrDefault(stem, ALIASES.get(whole));
    if (name == null) {
      return Optional.empty();
    }
    String symbol = unit.strip().replace("µ", "u").replace("²", "2").replace("°", "");
    if (name.equals("thickness") && (symbol.equals("ga") || symbol.equals("gauge"))) {
      return Optional.of("gauge");
    }
    QuantityKind kind = KINDS.get(name);
    if (kind != null && kind.symbols().contains(symbol)) {
      return Optional.of(name + "_" + symbol);
    }
    // A remark in brackets that is no unit of this column: 'Finish (RAL)', 'Qty (pcs)'.
    boolean remark = inBrackets && (kind == null || symbol.isEmpty());
    return remark ? Optional.of(name) : Optional.empty();
  }

  /** Marks between words become one blank: {@code Order_No.} is {@code order no}. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean between = "_-./#:".indexOf(c) >= 0 || Character.isWhitespace(c) || c == '\u00a0';
      if (!between) {
        plain.append(c);
      } else if (plain.length() > 0 && plain.charAt(plain.length() - 1) != ' ') {
        plain.append(' ');
      }
    }
    return plain.toString().stripTrailing();
  }

  private static Map<String, QuantityKind> kinds() {
    Map<String, QuantityKind> kinds = new LinkedHashMap<>();
    for (String length :
        List.of("thickness", "thickest", "length", "width", "height", "bend_radius", "shape")) {
      kinds.put(length, QuantityKind.LENGTH);
    }
    kinds.put("area", QuantityKind.AREA);
    kinds.put("masked_area", QuantityKind.AREA);
    kinds.put("mass", QuantityKind.MASS);
    kinds.put("film", QuantityKind.FILM);
    kinds.put("heat_limit", QuantityKind.TEMPERATURE);
    return kinds;
  }

  private static Map<String, String> aliases() {
    Map<String, String> aliases = new LinkedHashMap<>();
    for (String name : NAMES) {
      aliases.put(plain(name), name);
    }
    add(aliases, "job", "job no", "job number", "order", "order no", "order number", "work order");
    add(aliases, "job", "wo", "wo no", "auftrag", "auftragsnr", "auftrag nr", "bestellung");
    add(aliases, "customer", "client", "kunde", "for", "ordered by");
    add(aliases, "part", "part no", "part number", "item", "item no", "article", "teil");
    add(aliases, "part", "teilenr", "teil nr", "artikel", "artikelnr", "drawing no", "pos");
    add(aliases, "description", "desc", "name", "part name", "bezeichnung", "benennung");
    add(aliases, "revision", "rev", "index", "version");
    add(aliases, "qty", "quantity", "pcs", "pieces", "count", "number", "nos", "menge", "anzahl");
    add(aliases, "qty", "stück", "stueck", "stk", "qty ordered", "ordered");
    add(aliases, "material", "mat", "metal", "werkstoff");
    add(aliases, "grade", "steel grade", "güte", "guete");
    add(aliases, "thickness", "thk", "thick", "t", "sheet", "dicke", "stärke", "blechdicke");
    add(aliases, "thickest", "max thickness", "thickness max");
    add(aliases, "gauge", "ga", "gage");
    add(aliases, "shape", "form", "geometry", "abmessung", "abmessungen");
    add(aliases, "length", "l", "len", "länge", "laenge");
    add(aliases, "width", "w", "b", "breite");
    add(aliases, "height", "h", "depth", "höhe", "hoehe");
    add(
        aliases,
        "area",
        "surface",
        "area each",
        "area per piece",
        "fläche",
        "flaeche",
        "oberfläche");
    add(aliases, "mass", "weight", "wt", "weight each", "unit weight", "gewicht", "masse");
    add(aliases, "drawing_unit", "dxf unit", "unit of drawing", "zeichnungseinheit");
    add(aliases, "drawing", "dxf", "file", "drawing file", "zeichnung");
    add(aliases, "route", "process", "treatment", "verfahren");
    add(aliases, "finish", "colour", "color", "coating", "powder", "paint", "farbe", "ral");
    add(aliases, "film", "dft", "film thickness", "schichtdicke");
    add(aliases, "ready", "ready date", "available", "arrives", "start", "bereit");
    add(aliases, "due", "due date", "deadline", "need by", "needed", "termin", "liefertermin");
    add(aliases, "priority", "prio", "urgency");
    add(aliases, "welded", "weld", "geschweißt", "geschweisst");
    add(aliases, "hollow", "hollows", "hollow sections", "hohl");
    add(aliases, "overlaps", "overlap", "doublers");
    add(aliases, "pockets", "blind pockets", "returns");
    add(aliases, "soldered", "brazed", "solder", "gelötet", "geloetet");
    add(aliases, "certificate", "cert", "mill certificate", "mill cert", "zeugnis");
    add(aliases, "si_pct", "si", "si %", "silicon");
    add(aliases, "p_pct", "p", "p %", "phosphorus");
    add(aliases, "al_pct", "al", "al %");
    add(aliases, "heat_sensitive", "heat sensitive parts", "rubber", "plastic");
    add(aliases, "hooks", "hooks per piece", "haken");
    add(aliases, "show_face", "show side", "visible face", "sichtseite");
    add(aliases, "masking", "masks", "mask", "plugs");
    add(aliases, "spin", "centrifuge", "schleudern");
    add(aliases, "carriers", "carrier", "rack");
    add(aliases, "note", "notes", "remark", "remarks", "comment", "comments", "bemerkung");
    return aliases;
  }

  private static void add(Map<String, String> aliases, String name, String... others) {
    for (String other : others) {
      aliases.putIfAbsent(other, name);
    }
  }
}
