package spangle.intake.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Hollow;
import spangle.intake.week.Hollows;
import spangle.intake.week.Overlap;
import spangle.intake.week.Signature;
import spangle.intake.week.Told;
import spangle.measure.MeasureException;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** Reads welds, hollow members with their holes, overlaps, and who has looked. */
final class HollowReader {
  private static final Pattern MEMBER =
      Pattern.compile(
          "(?:([0-9]{1,4})\\s*[xX×]\\s+)?([0-9.,]+(?:\\s*[xX×]\\s*[0-9.,]+){1,2})\\s*(mm|cm|in)?(.*)",
          Pattern.DOTALL);
  private static final Pattern HOLES =
      Pattern.compile("(vents?|drains?)\\s+([0-9]{1,3})\\s*[xX×]\\s*([0-9.,]+)\\s*(mm|cm|in)?");
  private static final Pattern HOLE_SET =
      Pattern.compile("([0-9]{1,3})\\s*[xX×]\\s*([0-9.,]+)\\s*(mm|cm|in)?");
  private static final Pattern OVERLAP =
      Pattern.compile(
          "([0-9.,]+)\\s*(cm2|mm2|in2|m2)\\s+([0-9.,]+)\\s*\\+\\s*([0-9.,]+)\\s*mm\\s+(all-round|gap|none)(?:\\s+hole\\s+([0-9.,]+)\\s*(?:mm)?)?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SIGNED =
      Pattern.compile("(.+?)(?:\\s+([0-9]{4}-[0-9]{2}-[0-9]{2}(?:[ T][0-9:]+)?))?");
  private static final Range SIDE_MM = Range.of(3, 5_000);
  private static final Range LENGTH_MM = Range.of(5, 30_000);
  private static final Range HOLE_MM = Range.of(1, 1_000);

  private final Fields fields;

  HollowReader(Fields fields) {
    this.fields = fields;
  }

  Hollows read() {
    Told welded = fields.told("welded");
    List<Hollow> members = new ArrayList<>();
    Told told = hollow(members);
    List<Overlap> overlaps = new ArrayList<>();
    Told overlapsTold = overlaps(overlaps);
    return new Hollows(
        welded,
        told,
        members,
        overlapsTold,
        overlaps,
        signatures(),
        fields.told("pockets"),
        fields.told("soldered"));
  }

  private Told hollow(List<Hollow> members) {
    List<Datum> items = fields.items("hollow");
    if (items.isEmpty()) {
      return Told.NOTHING;
    }
    Told told = Told.YES;
    for (Datum item : items) {
      if (item instanceof Datum.Group group) {
        member(new Fields(group, fields.notes())).ifPresent(members::add);
      } else if (item instanceof Datum.Scalar scalar) {
        Optional<Told> word = hollowWord(scalar.text());
        if (word.isPresent() && items.size() == 1) {
          told = word.get();
        } else {
          for (String piece : scalar.text().split(";", -1)) {
            member(new Datum.Scalar(scalar.place(), piece.strip())).ifPresent(members::add);
          }
        }
      }
    }
    return told;
  }

  private static Optional<Told> hollowWord(String text) {
    String word = text.toLowerCase(Locale.ROOT);
    return word.equals("open") ? Optional.of(Told.NO) : Fields.toldOf(word);
  }

  private Optional<Hollow> member(Fields member) {
    int count = member.wholeOr("count", 1, 1_000, 1);
    Optional<Datum.Scalar> section = member.needed("section");
    OptionalDouble length = member.quantityNeeded("length", QuantityKind.LENGTH, LENGTH_MM);
    Optional<Hollow.HoleSet> vents = member.scalar("vents").flatMap(s -> holeSet("vents", s));
    Optional<Hollow.HoleSet> drains = member.scalar("drains").flatMap(s -> holeSet("drains", s));
    member.finish();
    if (section.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    List<Double> sides = sizes(section.get().text());
    if (sides.isEmpty() || sides.size() > 2) {
      return notRead(section.get(), "the section is width x height, or a diameter");
    }
    return hollow(section.get(), count, sides, length.getAsDouble(), vents, drains);
  }

  private Optional<Hollow> member(Datum.Scalar scalar) {
    Matcher matcher = MEMBER.matcher(scalar.text());
    if (!matcher.matches()) {
      return notRead(scalar, "a hollow member is count x section x length with its holes");
    }
    String unit = matcher.group(3) == null ? "mm" : matcher.group(3);
    List<Double> sides = sizes(matcher.group(2) + " " + unit);
    if (sides.isEmpty()) {
      return notRead(scalar, "the sizes of the hollow member cannot be read");
    }
    Optional<Hollow.HoleSet> vents = Optional.empty();
    Optional<Hollow.HoleSet> drains = Optional.empty();
    Matcher holes = HOLES.matcher(matcher.group(4));
    int end = 0;
    while (holes.find()) {
      Optional<Hollow.HoleSet> set =
          holeSet(scalar, holes.group(2), holes.group(3), holes.group(4));
      if (holes.group(1).startsWith("vent")) {
        vents = set;
      } else {
        drains = set;
      }
      end = holes.end();
    }
    if (!matcher.group(4).substring(end).isBlank()) {
      return notRead(scalar, "'" + matcher.group(4).substring(end).strip() + "' is not understood");
    }
    int count = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
    double lengthMm = sides.get(sides.size() - 1);
    return hollow(scalar, count, sides.subList(0, sides.size() - 1), lengthMm, vents, drains);
  }

  private Optional<Hollow> hollow(
      Datum.Scalar scalar,
      int count,
      List<Double> section,
      double lengthMm,
      Optional<Hollow.HoleSet> vents,
      Optional<Hollow.HoleSet> drains) {
    boolean round = section.size() == 1;
    double width = section.get(0);
    double height = round ? width : section.get(1);
    if (!SIDE_MM.holds(width)
        || !SIDE_MM.holds(height)
        || !LENGTH_MM.holds(lengthMm)
        || count < 1) {
      return notRead(scalar, "no tube has such sizes");
    }
    return Optional.of(new Hollow(count, width, height, lengthMm, round, vents, drains));
  }

  private Optional<Hollow.HoleSet> holeSet(String key, Datum.Scalar scalar) {
    if (Fields.toldOf(scalar.text()).filter(Told::no).isPresent()) {
      return Optional.empty();
    }
    Matcher matcher = HOLE_SET.matcher(scalar.text().strip());
    if (!matcher.matches()) {
      notRead(scalar, "'" + key + "' are count x diameter at one end");
      return Optional.empty();
    }
    return holeSet(scalar, matcher.group(1), matcher.group(2), matcher.group(3));
  }

  private Optional<Hollow.HoleSet> holeSet(
      Datum.Scalar scalar, String count, String diameter, @Nullable String unit) {
    try {
      double mm = Quantities.read(QuantityKind.LENGTH, diameter, unit == null ? "mm" : unit);
      int holes = Integer.parseInt(count);
      if (HOLE_MM.holds(mm) && holes > 0) {
        return Optional.of(new Hollow.HoleSet(holes, mm));
      }
    } catch (MeasureException broken) {
      notRead(scalar, "the holes cannot be read");
      return Optional.empty();
    }
    notRead(scalar, "no hole has such a size");
    return Optional.empty();
  }

  private static List<Double> sizes(String text) {
    try {
      int count = text.split("[xX×]", -1).length;
      return Quantities.sizesMm(text, count);
    } catch (MeasureException broken) {
      return List.of();
    }
  }

  private <T> Optional<T> notRead(Datum.Scalar scalar, String why) {
    fields
        .notes()
        .add(
            ProblemCode.SHAPE_NOT_READ,
            scalar.place(),
            "hollow",
            scalar.text(),
            "1x 60x40x1200 mm vents 1x16 drains 1x16",
            why,
            "write it like: 2x 60x40x1200 mm vents 1x16 drains 1x16; or no, open, unknown");
    return Optional.empty();
  }

  private Told overlaps(List<Overlap> overlaps) {
    List<Datum> items = fields.items("overlaps");
    if (items.isEmpty()) {
      return Told.NOTHING;
    }
    Told told = Told.YES;
    for (Datum item : items) {
      if (item instanceof Datum.Group group) {
        overlap(new Fields(group, fields.notes())).ifPresent(overlaps::add);
      } else if (item instanceof Datum.Scalar scalar) {
        Optional<Told> word = Fields.toldOf(scalar.text());
        if (word.isPresent() && items.size() == 1) {
          told = word.get();
        } else {
          for (String piece : scalar.text().split(";", -1)) {
            overlap(scalar.place(), piece.strip()).ifPresent(overlaps::add);
          }
        }
      }
    }
    return told;
  }

  private Optional<Overlap> overlap(Fields overlap) {
    OptionalDouble area = overlap.quantityNeeded("area", QuantityKind.AREA, Range.of(1e-6, 100));
    List<Datum.Scalar> walls = overlap.texts("thicknesses_mm", "[+,;]");
    Optional<Overlap.Weld> weld = overlap.wordNeeded("weld", Fields.words(Overlap.Weld.values()));
    OptionalDouble hole = overlap.quantity("hole", QuantityKind.LENGTH, HOLE_MM);
    overlap.finish();
    if (walls.size() != 2) {
      overlap.missing("thicknesses_mm");
      return Optional.empty();
    }
    OptionalDouble one = overlap.number("thicknesses_mm", walls.get(0), Range.of(0.2, 400));
    OptionalDouble two = overlap.number("thicknesses_mm", walls.get(1), Range.of(0.2, 400));
    if (area.isEmpty() || weld.isEmpty() || one.isEmpty() || two.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Overlap(
            area.getAsDouble() * 10_000, one.getAsDouble(), two.getAsDouble(), weld.get(), hole));
  }

  private Optional<Overlap> overlap(Place place, String text) {
    Matcher m = OVERLAP.matcher(text);
    if (m.matches()) {
      try {
        double area = Quantities.read(QuantityKind.AREA, m.group(1) + " " + m.group(2)) * 10_000;
        double one = Quantities.lengthMm(m.group(3) + " mm");
        double two = Quantities.lengthMm(m.group(4) + " mm");
        Overlap.Weld weld =
            Overlap.Weld.valueOf(m.group(5).toUpperCase(Locale.ROOT).replace('-', '_'));
        OptionalDouble hole =
            m.group(6) == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Quantities.lengthMm(m.group(6) + " mm"));
        return Optional.of(new Overlap(area, one, two, weld, hole));
      } catch (MeasureException broken) {
        return overlapNotRead(place, text);
      }
    }
    return overlapNotRead(place, text);
  }

  private Optional<Overlap> overlapNotRead(Place place, String text) {
    fields
        .notes()
        .add(
            ProblemCode.SHAPE_NOT_READ,
            place,
            "overlaps",
            text,
            "180 cm2 3+8 mm all-round hole 12",
            "the overlap cannot be read",
            "write area, both thicknesses, weld (all-round, gap, none), hole; or no");
    return Optional.empty();
  }

  private List<Signature> signatures() {
    List<Signature> signatures = new ArrayList<>();
    for (Datum item : fields.items("vents_checked")) {
      if (item instanceof Datum.Group group) {
        Fields signature = new Fields(group, fields.notes());
        Optional<Datum.Scalar> by = signature.needed("by");
        String at = signature.text("at");
        signature.finish();
        by.ifPresent(who -> signatures.add(new Signature(who.text(), at)));
      } else if (item instanceof Datum.Scalar scalar
          && Fields.toldOf(scalar.text()).filter(Told::no).isEmpty()) {
        for (String piece : scalar.text().split(";", -1)) {
          Matcher matcher = SIGNED.matcher(piece.strip());
          if (matcher.matches() && !piece.isBlank()) {
            String at = matcher.group(2) == null ? "" : matcher.group(2);
            signatures.add(new Signature(matcher.group(1), at));
          }
        }
      }
    }
    return signatures;
  }
}
