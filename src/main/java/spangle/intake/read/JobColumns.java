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

  private static final Pattern SQUARE_LAST = Pattern.compile("[ _]sq\\.? ?[a-z]+\\.?$");
  private static final Pattern PER_PIECE =
      Pattern.compile("\\s*(/|\\bper\\b|\\b)\\s*(pcs?|pieces?|parts?|each|ea)\\.?$");

  /** What may stand in brackets behind a column of plain numbers. */
  private static final Map<String, Pattern> PLAIN_UNITS = plainUnits();

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
          "skins",
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
          "reject_allowance_pct",
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
    Matcher square = SQUARE_LAST.matcher(text);
    return square.find() ? square.start() : Math.max(text.lastIndexOf(' '), text.lastIndexOf('_'));
  }

  /** {@code sq. ft.} is {@code sqft}, {@code kg/pc} is {@code kg}: all figures are of one piece. */
  private static String symbol(String unit) {
    String symbol = unit.strip().replace("µ", "u").replace("²", "2").replace("°", "");
    return PER_PIECE.matcher(symbol).replaceFirst("").replaceAll("[ .^]", "");
  }

  private static Optional<String> withUnit(String base, String unit, boolean inBrackets) {
    String whole = plain(base);
    String stem = IN_UNIT.matcher(whole).replaceFirst("");
    String name = ALIASES.getOrDefault(stem, ALIASES.get(whole));
    if (name == null) {
      return Optional.empty();
    }
    String symbol = symbol(unit);
    if (name.equals("thickness") && (symbol.equals("ga") || symbol.equals("gauge"))) {
      return Optional.of("gauge");
    }
    QuantityKind kind = KINDS.get(name);
    if (kind != null && kind.symbols().contains(symbol)) {
      return Optional.of(name + "_" + symbol);
    }
    // A remark in brackets that is no unit of this column: 'Finish (RAL)', 'Qty (pcs)'.
    boolean remark = inBrackets && (symbol.isEmpty() || (kind == null && !counted(name, symbol)));
    return remark ? Optional.of(name) : Optional.empty();
  }

  /** Dozens, boxes, ppm: a plain number of something else than the column counts. */
  private static boolean counted(String name, String symbol) {
    Pattern units = PLAIN_UNITS.get(name);
    return units != null && !units.matcher(symbol).matches();
  }

  /** Whether a heading gives way where another of the same column is clearer. */
  static boolean weak(String heading) {
    return ColumnWords.weak(plain(heading.strip().toLowerCase(Locale.ROOT)));
  }

  /** Marks between words become one blank: {@code Order_No.} is {@code order no}. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\'' || c == '\u2019') {
        continue;
      }
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

  private static Map<String, Pattern> plainUnits() {
    Map<String, Pattern> units = new LinkedHashMap<>();
    units.put("qty", Pattern.compile("pcs?|pieces?|parts?|nos?|off|ea|each|stk|st\u00fcck"));
    units.put("gauge", Pattern.compile("ga|gage|gauge|#|no"));
    units.put("hooks", Pattern.compile("pcs?|nos?|each|ea"));
    units.put("strength_mpa", Pattern.compile("mpa|n/mm2"));
    for (String pct : List.of("si_pct", "p_pct", "al_pct", "reject_allowance_pct")) {
      units.put(pct, Pattern.compile("%|pct|percent|w(?:t|eight)?%|%w(?:t|eight)?|mass%"));
    }
    return units;
  }

  private static Map<String, String> aliases() {
    Map<String, String> aliases = new LinkedHashMap<>();
    for (String name : NAMES) {
      aliases.put(plain(name), name);
    }
    ColumnWords.all().forEach(aliases::putIfAbsent);
    return aliases;
  }
}
