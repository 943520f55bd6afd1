package spangle.intake.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.intake.week.Catalogue;
import spangle.intake.week.Paint;
import spangle.intake.week.Powder;
import spangle.intake.week.Stock;
import spangle.intake.week.Zinc;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** What events say of powder, paint and zinc. */
final class StockNews {
  private StockNews() {}

  static Catalogue catalogue(Catalogue was, List<Event> events) {
    return new Catalogue(
        was.powders().stream().map(p -> powder(p, events)).toList(),
        was.paints().stream().map(p -> paint(p, events)).toList(),
        was.zinc()
            .map(
                z ->
                    new Zinc(
                        z.id(), z.name(), z.yield(), stock(z.id(), z.stock(), events), z.strip())));
  }

  private static Powder powder(Powder p, List<Event> events) {
    return new Powder(
        p.id(),
        p.name(),
        p.colour(),
        p.swatch(),
        p.family(),
        p.chemistry(),
        p.gloss(),
        p.texture(),
        p.specificGravity(),
        p.film(),
        p.use(),
        p.colourLossKg(),
        p.cure(),
        p.firstCoatShare(),
        p.recoating(),
        stock(p.id(), p.stock(), events));
  }

  private static Paint paint(Paint p, List<Event> events) {
    return new Paint(
        p.id(),
        p.name(),
        p.colour(),
        p.swatch(),
        p.family(),
        p.chemistry(),
        p.solidsPct(),
        p.thinnerPct(),
        p.loss(),
        p.mix(),
        p.film(),
        p.potLifeMin(),
        p.flashOffMin(),
        p.recoatMinMin(),
        p.recoatMaxMin(),
        p.specificGravity(),
        p.cure(),
        p.recoating(),
        stock(p.id(), p.stock(), events));
  }

  private static Stock stock(String id, Stock was, List<Event> events) {
    List<Stock.Delivery> open = new ArrayList<>(was.deliveries());
    List<Stock.Delivery> come = new ArrayList<>();
    for (Event event : events) {
      if (!event.material().equals(id)) {
        continue;
      }
      if (event.kind() == EventKind.DELIVERED) {
        double amount = event.figures().amount().orElse(0);
        takeFrom(open, amount);
        come.add(new Stock.Delivery(event.lot(), amount, event.atMin()));
      } else if (event.kind() == EventKind.SLIPPED) {
        int until = event.figures().untilMin().orElse(event.atMin());
        open.replaceAll(d -> new Stock.Delivery(d.lot(), d.amount(), until));
      }
    }
    come.addAll(open);
    come.sort(Comparator.comparingInt(Stock.Delivery::arriveMin));
    return new Stock(was.pack(), was.lead(), was.price(), was.shelfMonths(), was.lots(), come);
  }

  /** What came was on order: the earliest orders are met first. */
  private static void takeFrom(List<Stock.Delivery> open, double amount) {
    open.sort(Comparator.comparingInt(Stock.Delivery::arriveMin));
    double left = amount;
    for (int i = 0; i < open.size() && left > 0; i++) {
      Stock.Delivery each = open.get(i);
      double taken = Math.min(left, each.amount());
      left -= taken;
      open.set(i, new Stock.Delivery(each.lot(), each.amount() - taken, each.arriveMin()));
    }
    open.removeIf(d -> d.amount() <= 0);
  }
}
