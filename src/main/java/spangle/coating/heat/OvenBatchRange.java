package spangle.coating.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spangle.coating.heat.OvenBatchVerdict.Conflict;
import spangle.measure.Interval;

/**
 * Every setting at which a batch can share an oven, and the dwells there.
 *
 * @param settings whole degrees at which all parts cure and none overbakes, rising
 * @param nearest where there is none: the setting at which the batch comes nearest to sharing, two
 *     parts the fewest minutes apart; empty where some part fails on its own at every setting
 */
public record OvenBatchRange(List<OvenBatchVerdict> settings, Optional<OvenBatchVerdict> nearest) {
  /** Rounding of two dwells, minutes. */
  private static final double SLACK_MIN = 1e-6;

  /** Copies the list. */
  public OvenBatchRange {
    settings = List.copyOf(settings);
  }

  /**
   * Searches whole degrees, none left out.
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
    Search search = new Search(parts, startC, table);
    if (first <= last) {
      OvenBatchVerdict low = search.at(first);
      search.between(first, low, last, first == last ? low : search.at(last));
    }
    search.good.sort(Comparator.comparingDouble(OvenBatchVerdict::ovenC));
    return new OvenBatchRange(
        search.good, search.good.isEmpty() ? search.nearest : Optional.empty());
  }

  /**
   * Halves the settings. The hotter the oven, the shorter the least and the most of every part; so
   * between two settings no least is shorter than the hotter one's and no most longer than the
   * cooler one's, and a stretch in which those two do not meet need not be looked at.
   */
  private static final class Search {
    private final List<BatchPart> parts;
    private final double startC;
    private final HeatUpTable table;
    private final List<OvenBatchVerdict> good = new ArrayList<>();
    private Optional<OvenBatchVerdict> nearest = Optional.empty();
    private double nearestMin = Double.POSITIVE_INFINITY;

    Search(List<BatchPart> parts, double startC, HeatUpTable table) {
      this.parts = parts;
      this.startC = startC;
      this.table = table;
    }

    OvenBatchVerdict at(int setting) {
      OvenBatchVerdict verdict =
          OvenBatchVerdict.of(parts, List.of((double) setting), startC, table).get(0);
      if (verdict.common().isPresent()) {
        good.add(verdict);
        nearestMin = 0;
      }
      double apartMin = verdict.conflict().map(Conflict::apartMin).orElse(Double.POSITIVE_INFINITY);
      if (apartMin < nearestMin) {
        nearest = Optional.of(verdict);
        nearestMin = apartMin;
      }
      return verdict;
    }

    void between(int low, OvenBatchVerdict atLow, int high, OvenBatchVerdict atHigh) {
      double least = atHigh.probe().dwell().minMin();
      double most = atLow.quickest().dwell().maxMin();
      boolean mayShare = Double.isFinite(least) && least - most <= nearestMin + SLACK_MIN;
      if (high - low < 2 || !mayShare) {
        return;
      }
      int middle = (low + high) >>> 1;
      OvenBatchVerdict atMiddle = at(middle);
      between(low, atLow, middle, atMiddle);
      between(middle, atMiddle, high, atHigh);
    }
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
