package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the tanks before and after the kettle mean for a part that takes two dips. */
final class Pickles {
  private Pickles() {}

  /** The first station that cannot cover a part even in two dips. */
  static Optional<String> refusedBy(FitRequest request, KettleWay way, TwoDips dips) {
    return way.stations().stream()
        .filter(station -> !whole(request, station.space()))
        .filter(
            station ->
                TwoDipSearch.find(request.body(), station.space(), dips.overlapMm()).isEmpty())
        .map(Station::name)
        .findFirst();
  }

  /** Sentences about further pickles and about the dryer. */
  static List<String> words(FitRequest request, KettleWay way) {
    List<String> words = new ArrayList<>();
    UsableSpace kettle = way.kettle();
    for (Station station : way.stations()) {
      UsableSpace space = station.space();
      boolean outside = !whole(request, space);
      boolean shorter = space.lengthMm() < kettle.lengthMm() || space.depthMm() < kettle.depthMm();
      if (station.kind() == Station.Kind.PRETREATMENT && outside) {
        words.add(
            shorter
                ? space.name()
                    + " is smaller than the kettle: plan three passes through it instead of two"
                : "Two passes through " + space.name() + ": the part does not go in whole");
      } else if (station.kind() == Station.Kind.DRYER && outside) {
        words.add(
            "The part does not go into "
                + space.name()
                + " whole: dry the end left out as well; "
                + "only dry work may enter the zinc");
      }
    }
    return words;
  }

  private static boolean whole(FitRequest request, UsableSpace space) {
    return WholeFit.best(request.body(), space, request.rules()).isPresent();
  }
}
