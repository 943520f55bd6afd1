package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.equipment.KettleProfile;
import spangle.equipment.Profile;
import spangle.equipment.StationProfile;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Catalogue;
import spangle.intake.week.GateRecord;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopCalendar;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.measure.Figures;
import spangle.plan.event.Event;
import spangle.plan.event.EventField;
import spangle.plan.event.EventKind;
import spangle.plan.event.EventLog;
import spangle.plan.event.ScrapOf;

/**
 * Reads what has happened in the week. An event that cannot be is refused with its reason and keeps
 * its number; the others go on. Loads are checked later, against the plan people worked by.
 */
final class EventReader {
  private static final int MOST_PIECES = 10_000_000;
  private static final Set<StationProfile.Kind> BATHS =
      Set.of(
          StationProfile.Kind.DEGREASE,
          StationProfile.Kind.RINSE,
          StationProfile.Kind.PICKLE,
          StationProfile.Kind.FLUX,
          StationProfile.Kind.QUENCH);
  private final Times times;
  private final List<Job> jobs;
  private final Set<String> jobIds;
  private final Set<String> stations;
  private final Map<String, Integer> placesOf;
  private final Set<String> dry;
  private final Set<String> unmanned;
  private final Map<String, Double> zincDepthMm = new TreeMap<>();
  private final Set<String> materials;

  private EventReader(Times times, List<Job> jobs, Shop shop, Catalogue store) {
    this.times = times;
    this.jobs = jobs;
    this.jobIds = new TreeSet<>();
    jobs.forEach(j -> this.jobIds.add(j.id()));
    this.stations = new LinkedHashSet<>();
    shop.lines().forEach(l -> l.stations().forEach(s -> stations.add(s.id())));
    this.placesOf = new TreeMap<>();
    shop.lines().forEach(l -> l.stations().forEach(s -> placesOf.put(s.id(), s.count())));
    for (ShopLine line : shop.lines()) {
      for (StationUse use : line.stations()) {
        if (use.profile() instanceof KettleProfile kettle) {
          zincDepthMm.put(use.id(), kettle.zincDepthMm());
        }
      }
    }
    this.unmanned = new LinkedHashSet<>();
    shop.lines()
        .forEach(
            l ->
                l.stations().stream()
                    .filter(ShopCalendar::unmanned)
                    .forEach(s -> unmanned.add(s.id())));
    this.dry = new LinkedHashSet<>();
    shop.lines()
        .forEach(
            l ->
                l.stations().stream()
                    .filter(s -> !bath(s.profile()))
                    .forEach(s -> dry.add(s.id())));
    this.materials = new LinkedHashSet<>();
    store.coatings().forEach(c -> materials.add(c.id()));
    store.zinc().ifPresent(z -> materials.add(z.id()));
  }

  private static boolean bath(Profile profile) {
    return profile instanceof KettleProfile
        || (profile instanceof StationProfile station && BATHS.contains(station.kind()));
  }

  static EventLog read(
      Datum.Group group, Times times, List<Job> jobs, Shop shop, Catalogue store, Notes notes) {
    Fields fields = new Fields(group, notes);
    EventReader reader = new EventReader(times, jobs, shop, store);
    List<Event> events = new ArrayList<>();
    int number = 0;
    for (Datum item : fields.items("events")) {
      number++;
      if (item instanceof Datum.Group entry) {
        reader.event(number, new Fields(entry, notes.forRow())).ifPresent(events::add);
      } else {
        notes.add(
            ProblemCode.WRONG_SHAPE,
            item.place(),
            "events",
            "",
            "a list of groups",
            "each event is a group of named values",
            "start it with '- {when: mon 07:10, what: hung, load: P01}'");
      }
    }
    fields.finish();
    return new EventLog(events);
  }

  private Optional<Event> event(int number, Fields f) {
    Optional<EventKind> kind =
        f.wordNeeded("what", Fields.words(EventKind.values(), EventKind::word));
    OptionalInt at = minute(f, "when", Times.Edge.START, true);
    String who = f.text("who");
    String note = f.text(EventField.NOTE.key());
    if (kind.isEmpty()) {
      f.allNames();
      return Optional.empty();
    }
    Set<EventField> asked = new LinkedHashSet<>(kind.get().needed());
    asked.addAll(kind.get().allowed());
    for (EventField field : kind.get().needed()) {
      if (!f.has(field.key())) {
        f.missing(field.key());
      }
    }
    String job = asked.contains(EventField.JOB) ? name(f, EventField.JOB) : "";
    String part = asked.contains(EventField.PART) ? name(f, EventField.PART) : "";
    knownPart(f, job, part);
    String station = asked.contains(EventField.STATION) ? f.text("station") : "";
    known(f, "station", station, stations);
    String material = asked.contains(EventField.MATERIAL) ? f.text("material") : "";
    known(f, "material", material, materials);
    String gate = asked.contains(EventField.GATE) ? gate(f) : "";
    String of =
        asked.contains(EventField.OF)
            ? f.word(EventField.OF.key(), Fields.words(ScrapOf.values()))
                .map(ScrapOf::word)
                .orElse("")
            : "";
    List<String> openedBy =
        asked.contains(EventField.OPENED_BY)
            ? f.texts("opened_by", "[,;]").stream().map(Datum.Scalar::text).toList()
            : List.of();
    Event.Figures figures = figures(f, asked, number);
    String load = asked.contains(EventField.LOAD) ? name(f, EventField.LOAD) : "";
    String lot = asked.contains(EventField.LOT) ? f.text("lot") : "";
    at.ifPresent(minute -> inOrder(f, minute, figures));
    if (kind.get() == EventKind.LEVEL && !station.isEmpty() && dry.contains(station)) {
      bad(f, "station", station, "it is no bath and has no level", "name a tank or a kettle");
    }
    if (kind.get() == EventKind.ABSENT && unmanned.contains(station)) {
      bad(
          f,
          "station",
          station,
          "nobody has to be there while it runs",
          "name the station at which people are missing");
    }
    double deepest = zincDepthMm.getOrDefault(station, Double.MAX_VALUE);
    if (kind.get() == EventKind.LEVEL && figures.levelDownMm().orElse(0) >= deepest) {
      bad(
          f,
          EventField.LEVEL_DOWN_MM.key(),
          Figures.upTo(figures.levelDownMm().orElse(0), 0),
          station + " holds " + Figures.upTo(deepest, 0) + " mm of zinc: none would be left",
          "give how far the zinc stands below its usual mark");
    }
    int places = placesOf.getOrDefault(station, 1);
    if (kind.get() == EventKind.BROKEN && figures.count().orElse(0) > places) {
      bad(
          f,
          "count",
          Integer.toString(figures.count().getAsInt()),
          station + " has " + places + (places == 1 ? " place" : " places"),
          "say how many of its places are out, or leave the count away: then all are");
    }
    if (gate.equals("vents") && Set.copyOf(openedBy).size() < 2) {
      bad(
          f,
          "opened_by",
          String.join(", ", openedBy),
          "holes are looked through by two people, each signs",
          "let 2 sign, in opened_by");
    }
    if (kind.get() == EventKind.PRIORITY_CHANGED && !f.has("priority") && !f.has("due")) {
      bad(f, "what", "priority-changed", "nothing changes", "give priority or due");
    }
    f.finish();
    if (f.notes().refused() || at.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Event(
            number,
            at.getAsInt(),
            kind.get(),
            who,
            load,
            job,
            part,
            station,
            material,
            lot,
            gate,
            of,
            openedBy,
            figures,
            note));
  }

  /** What begins or ends does so after it was reported, and ends after it begins. */
  private static void inOrder(Fields f, int at, Event.Figures figures) {
    int from = figures.fromMin().orElse(at);
    if (from < at) {
      bad(f, "from", f.text("from"), "it lies before the event itself", "give a later time");
    } else if (figures.untilMin().orElse(Integer.MAX_VALUE) <= from) {
      String before = from > at ? "it lies before 'from'" : "it lies before the event itself";
      bad(f, "until", f.text("until"), before, "give a later time");
    }
    if (figures.dueMin().orElse(Integer.MAX_VALUE) <= at) {
      bad(f, "due", f.text("due"), "it lies before the event itself", "give a later time");
    }
  }

  private Event.Figures figures(Fields f, Set<EventField> asked, int number) {
    return new Event.Figures(
        asked.contains(EventField.COUNT) ? f.whole("count", 1, MOST_PIECES) : OptionalInt.empty(),
        number(f, asked, EventField.AMOUNT, 0.001, 1_000_000),
        asked.contains(EventField.FROM)
            ? minute(f, "from", Times.Edge.START, false)
            : OptionalInt.empty(),
        asked.contains(EventField.UNTIL)
            ? minute(f, "until", Times.Edge.END, false)
            : OptionalInt.empty(),
        number(f, asked, EventField.FACTOR, 1, 20),
        number(f, asked, EventField.SI_PCT, 0, 5),
        number(f, asked, EventField.P_PCT, 0, 1),
        number(f, asked, EventField.LEVEL_DOWN_MM, 0, 5_000),
        asked.contains(EventField.PRIORITY) ? f.whole("priority", 1, 9) : OptionalInt.empty(),
        asked.contains(EventField.DUE)
            ? minute(f, "due", Times.Edge.END, false)
            : OptionalInt.empty(),
        asked.contains(EventField.EVENT) ? f.whole("event", 1, number - 1) : OptionalInt.empty(),
        asked.contains(EventField.COATS) ? f.whole("coats", 1, 9) : OptionalInt.empty());
  }

  private static OptionalDouble number(
      Fields f, Set<EventField> asked, EventField field, double min, double max) {
    return asked.contains(field)
        ? f.number(field.key(), new Range(min, max))
        : OptionalDouble.empty();
  }

  private OptionalInt minute(Fields f, String key, Times.Edge edge, boolean needed) {
    Optional<Datum.Scalar> scalar = needed ? f.needed(key) : f.scalar(key);
    return scalar.isEmpty()
        ? OptionalInt.empty()
        : times.minute(key, scalar.get(), edge, f.notes());
  }

  private static String name(Fields f, EventField field) {
    return f.has(field.key()) ? f.name(field.key()).orElse("") : "";
  }

  private void knownPart(Fields f, String job, String part) {
    if (job.isEmpty()) {
      return;
    }
    known(f, "job", job, jobIds);
    Set<String> parts = new TreeSet<>();
    jobs.stream()
        .filter(j -> j.id().equals(job))
        .forEach(j -> j.parts().stream().map(PartLine::id).forEach(parts::add));
    if (!part.isEmpty() && jobIds.contains(job)) {
      known(f, "part", part, parts);
    }
  }

  private static void known(Fields f, String key, String name, Set<String> names) {
    if (!name.isEmpty() && !names.contains(name)) {
      f.notes()
          .add(
              ProblemCode.UNKNOWN_NAME,
              f.valuePlace(key),
              key,
              name,
              String.join(", ", names.stream().limit(8).toList()),
              "the week has no " + key + " '" + name + "'" + Near.hint(name, names),
              "correct the name");
    }
  }

  private static String gate(Fields f) {
    return f.word("gate", Fields.words(GateRecord.Gate.values(), GateRecord.Gate::word))
        .map(GateRecord.Gate::word)
        .orElse("");
  }

  private static void bad(Fields f, String key, String value, String why, String remedy) {
    f.notes().add(ProblemCode.EVENT_BAD, f.valuePlace(key), key, value, "", why, remedy);
  }
}
