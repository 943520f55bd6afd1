package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Route;
import spangle.intake.week.Shop;
import spangle.intake.week.Wanted;
import spangle.measure.QuantityKind;

/** Reads what is wanted and when. */
final class WantedReader {
  /** Hard cases lose up to 40 of 100; a figure beyond 50 is a slip. */
  static final Range REJECTS = Range.of(0, 50);

  private static final int MANY_PIECES = 50_000;
  private static final Pattern ARRIVAL = Pattern.compile("([^@]+)@(.+)");
  private static final Map<String, Integer> PRIORITY = priorities();

  private final Fields fields;
  private final JobContext context;
  private final FinishReader finishes;

  WantedReader(Fields fields, JobContext context) {
    this.fields = fields;
    this.context = context;
    this.finishes = new FinishReader(fields, context);
  }

  /** Pieces ordered; empty when they cannot be counted. */
  OptionalInt quantity() {
    Optional<Datum.Scalar> scalar = fields.needed("qty");
    if (scalar.isEmpty()) {
      return OptionalInt.empty();
    }
    if (scalar.get().place().merged()) {
      notACount(
          "qty",
          scalar.get(),
          "one cell stands beside several parts: nobody can say whether it counts each or all",
          "unmerge it and give every part its own number");
      return OptionalInt.empty();
    }
    OptionalInt count = count("qty", scalar.get(), scalar.get().text());
    if (count.isPresent() && count.getAsInt() > MANY_PIECES) {
      fields
          .notes()
          .add(
              ProblemCode.COUNT_HUGE,
              scalar.get().place(),
              "qty",
              scalar.get().text(),
              "up to " + MANY_PIECES,
              "that many pieces in one row read like a slip",
              "answer keep if it is right, else give the count");
    }
    return count;
  }

  private OptionalInt count(String key, Datum.Scalar scalar, String text) {
    PieceCount count = PieceCount.of(scalar, text, context.decimal());
    if (count.pieces().isEmpty()) {
      notACount(key, scalar, count.why(), count.remedy());
    }
    return count.pieces();
  }

  private void notACount(String key, Datum.Scalar scalar, String why, String remedy) {
    String limit = "1 to " + PieceCount.MOST + " pieces";
    fields
        .notes()
        .add(ProblemCode.NOT_A_COUNT, scalar.place(), key, scalar.text(), limit, why, remedy);
  }

  Wanted read(OptionalInt qty) {
    Optional<Route> route = route();
    route.ifPresent(finishes::checkLine);
    List<String> coats = route.isEmpty() ? finishes.unread() : finishes.read(route.get());
    OptionalDouble film = fields.quantity("film", QuantityKind.FILM, Range.of(10, 1_000));
    film.ifPresent(um -> doubtFilm(um));
    OptionalInt due = due();
    OptionalInt ready =
        fields
            .scalar("ready")
            .map(s -> context.times().minute("ready", s, Times.Edge.START, fields.notes()))
            .orElse(OptionalInt.of(0));
    List<Wanted.Arrival> arrivals = arrivals(qty, ready);
    int readyMin = arrivals.isEmpty() ? Math.max(0, ready.orElse(0)) : arrivals.get(0).atMin();
    int weight = priority();
    OptionalDouble allowance = fields.number("reject_allowance_pct", REJECTS);
    if (due.isPresent()) {
      checkDue(due.getAsInt(), arrivals);
    }
    return new Wanted(
        route.orElse(Route.POWDER),
        coats,
        film,
        readyMin,
        due.orElse(0),
        weight,
        allowance,
        arrivals);
  }

  /** The way as written; where none is written, the finish may say it, and is asked about. */
  private Optional<Route> route() {
    Optional<Datum.Scalar> scalar = fields.scalar("route");
    if (scalar.isPresent()) {
      Optional<Route> meant = RouteWords.find(scalar.get().text());
      return meant.isPresent()
          ? meant
          : fields.word("route", Fields.words(Route.values(), Route::word));
    }
    Optional<Route> meant = fields.raw("route").isEmpty() ? finishes.meant() : Optional.empty();
    if (meant.isEmpty()) {
      return fields.wordNeeded("route", Fields.words(Route.values(), Route::word));
    }
    fields
        .notes()
        .add(
            ProblemCode.ROUTE_FROM_FINISH,
            fields.valuePlace("finish"),
            "route",
            "",
            "",
            "no route is written; by the finish '"
                + fields.text("finish")
                + "' it is '"
                + meant.get().word()
                + "'",
            "answer keep if it is right, or give the route: powder, liquid, zinc, duplex, two-coat");
    return meant;
  }

  private void doubtFilm(double um) {
    if (um >= 40 && um <= 500) {
      return;
    }
    CatalogueReader.doubt(
        fields,
        fields.has("film") ? "film" : "film_um",
        "40 to 500 um",
        "as written it is "
            + spangle.measure.Figures.upTo(um, 1)
            + " um; few coats are so "
            + (um < 40 ? "thin" : "thick"),
        "answer keep if it is right, else give the film with its unit: 70 um, 2.8 mil");
  }

  private OptionalInt due() {
    Optional<Datum.Scalar> due = fields.needed("due");
    return due.isEmpty()
        ? OptionalInt.empty()
        : context.times().minute("due", due.get(), Times.Edge.END, fields.notes());
  }

  private int priority() {
    Optional<Datum.Scalar> scalar = fields.scalar("priority");
    return scalar.isEmpty() ? 1 : fields.word("priority", PRIORITY).orElse(1);
  }

  private static Map<String, Integer> priorities() {
    Map<String, Integer> words = new LinkedHashMap<>();
    for (int i = 1; i <= 9; i++) {
      words.put(Integer.toString(i), i);
    }
    words.put("usual", 1);
    words.put("normal", 1);
    words.put("urgent", 4);
    words.put("hot", 5);
    words.put("rush", 5);
    return words;
  }

  private List<Wanted.Arrival> arrivals(OptionalInt qty, OptionalInt ready) {
    List<Wanted.Arrival> arrivals = new ArrayList<>();
    List<Datum> items = fields.items("arrivals");
    boolean read = true;
    for (Datum item : items) {
      if (item instanceof Datum.Group group) {
        Fields arrival = new Fields(group, fields.notes());
        read &= add(arrivals, arrival.needed("qty"), arrival.needed("at"));
        arrival.finish();
      }
    }
    for (Datum.Scalar text : scalars(items)) {
      Matcher matcher = ARRIVAL.matcher(text.text());
      if (matcher.matches()) {
        read &=
            add(
                arrivals,
                Optional.of(new Datum.Scalar(text.place(), matcher.group(1).strip())),
                Optional.of(new Datum.Scalar(text.place(), matcher.group(2).strip())));
      } else {
        read = false;
        fields
            .notes()
            .add(
                ProblemCode.NOT_A_TIME,
                text.place(),
                "arrivals",
                text.text(),
                "pieces@time; pieces@time",
                "an arrival says how many pieces come when",
                "write it like 400@mon 07:00; 400@tue 07:00");
      }
    }
    arrivals.sort(java.util.Comparator.comparingInt(Wanted.Arrival::atMin));
    if (items.isEmpty()) {
      return qty.isPresent() && ready.isPresent()
          ? List.of(new Wanted.Arrival(qty.getAsInt(), Math.max(0, ready.getAsInt())))
          : List.of();
    }
    return read && qty.isPresent() ? ordered(qty.getAsInt(), arrivals) : arrivals;
  }

  private static List<Datum.Scalar> scalars(List<Datum> items) {
    List<Datum.Scalar> texts = new ArrayList<>();
    for (Datum item : items) {
      if (item instanceof Datum.Scalar scalar) {
        for (String piece : scalar.text().split(";", -1)) {
          if (!piece.isBlank()) {
            texts.add(new Datum.Scalar(scalar.place(), piece.strip()));
          }
        }
      }
    }
    return texts;
  }

  private boolean add(
      List<Wanted.Arrival> arrivals, Optional<Datum.Scalar> qty, Optional<Datum.Scalar> at) {
    if (qty.isEmpty() || at.isEmpty()) {
      return false;
    }
    OptionalInt pieces = count("arrivals", qty.get(), qty.get().text());
    OptionalInt minute =
        context.times().minute("arrivals", at.get(), Times.Edge.START, fields.notes());
    if (pieces.isEmpty() || minute.isEmpty()) {
      return false;
    }
    arrivals.add(new Wanted.Arrival(pieces.getAsInt(), Math.max(0, minute.getAsInt())));
    return true;
  }

  /**
   * What is announced of the pieces ordered. The rest waits until somebody says when it comes; of
   * more than are ordered the first ones count, since nobody ordered the others to be coated.
   */
  private List<Wanted.Arrival> ordered(int qty, List<Wanted.Arrival> arrivals) {
    long sum = arrivals.stream().mapToLong(Wanted.Arrival::pieces).sum();
    if (sum != qty) {
      fields
          .notes()
          .add(
              ProblemCode.ARRIVALS_DO_NOT_ADD_UP,
              fields.valuePlace("arrivals"),
              "arrivals",
              Long.toString(sum),
              qty + " pieces",
              "the arrivals come to "
                  + sum
                  + " pieces, ordered are "
                  + qty
                  + (sum < qty
                      ? "; the " + (qty - sum) + " not announced wait, the others are planned"
                      : "; the first " + qty + " are planned, the rest is not"),
              sum < qty
                  ? "say when the others come, or correct the count that is ordered"
                  : "correct the count that is ordered where spares are to be coated too");
    }
    List<Wanted.Arrival> counted = new ArrayList<>();
    int left = qty;
    for (Wanted.Arrival arrival : arrivals) {
      int pieces = Math.min(left, arrival.pieces());
      left -= pieces;
      if (pieces > 0) {
        counted.add(new Wanted.Arrival(pieces, arrival.atMin()));
      }
    }
    return counted;
  }

  private void checkDue(int due, List<Wanted.Arrival> arrivals) {
    Datum.Scalar scalar = fields.scalar("due").orElseThrow();
    if (due <= 0) {
      ask(
          ProblemCode.DUE_IN_THE_PAST,
          scalar,
          "after " + context.shop().weekStart(),
          "it was due before the week begins: it is late at entry");
    } else if (freeDay(due)) {
      ask(
          ProblemCode.DUE_ON_A_FREE_DAY,
          scalar,
          "a day the shop works",
          "nobody works on the day it is due; it is held as written and never moved in silence");
    }
    boolean late = !arrivals.isEmpty() && arrivals.get(arrivals.size() - 1).atMin() >= due;
    if (late && due > 0) {
      ask(
          ProblemCode.READY_AFTER_DUE,
          scalar,
          "after the last pieces are here",
          "pieces come after the job is due: it is late at entry");
    }
  }

  private void ask(ProblemCode code, Datum.Scalar scalar, String limit, String why) {
    fields
        .notes()
        .add(
            code,
            scalar.place(),
            "due",
            scalar.text(),
            limit,
            why,
            "ask whoever promised it for another date, or answer keep");
  }

  private boolean freeDay(int due) {
    Shop shop = context.shop();
    int day = (due - 1) / Shop.DAY_MIN;
    if (day >= shop.horizonDays()) {
      return false;
    }
    boolean extra =
        shop.exceptions().stream().anyMatch(e -> e.day() == day && e.hours().isPresent());
    boolean closed =
        shop.exceptions().stream()
            .anyMatch(e -> e.day() == day && e.hours().isEmpty() && e.lines().isEmpty());
    boolean worked = shop.shifts().stream().anyMatch(s -> s.days().contains(day % 7));
    return !extra && (closed || !worked);
  }
}
