package spangle.coating.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.measure.Interval;

/**
 * Every setting at which a batch can share an oven, and the dwells there.
 *
 * @param settings whole degrees at which all parts cure and none overbakes, rising
 * @param nearest where there is none: the setting at which the batch comes nearest to sharing, two
 *     parts the fewest minutes apart; empty where some part fails on its own at every setting
 */
public record OvenBatchRange(List<OvenBatchVerdict> settings, Optional<OvenBatchVerdict> nearest) {
  private static final int COARSE_K = 5;

  /** Copies the list. */
  public OvenBatchRange {
    settings = List.copyOf(settings);
  }

  /**
   * Searches whole degrees.
   *
   * @param parts the batch
   * @param ovenC settings the oven has
   * @param startC metal temperature when it goes in
   * @param table the shop's measured heat-up
   */
  public static OvenBatchRange of(
      List<BatchPart> parts, Interval ovenC, double startC, HeatUpTable table) {
    int first = (int) Math.ceil(ovenC.min());
    int last = (int) Math.floor(ovenC.max());
    List<OvenBatchVerdict> good = new ArrayList<>();
    Optional<OvenBatchVerdict> nearest = Optional.empty();
    int previous = first - 1;
    boolean wasGood = false;
    for (int setting = first; previous < last; setting = Math.min(last, setting + COARSE_K)) {
      OvenBatchVerdict verdict = at(parts, setting, startC, table);
      boolean isGood = verdict.common().isPresent();
      if (isGood != wasGood || isGood) {
        between(parts, previous + 1, setting - 1, startC, table, good);
      }
      if (isGood) {
        good.add(verdict);
      }
      nearest = nearer(nearest, verdict);
      wasGood = isGood;
      previous = setting;
    }
    return new OvenBatchRange(good, good.isEmpty() ? nearest : Optional.empty());
  }

  private static OvenBatchVerdict at(
      List<BatchPart> parts, double setting, double startC, HeatUpTable table) {
    return OvenBatchVerdict.of(parts, List.of(setting), startC, table).get(0);
  }

  private static void between(
      List<BatchPart> parts,
      int from,
      int to,
      double startC,
      HeatUpTable table,
      List<OvenBatchVerdict> good) {
    for (int setting = from; setting <= to; setting++) {
      OvenBatchVerdict verdict = at(parts, setting, startC, table);
      if (verdict.common().isPresent()) {
        good.add(verdict);
      }
    }
  }

  private static Optional<OvenBatchVerdict> nearer(
      Optional<OvenBatchVerdict> before, OvenBatchVerdict verdict) {
    Optional<OvenBatchVerdict.Conflict> conflict = verdict.conflict();
    if (conflict.isEmpty()) {
      return before;
    }
    boolean closer =
        before
            .flatMap(OvenBatchVerdict::conflict)
            .map(known -> conflict.get().apartMin() < known.apartMin())
            .orElse(true);
    return closer ? Optional.of(verdict) : before;
  }

  /** Lowest and highest setting that works; empty where none does. */
  public Optional<Interval> ovenC() {
    return settings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Interval(settings.get(0).ovenC(), settings.get(settings.size() - 1).ovenC()));
  }

  /** The setting with the shortest stay; empty where none works. */
  public Optional<OvenBatchVerdict> best() {
    return OvenBatchVerdict.best(settings);
  }
}
