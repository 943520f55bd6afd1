package spangle.intake.week;

import java.util.List;

/**
 * An order.
 *
 * @param id unique in the week
 * @param customer who wants it
 * @param parts its parts, in the order of the files
 */
public record Job(String id, String customer, List<PartLine> parts) {
  /** Copies the list. */
  public Job {
    parts = List.copyOf(parts);
  }
}
