package spangle.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import spangle.desk.BathDesk;
import spangle.desk.Charge;
import spangle.desk.ColourWork;
import spangle.desk.OrderDesk;
import spangle.estimate.BathWeek;
import spangle.estimate.LotSharing;
import spangle.estimate.Purchase;
import spangle.estimate.StoreItem;
import spangle.estimate.Use;

/** What to buy, for the eye and as data. */
final class OrderWords {
  private static final int DAY_MIN = 24 * 60;
  private static final int DAYS_A_MONTH = 30;

  private final OrderDesk.Order order;
  private final double capture;
  private final double labour;

  /**
   * Words of an order.
   *
   * @param capture share of overspray sprayed again, for the advice
   * @param labour cost of a person's hour; 0 where no advice is asked for
   */
  OrderWords(OrderDesk.Order order, double capture, double labour) {
    this.order = order;
    this.capture = capture;
    this.labour = labour;
  }

  JsonOut json() {
    List<JsonOut> items = order.purchases().stream().map(this::item).toList();
    JsonOut out = new JsonOut().put("items", items);
    out.put("baths", order.baths().stream().map(this::bath).toList());
    out.put("sent_out", order.charges().stream().map(OrderWords::charge).toList());
    out.put("bought_for", order.boughtFor());
    if (labour > 0) {
      out.put(
          "reclaim",
          order.colours().stream().filter(c -> c.pricePerKg() > 0).map(this::advice).toList());
    }
    return out;
  }

  private JsonOut item(Purchase p) {
    return new JsonOut()
        .put("item", p.item().id())
        .put("name", p.item().name())
        .put("unit", p.item().unit())
        .put("need", p.need())
        .put("allowance_for_rejects", p.allowance())
        .put("stock", p.item().inStore())
        .put("on_order", p.item().onOrder())
        .put("short", p.shortBy())
        .put("packs", p.packs())
        .put("packs_if_high", p.packsIfHigh())
        .put("pack", p.item().pack())
        .put("latest_order", p.latestOrder().map(LocalDate::toString).orElse(null))
        .put("too_late", p.tooLate())
        .put("lead_days", p.item().lead().workingDays())
        .put("lead_days_assumed", p.item().lead().assumed())
        .put(
            "runs_dry",
            p.firstShort().map(m -> order.monday().plusDays(m / DAY_MIN).toString()).orElse(null))
        .put("used_by", new ArrayList<>(p.jobs()))
        .put("balance", p.balance())
        .put("lots", p.item().lots().stream().map(OrderWords::lot).toList())
        .put("shares", p.shares().stream().map(OrderWords::share).toList());
  }

  private static JsonOut lot(StoreItem.StoredLot lot) {
    return new JsonOut()
        .put("lot", lot.lot())
        .put("amount", lot.amount())
        .put("age_days", lot.ageDays().isPresent() ? lot.ageDays().getAsInt() : null)
        .put("past_shelf_life", lot.pastShelfLife());
  }

  private static JsonOut share(LotSharing.Share share) {
    return new JsonOut()
        .put("job", share.jobId())
        .put("kit", share.kitId().isEmpty() ? null : share.kitId())
        .put("need", share.amount())
        .put("missing", share.missing())
        .put(
            "from",
            share.draws().stream()
                .map(d -> new JsonOut().put("lot", d.lot()).put("amount", d.amount()))
                .toList())
        .put("one_lot_broken", share.oneLotBroken());
  }

  private JsonOut bath(BathDesk.Bath bath) {
    BathWeek level = bath.level();
    JsonOut out =
        new JsonOut()
            .put("kettle", bath.machineId())
            .put("steel_kg", bath.steelKg())
            .put("zinc_on_parts_kg", bath.zincKg())
            .put(
                "inside_the_purchase_kg",
                new JsonOut()
                    .put("ash", bath.losses().ashKg())
                    .put("dross", bath.losses().drossKg())
                    .put("splash", bath.losses().splashKg()))
            .put("level_drop_mm", level.dropMm())
            .put("lowest_mm", level.lowestMm())
            .put("drop_by_day_mm", level.dropByDayMm())
            .put(
                "top_ups",
                level.topUps().stream()
                    .map(t -> new JsonOut().put("at", at(t.atMin())).put("ingots", t.ingots()))
                    .toList())
            .put("ingot_kg", bath.ingotKg())
            .put(
                "uncovered",
                level
                    .uncovered()
                    .map(
                        u ->
                            new JsonOut()
                                .put("part", u.name())
                                .put("at", at(u.atMin()))
                                .put("missing_mm", u.missingMm()))
                    .orElse(null));
    bath.heaviest()
        .ifPresent(
            h ->
                out.put(
                    "heaviest_dip",
                    new JsonOut()
                        .put("batch", h.batchId())
                        .put("heat_kwh", h.heatKWh())
                        .put("drop_k", h.dropK())
                        .put("share_pct", h.sharePct())));
    return out;
  }

  private static JsonOut charge(Charge charge) {
    return new JsonOut()
        .put("line", charge.lineId())
        .put("firm", charge.firm())
        .put("kg", charge.kg())
        .put("charge_per_kg", charge.perKg() > 0 ? charge.perKg() : null)
        .put("charge", charge.perKg() > 0 ? charge.money() : null);
  }

  private static String words(Charge charge) {
    String to = charge.firm().isEmpty() ? charge.lineId() : charge.firm();
    return String.format(Locale.ROOT, "%s: %.0f kg of work", to, charge.kg())
        + (charge.perKg() > 0
            ? String.format(
                Locale.ROOT, " at %.2f a kg, %.2f in all", charge.perKg(), charge.money())
            : "; no charge_per_kg in shop.yaml, so no money");
  }

  private JsonOut advice(ColourWork colour) {
    var advice = colour.advice(capture, labour);
    return new JsonOut()
        .put("name", colour.name())
        .put("area_m2", colour.areaM2())
        .put("break_even_m2", advice.breakEvenM2())
        .put("advice", advice.verdict().words());
  }

  void print(PrintWriter out) {
    Answer answer = new Answer(out);
    answer.say("bought", order.boughtFor());
    order.purchases().forEach(p -> print(answer, p));
    order.baths().forEach(b -> print(answer, b));
    order.charges().forEach(c -> answer.say("sent out", words(c)));
    if (labour > 0) {
      if (order.colours().stream().noneMatch(c -> c.pricePerKg() > 0)) {
        answer.say("advice", "none: no powder of the week has a price_kg in coatings.yaml");
      }
      order.colours().stream()
          .filter(c -> c.pricePerKg() > 0)
          .forEach(
              c ->
                  answer.line(
                      "advice",
                      "%s: %s; %.0f m2 this week, break-even at %.0f m2",
                      c.name(),
                      c.advice(capture, labour).verdict().words(),
                      c.areaM2(),
                      c.advice(capture, labour).breakEvenM2()));
    }
    answer.say(
        "note", "need is a planning range, waiting work included; held parts are not counted");
    answer.end();
  }

  private void print(Answer answer, Purchase p) {
    String unit = p.item().unit();
    answer.line(p.packs() > 0 ? "ORDER" : "enough", "%s: %s", p.item().name(), verdict(p));
    answer.line(
        "",
        "need %.1f %s (%.1f to %.1f), stock %.1f, on order %.1f",
        p.need().likely(),
        unit,
        p.need().low(),
        p.need().high(),
        p.item().inStore(),
        p.item().onOrder());
    if (p.allowance() > 0) {
      answer.line("", "of it %.1f %s as allowance for rejects", p.allowance(), unit);
    }
    answer.line("", "lots %s", lots(p.item(), unit));
    answer.line("", "left at the end of the day: %s", balance(p));
    boolean tight = p.packs() > 0 || p.firstShort().isPresent();
    for (LotSharing.Share share : p.shares()) {
      if (tight || share.needsOneLot()) {
        answer.say("", words(share, unit));
      }
    }
  }

  private String verdict(Purchase p) {
    if (p.packs() == 0) {
      return p.firstShort().isPresent()
          ? "enough, but short " + at(p.firstShort().get()) + " until the delivery comes"
          : "nothing to order"
              + (p.packsIfHigh() > 0
                  ? String.format(
                      Locale.ROOT, " (at the high end %d x %.0f)", p.packsIfHigh(), p.item().pack())
                  : "");
    }
    return String.format(
        Locale.ROOT,
        "short %.1f %s, order %d x %.0f %s by %s (%s)%s",
        p.shortBy(),
        p.item().unit(),
        p.packs(),
        p.item().pack(),
        p.item().unit(),
        p.latestOrder().map(OrderWords::day).orElse("now"),
        p.item().lead().words(),
        p.tooLate() ? ", before the week: ask for express, or work waits" : "");
  }

  private String lots(StoreItem item, String unit) {
    List<String> words = new ArrayList<>();
    for (StoreItem.StoredLot lot : item.lots()) {
      String age =
          lot.ageDays().isEmpty()
              ? ""
              : ", " + Math.max(0, lot.ageDays().getAsInt() / DAYS_A_MONTH) + " months old";
      words.add(
          String.format(Locale.ROOT, "%s %.1f %s%s", lot.lot(), lot.amount(), unit, age)
              + (lot.pastShelfLife() ? ", PAST SHELF LIFE: spray a test panel" : ""));
    }
    for (StoreItem.Coming coming : item.deliveries()) {
      words.add(
          String.format(
              Locale.ROOT,
              "%s %.1f %s %s %s",
              coming.lot().isEmpty() ? "a delivery of" : coming.lot(),
              coming.amount(),
              unit,
              coming.came() ? "came" : "comes",
              at(coming.atMin())));
    }
    return words.isEmpty() ? "none" : "to open in this order: " + String.join("; ", words);
  }

  private String balance(Purchase p) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < p.balance().size(); i++) {
      words.add(
          String.format(
              Locale.ROOT, "%s %.1f", weekday(order.monday().plusDays(i)), p.balance().get(i)));
    }
    return String.join(", ", words);
  }

  private static String words(LotSharing.Share share, String unit) {
    String who =
        share.jobId().equals(Use.COLOUR_LOSS)
            ? "hoses and box"
            : (share.kitId().isEmpty() ? "" : "kit " + share.kitId() + ", ") + share.jobId();
    String from =
        share.draws().stream()
            .map(
                d ->
                    String.format(
                        Locale.ROOT,
                        "%.1f from %s",
                        d.amount(),
                        d.lot().isEmpty() ? "a delivery" : d.lot()))
            .collect(Collectors.joining(" + "));
    return String.format(Locale.ROOT, "%s: %.1f %s", who, share.amount(), unit)
        + (from.isEmpty() ? "" : ", " + from)
        + (share.missing() > 0
            ? String.format(Locale.ROOT, "; WAITS for %.1f", share.missing())
            : "")
        + (share.oneLotBroken() ? "; NOT ONE LOT: shades may differ in the kit" : "");
  }

  private void print(Answer answer, BathDesk.Bath bath) {
    BathWeek level = bath.level();
    answer.line(
        "bath",
        "%s: %.0f kg zinc on %.0f kg steel; the level falls %.1f mm by the week, ash and dross"
            + " counted",
        bath.machineId(),
        bath.zincKg(),
        bath.steelKg(),
        level.dropMm());
    answer.line(
        "",
        "what is bought for it and does not stay on it: ash %.1f, dross %.1f, splash and jigs %.1f"
            + " kg; inside the need, never added",
        bath.losses().ashKg(),
        bath.losses().drossKg(),
        bath.losses().splashKg());
    level
        .topUps()
        .forEach(
            t ->
                answer.line(
                    "",
                    "top up by %s: %d dry ingots of %.0f kg",
                    at(t.atMin()),
                    t.ingots(),
                    bath.ingotKg()));
    answer.say(
        "",
        level
            .uncovered()
            .map(
                u ->
                    String.format(
                        Locale.ROOT,
                        "NOT COVERED: %s, %s, by %.0f mm: top up before it",
                        u.name(),
                        at(u.atMin()),
                        u.missingMm()))
            .orElse("every planned part stays covered"));
    bath.heaviest()
        .ifPresent(
            h ->
                answer.line(
                    "",
                    "heaviest dip %s: %.1f kWh, %.1f C with the burners off, %.1f %% of the bath",
                    h.batchId(),
                    h.heatKWh(),
                    h.dropK(),
                    h.sharePct()));
  }

  private String at(int minute) {
    return String.format(
        Locale.ROOT,
        "%s %02d:%02d",
        weekday(order.monday().plusDays(minute / DAY_MIN)),
        minute % DAY_MIN / 60,
        minute % 60);
  }

  private static String day(LocalDate date) {
    return weekday(date) + " " + date;
  }

  private static String weekday(LocalDate date) {
    return date.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ROOT);
  }
}
