package spangle.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A numbered carrier under a load, and the stripping after it where its hooks have had all the
 * cycles they may.
 *
 * @param carrier its kind
 * @param number which one of those owned
 * @param loadId the load
 * @param fromMin when the load is hung
 * @param untilMin when it is off
 * @param cycle its load number so much in the plan
 * @param stripped whether it is stripped then
 */
public record CarrierRun(
    CarrierSpec carrier,
    int number,
    String loadId,
    int fromMin,
    int untilMin,
    int cycle,
    boolean stripped) {

  /** When it can be hung again. */
  public int backMin() {
    return untilMin + (stripped ? carrier.stripMin() : 0);
  }

  /** All runs of a plan: by kind as in the brief, then by number, then by time. */
  public static List<CarrierRun> of(Brief brief, Plan plan) {
    List<CarrierRun> runs = new ArrayList<>();
    for (CarrierSpec carrier : brief.carriers()) {
      Map<Integer, Integer> cycles = new HashMap<>();
      List<CarrierRun> bare = new ArrayList<>();
      for (PlannedBatch batch : plan.batches()) {
        for (PlannedLoad load : batch.loads()) {
          if (load.carrierId().equals(carrier.id())) {
            int from = LoadTimes.first(batch, load);
            int until = LoadTimes.last(batch, load);
            bare.add(
                new CarrierRun(carrier, load.carrierNumber(), load.id(), from, until, 0, false));
          }
        }
      }
      bare.sort(
          Comparator.comparingInt(CarrierRun::number)
              .thenComparingInt(CarrierRun::fromMin)
              .thenComparing(CarrierRun::loadId));
      for (CarrierRun run : bare) {
        runs.add(run.counted(cycles.merge(run.number(), 1, Integer::sum)));
      }
    }
    return List.copyOf(runs);
  }

  private CarrierRun counted(int cycle) {
    int every = carrier.stripAfterCycles();
    boolean strip = every > 0 && cycle % every == 0;
    return new CarrierRun(carrier, number, loadId, fromMin, untilMin, cycle, strip);
  }

  /**
   * The most carriers that are loaded or being stripped at once, and the first minute of it.
   *
   * @param runs of one kind, at least one
   */
  public static Most most(List<CarrierRun> runs) {
    Most most = new Most(0, 0);
    for (CarrierRun at : runs) {
      int minute = at.fromMin();
      int away =
          (int) runs.stream().filter(r -> r.fromMin() <= minute && minute < r.backMin()).count();
      boolean sooner = away == most.count() && minute < most.atMin();
      if (away > most.count() || sooner) {
        most = new Most(away, minute);
      }
    }
    return most;
  }

  /** So many from that minute. */
  public record Most(int count, int atMin) {}
}
