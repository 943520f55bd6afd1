package spangle.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One thing to buy or that is there in sufficient quantity.
 *
 * @param itemId as in {@link spangle.plan.Supply#materialId()}
 * @param item words for the sheet
 * @param unit "kg" or "l"
 * @param needLow least the week may take
 * @param needLikely what it probably takes
 * @param needHigh most it may take
 * @param allowance what of it is kept ready for rejects, likely
 * @param stock usable now
 * @param onOrder ordered and coming in time
 * @param shortBy what is missing, at least 0
 * @param packs packs to order; 0 where nothing is missing
 * @param packSize content of a pack
 * @param latestOrder last day to order it, past or coming; empty where nothing is to be ordered
 * @param usedBy jobs that need it, most urgent first
 * @param note anything the buyer should know; may be empty
 */
public record PurchaseLine(
    String itemId,
    String item,
    String unit,
    double needLow,
    double needLikely,
    double needHigh,
    double allowance,
    double stock,
    double onOrder,
    double shortBy,
    int packs,
    double packSize,
    Optional<LocalDate> latestOrder,
    List<String> usedBy,
    String note) {
  /** Copies the list. */
  public PurchaseLine {
    usedBy = List.copyOf(usedBy);
  }
}
