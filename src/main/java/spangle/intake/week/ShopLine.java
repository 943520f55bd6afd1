package spangle.intake.week;

import java.util.List;
import java.util.Optional;
import spangle.equipment.CraneProfile;
import spangle.plan.LineKind;

/**
 * A line of the shop.
 *
 * @param id unique in the shop
 * @param name words for the sheet
 * @param kind what it does
 * @param settingsC what its ovens may be set to, C, rising; empty for a kettle line
 * @param crane the hoist that serves it
 * @param stations in the order a load passes them; its ovens or kettles stand side by side
 * @param carriers what carries parts through it
 * @param hauling how work gets to a line of another firm; empty for one of the shop's own
 */
public record ShopLine(
    String id,
    String name,
    LineKind kind,
    List<Double> settingsC,
    Optional<CraneProfile> crane,
    List<StationUse> stations,
    List<CarrierUse> carriers,
    Optional<Hauling> hauling) {
  /** Copies the lists. */
  public ShopLine {
    settingsC = List.copyOf(settingsC);
    stations = List.copyOf(stations);
    carriers = List.copyOf(carriers);
  }

  /** Stations ahead of the first machine. */
  public List<StationUse> before() {
    return stations.subList(0, firstMachine());
  }

  /** Ovens or kettles. */
  public List<StationUse> machines() {
    return stations.stream().filter(StationUse::isMachine).toList();
  }

  /** Stations behind the machines. */
  public List<StationUse> after() {
    return stations.subList(Math.min(stations.size(), firstMachine()), stations.size()).stream()
        .filter(s -> !s.isMachine())
        .toList();
  }

  private int firstMachine() {
    for (int i = 0; i < stations.size(); i++) {
      if (stations.get(i).isMachine()) {
        return i;
      }
    }
    return stations.size();
  }
}
