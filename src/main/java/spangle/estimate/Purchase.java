package spangle.estimate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spangle.measure.LowLikelyHigh;

/**
 * What to buy of one item.
 *
 * @param item the item
 * @param need what all work of the week takes, waiting work included
 * @param allowance what of the need is kept ready for rejects, likely; no order names it
 * @param shortBy likely need less stock and deliveries, at least 0
 * @param packs whole packs that cover it
 * @param firstShort minute at which the store would run dry without buying; empty where it does not
 * @param latestOrder last working day to order; empty where nothing is to be ordered
 * @param tooLate true when that day lies before the week
 * @param jobs orders that draw on it, first needed first
 * @param balance what is left at the end of each day, likely
 * @param packsIfHigh packs that cover the high end of the need
 * @param shares who gets what from which lot, first claim first
 */
public record Purchase(
    StoreItem item,
    LowLikelyHigh need,
    double allowance,
    double shortBy,
    int packs,
    Optional<Integer> firstShort,
    Optional<LocalDate> latestOrder,
    boolean tooLate,
    List<String> jobs,
    List<Double> balance,
    int packsIfHigh,
    List<LotSharing.Share> shares) {
  /** Copies the lists. */
  public Purchase {
    jobs = List.copyOf(jobs);
    balance = List.copyOf(balance);
    shares = List.copyOf(shares);
  }
}
