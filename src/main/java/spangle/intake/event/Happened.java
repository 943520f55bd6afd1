package spangle.intake.event;

import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.intake.week.WeekInput;

/**
 * A week after its events.
 *
 * @param input the week as it is now; the arrivals of a part may add up to less than was ordered
 * @param missing pieces that should be here and are not, with no word of when they come
 * @param cancelled parts not wanted any more
 * @param reworks pieces to be finished again
 */
public record Happened(
    WeekInput input, Map<PartKey, Integer> missing, Set<PartKey> cancelled, List<Rework> reworks) {
  /** Copies the collections. */
  public Happened {
    missing = Map.copyOf(missing);
    cancelled = Set.copyOf(cancelled);
    reworks = List.copyOf(reworks);
  }

  /** A part of an order. */
  public record PartKey(String jobId, String partId) {}

  /**
   * Pieces that did not pass, or were stripped since.
   *
   * @param part the part
   * @param event number of the event that says so
   * @param pieces how many
   * @param fromMin since when they wait
   * @param coats coats of their last colour they bear; 0 where they were stripped
   */
  public record Rework(PartKey part, int event, int pieces, int fromMin, int coats) {
    /** Whether they are bare again. */
    public boolean stripped() {
      return coats == 0;
    }
  }
}
