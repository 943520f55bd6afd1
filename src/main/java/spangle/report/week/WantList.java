package spangle.report.week;

import java.util.Comparator;
import java.util.List;
import spangle.plan.Lot;

/** What bending is asked for: lots that have not arrived, in the order the line wants them. */
public final class WantList {
  private WantList() {}

  /**
   * One line.
   *
   * @param lot the lot
   * @param place the load that waits for it
   * @param neededMin when hanging starts
   */
  public record Want(Lot lot, LoadPlace place, int neededMin) {
    /** Minutes between the promised arrival and the start of hanging. */
    public int slackMin() {
      return neededMin - lot.readyMin();
    }
  }

  /** The wants from now on: first legs that arrive after now, earliest need first. */
  public static List<Want> of(WeekIndex index) {
    return index.loads().stream()
        .flatMap(
            place ->
                place.lots().stream()
                    .filter(lot -> lot.after().isEmpty())
                    .filter(lot -> lot.readyMin() > index.nowMin())
                    .map(lot -> new Want(lot, place, place.startMin())))
        .sorted(
            Comparator.comparingInt(Want::neededMin)
                .thenComparing(w -> w.place().id())
                .thenComparing(w -> w.lot().id()))
        .toList();
  }
}
