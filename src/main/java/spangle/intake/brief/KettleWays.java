package spangle.intake.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.equipment.CraneProfile;
import spangle.equipment.KettleProfile;
import spangle.equipment.StationProfile;
import spangle.fit.Crane;
import spangle.fit.KettleWay;
import spangle.fit.Station;
import spangle.fit.UsableSpace;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.measure.Box;
import spangle.plan.LineKind;

/** The tanks, kettle and crane a part passes on a shop's kettle line. */
public final class KettleWays {
  private KettleWays() {}

  /** One way per kettle; none where the shop has no kettle line. */
  public static List<KettleWay> of(Shop shop) {
    Optional<ShopLine> line = LineMaker.ofKind(shop, LineKind.ZINC);
    if (line.isEmpty()) {
      return List.of();
    }
    List<Station> others = new ArrayList<>();
    List<Station> kettles = new ArrayList<>();
    for (StationUse use : line.get().stations()) {
      if (use.profile() instanceof KettleProfile kettle) {
        Box u = kettle.usable();
        UsableSpace space =
            new UsableSpace(use.id(), u.lengthMm(), u.widthMm(), u.heightMm(), kettle.rimMm())
                .onTheDay(use.levelDownMm(), 0);
        kettles.add(new Station(Station.Kind.KETTLE, space));
      } else if (use.profile() instanceof StationProfile station) {
        kind(station.kind())
            .ifPresent(
                k ->
                    station
                        .usable()
                        .ifPresent(
                            u ->
                                others.add(
                                    new Station(
                                        k,
                                        UsableSpace.of(
                                            use.id(), u.lengthMm(), u.widthMm(), u.heightMm())))));
      }
    }
    Optional<Crane> crane = line.get().crane().map(KettleWays::crane);
    return kettles.stream()
        .map(
            k -> {
              List<Station> way = new ArrayList<>(others);
              way.add(k);
              return new KettleWay(way, crane);
            })
        .toList();
  }

  private static Crane crane(CraneProfile crane) {
    return new Crane(crane.title(), crane.maxMassKg(), crane.liftMm(), crane.hangerMm());
  }

  private static Optional<Station.Kind> kind(StationProfile.Kind kind) {
    return switch (kind) {
      case DEGREASE, RINSE, PICKLE, FLUX -> Optional.of(Station.Kind.PRETREATMENT);
      case DRYER -> Optional.of(Station.Kind.DRYER);
      case QUENCH -> Optional.of(Station.Kind.QUENCH);
      default -> Optional.empty();
    };
  }
}
