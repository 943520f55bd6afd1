package spangle.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import spangle.report.BathLevel;
import spangle.report.PurchaseLine;
import spangle.report.week.KitBoard;
import spangle.report.week.KitStatus;
import spangle.report.week.Say;
import spangle.report.week.WaitingList;
import spangle.report.week.WantList;
import spangle.report.week.WeekIndex;
import spangle.report.week.WeekTime;

/** Rows of the lists: what waits, what to buy, kits, what bending is asked for. */
public final class ListRows {
  private static final int WANTS_A_DAY = 10;

  private ListRows() {}

  /**
   * A row of the list of what waits for a person.
   *
   * @param kind held, left out, late ...
   * @param danger in words
   * @param grave true where people or work are in danger
   * @param job the order
   * @param part the part
   * @param code stable code
   * @param words the problem
   * @param who who must answer
   * @param due by when
   */
  public record Wait(
      String kind,
      String danger,
      boolean grave,
      String job,
      String part,
      String code,
      String words,
      String who,
      String due) {}

  static List<Wait> waiting(WeekIndex index) {
    return WaitingList.of(index).stream()
        .map(
            p ->
                new Wait(
                    p.kind().words(),
                    p.danger(),
                    p.rank() <= 1,
                    p.jobId(),
                    p.part(),
                    p.code(),
                    p.words(),
                    p.who(),
                    due(index, p.dueMin())))
        .toList();
  }

  private static String due(WeekIndex index, OptionalInt minute) {
    return minute.isPresent() ? index.time().due(minute.getAsInt()) : "";
  }

  private static String at(WeekIndex index, OptionalInt minute) {
    return minute.isPresent() ? index.time().at(minute.getAsInt()) : "";
  }

  /**
   * A row of the purchase list.
   *
   * @param item the item
   * @param need what it takes, likely
   * @param range low to high
   * @param stock there
   * @param onOrder coming
   * @param shortBy missing
   * @param order packs to order; empty where nothing is to be ordered
   * @param latest last day to order
   * @param past true when that day is over
   * @param usedBy jobs
   * @param note more
   */
  public record Buy(
      String item,
      String need,
      String range,
      String stock,
      String onOrder,
      String shortBy,
      String order,
      String latest,
      boolean past,
      String usedBy,
      String note) {}

  static List<Buy> purchases(WeekIndex index) {
    return index.report().stores().purchases().stream().map(p -> buy(index, p)).toList();
  }

  private static Buy buy(WeekIndex index, PurchaseLine p) {
    Say say = index.say();
    String unit = " " + p.unit();
    return new Buy(
        p.item(),
        say.mass(p.needLikely()) + unit,
        say.mass(p.needLow()) + " to " + say.mass(p.needHigh()),
        say.mass(p.stock()) + unit,
        p.onOrder() > 0 ? say.mass(p.onOrder()) + unit : "",
        p.shortBy() > 0 ? say.mass(p.shortBy()) + unit : "",
        p.packs() > 0 ? p.packs() + " x " + say.number(p.packSize(), 2) + unit : "",
        p.latestOrder().map(WeekTime::date).orElse(""),
        p.latestOrder()
            .filter(d -> d.isBefore(index.time().monday().plusDays(WeekTime.dayOf(index.nowMin()))))
            .isPresent(),
        String.join(", ", p.usedBy()),
        note(say, p));
  }

  private static String note(Say say, PurchaseLine p) {
    String allowance =
        p.allowance() > 0
            ? "of it " + say.mass(p.allowance()) + " " + p.unit() + " as allowance for rejects"
            : "";
    return p.note().isEmpty() || allowance.isEmpty()
        ? p.note() + allowance
        : allowance + "; " + p.note();
  }

  /**
   * What is kept ready for rejects of a part; all words.
   *
   * @param job the order
   * @param part the part
   * @param ordered pieces ordered
   * @param pieces pieces allowed for
   * @param percent the same in per cent
   * @param again rejected and planned once more
   * @param left what is still kept ready
   */
  public record Kept(
      String job,
      String part,
      String ordered,
      String pieces,
      String percent,
      String again,
      String left) {}

  static List<Kept> allowances(WeekIndex index) {
    return index.report().stores().allowances().stream()
        .map(
            a ->
                new Kept(
                    a.jobId(),
                    a.label(),
                    Integer.toString(a.ordered()),
                    Integer.toString(a.pieces()),
                    index.say().number(a.percent(), 1) + " %",
                    Integer.toString(a.again()),
                    Integer.toString(a.left())))
        .toList();
  }

  /**
   * What the week does to a kettle.
   *
   * @param kettle the kettle
   * @param steel dipped
   * @param zinc leaving on the work
   * @param pickup zinc per cent of steel
   * @param drop level drop
   * @param words top-up
   */
  public record Bath(
      String kettle, String steel, String zinc, String pickup, String drop, String words) {}

  static List<Bath> baths(WeekIndex index) {
    return index.report().stores().baths().stream()
        .map(
            (BathLevel b) ->
                new Bath(
                    machine(index, b.machineId()),
                    index.say().mass(b.steelKg()) + " kg",
                    index.say().mass(b.zincOnPartsKg()) + " kg",
                    index.say().number(b.pickupPct(), 1) + " %",
                    index.say().number(b.levelDropMm(), 0) + " mm",
                    b.topUpWords()))
        .toList();
  }

  private static String machine(WeekIndex index, String id) {
    return index.report().brief().lines().stream()
        .flatMap(l -> l.machines().stream())
        .filter(m -> m.id().equals(id))
        .findFirst()
        .map(m -> m.name())
        .orElse(id);
  }

  /**
   * A row of the kit board.
   *
   * @param name the kit
   * @param state complete, on time, late, blocked
   * @param css state as a class of the page
   * @param now sets complete now, of those wanted
   * @param days sets complete by the end of each working day
   * @param complete when the last is complete
   * @param due wanted
   * @param blocker what holds it
   * @param together how far apart its parts finish, and from which lot of powder they come
   */
  public record KitRow(
      String name,
      String state,
      String css,
      String now,
      List<String> days,
      String complete,
      String due,
      String blocker,
      String together) {
    /** Copies the list. */
    public KitRow {
      days = List.copyOf(days);
    }
  }

  private static String together(WeekIndex index, KitStatus kit) {
    List<String> words = new ArrayList<>();
    kit.spreadMin().ifPresent(m -> words.add("within " + index.say().number(m / 60.0, 1) + " h"));
    words.addAll(kit.powderLots());
    return String.join("; ", words);
  }

  static List<KitRow> kits(WeekIndex index) {
    return KitBoard.of(index).stream()
        .map(
            (KitStatus k) ->
                new KitRow(
                    k.kit().name(),
                    k.state().words(),
                    k.state().words().replace(' ', '-'),
                    k.setsNow() + " of " + k.kit().sets(),
                    k.setsByDay().stream().limit(6).map(s -> Integer.toString(s)).toList(),
                    at(index, k.completeMin()),
                    index.time().due(k.kit().dueMin()),
                    k.blocker(),
                    together(index, k)))
        .toList();
  }

  /**
   * What bending is asked for on one day.
   *
   * @param day the day
   * @param rows at most ten
   * @param more loads of the wants that are not shown; empty for none
   */
  public record WantDay(String day, List<WantRow> rows, String more) {
    /** Copies the list. */
    public WantDay {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One want.
   *
   * @param needed clock
   * @param pieces how many
   * @param part the part
   * @param job the order
   * @param load load that waits
   * @param promised arrival bending has named
   * @param slack minutes between, in words
   * @param tight true when under an hour
   * @param why kit or due time
   */
  public record WantRow(
      String needed,
      String pieces,
      String part,
      String job,
      String load,
      String promised,
      String slack,
      boolean tight,
      String why) {}

  static List<WantDay> wants(WeekIndex index) {
    TreeMap<Integer, List<WantList.Want>> byDay = new TreeMap<>();
    for (WantList.Want want : WantList.of(index)) {
      byDay.computeIfAbsent(WeekTime.dayOf(want.neededMin()), d -> new ArrayList<>()).add(want);
    }
    List<WantDay> days = new ArrayList<>();
    byDay.forEach(
        (day, wants) ->
            days.add(
                new WantDay(
                    index.time().day(day),
                    wants.stream().limit(WANTS_A_DAY).map(w -> want(index, w)).toList(),
                    String.join(
                        ", ",
                        wants.stream()
                            .skip(WANTS_A_DAY)
                            .map(w -> w.lot().jobId() + " for " + w.place().id())
                            .toList()))));
    return days;
  }

  private static WantRow want(WeekIndex index, WantList.Want want) {
    String kits =
        want.lot().kitIds().isEmpty() ? "" : "kit " + String.join(", ", want.lot().kitIds()) + "; ";
    return new WantRow(
        index.time().clock(want.neededMin()),
        Integer.toString(want.lot().pieces()),
        want.lot().label(),
        want.lot().jobId(),
        want.place().id(),
        index.time().at(want.lot().readyMin()),
        WeekTime.stretch(Math.max(0, want.slackMin())),
        want.slackMin() < 60,
        kits + "due " + index.time().due(want.lot().dueMin()));
  }
}
