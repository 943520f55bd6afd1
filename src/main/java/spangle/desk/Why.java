package spangle.desk;

import java.util.List;
import java.util.OptionalInt;

/**
 * Why a part of a job is where it is.
 *
 * @param jobId the order
 * @param partId the part
 * @param name the part in words
 * @param place where its last pieces are and when they are finished, in words
 * @param endMin when the last of them are finished; empty where they are not in the plan
 * @param dueMin when they are wanted
 * @param holds what holds them, the strongest first
 * @param lets what was tried and holds nothing, in words
 * @param notes what else belongs to it: kits that wait, shut gates
 */
public record Why(
    String jobId,
    String partId,
    String name,
    String place,
    OptionalInt endMin,
    int dueMin,
    List<Hold> holds,
    List<String> lets,
    List<String> notes) {
  /** Copies the lists. */
  public Why {
    holds = List.copyOf(holds);
    lets = List.copyOf(lets);
    notes = List.copyOf(notes);
  }

  /**
   * One thing that holds it.
   *
   * @param what stable name: ready, material, carrier, station, colour-run, machine, setting,
   *     hours, window, leg-before, other-work, room, gate
   * @param words the thing and what it would be like without it
   * @param endMin end without it; empty where there is none even so
   */
  public record Hold(String what, String words, OptionalInt endMin) {}

  /** Whether it is late or not in the plan. */
  public boolean late() {
    return endMin.isEmpty() || endMin.getAsInt() > dueMin;
  }
}
