package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.intake.week.Catalogue;
import spangle.intake.week.Coating;
import spangle.intake.week.Powder;
import spangle.intake.week.Stock;
import spangle.plan.Supply;

/** What powders and paints a plan may draw on, and when. */
final class SupplyMaker {
  private SupplyMaker() {}

  static List<Supply> supplies(Catalogue catalogue) {
    return catalogue.coatings().map(SupplyMaker::supply).toList();
  }

  /** The first colour run's fixed loss is set aside before anything else is promised. */
  private static Supply supply(Coating coating) {
    double setAside = coating instanceof Powder powder ? powder.colourLossKg() : 0;
    List<Supply.Arrival> arrivals = new ArrayList<>();
    for (Stock.StockLot lot : coating.stock().lots()) {
      double taken = Math.min(setAside, lot.amount());
      setAside -= taken;
      arrivals.add(new Supply.Arrival(0, lot.amount() - taken, lot.lot()));
    }
    for (Stock.Delivery delivery : coating.stock().deliveries()) {
      double taken = Math.min(setAside, delivery.amount());
      setAside -= taken;
      arrivals.add(
          new Supply.Arrival(delivery.arriveMin(), delivery.amount() - taken, delivery.lot()));
    }
    arrivals.sort(Comparator.comparingInt(Supply.Arrival::atMin));
    return new Supply(coating.id(), coating.name(), arrivals);
  }
}
