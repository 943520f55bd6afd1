package spangle.plan;

import java.util.List;

/**
 * A powder, paint or other stuff a plan may only use once it is there.
 *
 * @param materialId as in {@link Finish#materialId()}
 * @param name words for the sheet
 * @param keptLot the maker's lot it is kept from for finishes of that lot, {@link
 *     Finish#materialLot()}; empty for what anything may draw on
 * @param arrivals stock at the start (minute 0) and deliveries, in time order
 */
public record Supply(String materialId, String name, String keptLot, List<Arrival> arrivals) {
  /** Copies the list. */
  public Supply {
    arrivals = List.copyOf(arrivals);
  }

  /** What anything may draw on. */
  public Supply(String materialId, String name, List<Arrival> arrivals) {
    this(materialId, name, "", arrivals);
  }

  /** The same with other arrivals. */
  public Supply with(List<Arrival> others) {
    return new Supply(materialId, name, keptLot, others);
  }

  /** What comes when: kilograms (litres for liquid paint) of one lot. */
  public record Arrival(int atMin, double amount, String lot) {}
}
