package spangle.intake.week;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What is wanted and when; times in minutes from the week's zero.
 *
 * @param route the way through the shop
 * @param finishes ids of powders or paints in the order of coats; empty for plain zinc
 * @param filmUm film in place of the coating's aim, um
 * @param readyMin when the first pieces are here
 * @param dueMin when the last must be finished
 * @param weight how much lateness counts, 1 (usual) to 9
 * @param rejectAllowancePct material kept ready for rejects, per cent of the pieces; empty where
 *     the shop's own figure holds
 * @param arrivals pieces as they come; one entry where all come together
 */
public record Wanted(
    Route route,
    List<String> finishes,
    OptionalDouble filmUm,
    int readyMin,
    int dueMin,
    int weight,
    OptionalDouble rejectAllowancePct,
    List<Arrival> arrivals) {

  /** Pieces that come together. */
  public record Arrival(int pieces, int atMin) {}

  /** Copies the lists. */
  public Wanted {
    finishes = List.copyOf(finishes);
    arrivals = List.copyOf(arrivals);
  }
}
