package spangle.fit;

import java.util.List;
import java.util.Optional;

/**
 * All a part must pass to be galvanized.
 *
 * @param stations in their order, exactly one of them a kettle
 * @param crane what carries it; empty when it is not known
 */
public record KettleWay(List<Station> stations, Optional<Crane> crane) {
  /** Copies the list and looks for the kettle. */
  public KettleWay {
    stations = List.copyOf(stations);
    if (stations.stream().filter(s -> s.kind() == Station.Kind.KETTLE).count() != 1) {
      throw new IllegalArgumentException("a way has exactly one kettle");
    }
  }

  /** A kettle of which nothing else is known: the other stations and the crane are not judged. */
  public static KettleWay bare(UsableSpace kettle) {
    return new KettleWay(List.of(new Station(Station.Kind.KETTLE, kettle)), Optional.empty());
  }

  /** The kettle. */
  public UsableSpace kettle() {
    return stations.stream()
        .filter(s -> s.kind() == Station.Kind.KETTLE)
        .findFirst()
        .orElseThrow()
        .space();
  }

  /** What goes into all stations in one attitude: the smallest of each size. */
  public UsableSpace tightest() {
    UsableSpace tightest = kettle();
    for (Station station : stations) {
      tightest = tightest.tightest(station.space());
    }
    return tightest;
  }

  /** Whether only the kettle is known. */
  public boolean kettleOnly() {
    return stations.size() == 1;
  }
}
