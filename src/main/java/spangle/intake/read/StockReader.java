package spangle.intake.read;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Shop;
import spangle.intake.week.Stock;
import spangle.measure.Figures;
import spangle.measure.QuantityKind;
import spangle.plan.LeadTime;

/** Reads what is in the store and on order. A bad lot is left out of the stock, not the coating. */
final class StockReader {
  private final Shop shop;
  private final Times times;

  StockReader(Shop shop) {
    this.shop = shop;
    this.times = new Times(shop.weekStart(), Times.Order.UNKNOWN);
  }

  /**
   * Stock keys of an entry.
   *
   * @param unit {@code kg} or {@code l}
   */
  Stock read(Fields f, String unit, QuantityKind kind) {
    Range amounts = Range.of(0.01, 1_000_000);
    OptionalDouble pack =
        f.has("ingot_" + unit)
            ? f.quantity("ingot", kind, amounts)
            : f.quantity("pack", kind, amounts);
    int shelf = f.wholeOr("shelf_months", 1, 240, shop.defaults().shelfMonths());
    return new Stock(
        pack.orElse(1),
        f.has("lead_days")
            ? LeadTime.of(f.wholeOr("lead_days", 0, 365, LeadTime.USUAL_DAYS))
            : LeadTime.usual(),
        f.number("price_" + unit, Range.of(0, 1_000_000)).orElse(0),
        shelf,
        lots(f, unit, shelf),
        deliveries(f, unit));
  }

  private List<Stock.StockLot> lots(Fields f, String unit, int shelfMonths) {
    List<Stock.StockLot> lots = new ArrayList<>();
    for (Fields lot : f.groups("stock")) {
      String name = lot.text("lot");
      Optional<Datum.Scalar> scalar = lot.needed(unit);
      OptionalDouble amount = amount(lot, unit, scalar);
      Optional<LocalDate> made =
          lot.scalar("made").flatMap(date -> times.date("made", date, lot.notes()));
      lot.told("opened");
      lot.finish();
      made.ifPresent(date -> checkAge(lot, name, date, shelfMonths));
      if (amount.isPresent()) {
        lots.add(new Stock.StockLot(name, amount.getAsDouble(), made));
      }
    }
    return lots;
  }

  private static OptionalDouble amount(Fields owner, String unit, Optional<Datum.Scalar> scalar) {
    if (scalar.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble amount = owner.number(unit, scalar.get(), Range.of(-1_000_000, 1_000_000));
    if (amount.isPresent() && amount.getAsDouble() < 0) {
      owner
          .notes()
          .add(
              ProblemCode.STOCK_BAD,
              scalar.get().place(),
              unit,
              scalar.get().text(),
              "0 or more",
              "there is less than nothing in the store",
              "weigh the box; until then the lot counts as empty");
      return OptionalDouble.empty();
    }
    return amount;
  }

  private void checkAge(Fields lot, String name, LocalDate made, int shelfMonths) {
    LocalDate until = made.plusMonths(shelfMonths);
    if (until.isBefore(shop.weekStart())) {
      lot.notes()
          .add(
              ProblemCode.LOT_OLD,
              lot.valuePlace("made"),
              "made",
              made.toString(),
              "until " + until,
              "lot '" + name + "' is past its shelf life",
              "spray a test panel before it is used, or take it out of stock");
    } else if (made.isAfter(shop.weekStart().plusDays(shop.horizonDays()))) {
      lot.notes()
          .add(
              ProblemCode.STOCK_BAD,
              lot.valuePlace("made"),
              "made",
              made.toString(),
              "before the week",
              "lot '" + name + "' is made in the future",
              "check the date");
    }
  }

  private List<Stock.Delivery> deliveries(Fields f, String unit) {
    List<Stock.Delivery> deliveries = new ArrayList<>();
    for (Fields order : f.groups("on_order")) {
      OptionalDouble amount = amount(order, unit, order.needed(unit));
      Optional<Datum.Scalar> arrives = order.needed("arrives");
      OptionalInt at =
          arrives.isEmpty()
              ? OptionalInt.empty()
              : times.minute("arrives", arrives.get(), Times.Edge.END, order.notes());
      String lot = order.text("lot");
      order.finish();
      if (amount.isPresent() && at.isPresent()) {
        deliveries.add(
            new Stock.Delivery(
                lot, Figures.rounded(amount.getAsDouble(), 3), Math.max(0, at.getAsInt())));
      }
    }
    deliveries.sort(Comparator.comparingInt(Stock.Delivery::arriveMin));
    return deliveries;
  }
}
