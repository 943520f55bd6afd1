package spangle.intake.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spangle.plan.LeadTime;

/**
 * What there is of a coating, what comes, and how it is bought. Amounts in kg (litres for liquid
 * paint).
 *
 * @param pack smallest amount sold
 * @param lead time from order to door
 * @param price price per kg or litre, in the shop's money; 0 where not given
 * @param shelfMonths shelf life from manufacture
 * @param lots in the store
 * @param deliveries ordered, not yet here
 */
public record Stock(
    double pack,
    LeadTime lead,
    double price,
    int shelfMonths,
    List<StockLot> lots,
    List<Delivery> deliveries) {

  /**
   * One lot in the store.
   *
   * @param lot maker's lot number
   * @param amount how much is left
   * @param made date of manufacture, where known
   */
  public record StockLot(String lot, double amount, Optional<LocalDate> made) {}

  /**
   * One delivery on order.
   *
   * @param lot lot number where known; may be empty
   * @param amount how much
   * @param arriveMin minutes from the week's zero
   */
  public record Delivery(String lot, double amount, int arriveMin) {}

  /** Copies the lists. */
  public Stock {
    lots = List.copyOf(lots);
    deliveries = List.copyOf(deliveries);
  }

  /** What is in the store, all lots together. */
  public double inStore() {
    return lots.stream().mapToDouble(StockLot::amount).sum();
  }
}
