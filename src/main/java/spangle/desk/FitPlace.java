package spangle.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spangle.equipment.CarrierProfile;
import spangle.equipment.CraneProfile;
import spangle.equipment.KettleProfile;
import spangle.equipment.OvenProfile;
import spangle.equipment.Profile;
import spangle.equipment.StationProfile;
import spangle.fit.FitRules;
import spangle.fit.Station;
import spangle.fit.UsableSpace;
import spangle.intake.brief.PaintWays;
import spangle.intake.read.ProfileShelf;
import spangle.intake.week.Clearances;
import spangle.measure.Box;
import spangle.measure.Interval;

/**
 * Where a part is to go in: a kettle, or a room, door or carrier.
 *
 * @param station what it takes
 * @param rules the rules there
 * @param kettle its profile where it is a kettle with one
 */
public record FitPlace(Station station, FitRules rules, Optional<KettleProfile> kettle) {

  /**
   * What a name led to.
   *
   * @param place the place; empty with a sentence
   * @param complaint why there is none; empty otherwise
   */
  public record Found(Optional<FitPlace> place, String complaint) {}

  /** A place of which only the usable size is known. */
  public static FitPlace bare(UsableSpace space, boolean kettle) {
    return new FitPlace(
        new Station(kettle ? Station.Kind.KETTLE : Station.Kind.ROOM, space),
        kettle ? FitRules.KETTLE : FitRules.ROOM,
        Optional.empty());
  }

  /**
   * A place by the name of its equipment profile.
   *
   * @param week a week folder whose own profiles come first; empty for the built-in ones alone
   * @param kettle whether it must be a kettle
   */
  public static Found named(Optional<Path> week, String name, boolean kettle) {
    ProfileShelf.Found found = ProfileShelf.find(week, name);
    if (found.profile().isEmpty()) {
      return new Found(Optional.empty(), found.complaint());
    }
    Profile profile = found.profile().get();
    if (kettle != profile instanceof KettleProfile) {
      return new Found(
          Optional.empty(),
          "'" + name + "' is " + (kettle ? "no kettle" : "a kettle: ask with --kettle"));
    }
    return of(name, profile)
        .map(place -> new Found(Optional.of(place), ""))
        .orElseGet(() -> new Found(Optional.empty(), "'" + name + "' has no usable size"));
  }

  private static Optional<FitPlace> of(String name, Profile profile) {
    if (profile instanceof KettleProfile kettle) {
      return Optional.of(kettle(name, kettle));
    }
    if (profile instanceof OvenProfile oven) {
      return Optional.of(room(PaintWays.oven(name, oven, Clearances.USUAL)));
    }
    if (profile instanceof CarrierProfile carrier) {
      return Optional.of(room(PaintWays.carrier(name, carrier)));
    }
    if (profile instanceof CraneProfile) {
      return Optional.empty();
    }
    StationProfile station = (StationProfile) profile;
    return station
        .usable()
        .map(box -> room(new Station(Station.Kind.ROOM, space(name, box, 0), station.maxMassKg())));
  }

  private static FitPlace kettle(String name, KettleProfile kettle) {
    return new FitPlace(
        new Station(
            Station.Kind.KETTLE, space(name, kettle.usable(), kettle.rimMm()), kettle.maxDipKg()),
        new FitRules(
            new Interval(kettle.drainMinDeg(), kettle.drainMaxDeg()),
            FitRules.KETTLE.overlapMm(),
            true),
        Optional.of(kettle));
  }

  private static FitPlace room(Station station) {
    return new FitPlace(station, FitRules.ROOM, Optional.empty());
  }

  private static UsableSpace space(String name, Box box, double rimMm) {
    return new UsableSpace(name, box.lengthMm(), box.widthMm(), box.heightMm(), rimMm);
  }

  /** Built-in kettles other than one, as ways out. */
  public static List<UsableSpace> otherKettles(FitPlace than) {
    return ProfileShelf.kettles().stream()
        .filter(k -> than.kettle().isEmpty() || !than.kettle().get().name().equals(k.name()))
        .map(k -> space(k.name(), k.usable(), k.rimMm()))
        .toList();
  }

  /** The same on a day with a lower bath or more dross, and with a rim somebody measured. */
  public FitPlace onTheDay(double levelDropMm, double drossMm, double rimMm) {
    UsableSpace s = station.space();
    UsableSpace day =
        new UsableSpace(s.name(), s.lengthMm(), s.widthMm(), s.depthMm(), rimMm)
            .onTheDay(levelDropMm, drossMm);
    return new FitPlace(new Station(station.kind(), day, station.maxMassKg()), rules, kettle);
  }
}
