package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.ShapeWords;
import spangle.measure.MeasureException;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** Reads a shape in words: {@code plate 160x120 mm holes 4x11}. */
final class ShapeReader {
  private static final Pattern SHAPE =
      Pattern.compile(
          "([a-z]+)[ :]+(.*?)(?:[ ,]+(open(?:[ -]front)?))?(?:[ ,]+holes?[ :]+(.*?))?(?:[ ,]+(open(?:[ -]front)?))?",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
  private static final Pattern UNIT_LAST =
      Pattern.compile(".*[0-9.,]\\s*([a-z\"'\u2033\u2032]+)\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern SECTION =
      Pattern.compile(
          "(.+?)\\s+(?:x\\s*|l\\s*=?\\s*)?([0-9.,]+\\s*[a-z\"]*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern FLAT_BAR =
      Pattern.compile("(?:bar|iron|steel)\\b.*", Pattern.CASE_INSENSITIVE);
  private static final Pattern HOLE =
      Pattern.compile("([0-9]{1,5})\\s*[xX×]\\s*([0-9.,]+)\\s*([a-z\"]*)");
  private static final Pattern HOLES_APART = Pattern.compile("[ ,;+]+(?=[0-9]+\\s*[xX×])");
  private static final Map<String, ShapeWords.Form> FORMS = forms();

  private ShapeReader() {}

  /**
   * Reads the words of one part.
   *
   * @param columnUnit unit the column carries; empty where it carries none
   */
  static Optional<ShapeWords> read(
      String key, Datum.Scalar scalar, String columnUnit, Notes notes) {
    String text = scalar.text();
    if (text.length() > 300) {
      return bad(key, scalar, notes, "the words are too long for a shape");
    }
    Matcher matcher = SHAPE.matcher(SectionNames.spelled(text).strip());
    if (!matcher.matches()) {
      return bad(key, scalar, notes, "a shape starts with a word and goes on with its sizes");
    }
    String word = matcher.group(1).toLowerCase(Locale.ROOT);
    ShapeWords.Form form = FORMS.get(word);
    if (form == null) {
      return bad(
          key,
          scalar,
          notes,
          "'" + word + "' is not a known form" + Near.hint(word, FORMS.keySet()));
    }
    boolean open = matcher.group(3) != null || matcher.group(5) != null;
    String sizes = matcher.group(2).strip();
    try {
      return words(form, sizes, open, matcher.group(4), columnUnit, text);
    } catch (MeasureException complaint) {
      boolean unit = columnUnit.isEmpty() && !UNIT_LAST.matcher(sizes).matches();
      notes.add(
          unit ? ProblemCode.UNIT_MISSING : ProblemCode.SHAPE_NOT_READ,
          scalar.place(),
          key,
          text,
          form.word() + " with " + form.sizes() + " sizes and a unit",
          unit ? "the sizes have no unit" : "this is not " + complaint.expected(),
          unit ? "write mm, cm or in after the last size" : complaint.remedy());
      return Optional.empty();
    }
  }

  private static Optional<ShapeWords> words(
      ShapeWords.Form form,
      String sizes,
      boolean open,
      @Nullable String holes,
      String columnUnit,
      String text) {
    if (form == ShapeWords.Form.FLAT || form == ShapeWords.Form.SOLID) {
      if (sizes.isEmpty()) {
        throw new MeasureException(text, "a drawing's name", "name the file after the form");
      }
      if (FLAT_BAR.matcher(sizes).matches()) {
        throw new MeasureException(
            text, "a drawing's name", "tell a flat bar by its area or mass and its three sizes");
      }
      return Optional.of(new ShapeWords(form, List.of(), open, List.of(), sizes, text));
    }
    if (form == ShapeWords.Form.SECTION) {
      Matcher section = SECTION.matcher(sizes);
      if (!section.matches()) {
        throw new MeasureException(
            text, "a section with its length", "write it like section SHS50x50x3 x 1200 mm");
      }
      List<Double> length = sizesMm(withUnit(section.group(2), columnUnit), 1);
      String name = section.group(1).replaceFirst("\\s*[xX]\\s*$", "").strip();
      return Optional.of(new ShapeWords(form, length, open, List.of(), name, text));
    }
    List<Double> sides = sizesMm(withUnit(sizes, columnUnit), form.sizes());
    Matcher unit = UNIT_LAST.matcher(sizes);
    String holeUnit = unit.matches() ? unit.group(1) : columnUnit;
    return Optional.of(new ShapeWords(form, sides, open, holes(holes, holeUnit), "", text));
  }

  private static List<Double> sizesMm(String text, int count) {
    List<Double> sizes = Quantities.sizesMm(text, count);
    if (sizes.stream().anyMatch(mm -> !BodyReader.SIDE_MM.holds(mm))) {
      throw new MeasureException(
          text, "a size of " + BodyReader.SIDE_MM.words("mm"), "check the sizes and their unit");
    }
    return sizes;
  }

  private static List<ShapeWords.RoundHoles> holes(@Nullable String text, String unit) {
    List<ShapeWords.RoundHoles> holes = new ArrayList<>();
    if (text == null || text.isBlank()) {
      return holes;
    }
    for (String piece : HOLES_APART.split(text.strip(), -1)) {
      Matcher hole = HOLE.matcher(piece.strip());
      if (!hole.matches()) {
        throw new MeasureException(text, "holes as count x diameter", "write it like holes 4x11");
      }
      String own = hole.group(3).isBlank() ? unit : hole.group(3);
      double diameterMm = Quantities.read(QuantityKind.LENGTH, hole.group(2), own);
      if (!BodyReader.SIDE_MM.holds(diameterMm)) {
        throw new MeasureException(
            text, "holes of " + BodyReader.SIDE_MM.words("mm"), "check the holes and their unit");
      }
      holes.add(new ShapeWords.RoundHoles(Integer.parseInt(hole.group(1)), diameterMm));
    }
    return holes;
  }

  private static String withUnit(String sizes, String columnUnit) {
    return columnUnit.isEmpty() || UNIT_LAST.matcher(sizes).matches()
        ? sizes
        : sizes + " " + columnUnit;
  }

  private static Optional<ShapeWords> bad(
      String key, Datum.Scalar scalar, Notes notes, String why) {
    notes.add(
        ProblemCode.SHAPE_NOT_READ,
        scalar.place(),
        key,
        scalar.text(),
        String.join(", ", FORMS.keySet()),
        why,
        "write it like: plate 160x120 mm, or section SHS50x50x3 x 1200 mm, or give area, mass and"
            + " size");
    return Optional.empty();
  }

  private static Map<String, ShapeWords.Form> forms() {
    Map<String, ShapeWords.Form> forms = new LinkedHashMap<>();
    for (ShapeWords.Form form : ShapeWords.Form.values()) {
      forms.put(form.word(), form);
    }
    forms.put("sheet", ShapeWords.Form.PLATE);
    forms.put("rod", ShapeWords.Form.BAR);
    return forms;
  }
}
