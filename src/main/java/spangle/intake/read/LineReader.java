package spangle.intake.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import spangle.equipment.CarrierProfile;
import spangle.equipment.CraneProfile;
import spangle.equipment.KettleProfile;
import spangle.equipment.OvenProfile;
import spangle.equipment.Profile;
import spangle.equipment.StationProfile;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.CarrierUse;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.measure.Figures;
import spangle.measure.QuantityKind;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;

/** Reads stations and carriers of a line and says what the line lacks. */
final class LineReader {
  private static final Range OVEN_C = Range.of(30, 400);

  private final Profiles profiles;

  LineReader(Profiles profiles) {
    this.profiles = profiles;
  }

  List<Double> settings(Fields line) {
    Set<Double> settings = new TreeSet<>();
    for (Datum.Scalar scalar : line.texts("settings_c", "[;,]")) {
      line.quantity("settings_c", scalar, QuantityKind.TEMPERATURE, "c", OVEN_C)
          .ifPresent(settings::add);
    }
    return List.copyOf(settings);
  }

  List<StationUse> stations(Fields line) {
    List<StationUse> stations = new ArrayList<>();
    for (Fields station : line.groups("stations")) {
      Optional<String> id = station.name("id");
      Optional<Profile> profile =
          profiles.named(station, "profile", Profile.class, "a station, oven or kettle");
      if (profile.isPresent()
          && (profile.get() instanceof CarrierProfile || profile.get() instanceof CraneProfile)) {
        wrongKind(station, "a station, oven or kettle");
        profile = Optional.empty();
      }
      int count = station.wholeOr("count", 1, 100, 1);
      Optional<String> startsWith = station.scalar("starts_with").map(Datum.Scalar::text);
      OptionalDouble startsAt =
          station.quantity("starts_at", QuantityKind.TEMPERATURE, Range.of(0, 400));
      double level = station.quantityOr("level", QuantityKind.LENGTH, Range.of(0, 3_000), 0);
      double dross = station.quantityOr("dross", QuantityKind.LENGTH, Range.of(0, 3_000), 0);
      profile.ifPresent(p -> inTheBath(station, p, level, dross));
      OptionalDouble crew = station.number("crew_pct", Range.of(10, 100));
      station.finish();
      if (id.isPresent() && profile.isPresent()) {
        Profile manned = crew.isEmpty() ? profile.get() : slowed(profile.get(), crew.getAsDouble());
        stations.add(
            new StationUse(id.get(), manned, count, startsWith, startsAt, level, 0, dross));
      }
    }
    return stations;
  }

  /** A level at the bottom of the kettle or below it is a slip of the pen, not a bath. */
  private static void inTheBath(Fields station, Profile profile, double levelMm, double drossMm) {
    if (profile instanceof KettleProfile kettle && levelMm + drossMm >= kettle.zincDepthMm()) {
      station
          .notes()
          .add(
              ProblemCode.OUT_OF_RANGE,
              station.valuePlace("level"),
              "level",
              Figures.upTo(levelMm, 0) + " mm",
              "with the dross under " + Figures.upTo(kettle.zincDepthMm(), 0) + " mm",
              "the kettle is no deeper: no zinc would be left in it",
              "give how far the zinc stands below its usual mark");
    }
  }

  /** A station with part of its crew takes longer by as much; ovens and tanks do not care. */
  private static Profile slowed(Profile profile, double crewPct) {
    if (!(profile instanceof StationProfile p)) {
      return profile;
    }
    return p.slower(100 / crewPct);
  }

  List<CarrierUse> carriers(Fields line) {
    List<CarrierUse> carriers = new ArrayList<>();
    for (Fields carrier : line.groups("carriers")) {
      Optional<String> id = carrier.name("id");
      Optional<CarrierProfile> profile =
          profiles.named(carrier, "profile", CarrierProfile.class, "a rack, cart, beam or basket");
      int owned = carrier.wholeOr("owned", 0, 10_000, 1);
      int inStrip = carrier.wholeOr("in_strip", 0, 10_000, 0);
      if (inStrip > owned) {
        carrier
            .notes()
            .add(
                ProblemCode.OUT_OF_RANGE,
                carrier.valuePlace("in_strip"),
                "in_strip",
                Integer.toString(inStrip),
                "0 to " + owned,
                "more carriers are away for stripping than the shop owns",
                "count again");
      }
      carrier.finish();
      if (id.isPresent() && profile.isPresent()) {
        carriers.add(new CarrierUse(id.get(), profile.get(), owned, Math.min(inStrip, owned)));
      }
    }
    return carriers;
  }

  private static void wrongKind(Fields station, String wanted) {
    station
        .notes()
        .add(
            ProblemCode.UNKNOWN_NAME,
            station.valuePlace("profile"),
            "profile",
            station.text("profile"),
            wanted,
            "the profile '" + station.text("profile") + "' is not " + wanted,
            "carriers stand under 'carriers', the crane under 'crane'");
  }

  /** Says what a line of its kind lacks, unless something in it was refused already. */
  void checkComplete(Fields line, ShopLine read) {
    if (line.notes().refused()) {
      return;
    }
    boolean oven = read.machines().stream().anyMatch(s -> s.profile() instanceof OvenProfile);
    boolean kettle = read.machines().stream().anyMatch(s -> s.profile() instanceof KettleProfile);
    if (read.kind() == LineKind.ZINC && (!kettle || oven)) {
      incomplete(line, line.place(), read, "a kettle line needs a kettle and no oven");
    }
    if (read.kind() == LineKind.OUTSIDE && (!kettle || oven || read.machines().size() > 1)) {
      incomplete(
          line,
          line.place(),
          read,
          "another firm's line needs its kettle, one, among the stations, and no oven");
    }
    if (read.machines().size() > LineSpec.MOST_MACHINES) {
      incomplete(
          line,
          line.place(),
          read,
          "%d ovens or kettles stand on it; %d are the most one line may have"
              .formatted(read.machines().size(), LineSpec.MOST_MACHINES),
          "part them between two lines in shop.yaml");
    }
    boolean cures = read.kind() == LineKind.POWDER || read.kind() == LineKind.LIQUID;
    if (cures && (!oven || kettle)) {
      incomplete(
          line, line.place(), read, "a paint line needs an oven or drying room and no kettle");
    }
    if (read.kind() == LineKind.POWDER && !sprays(read, StationProfile.Kind.POWDER_BOOTH)) {
      incomplete(line, line.place(), read, "a powder line needs a powder booth ahead of its oven");
    }
    if (read.kind() == LineKind.LIQUID && !sprays(read, StationProfile.Kind.LIQUID_BOOTH)) {
      incomplete(line, line.place(), read, "a paint line needs a spray booth ahead of its oven");
    }
    if (oven && read.settingsC().isEmpty()) {
      incomplete(
          line,
          line.place(),
          read,
          "a line with ovens needs 'settings_c', what they may be set to");
    }
    if (read.carriers().stream().noneMatch(c -> c.usable() > 0)) {
      incomplete(
          line, line.place(), read, "the line has no rack, cart, beam, basket or pallet to use");
    }
    for (StationUse station : read.machines()) {
      if (station.profile() instanceof OvenProfile profile) {
        checkSettings(line, read, station, profile);
      }
    }
  }

  private static boolean sprays(ShopLine line, StationProfile.Kind booth) {
    return line.before().stream()
        .anyMatch(s -> s.profile() instanceof StationProfile p && p.kind() == booth);
  }

  private static void checkSettings(
      Fields line, ShopLine read, StationUse station, OvenProfile oven) {
    boolean any = read.settingsC().stream().anyMatch(c -> c >= oven.minC() && c <= oven.maxC());
    if (!read.settingsC().isEmpty() && !any) {
      incomplete(
          line,
          line.valuePlace("settings_c"),
          read,
          "the oven '" + station.id() + "' cannot be set to any of the line's settings");
    }
  }

  private static void incomplete(Fields fields, Place place, ShopLine line, String why) {
    incomplete(fields, place, line, why, "complete the line in shop.yaml");
  }

  private static void incomplete(
      Fields fields, Place place, ShopLine line, String why, String todo) {
    fields
        .notes()
        .add(
            ProblemCode.LINE_INCOMPLETE,
            place,
            "lines",
            line.id(),
            "",
            "line '" + line.id() + "': " + why,
            todo);
  }

  /** Every id of a line, station or carrier is used once. */
  void checkNames(Fields shop, List<ShopLine> lines) {
    Set<String> seen = new HashSet<>();
    for (ShopLine line : lines) {
      List<String> ids = new ArrayList<>();
      ids.add(line.id());
      line.stations().forEach(s -> ids.add(s.id()));
      line.carriers().forEach(c -> ids.add(c.id()));
      for (String id : ids) {
        if (!seen.add(id)) {
          shop.notes()
              .add(
                  ProblemCode.NAME_TWICE,
                  shop.valuePlace("lines"),
                  "id",
                  id,
                  "",
                  "the id '" + id + "' is used twice in the shop",
                  "give every line, station and carrier its own id");
        }
      }
    }
  }
}
