package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;

/**
 * What would be different in a week: the words of its files, laid over them. A value replaces a
 * value; of things that have an id (a line, station, carrier, coating, a lot on order) the values
 * named are replaced, a new one is added; {@code replaced: yes} puts it in the place of the whole
 * thing, {@code without: [ids]} takes things away, {@code after: id} says behind which station a
 * new one stands. Dated things without an id (shifts, extra days, maintenance) are added. Every
 * value keeps its own place, so that a problem names the line of the overlay.
 */
final class Overlay {
  private static final List<String> FILES = List.of("shop", "coatings", "kits");
  private static final List<String> NAMES = List.of("id", "lot");

  private final Map<String, Datum.Group> changes;
  private final Notes notes;
  private final String title;

  private Overlay(String title, Map<String, Datum.Group> changes, Notes notes) {
    this.title = title;
    this.changes = changes;
    this.notes = notes;
  }

  /** Reads the file's outermost names; what is inside is looked at where it is laid over. */
  static Overlay read(Datum.Group group, Notes notes) {
    Fields fields = new Fields(group, notes);
    String title = fields.needed("title").map(Datum.Scalar::text).orElse("");
    Map<String, Datum.Group> changes = new LinkedHashMap<>();
    for (String file : FILES) {
      fields
          .inner(file)
          .ifPresent(inner -> changes.put(file, (Datum.Group) fields.raw(file).orElseThrow()));
    }
    if (strangers(group, notes)) {
      return new Overlay(title, changes, notes);
    }
    if (changes.isEmpty()) {
      notes.add(
          ProblemCode.VALUE_MISSING,
          group.place(),
          "shop",
          "",
          String.join(", ", FILES),
          "the overlay changes nothing",
          "write what is different under shop, coatings or kits, in the words of those files");
    }
    return new Overlay(title, changes, notes);
  }

  String title() {
    return title;
  }

  /** What an overlay has no effect on is refused whole: a what-if that is half one misleads. */
  private static boolean strangers(Datum.Group group, Notes notes) {
    boolean any = false;
    for (Map.Entry<String, Datum.Entry> entry : group.entries().entrySet()) {
      String key = entry.getKey();
      if (!key.equals("title") && !FILES.contains(key)) {
        any = true;
        notes.add(
            ProblemCode.FILE_UNREADABLE,
            entry.getValue().keyPlace(),
            key,
            "",
            "title, " + String.join(", ", FILES),
            "an overlay cannot change '" + key + "'" + Near.hint(key, FILES),
            "take it out; to try other jobs, plan a copy of the week folder with them in it");
      }
    }
    return any;
  }

  /** The file as it would be. */
  Datum.Group over(String file, Datum.Group group) {
    Datum.Group change = changes.get(file);
    return change == null ? group : merged(group, change);
  }

  private Datum.Group merged(Datum.Group old, Datum.Group change) {
    Map<String, Datum.Entry> entries = new LinkedHashMap<>(old.entries());
    for (Map.Entry<String, Datum.Entry> named : change.entries().entrySet()) {
      String key = named.getKey();
      Datum.Entry next = named.getValue();
      if (key.equals("without")) {
        continue;
      }
      if (key.equals("replaced") || key.equals("after")) {
        continue;
      }
      Datum.Entry was = entries.get(key);
      entries.put(
          key,
          was == null
              ? new Datum.Entry(next.keyPlace(), fresh(next.value()))
              : new Datum.Entry(next.keyPlace(), merged(was.value(), next.value())));
    }
    without(entries, change);
    return new Datum.Group(old.place(), entries);
  }

  private Datum merged(Datum old, Datum change) {
    if (old instanceof Datum.Group was && change instanceof Datum.Group next) {
      return merged(was, next);
    }
    if (old instanceof Datum.Series was && change instanceof Datum.Series next && things(next)) {
      return merged(was, next);
    }
    return change;
  }

  private static boolean things(Datum.Series series) {
    return !series.items().isEmpty()
        && series.items().stream().allMatch(Datum.Group.class::isInstance);
  }

  private Datum.Series merged(Datum.Series old, Datum.Series change) {
    List<Datum> items = new ArrayList<>(old.items());
    for (Datum item : change.items()) {
      Datum.Group next = (Datum.Group) item;
      int at = sameName(items, next);
      if (at < 0) {
        items.add(placeFor(items, next), fresh(next));
      } else if (told(next, "replaced") && items.get(at) instanceof Datum.Group) {
        items.set(at, fresh(next));
      } else {
        items.set(at, merged((Datum.Group) items.get(at), next));
      }
    }
    return new Datum.Series(old.place(), items);
  }

  /** A new thing without the words that only say how it is laid over. */
  private static Datum fresh(Datum thing) {
    if (!(thing instanceof Datum.Group group)) {
      return thing;
    }
    Map<String, Datum.Entry> entries = new LinkedHashMap<>(group.entries());
    entries.remove("replaced");
    entries.remove("after");
    return new Datum.Group(group.place(), entries);
  }

  private int placeFor(List<Datum> items, Datum.Group next) {
    if (!(value(next, "after") instanceof Datum.Scalar after)) {
      return items.size();
    }
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof Datum.Group other && after.text().equals(name(other))) {
        return i + 1;
      }
    }
    unknown("after", after, items);
    return items.size();
  }

  private void without(Map<String, Datum.Entry> entries, Datum.Group change) {
    Datum gone = value(change, "without");
    if (gone == null) {
      return;
    }
    List<Datum> names = gone instanceof Datum.Series series ? series.items() : List.of(gone);
    for (Datum item : names) {
      if (!(item instanceof Datum.Scalar name)) {
        continue;
      }
      boolean found = false;
      List<Datum> all = new ArrayList<>();
      for (Map.Entry<String, Datum.Entry> entry : entries.entrySet()) {
        if (entry.getValue().value() instanceof Datum.Series series) {
          List<Datum> kept =
              series.items().stream()
                  .filter(d -> !(d instanceof Datum.Group g && name.text().equals(name(g))))
                  .toList();
          all.addAll(series.items());
          found |= kept.size() < series.items().size();
          entry.setValue(
              new Datum.Entry(entry.getValue().keyPlace(), new Datum.Series(series.place(), kept)));
        }
      }
      if (!found) {
        unknown("without", name, all);
      }
    }
  }

  private void unknown(String key, Datum.Scalar name, List<Datum> items) {
    List<String> known =
        items.stream()
            .filter(Datum.Group.class::isInstance)
            .map(g -> name((Datum.Group) g))
            .filter(n -> !n.isEmpty())
            .toList();
    notes.add(
        ProblemCode.UNKNOWN_NAME,
        name.place(),
        key,
        name.text(),
        String.join(", ", known),
        "there is nothing called '" + name.text() + "' here" + Near.hint(name.text(), known),
        "use a name of the week's own files");
  }

  private static int sameName(List<Datum> items, Datum.Group next) {
    String name = name(next);
    for (int i = 0; i < items.size() && !name.isEmpty(); i++) {
      if (items.get(i) instanceof Datum.Group other && name.equals(name(other))) {
        return i;
      }
    }
    return -1;
  }

  private static String name(Datum.Group group) {
    for (String key : NAMES) {
      if (value(group, key) instanceof Datum.Scalar scalar && !scalar.isBlank()) {
        return scalar.text();
      }
    }
    return "";
  }

  private static boolean told(Datum.Group group, String key) {
    return value(group, key) instanceof Datum.Scalar scalar
        && Fields.toldOf(scalar.text()).filter(t -> t.yes()).isPresent();
  }

  private static @Nullable Datum value(Datum.Group group, String key) {
    return Optional.ofNullable(group.entries().get(key)).map(Datum.Entry::value).orElse(null);
  }
}
