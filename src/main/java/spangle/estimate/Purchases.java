package spangle.estimate;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spangle.measure.LowLikelyHigh;

/** Need against stock, day by day. */
public final class Purchases {
  private static final int DAY_MIN = 24 * 60;

  /** Amounts under a gram count as none: they come from rounding. */
  private static final double NOTHING = 0.001;

  private Purchases() {}

  /**
   * What to buy of an item.
   *
   * @param item stock, deliveries, packs, lead time
   * @param uses all draws on it, in any order
   * @param monday date of minute zero
   * @param days days of the plan
   */
  public static Purchase of(StoreItem item, List<Use> uses, LocalDate monday, int days) {
    List<Use> sorted = new ArrayList<>(uses);
    sorted.sort(Comparator.comparingInt(Use::atMin).thenComparing(Use::jobId));
    double low = 0;
    double likely = 0;
    double high = 0;
    double allowance = 0;
    Set<String> jobs = new LinkedHashSet<>();
    for (Use use : sorted) {
      low += use.amount().low();
      likely += use.amount().likely();
      high += use.amount().high();
      if (use.jobId().equals(Use.ALLOWANCE)) {
        allowance += use.amount().likely();
      } else {
        jobs.add(use.jobId());
      }
    }
    double shortBy = Math.max(0, likely - item.inStore() - item.onOrder());
    shortBy = shortBy < NOTHING ? 0 : shortBy;
    int packs = packs(item, shortBy);
    Optional<Integer> dry = firstShort(item, sorted);
    Optional<LocalDate> latest =
        packs == 0
            ? Optional.empty()
            : dry.map(d -> neededMin(sorted, d))
                .map(
                    d ->
                        workingDaysBefore(monday.plusDays(d / DAY_MIN), item.lead().workingDays()));
    return new Purchase(
        item,
        new LowLikelyHigh(low, likely, high),
        allowance,
        shortBy,
        packs,
        dry,
        latest,
        latest.map(d -> d.isBefore(monday)).orElse(false),
        new ArrayList<>(jobs),
        balance(item, sorted, days),
        packs(item, high - item.inStore() - item.onOrder()),
        LotSharing.of(item, sorted));
  }

  private static int packs(StoreItem item, double shortBy) {
    return shortBy < NOTHING ? 0 : (int) Math.ceil(shortBy / item.pack() - 1e-9);
  }

  private static Optional<Integer> firstShort(StoreItem item, List<Use> sorted) {
    double used = 0;
    for (Use use : sorted) {
      used += use.amount().likely();
      if (used > there(item, use.atMin()) + NOTHING) {
        return Optional.of(use.atMin());
      }
    }
    return Optional.empty();
  }

  /** Work that waits has no time in the plan: it needs its share by the day it is due. */
  private static int neededMin(List<Use> uses, int dryMin) {
    return uses.stream()
        .filter(u -> !u.planned())
        .mapToInt(u -> Math.max(0, u.claim().dueMin()))
        .reduce(dryMin, Math::min);
  }

  private static double there(StoreItem item, int atMin) {
    double come =
        item.deliveries().stream()
            .filter(d -> d.atMin() <= atMin)
            .mapToDouble(StoreItem.Coming::amount)
            .sum();
    return item.atFirst() + come;
  }

  private static List<Double> balance(StoreItem item, List<Use> sorted, int days) {
    List<Double> balance = new ArrayList<>();
    for (int day = 1; day <= days; day++) {
      int end = day * DAY_MIN;
      double used =
          sorted.stream().filter(u -> u.atMin() < end).mapToDouble(u -> u.amount().likely()).sum();
      balance.add(there(item, end - 1) - used);
    }
    return balance;
  }

  /** Goes back over working days, Monday to Friday; local holidays are the buyer's to know. */
  static LocalDate workingDaysBefore(LocalDate day, int workingDays) {
    LocalDate date = day;
    int left = workingDays;
    while (left > 0) {
      date = date.minusDays(1);
      if (date.getDayOfWeek() != DayOfWeek.SATURDAY && date.getDayOfWeek() != DayOfWeek.SUNDAY) {
        left--;
      }
    }
    return date;
  }
}
