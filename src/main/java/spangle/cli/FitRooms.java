package spangle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.desk.FitPlace;
import spangle.fit.KettleWay;
import spangle.fit.Station;
import spangle.fit.UsableSpace;
import spangle.measure.Quantities;

/** Ovens, booths, tanks, doors, racks and carts a part is to go through, all of them. */
final class FitRooms {
  @Option(
      names = {"--oven", "--booth", "--station", "--rack", "--cart"},
      paramLabel = "PROFILE",
      description =
          "An oven (through its door), booth, tank, rack or cart by profile; may be repeated: it"
              + " must go through all. Also \"usable LxWxHmm\".")
  private List<String> named = new ArrayList<>();

  @Option(
      names = "--door",
      paramLabel = "WxHmm",
      description = "A clear door opening, width x height.")
  private @Nullable String door;

  boolean any() {
    return !named.isEmpty() || door != null;
  }

  List<FitPlace> places(Optional<Path> week) {
    List<FitPlace> places = new ArrayList<>();
    for (String name : named) {
      places.add(place(week, name.strip(), "--oven"));
    }
    if (door != null) {
      List<Double> sides = Quantities.sizesMm(door, 2);
      FitSubject.solid(door, sides);
      places.add(
          FitPlace.bare(
              new UsableSpace("door", UsableSpace.ANY_LENGTH_MM, sides.get(0), sides.get(1), 0),
              false));
    }
    return places;
  }

  /** A place by profile or by its usable size. */
  static FitPlace place(Optional<Path> week, String words, String option) {
    boolean kettle = option.equals("--kettle");
    if (words.startsWith("usable ")) {
      List<Double> sides = Quantities.sizesMm(words.substring("usable ".length()), 3);
      FitSubject.solid(words, sides);
      UsableSpace space =
          new UsableSpace(
              kettle ? "kettle" : "room",
              sides.get(0),
              sides.get(1),
              sides.get(2),
              kettle ? UsableSpace.USUAL_RIM_MM : 0);
      return FitPlace.bare(space, kettle);
    }
    FitPlace.Found found = FitPlace.named(week, words, kettle);
    return found
        .place()
        .orElseThrow(
            () ->
                ExitException.usage(
                    option
                        + ": "
                        + found.complaint()
                        + "; or say 'usable' and a size, for example "
                        + option
                        + " usable 3.7x1.1x1.9m"));
  }

  /** All places as one way; the first stands for its machine. */
  static KettleWay way(List<FitPlace> places) {
    List<Station> stations = new ArrayList<>();
    for (FitPlace place : places) {
      Station s = place.station();
      Station.Kind kind = stations.isEmpty() ? Station.Kind.KETTLE : Station.Kind.ROOM;
      stations.add(new Station(kind, s.space(), s.maxMassKg()));
    }
    return new KettleWay(stations, Optional.empty());
  }
}
