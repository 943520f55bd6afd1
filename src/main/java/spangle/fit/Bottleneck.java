package spangle.fit;

import java.util.Optional;

/** Names the station that stands in the way of a better answer. */
final class Bottleneck {
  private static final double SAME_MM = 1e-6;

  private Bottleneck() {}

  /** The station that takes the part worst; the kettle wins a draw. */
  static String of(FitRequest request, KettleWay way) {
    UsableSpace kettle = way.kettle();
    String worst = kettle.name();
    double most = shortageMm(request, kettle);
    for (Station station : way.stations()) {
      double here = shortageMm(request, station.space());
      if (here > most + SAME_MM) {
        most = here;
        worst = station.name();
      }
    }
    return worst;
  }

  /**
   * The station that takes from a part the straight lay or the angles its kettle would allow; empty
   * when the kettle alone would give the same answer.
   */
  static Optional<String> forWhole(FitRequest request, KettleWay way, Attitude attitude) {
    Optional<Attitude> kettleAlone = WholeFit.best(request.body(), way.kettle(), request.rules());
    boolean kettleStraight = kettleAlone.map(Attitude::straight).orElse(false);
    return kettleStraight && !attitude.straight()
        ? Optional.of(of(request, way))
        : Optional.empty();
  }

  private static double shortageMm(FitRequest request, UsableSpace space) {
    return Shortage.level(request.body(), space).margin().worstShortageMm();
  }
}
