package spangle.plan.bound;

import java.util.List;

/**
 * Floors of one line.
 *
 * @param lineId the line
 * @param kettle true when its batches are dips
 * @param loads carriers filled, frozen ones counted
 * @param batches batches or dips, frozen ones counted
 * @param machineMinutes minutes its machines hold batches; 0 on another firm's line
 * @param settingMinutes minutes of setting changes
 * @param settingCost cost of setting changes
 * @param colourChanges colour changes at its stations
 * @param colourCost their cost
 * @param lateLots weighted lots that finish on this line too late whatever the order
 * @param kinds by kind of work that never meets another in a machine
 * @param groups by finish
 */
public record LineBounds(
    String lineId,
    boolean kettle,
    int loads,
    int batches,
    long machineMinutes,
    long settingMinutes,
    long settingCost,
    int colourChanges,
    long colourCost,
    long lateLots,
    List<KindBounds> kinds,
    List<GroupBounds> groups) {
  /** Copies the lists. */
  public LineBounds {
    kinds = List.copyOf(kinds);
    groups = List.copyOf(groups);
  }

  /**
   * Floors of one kind of work; what is frozen is not in them.
   *
   * @param batchGroup the kind of work
   * @param byCapacity batches by the places and the mass a machine takes
   * @param byConflict batches by lots of which no two may share one: dwell windows that do not
   *     meet, no machine in common, too large together
   * @param batches batches in all; lots that cannot meet are counted apart, so it may be more than
   *     either
   * @param minutes minutes in the machine
   */
  public record KindBounds(
      String batchGroup, int byCapacity, int byConflict, int batches, long minutes) {}

  /**
   * Floors of the loads of one finish; what is frozen is not in them.
   *
   * @param finishKey what loads share
   * @param finish words for the sheet
   * @param lots how many lots
   * @param byMass loads by what carriers bear
   * @param byRoom loads by the room on their faces
   * @param byHooks loads by hooks
   * @param byConflict loads by lots of which no two may share one
   * @param loads loads in all; lots that cannot meet are counted apart, so it may be more than each
   */
  public record GroupBounds(
      String finishKey,
      String finish,
      int lots,
      int byMass,
      int byRoom,
      int byHooks,
      int byConflict,
      int loads) {}
}
