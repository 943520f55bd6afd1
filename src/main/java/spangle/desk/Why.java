package spangle.desk;

import java.util.List;
import java.util.Optional;
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
 * @param room that they could be finished sooner with the week as it is; empty where not
 * @param holds what holds them, the strongest first
 * @param lets what was tried and holds nothing, in a word each
 * @param notes what else belongs to it: kits that wait, shut gates
 */
public record Why(
    String jobId,
    String partId,
    String name,
    String place,
    OptionalInt endMin,
    int dueMin,
    Optional<Room> room,
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
   * Room for it with the week as it is and everybody's dates kept.
   *
   * @param words when, how much sooner than the plan has it, and why the plan does not do it
   * @param endMin when it would be finished
   * @param costs what it would cost, in words; empty where the plan would be the better for it
   */
  public record Room(String words, int endMin, List<String> costs) {
    /** Copies the list. */
    public Room {
      costs = List.copyOf(costs);
    }
  }

  /**
   * One thing that holds it.
   *
   * @param what stable name: ready, material, powder-lot, kept-for-kit, carrier, station, crew,
   *     places-out, colour-run, machine, setting, hours, zinc-level, truck-days, window,
   *     leg-before, kit, other-work, several, gate
   * @param words the thing and what it would be like without it
   * @param endMin end without it; empty where there is none even so
   * @param soonerMin how much sooner than the plan has it, minutes; empty where the plan has it not
   */
  public record Hold(String what, String words, OptionalInt endMin, OptionalInt soonerMin) {
    /** Something nobody can put a time to. */
    public static Hold without(String what, String words) {
      return new Hold(what, words, OptionalInt.empty(), OptionalInt.empty());
    }
  }

  /** Whether it is late or not in the plan. */
  public boolean late() {
    return endMin.isEmpty() || endMin.getAsInt() > dueMin;
  }
}
