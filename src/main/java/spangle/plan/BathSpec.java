package spangle.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How far the zinc of a kettle stands below its usual mark in the course of a week, and what it
 * must cover. It stands as it was last read or filled, less what the dips since then took out.
 *
 * @param machineId the kettle
 * @param marks when its level is known, in the order of time; the first at the week's zero
 * @param mmPerKg fall of the level, mm, for each kilogram of zinc that stays on the work; ash and
 *     dross counted
 * @param needs lots the zinc covers only while it stands high enough
 */
public record BathSpec(String machineId, List<Mark> marks, double mmPerKg, List<Need> needs) {
  /** Copies the lists. */
  public BathSpec {
    marks = List.copyOf(marks);
    needs = List.copyOf(needs);
  }

  /**
   * A known level.
   *
   * @param atMin from when on
   * @param downMm so far below the usual mark, mm
   * @param filled whether it was filled up then; else somebody read it
   */
  public record Mark(int atMin, double downMm, boolean filled) {}

  /**
   * A lot that needs the zinc high.
   *
   * @param lotId the lot
   * @param spareMm the level may stand so far below its usual mark, mm, and still cover it
   */
  public record Need(String lotId, double spareMm) {}

  /** Level below the usual mark, mm, by the last mark before that minute; dips not counted. */
  public double markedDownMm(int atMin) {
    double down = 0;
    for (Mark mark : marks) {
      if (mark.atMin() <= atMin) {
        down = mark.downMm();
      }
    }
    return down;
  }

  /** What the level may fall for a lot; empty where the zinc covers it anyway. */
  public OptionalDouble spareMm(String lotId) {
    return needs.stream()
        .filter(need -> need.lotId().equals(lotId))
        .mapToDouble(Need::spareMm)
        .findFirst();
  }
}
