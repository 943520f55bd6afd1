package spangle.plan;

import java.util.List;

/**
 * An oven batch or a dip with its times.
 *
 * @param id such as "oven-1 #3"
 * @param lineId the line
 * @param machineId oven or kettle
 * @param setting {@link Setting#index()}
 * @param setupStartMin start of the set-up before it (equal to start where there is none)
 * @param startMin in
 * @param endMin out; the dwell is the difference
 * @param loads what is in it, in the order they were fed to the line
 */
public record PlannedBatch(
    String id,
    String lineId,
    String machineId,
    int setting,
    int setupStartMin,
    int startMin,
    int endMin,
    List<PlannedLoad> loads) {
  /** Copies the list. */
  public PlannedBatch {
    loads = List.copyOf(loads);
  }

  /** The same batch with these loads in it. */
  public PlannedBatch with(List<PlannedLoad> others) {
    return later(0, others);
  }

  /** The batch so many minutes later (sooner where negative), with these loads in it. */
  public PlannedBatch later(int minutes, List<PlannedLoad> others) {
    return new PlannedBatch(
        id,
        lineId,
        machineId,
        setting,
        setupStartMin + minutes,
        startMin + minutes,
        endMin + minutes,
        others);
  }

  /** Minutes in the machine. */
  public int dwellMin() {
    return endMin - startMin;
  }
}
