package spangle.intake.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Told;
import spangle.measure.QuantityKind;

/**
 * One group of named values while it is read: every name asked for is remembered, so that {@link
 * #finish()} can name those nobody reads. Nothing here throws for bad input; a problem is noted and
 * an empty value given.
 */
final class Fields {
  private final Datum.Group group;
  private final Notes notes;
  private final ScalarReader values;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> used = new LinkedHashSet<>();

  Fields(Datum.Group group, Notes notes) {
    this.group = group;
    this.notes = notes;
    this.values = new ScalarReader(notes);
  }

  Place place() {
    return group.place();
  }

  Notes notes() {
    return notes;
  }

  /** The raw value under a name; empty where it is missing or blank. */
  Optional<Datum> raw(String key) {
    asked.add(key);
    Datum.Entry entry = group.entries().get(key);
    if (entry == null) {
      return Optional.empty();
    }
    used.add(key);
    boolean blank = entry.value() instanceof Datum.Scalar scalar && scalar.isBlank();
    return blank ? Optional.empty() : Optional.of(entry.value());
  }

  boolean has(String key) {
    return raw(key).isPresent();
  }

  Optional<Datum.Scalar> scalar(String key) {
    Optional<Datum> value = raw(key);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof Datum.Scalar scalar) {
      return Optional.of(scalar);
    }
    notes.add(
        ProblemCode.WRONG_SHAPE,
        value.get().place(),
        key,
        "",
        "one value",
        "'" + key + "' wants one value, a list or a group stands there",
        "write it as " + key + ": value");
    return Optional.empty();
  }

  String text(String key) {
    return scalar(key).map(Datum.Scalar::text).orElse("");
  }

  /** Text that must be there. */
  Optional<Datum.Scalar> needed(String key) {
    Optional<Datum.Scalar> scalar = scalar(key);
    if (scalar.isEmpty() && raw(key).isEmpty()) {
      missing(key);
    }
    return scalar;
  }

  void missing(String key) {
    Datum.Entry blank = group.entries().get(key);
    notes.add(
        ProblemCode.VALUE_MISSING,
        blank == null ? group.place() : blank.value().place(),
        key,
        "",
        "",
        "'" + key + "' is missing",
        "give it; nothing is assumed for it");
  }

  /** A name that other files refer to. */
  Optional<String> name(String key) {
    return needed(key).flatMap(scalar -> name(key, scalar));
  }

  Optional<String> name(String key, Datum.Scalar scalar) {
    return values.name(key, scalar);
  }

  /**
   * A name that is to stand for one thing; a second use is refused.
   *
   * @param seen names so far; takes this one
   * @param two what bears it twice, up to the name
   */
  Optional<String> nameOnce(String key, Set<String> seen, String two, String remedy) {
    Optional<String> name = name(key);
    if (name.isPresent() && !seen.add(name.get())) {
      notes.add(
          ProblemCode.NAME_TWICE,
          valuePlace(key),
          key,
          name.get(),
          "",
          two + " '" + name.get() + "'",
          remedy);
    }
    return name;
  }

  static boolean isName(String text) {
    return ScalarReader.isName(text);
  }

  static Optional<Told> toldOf(String text) {
    return ScalarReader.toldOf(text);
  }

  /** A quantity under {@code base} (with its unit in the value) or {@code base_unit}. */
  OptionalDouble quantity(String base, QuantityKind kind, Range range) {
    Optional<Datum.Scalar> bare = scalar(base);
    if (bare.isPresent()) {
      return quantity(base, bare.get(), kind, "", range);
    }
    for (String name : group.entries().keySet()) {
      Optional<String> unit = unitOf(name, base, kind);
      if (unit.isPresent()) {
        Optional<Datum.Scalar> scalar = scalar(name);
        if (scalar.isPresent()) {
          return quantity(name, scalar.get(), kind, unit.get(), range);
        }
      }
    }
    asked.add(base + "_" + ScalarReader.unitName(kind));
    return OptionalDouble.empty();
  }

  double quantityOr(String base, QuantityKind kind, Range range, double otherwise) {
    return quantity(base, kind, range).orElse(otherwise);
  }

  OptionalDouble quantityNeeded(String base, QuantityKind kind, Range range) {
    int before = notes.count();
    OptionalDouble value = quantity(base, kind, range);
    if (value.isEmpty() && notes.count() == before) {
      missing(present(base, kind).orElse(base + "_" + ScalarReader.unitName(kind)));
    }
    return value;
  }

  /** The place of a quantity's value, for problems found later. */
  Optional<Datum.Scalar> quantityScalar(String base, QuantityKind kind) {
    return present(base, kind).flatMap(this::scalar);
  }

  private Optional<String> present(String base, QuantityKind kind) {
    if (group.entries().containsKey(base)) {
      return Optional.of(base);
    }
    List<String> names =
        group.entries().keySet().stream()
            .filter(name -> unitOf(name, base, kind).isPresent())
            .toList();
    return names.stream().filter(this::has).findFirst().or(() -> names.stream().findFirst());
  }

  private static Optional<String> unitOf(String name, String base, QuantityKind kind) {
    if (!name.startsWith(base + "_")) {
      return Optional.empty();
    }
    String unit = name.substring(base.length() + 1).toLowerCase(Locale.ROOT);
    return kind.symbols().contains(unit) ? Optional.of(unit) : Optional.empty();
  }

  OptionalDouble quantity(
      String key, Datum.Scalar scalar, QuantityKind kind, String columnUnit, Range range) {
    return values.quantity(key, scalar, kind, columnUnit, range);
  }

  /** A plain number without a unit. */
  OptionalDouble number(String key, Range range) {
    Optional<Datum.Scalar> scalar = scalar(key);
    return scalar.isEmpty() ? OptionalDouble.empty() : number(key, scalar.get(), range);
  }

  double numberOr(String key, Range range, double otherwise) {
    return number(key, range).orElse(otherwise);
  }

  OptionalDouble number(String key, Datum.Scalar scalar, Range range) {
    return values.number(key, scalar, range);
  }

  /** A whole number. */
  OptionalInt whole(String key, int min, int max) {
    Optional<Datum.Scalar> scalar = scalar(key);
    if (scalar.isEmpty()) {
      return OptionalInt.empty();
    }
    return values.whole(key, scalar.get(), min, max);
  }

  int wholeOr(String key, int min, int max, int otherwise) {
    return whole(key, min, max).orElse(otherwise);
  }

  /** One of some words. */
  <E> Optional<E> word(String key, Map<String, E> words) {
    return scalar(key).flatMap(scalar -> values.word(key, scalar, words));
  }

  <E> Optional<E> wordNeeded(String key, Map<String, E> words) {
    return needed(key).flatMap(scalar -> values.word(key, scalar, words));
  }

  /** Words of an enumeration: small letters, hyphens. */
  static <E extends Enum<E>> Map<String, E> words(E[] values) {
    return words(values, e -> e.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  static <E> Map<String, E> words(E[] values, Function<E, String> word) {
    Map<String, E> words = new LinkedHashMap<>();
    Arrays.stream(values).forEach(e -> words.put(word.apply(e), e));
    return words;
  }

  /** Yes, no or nothing. */
  Told told(String key) {
    Optional<Datum.Scalar> scalar = scalar(key);
    if (scalar.isEmpty()) {
      return Told.NOTHING;
    }
    return values.told(key, scalar.get());
  }

  /** A list; a single value counts as a list of one. */
  List<Datum> items(String key) {
    Optional<Datum> value = raw(key);
    if (value.isEmpty()) {
      return List.of();
    }
    return value.get() instanceof Datum.Series series ? series.items() : List.of(value.get());
  }

  /** A list of words; in one text they stand between semicolons or commas. */
  List<Datum.Scalar> texts(String key, String between) {
    List<Datum.Scalar> texts = new ArrayList<>();
    for (Datum item : items(key)) {
      if (item instanceof Datum.Scalar scalar) {
        for (String piece : scalar.text().split(between, -1)) {
          if (!piece.isBlank()) {
            texts.add(new Datum.Scalar(scalar.place(), piece.strip()));
          }
        }
      } else {
        wrongShape(key, item, "a list of values");
      }
    }
    return texts;
  }

  /** A list of groups. */
  List<Fields> groups(String key) {
    List<Fields> groups = new ArrayList<>();
    for (Datum item : items(key)) {
      if (item instanceof Datum.Group inner) {
        groups.add(new Fields(inner, notes));
      } else {
        wrongShape(key, item, "a list of groups");
      }
    }
    return groups;
  }

  /** One group. */
  Optional<Fields> inner(String key) {
    Optional<Datum> value = raw(key);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof Datum.Group inner) {
      return Optional.of(new Fields(inner, notes));
    }
    wrongShape(key, value.get(), "a group of named values");
    return Optional.empty();
  }

  private void wrongShape(String key, Datum item, String wanted) {
    notes.add(
        ProblemCode.WRONG_SHAPE,
        item.place(),
        key,
        item instanceof Datum.Scalar scalar ? scalar.text() : "",
        wanted,
        "'" + key + "' wants " + wanted,
        "see the example in the format page");
  }

  /** Names used in this group in the order of the file; marks all of them as read. */
  List<String> allNames() {
    used.addAll(group.entries().keySet());
    return List.copyOf(group.entries().keySet());
  }

  /** Names in the order of the file; marks none as read. */
  List<String> names() {
    return List.copyOf(group.entries().keySet());
  }

  Place keyPlace(String key) {
    Datum.Entry entry = group.entries().get(key);
    return entry == null ? group.place() : entry.keyPlace();
  }

  Place valuePlace(String key) {
    Datum.Entry entry = group.entries().get(key);
    return entry == null ? group.place() : entry.value().place();
  }

  /** Names every key nobody asked for. */
  void finish() {
    for (Map.Entry<String, Datum.Entry> entry : group.entries().entrySet()) {
      if (used.contains(entry.getKey()) || asked.contains(entry.getKey())) {
        continue;
      }
      notes.add(
          ProblemCode.UNKNOWN_KEY,
          entry.getValue().keyPlace(),
          entry.getKey(),
          entry.getValue().value() instanceof Datum.Scalar scalar ? scalar.text() : "",
          "",
          "nothing reads '" + entry.getKey() + "' here" + Near.hint(entry.getKey(), asked),
          "correct the name or take it out");
    }
  }
}
