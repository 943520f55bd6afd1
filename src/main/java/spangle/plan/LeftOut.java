package spangle.plan;

import java.util.OptionalInt;

/**
 * A lot the plan does not hold, and why.
 *
 * @param lotId the lot
 * @param code stable name of the reason: no-time, waits-too-long, gap-too-long, no-carrier,
 *     no-supply, earlier-leg, zinc-level, no-place, half-route, out-of-use
 * @param reason in words
 * @param earliestMin earliest end that could be promised; empty where nothing can be said
 */
public record LeftOut(String lotId, String code, String reason, OptionalInt earliestMin) {
  /** Code of a lot that no carrier, oven or kettle of the shop takes. */
  public static final String NO_PLACE = "no-place";

  /** Code of a lot whose station, oven or kettle stands still until the plan ends. */
  public static final String OUT_OF_USE = "out-of-use";

  /** Code of a step that would be done for nothing: the one after it finds no place. */
  public static final String HALF_ROUTE = "half-route";

  /** What must change before the lot can have a date; empty where it has one. */
  public String condition() {
    if (earliestMin.isPresent()) {
      return "";
    }
    return switch (code) {
      case "no-time" ->
          "no place was found in the two weeks behind it either; it needs longer hours, or another"
              + " firm";
      case "waits-too-long" -> "it needs hours in which its steps follow one another without a gap";
      case "gap-too-long" ->
          "the step before it must be planned anew close to it, or its surface made ready again";
      case "no-carrier" -> "it needs more carriers of its kind, or fewer pieces at a time";
      case "no-supply" -> "it waits until that is ordered and here";
      case "earlier-leg" -> "it can be had as soon as the step before it can";
      case HALF_ROUTE -> "it can be had as soon as the step after it can";
      case "zinc-level" -> "it waits until the bath is filled up";
      case OUT_OF_USE ->
          "no date before that works again: report the repair, or when it is expected, and replan";
      case NO_PLACE ->
          "it needs another finish, another carrier or oven in the shop file, or another firm";
      default -> "nothing is known that would bring it in";
    };
  }
}
