package spangle.estimate;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import spangle.plan.LeadTime;

/**
 * Something a shop keeps and buys.
 *
 * @param id as in the coatings file
 * @param name words for the sheet
 * @param unit "kg" or "l"
 * @param pack smallest amount sold
 * @param lead time from order to door
 * @param lots in the store, each with the minutes until it is past its shelf life
 * @param deliveries ordered; what has come by now is among them, with its minute
 */
public record StoreItem(
    String id,
    String name,
    String unit,
    double pack,
    LeadTime lead,
    List<StoredLot> lots,
    List<Coming> deliveries) {
  /**
   * A lot in the store.
   *
   * @param lot maker's number
   * @param amount how much is left
   * @param ageDays days since it was made; empty where the date is not known
   * @param oldDays days past its shelf life; empty or negative while it is fresh
   */
  public record StoredLot(String lot, double amount, OptionalInt ageDays, OptionalInt oldDays) {
    /** Whether a panel must be sprayed before it is used. */
    public boolean pastShelfLife() {
      return oldDays.orElse(-1) >= 0;
    }
  }

  /**
   * A delivery.
   *
   * @param came whether it is here by now, and no longer on order
   */
  public record Coming(String lot, double amount, int atMin, boolean came) {
    /** One that is still on order. */
    public Coming(String lot, double amount, int atMin) {
      this(lot, amount, atMin, false);
    }
  }

  /** Sorts the lots so that the oldest is used first. */
  public StoreItem {
    lots =
        lots.stream()
            .sorted(
                Comparator.comparingInt(
                    (StoredLot l) -> -l.oldDays().orElse(Integer.MIN_VALUE + 1)))
            .toList();
    deliveries = deliveries.stream().sorted(Comparator.comparingInt(Coming::atMin)).toList();
  }

  /** What was in the store at the beginning of the week. */
  public double atFirst() {
    return lots.stream().mapToDouble(StoredLot::amount).sum();
  }

  /** The same with the deliveries that have come by now. */
  public double inStore() {
    return atFirst() + deliveries.stream().filter(Coming::came).mapToDouble(Coming::amount).sum();
  }

  /** What is on its way. */
  public double onOrder() {
    return deliveries.stream().filter(d -> !d.came()).mapToDouble(Coming::amount).sum();
  }
}
