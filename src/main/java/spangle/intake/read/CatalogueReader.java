package spangle.intake.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import spangle.equipment.StationProfile;
import spangle.equipment.StationProfile.Kind;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Catalogue;
import spangle.intake.week.ColourChange;
import spangle.intake.week.Film;
import spangle.intake.week.Paint;
import spangle.intake.week.Powder;
import spangle.intake.week.Recoating;
import spangle.intake.week.Shop;
import spangle.intake.week.StationUse;
import spangle.intake.week.Zinc;
import spangle.intake.week.ZincStrip;
import spangle.measure.MeasureException;
import spangle.measure.Numbers;
import spangle.measure.QuantityKind;

/** Reads powders, paints and zinc. An entry that cannot be used is left out with its reasons. */
final class CatalogueReader {
  private static final Range FILM_UM = Range.of(5, 1_000);

  private final Shop shop;
  private final StockReader stocks;
  private final Set<String> ids = new HashSet<>();

  private CatalogueReader(Shop shop) {
    this.shop = shop;
    this.stocks = new StockReader(shop);
  }

  static Catalogue read(Datum.Group group, Shop shop, Notes notes) {
    Fields fields = new Fields(group, notes);
    CatalogueReader reader = new CatalogueReader(shop);
    List<Powder> powders = new ArrayList<>();
    for (Datum item : fields.items("powders")) {
      reader.entry(fields, "powders", item).flatMap(reader::powder).ifPresent(powders::add);
    }
    List<Paint> paints = new ArrayList<>();
    for (Datum item : fields.items("paints")) {
      reader.entry(fields, "paints", item).flatMap(reader::paint).ifPresent(paints::add);
    }
    Optional<Zinc> zinc =
        fields.raw("zinc").flatMap(z -> reader.entry(fields, "zinc", z)).flatMap(reader::zinc);
    fields.finish();
    return new Catalogue(powders, paints, zinc);
  }

  private Optional<Fields> entry(Fields owner, String key, Datum item) {
    if (item instanceof Datum.Group group) {
      return Optional.of(new Fields(group, owner.notes().forRow()));
    }
    owner
        .notes()
        .add(
            ProblemCode.WRONG_SHAPE,
            item.place(),
            key,
            item instanceof Datum.Scalar scalar ? scalar.text() : "",
            "a group",
            "each entry of '" + key + "' is a group of named values",
            "start it with '- id: ...'");
    return Optional.empty();
  }

  private Optional<Powder> powder(Fields f) {
    Optional<String> id = id(f);
    String colour = colour(f);
    OptionalDouble gravity = f.number("sg", Range.of(0.9, 5));
    if (gravity.isEmpty() && !f.has("sg")) {
      f.missing("sg");
    }
    if (gravity.orElse(1.5) > 2 && !f.text("chemistry").toLowerCase(Locale.ROOT).contains("zinc")) {
      doubt(
          f,
          "sg",
          "0.9 to 2.0 for powders without zinc dust",
          "few powders are that heavy; 2 to 5 is printed for metal-filled ones by mistake",
          "look at the data sheet");
    }
    Optional<Film> film = film(f);
    Powder powder =
        new Powder(
            id.orElse("?"),
            nameOr(f, colour),
            colour,
            swatch(f),
            family(f),
            chemistry(f),
            f.text("gloss").toLowerCase(Locale.ROOT),
            f.text("texture").toLowerCase(Locale.ROOT),
            gravity.orElse(1.5),
            film.orElse(new Film(1, 1, 1)),
            f.number("use", Range.of(0.05, 1)).orElse(shop.defaults().powderUse()),
            f.quantityOr("colour_loss", QuantityKind.MASS, Range.of(0, 50), 0),
            CureReader.read(f, true),
            f.number("first_coat_share", Range.of(0.1, 1)).orElse(0.5),
            recoating(f, Recoating.POWDER_GUN, film),
            stocks.read(f, "kg", QuantityKind.MASS));
    f.finish();
    return f.notes().refused() ? Optional.empty() : Optional.of(powder);
  }

  private Optional<Paint> paint(Fields f) {
    Optional<String> id = id(f);
    String colour = colour(f);
    OptionalDouble solids = f.number("solids_pct", Range.of(5, 100));
    if (solids.isEmpty() && !f.has("solids_pct")) {
      f.missing("solids_pct");
    }
    Optional<Film> film = film(f);
    OptionalInt recoatMin = OptionalInt.empty();
    OptionalInt recoatMax = OptionalInt.empty();
    Optional<Fields> recoat = f.inner("recoat_min");
    if (recoat.isPresent()) {
      recoatMin = recoat.get().whole("min", 0, 600_000);
      recoatMax = recoat.get().whole("max", 0, 6_000_000);
      recoat.get().finish();
    }
    Paint paint =
        new Paint(
            id.orElse("?"),
            nameOr(f, colour),
            colour,
            swatch(f),
            family(f),
            chemistry(f),
            solids.orElse(50),
            f.number("thinner_pct", Range.of(0, 100)).orElse(0),
            f.number("loss", Range.of(0, 0.95)).orElse(0.4),
            mix(f),
            film.orElse(new Film(1, 1, 1)),
            f.whole("pot_life_min", 1, 100_000),
            f.wholeOr("flash_off_min", 0, 10_000, 0),
            recoatMin.orElse(0),
            recoatMax.orElse(Integer.MAX_VALUE),
            f.number("sg", Range.of(0.7, 4)),
            CureReader.read(f, false),
            recoating(f, Recoating.PAINT_GUN, film),
            stocks.read(f, "l", QuantityKind.VOLUME));
    f.finish();
    return f.notes().refused() ? Optional.empty() : Optional.of(paint);
  }

  private Optional<Zinc> zinc(Fields f) {
    String id = f.text("id").isEmpty() ? "zinc" : f.text("id");
    ids.add(id);
    Zinc zinc =
        new Zinc(
            id,
            nameOr(f, "zinc"),
            f.number("yield", Range.of(0.3, 1)).orElse(shop.defaults().zincYield()),
            stocks.read(f, "kg", QuantityKind.MASS),
            strip(f));
    f.finish();
    return f.notes().refused() ? Optional.empty() : Optional.of(zinc);
  }

  /** A pickling tank in which rejected zinc comes off, and how long that takes. */
  private Optional<ZincStrip> strip(Fields f) {
    Optional<Fields> inner = f.inner("strip");
    if (inner.isEmpty()) {
      return Optional.empty();
    }
    Fields strip = inner.get();
    List<String> tanks =
        shop.lines().stream()
            .flatMap(l -> l.stations().stream())
            .filter(s -> s.profile() instanceof StationProfile p && p.kind() == Kind.PICKLE)
            .map(StationUse::id)
            .toList();
    Optional<String> station = strip.name("station");
    if (station.isPresent() && !tanks.contains(station.get())) {
      strip
          .notes()
          .add(
              ProblemCode.UNKNOWN_NAME,
              strip.valuePlace("station"),
              "station",
              station.get(),
              tanks.isEmpty() ? "the shop has no pickling tank" : String.join(", ", tanks),
              "the shop has no pickling tank '"
                  + station.get()
                  + "'"
                  + Near.hint(station.get(), tanks),
              "name the pickling tank in which rejected zinc comes off, or leave strip away:"
                  + " rejected work then waits until it is reported stripped");
      return Optional.empty();
    }
    strip.needed("minutes");
    OptionalInt minutes = strip.whole("minutes", 1, 24 * 60);
    strip.finish();
    return station.isPresent() && minutes.isPresent()
        ? Optional.of(new ZincStrip(station.get(), minutes.getAsInt()))
        : Optional.empty();
  }

  private Optional<String> id(Fields f) {
    return f.nameOnce(
        "id",
        ids,
        "two coatings bear the id",
        "give each product its own id: two products of one shade are two powders");
  }

  private static String colour(Fields f) {
    return f.needed("colour").map(Datum.Scalar::text).orElse("");
  }

  private static String nameOr(Fields f, String otherwise) {
    String name = f.text("name");
    return name.isEmpty() ? otherwise : name;
  }

  private static String chemistry(Fields f) {
    return f.needed("chemistry").map(c -> c.text().toLowerCase(Locale.ROOT)).orElse("");
  }

  private String family(Fields f) {
    ColourChange change = shop.colourChange();
    Optional<Datum.Scalar> scalar = f.scalar("family");
    if (scalar.isEmpty()) {
      if (!change.families().isEmpty()) {
        f.missing("family");
      }
      return "";
    }
    if (!change.families().contains(scalar.get().text())) {
      f.notes()
          .add(
              ProblemCode.UNKNOWN_NAME,
              scalar.get().place(),
              "family",
              scalar.get().text(),
              String.join(", ", change.families()),
              "the table of colour changes has no family '"
                  + scalar.get().text()
                  + "'"
                  + Near.hint(scalar.get().text(), change.families()),
              "use a family of colour_change in shop.yaml, or add a row and a column there");
    }
    return scalar.get().text();
  }

  private static String swatch(Fields f) {
    Optional<Datum.Scalar> scalar = f.scalar("swatch");
    if (scalar.isEmpty()) {
      return "#b0b0b0";
    }
    if (!scalar.get().text().matches("#[0-9A-Fa-f]{6}")) {
      f.notes()
          .add(
              ProblemCode.UNKNOWN_WORD,
              scalar.get().place(),
              "swatch",
              scalar.get().text(),
              "#rrggbb",
              "a swatch is a colour for the screen",
              "write it like \"#C5C7C4\", in quotes");
    }
    return scalar.get().text();
  }

  private static Optional<Film> film(Fields f) {
    Optional<Fields> inner = f.inner("film_um");
    if (inner.isEmpty()) {
      if (!f.has("film_um")) {
        f.missing("film_um");
      }
      return Optional.empty();
    }
    Fields film = inner.get();
    OptionalDouble min = film.number("min", FILM_UM);
    OptionalDouble aim = film.number("aim", FILM_UM);
    OptionalDouble max = film.number("max", FILM_UM);
    film.finish();
    for (String key : List.of("min", "aim", "max")) {
      if (!film.has(key)) {
        film.missing(key);
      }
    }
    if (min.isEmpty() || aim.isEmpty() || max.isEmpty()) {
      return Optional.empty();
    }
    if (min.getAsDouble() > aim.getAsDouble() || aim.getAsDouble() > max.getAsDouble()) {
      film.notes()
          .add(
              ProblemCode.OUT_OF_RANGE,
              film.place(),
              "film_um",
              film.text("min") + " / " + film.text("aim") + " / " + film.text("max"),
              "min <= aim <= max",
              "the film thicknesses are not in order",
              "check them against the data sheet, in um");
      return Optional.empty();
    }
    return Optional.of(new Film(min.getAsDouble(), aim.getAsDouble(), max.getAsDouble()));
  }

  private static Recoating recoating(Fields f, String usualGun, Optional<Film> film) {
    Recoating usual = Recoating.usual(usualGun, film.orElse(new Film(1, 1, 1)));
    Optional<Fields> inner = f.inner("rework");
    if (inner.isEmpty()) {
      return usual;
    }
    Fields rework = inner.get();
    String gun = rework.text("gun");
    int coats = rework.wholeOr("coats", 1, 9, usual.mostCoats());
    double most =
        rework
            .number("total_um", Range.of(5, 5_000))
            .orElse(coats * film.map(Film::maxUm).orElse(1.0));
    rework.finish();
    return new Recoating(gun.isEmpty() ? usual.gun() : gun, coats, most);
  }

  private static List<Double> mix(Fields f) {
    Optional<Datum.Scalar> scalar = f.scalar("mix");
    if (scalar.isEmpty()) {
      return List.of(1.0);
    }
    List<Double> parts = new ArrayList<>();
    try {
      for (String part : scalar.get().text().split(":", -1)) {
        parts.add(Numbers.parse(part));
      }
    } catch (MeasureException broken) {
      parts.clear();
    }
    if (parts.isEmpty()
        || parts.size() > 6
        || parts.stream().anyMatch(p -> !(p > 0 && p < 1_000))) {
      f.notes()
          .add(
              ProblemCode.NOT_A_NUMBER,
              scalar.get().place(),
              "mix",
              scalar.get().text(),
              "parts by volume such as 4:1",
              "the mixing ratio cannot be read",
              "write parts by volume, base first, like \"4:1\"");
      return List.of(1.0);
    }
    return parts;
  }

  static void doubt(Fields f, String key, String limit, String why, String remedy) {
    Place place = f.valuePlace(key);
    f.notes().add(ProblemCode.UNIT_DOUBT, place, key, f.text(key), limit, why, remedy);
  }

  /** Coatings that stand in the file but were refused, so that jobs are told the right reason. */
  static List<String> idsWritten(Datum.Group group) {
    Fields quiet = new Fields(group, new Notes(new Problems(), false));
    List<String> ids = new ArrayList<>();
    for (String key : List.of("powders", "paints")) {
      quiet.groups(key).forEach(f -> ids.add(f.text("id")));
    }
    return ids;
  }
}
