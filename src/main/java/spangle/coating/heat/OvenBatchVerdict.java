package spangle.coating.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spangle.measure.Figures;
import spangle.measure.Interval;
import spangle.measure.MeasureException;

/**
 * Whether the parts of a batch can share the oven at one setting: every part cured, none overbaked.
 *
 * @param ovenC oven setting
 * @param shares every part with its own dwell, in the order given
 */
public record OvenBatchVerdict(double ovenC, List<Share> shares) {
  /**
   * One part of the batch at this setting.
   *
   * @param part the part
   * @param dwell how long it may stay
   */
  public record Share(BatchPart part, PlanDwell dwell) {}

  /**
   * Two parts that cannot share.
   *
   * @param slow part that is not yet cured
   * @param quick part that is already overbaked
   * @param apartMin by how many minutes
   */
  public record Conflict(String slow, String quick, double apartMin) {}

  /** Copies the list and checks that there is a part. */
  public OvenBatchVerdict {
    if (shares.isEmpty()) {
      throw new MeasureException("", "an oven batch", "name at least one part");
    }
    shares = List.copyOf(shares);
  }

  /** The verdict at every candidate setting, in the order given. */
  public static List<OvenBatchVerdict> of(
      List<BatchPart> parts, List<Double> settingsC, double startC, HeatUpTable table) {
    List<OvenBatchVerdict> verdicts = new ArrayList<>();
    for (double ovenC : settingsC) {
      List<Share> shares = new ArrayList<>();
      for (BatchPart part : parts) {
        shares.add(
            new Share(
                part,
                PlanDwell.of(part.part(), part.transfer(), part.window(), startC, ovenC, table)));
      }
      verdicts.add(new OvenBatchVerdict(ovenC, shares));
    }
    return List.copyOf(verdicts);
  }

  /** The setting with the shortest stay at which the whole batch can share; the first of equals. */
  public static Optional<OvenBatchVerdict> best(List<OvenBatchVerdict> verdicts) {
    return verdicts.stream()
        .filter(verdict -> verdict.common().isPresent())
        .min(Comparator.comparingDouble(verdict -> verdict.probe().dwell().minMin()));
  }

  /** The part that is cured last: the probe goes on it. */
  public Share probe() {
    return extreme(Comparator.comparingDouble(share -> share.dwell().minMin()));
  }

  /** The part that is overbaked first. */
  public Share quickest() {
    return extreme(Comparator.comparingDouble(share -> -share.dwell().maxMin()));
  }

  private Share extreme(Comparator<Share> order) {
    Share most = shares.get(0);
    for (Share share : shares) {
      if (order.compare(share, most) > 0) {
        most = share;
      }
    }
    return most;
  }

  /** Parts that no dwell at this setting cures without overbaking, taken alone. */
  public List<String> hopeless() {
    return shares.stream()
        .filter(
            share ->
                Double.isInfinite(share.dwell().minMin())
                    || share.dwell().minMin() > share.dwell().maxMin())
        .map(share -> share.part().name())
        .toList();
  }

  /** Dwells at which all parts cure and none overbakes; empty when there is none. */
  public Optional<Interval> common() {
    double least = probe().dwell().minMin();
    double most = quickest().dwell().maxMin();
    return least <= most && Double.isFinite(least)
        ? Optional.of(new Interval(least, most))
        : Optional.empty();
  }

  /** The two parts that cannot share; empty when all can, or when one part fails on its own. */
  public Optional<Conflict> conflict() {
    if (common().isPresent() || !hopeless().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Conflict(
            probe().part().name(),
            quickest().part().name(),
            probe().dwell().minMin() - quickest().dwell().maxMin()));
  }

  /** The verdict in one sentence. */
  public String words() {
    String at = "At " + Figures.upTo(ovenC, 1) + " C ";
    Optional<Interval> common = common();
    if (common.isPresent()) {
      return at
          + "all cure between "
          + Figures.fixed(common.get().min(), 1)
          + " and "
          + Figures.fixed(common.get().max(), 1)
          + " min; probe "
          + probe().part().name()
          + ".";
    }
    if (!hopeless().isEmpty()) {
      return at + "there is no dwell for " + String.join(", ", hopeless()) + ".";
    }
    Conflict conflict = conflict().orElseThrow();
    return at
        + conflict.slow()
        + " and "
        + conflict.quick()
        + " cannot share: "
        + Figures.fixed(conflict.apartMin(), 1)
        + " min apart.";
  }
}
