package spangle.intake.read;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Told;
import spangle.measure.Figures;
import spangle.measure.MeasureException;
import spangle.measure.Numbers;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/**
 * Reads one written value as a name, a quantity, a number, a word or a yes. A value that is not one
 * is noted as a problem, with what was wanted, and comes back empty.
 */
final class ScalarReader {
  private static final Set<String> YES = Set.of("yes", "y", "true", "x", "1", "ja");
  private static final Set<String> NO = Set.of("no", "n", "false", "-", "0", "nein", "none");

  /** Marks that drawings and lists have in names; none of them starts a formula or a path. */
  private static final String MARKS = "-_./#+(),&'";

  private static final String NO_SENSE = "the value is outside what makes sense";
  private static final double UM_PER_MIL = 25.4;
  private static final Set<String> METRIC = Set.of("mm", "cm", "dm", "m");
  private static final Pattern BARE_FRACTION = Pattern.compile("(?:[0-9]+[ -])?[0-9]+/[0-9]+");

  private final Notes notes;

  ScalarReader(Notes notes) {
    this.notes = notes;
  }

  Optional<String> name(String key, Datum.Scalar scalar) {
    if (isName(scalar.text())) {
      return Optional.of(scalar.text());
    }
    notes.add(
        ProblemCode.BAD_NAME,
        scalar.place(),
        key,
        scalar.text(),
        "a letter or digit, then letters, digits, blanks and any of "
            + MARKS
            + " up to 60, no '..'",
        "'" + key + "' is no name that can stand on sheets and in commands",
        "begin with a letter or digit and leave other marks out");
    return Optional.empty();
  }

  static boolean isName(String text) {
    if (text.isEmpty() || text.length() > 60 || text.contains("..")) {
      return false;
    }
    boolean edges = Character.isLetterOrDigit(text.codePointAt(0));
    return edges
        && text.codePoints()
            .allMatch(c -> Character.isLetterOrDigit(c) || c == ' ' || MARKS.indexOf(c) >= 0);
  }

  static String unitName(QuantityKind kind) {
    return kind.houseUnit().toLowerCase(Locale.ROOT);
  }

  OptionalDouble quantity(
      String key, Datum.Scalar scalar, QuantityKind kind, String columnUnit, Range range) {
    if (kind == QuantityKind.LENGTH
        && METRIC.contains(columnUnit)
        && BARE_FRACTION.matcher(scalar.text().strip()).matches()) {
      notes.add(
          ProblemCode.UNIT_MISSING,
          scalar.place(),
          key,
          scalar.text(),
          kind.noun() + " such as " + kind.example(),
          "a fraction in a column of " + columnUnit + " reads like inches",
          "write the unit behind it, such as " + scalar.text().strip() + " in");
      return OptionalDouble.empty();
    }
    double value;
    try {
      value =
          columnUnit.isEmpty()
              ? Quantities.read(kind, scalar.text())
              : Quantities.read(kind, scalar.text(), columnUnit);
    } catch (MeasureException complaint) {
      boolean bareNumber = columnUnit.isEmpty() && isNumber(scalar.text());
      notes.add(
          bareNumber ? ProblemCode.UNIT_MISSING : ProblemCode.NOT_A_NUMBER,
          scalar.place(),
          key,
          scalar.text(),
          kind.noun() + " such as " + kind.example(),
          bareNumber ? "the number has no unit" : "this is not " + complaint.expected(),
          bareNumber
              ? "write the unit, or name the field " + key + "_" + unitName(kind)
              : complaint.remedy());
      return OptionalDouble.empty();
    }
    if (!range.holds(value)) {
      outOfRange(key, scalar, range.words(kind.houseUnit()), otherReading(kind, value, range));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value);
  }

  /** What a value beyond its range would be in the unit it is most often mistaken for. */
  private static String otherReading(QuantityKind kind, double value, Range range) {
    return kind == QuantityKind.FILM && range.holds(value * UM_PER_MIL)
        ? "as written it is "
            + Figures.upTo(value, 1)
            + " um; as mil it would be "
            + Figures.upTo(value * UM_PER_MIL, 0)
            + " um"
        : NO_SENSE;
  }

  private static boolean isNumber(String text) {
    try {
      return Double.isFinite(Numbers.parse(text));
    } catch (MeasureException no) {
      return false;
    }
  }

  OptionalDouble number(String key, Datum.Scalar scalar, Range range) {
    String written = scalar.text().strip();
    // In a column of per cent the sign may stand behind the figure.
    boolean percent = key.endsWith("_pct") && written.endsWith("%");
    double value;
    try {
      value = Numbers.parse(percent ? written.substring(0, written.length() - 1) : written);
    } catch (MeasureException complaint) {
      notes.add(
          ProblemCode.NOT_A_NUMBER,
          scalar.place(),
          key,
          scalar.text(),
          range.words(""),
          "this is not " + complaint.expected(),
          complaint.remedy());
      return OptionalDouble.empty();
    }
    if (!range.holds(value)) {
      outOfRange(key, scalar, range.words(""), NO_SENSE);
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value);
  }

  private void outOfRange(String key, Datum.Scalar scalar, String limit, String why) {
    notes.add(
        ProblemCode.OUT_OF_RANGE,
        scalar.place(),
        key,
        scalar.text(),
        limit,
        why,
        "check the value and its unit");
  }

  OptionalInt whole(String key, Datum.Scalar scalar, int min, int max) {
    String digits = scalar.text().replaceFirst("[.,]0+$", "");
    if (!digits.matches("[+-]?[0-9]{1,9}")) {
      notes.add(
          ProblemCode.NOT_A_NUMBER,
          scalar.place(),
          key,
          scalar.text(),
          min + " to " + max,
          "a whole number is wanted",
          "write digits only");
      return OptionalInt.empty();
    }
    int value = Integer.parseInt(digits);
    if (value < min || value > max) {
      outOfRange(key, scalar, min + " to " + max, NO_SENSE);
      return OptionalInt.empty();
    }
    return OptionalInt.of(value);
  }

  <E> Optional<E> word(String key, Datum.Scalar scalar, Map<String, E> words) {
    String typed =
        scalar.text().toLowerCase(Locale.ROOT).strip().replace(' ', '-').replace('_', '-');
    E found = words.get(typed);
    if (found == null) {
      notes.add(
          ProblemCode.UNKNOWN_WORD,
          scalar.place(),
          key,
          scalar.text(),
          String.join(", ", words.keySet()),
          "'" + scalar.text() + "' is not known here" + Near.hint(typed, words.keySet()),
          "use one of: " + String.join(", ", words.keySet()));
    }
    return Optional.ofNullable(found);
  }

  Told told(String key, Datum.Scalar scalar) {
    Optional<Told> told = toldOf(scalar.text());
    if (told.isEmpty()) {
      notes.add(
          ProblemCode.NOT_YES_OR_NO,
          scalar.place(),
          key,
          scalar.text(),
          "yes or no",
          "yes or no is wanted",
          "write yes, no, or leave it empty when nobody knows");
    }
    return told.orElse(Told.NOTHING);
  }

  static Optional<Told> toldOf(String text) {
    String word = text.toLowerCase(Locale.ROOT).strip();
    if (YES.contains(word)) {
      return Optional.of(Told.YES);
    }
    if (NO.contains(word)) {
      return Optional.of(Told.NO);
    }
    return word.equals("unknown") || word.equals("?")
        ? Optional.of(Told.NOTHING)
        : Optional.empty();
  }
}
