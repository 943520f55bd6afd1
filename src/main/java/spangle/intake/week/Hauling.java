package spangle.intake.week;

import java.util.List;

/**
 * How work goes to another firm's line and comes back: a truck on days, in place of stations.
 *
 * @param firm whose line it is, in words
 * @param trips collections and returns, in time order
 * @param maxKg what the truck may carry, work and pallets
 * @param places pallets it takes
 * @param chargePerKg what the firm asks for a kilogram of work, in the shop's money; 0 where
 *     unknown
 */
public record Hauling(String firm, List<Trip> trips, double maxKg, int places, double chargePerKg) {
  /**
   * One trip, minutes from the week's zero.
   *
   * @param collectMin everything that goes must stand there then
   * @param returnMin the same work is back then
   */
  public record Trip(int collectMin, int returnMin) {}

  /** Copies the list. */
  public Hauling {
    trips = List.copyOf(trips);
  }
}
