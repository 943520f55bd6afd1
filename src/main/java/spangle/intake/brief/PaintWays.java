package spangle.intake.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.equipment.CarrierProfile;
import spangle.equipment.OvenProfile;
import spangle.equipment.StationProfile;
import spangle.fit.KettleWay;
import spangle.fit.Station;
import spangle.fit.UsableSpace;
import spangle.intake.week.CarrierUse;
import spangle.intake.week.Clearances;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.plan.LineKind;

/** The rooms, doors and carriers a part passes on a paint line. */
public final class PaintWays {
  private PaintWays() {}

  /** One way for each oven and each carrier; none where the shop has no such line. */
  public static List<KettleWay> of(Shop shop, LineKind kind) {
    Optional<ShopLine> line = LineMaker.ofKind(shop, kind);
    if (line.isEmpty()) {
      return List.of();
    }
    List<Station> rooms = new ArrayList<>();
    List<Station> ovens = new ArrayList<>();
    for (StationUse use : line.get().stations()) {
      if (use.profile() instanceof StationProfile station) {
        station
            .usable()
            .ifPresent(
                u ->
                    rooms.add(
                        new Station(
                            Station.Kind.ROOM,
                            new UsableSpace(use.id(), u.lengthMm(), u.widthMm(), u.heightMm(), 0),
                            station.maxMassKg())));
      } else if (use.profile() instanceof OvenProfile oven) {
        ovens.add(oven(use.id(), oven, shop.clearances()));
      }
    }
    List<KettleWay> ways = new ArrayList<>();
    for (Station oven : ovens) {
      for (CarrierUse carrier : line.get().carriers()) {
        if (carrier.profile().hanging() != CarrierProfile.Hanging.BULK) {
          List<Station> way = new ArrayList<>(rooms);
          way.add(carrier(carrier.id(), carrier.profile()));
          way.add(oven);
          ways.add(new KettleWay(way, Optional.empty()));
        }
      }
    }
    return ways;
  }

  /** An oven behind its door, as the one machine of a way. */
  public static Station oven(String name, OvenProfile oven, Clearances clear) {
    return new Station(
        Station.Kind.KETTLE,
        new UsableSpace(
                name,
                oven.usable().lengthMm(),
                oven.usable().widthMm(),
                oven.usable().heightMm(),
                0)
            .behindDoor(
                Math.max(0, oven.door().widthMm() - 2 * clear.doorMm()),
                Math.max(0, oven.door().heightMm() - clear.doorMm())),
        oven.maxMassKg());
  }

  /** What hangs on one face of a carrier, under its hooks. */
  public static Station carrier(String name, CarrierProfile carrier) {
    return new Station(
        Station.Kind.ROOM,
        new UsableSpace(
            name,
            carrier.usable().lengthMm(),
            carrier.usable().widthMm(),
            Math.max(0, carrier.usable().heightMm() - carrier.hookDropMm()),
            0),
        carrier.maxMassKg());
  }
}
