package spangle.intake.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import spangle.coating.heat.OvenEnergy;
import spangle.coating.heat.OvenPanel;
import spangle.equipment.CarrierProfile;
import spangle.equipment.CraneProfile;
import spangle.equipment.KettleProfile;
import spangle.equipment.Manning;
import spangle.equipment.OvenProfile;
import spangle.equipment.Pace;
import spangle.equipment.Profile;
import spangle.equipment.StationProfile;
import spangle.intake.source.Datum;
import spangle.measure.Box;
import spangle.measure.QuantityKind;

/** Reads one equipment profile. */
final class ProfileReader {
  private static final Range KG = Range.of(0.01, 100_000);
  private static final Range MINUTES = Range.of(0, 20_000);
  private static final Range MM = Range.of(0, 50_000);
  private static final Map<String, BiFunction<ProfileReader, String, Optional<Profile>>> KINDS =
      kinds();

  private final Fields fields;
  private final Sizes sizes;

  private ProfileReader(Fields fields) {
    this.fields = fields;
    this.sizes = new Sizes(fields);
  }

  /** Reads a profile; empty when it cannot be used, with the reasons noted. */
  static Optional<Profile> read(String name, Datum.Group group, Notes notes) {
    Fields fields = new Fields(group, notes);
    Optional<BiFunction<ProfileReader, String, Optional<Profile>>> kind =
        fields.wordNeeded("kind", KINDS);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Optional<Profile> profile = kind.get().apply(new ProfileReader(fields), name);
    fields.finish();
    return notes.refused() ? Optional.empty() : profile;
  }

  private static Map<String, BiFunction<ProfileReader, String, Optional<Profile>>> kinds() {
    Map<String, BiFunction<ProfileReader, String, Optional<Profile>>> kinds = new LinkedHashMap<>();
    for (CarrierProfile.Kind kind : CarrierProfile.Kind.values()) {
      kinds.put(word(kind), (reader, name) -> reader.carrier(name, kind));
    }
    kinds.put("oven", ProfileReader::oven);
    kinds.put("kettle", ProfileReader::kettle);
    kinds.put("crane", ProfileReader::crane);
    for (StationProfile.Kind kind : StationProfile.Kind.values()) {
      kinds.put(word(kind), (reader, name) -> reader.station(name, kind));
    }
    return kinds;
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Optional<Profile> carrier(String name, CarrierProfile.Kind kind) {
    Optional<Box> outside = sizes.box("outside", "height");
    Optional<Box> usable = sizes.box("usable", "height");
    CarrierProfile.Hanging hanging =
        fields
            .word("hanging", Fields.words(CarrierProfile.Hanging.values()))
            .orElse(
                kind == CarrierProfile.Kind.BASKET
                    ? CarrierProfile.Hanging.BULK
                    : CarrierProfile.Hanging.ROWS);
    int faces = fields.wholeOr("faces", 1, 8, 1);
    Optional<Profile> profile =
        outside.isEmpty() || usable.isEmpty()
            ? Optional.empty()
            : Optional.of(carrier(name, kind, hanging, outside.get(), usable.get(), faces));
    sizes.within("usable", usable, "outside", outside, new double[] {1, faces, 1}, false);
    return profile;
  }

  private CarrierProfile carrier(
      String name,
      CarrierProfile.Kind kind,
      CarrierProfile.Hanging hanging,
      Box outside,
      Box usable,
      int faces) {
    return new CarrierProfile(
        name,
        title(name),
        kind,
        hanging,
        outside,
        usable,
        faces,
        mm("gap_across", 60),
        mm("gap_down", 80),
        mm("hook_drop", 100),
        mm("hook_pitch", 0),
        fields.wholeOr("hooks", 1, 100_000, Integer.MAX_VALUE),
        fields.quantityNeeded("max", QuantityKind.MASS, KG).orElse(1),
        fields.quantityNeeded("own", QuantityKind.MASS, Range.of(0, 20_000)).orElse(0),
        fields.wholeOr("floor_units", 1, 100, 1),
        fields.wholeOr("strip_after_cycles", 0, 10_000, 0),
        fields.wholeOr("strip_min", 0, 20_000, 0),
        cautions());
  }

  private Optional<Profile> station(String name, StationProfile.Kind kind) {
    Optional<Box> inside = sizes.optionalBox("inside", sizes.third());
    Optional<Box> usable = sizes.optionalBox("usable", sizes.third());
    sizes.within("usable", usable, "inside", inside, new double[] {1, 1, 1}, true);
    return Optional.of(
        new StationProfile(
            name,
            title(name),
            kind,
            inside,
            usable,
            fields.quantityOr("max", QuantityKind.MASS, KG, Double.POSITIVE_INFINITY),
            manning(Manning.PEOPLE),
            pace(),
            (int) minutesOr("longest_wait_after", Integer.MAX_VALUE),
            fields.quantityOr("bath", QuantityKind.TEMPERATURE, Range.of(0, 300), Double.NaN),
            cautions()));
  }

  private Optional<Profile> oven(String name) {
    Optional<Box> inside = sizes.box("inside", "height");
    Optional<Box> usable = sizes.box("usable", "height");
    sizes.within("usable", usable, "inside", inside, new double[] {1, 1, 1}, true);
    double doorWidth = fields.quantityNeeded("door_width", QuantityKind.LENGTH, MM).orElse(1);
    double doorHeight = fields.quantityNeeded("door_height", QuantityKind.LENGTH, MM).orElse(1);
    double minC = celsius("lowest");
    double maxC = celsius("highest");
    if (inside.isEmpty() || usable.isEmpty() || doorWidth <= 0 || doorHeight <= 0) {
      return Optional.empty();
    }
    return Optional.of(
        new OvenProfile(
            name,
            title(name),
            inside.get(),
            usable.get(),
            new Box(inside.get().lengthMm(), doorWidth, doorHeight),
            fields.quantityNeeded("max", QuantityKind.MASS, KG).orElse(1),
            fields.wholeOr("floor_units", 1, 1000, 1),
            minC,
            maxC,
            fields.number("heats_c_per_min", Range.of(0.1, 100)).orElse(4),
            fields.number("cools_c_per_min", Range.of(0.1, 100)).orElse(2),
            minutesOr("recovery", 5),
            minutesOr("turnaround", 5),
            fields.number("convection_w_m2k", Range.of(1, 200)).orElse(20),
            wallWM2K(),
            fields
                .number("air_changes_per_h", Range.of(0, 100))
                .orElse(OvenEnergy.USUAL_AIR_CHANGES_PER_HOUR),
            heatUp(),
            fields.told("solvent_rated").yes(),
            manning(Manning.THROUGH_BREAKS),
            cautions()));
  }

  /** What is known of the walls' loss wins over the panels. */
  private double wallWM2K() {
    double panelMm =
        fields.quantityOr(
            "panel",
            QuantityKind.LENGTH,
            Range.of(OvenPanel.THINNEST_MM, OvenPanel.THICKEST_MM),
            OvenPanel.USUAL.thicknessMm());
    return fields.numberOr("wall_w_m2k", Range.of(0.1, 20), OvenPanel.uWM2K(panelMm));
  }

  private List<OvenProfile.HeatUp> heatUp() {
    List<OvenProfile.HeatUp> points = new ArrayList<>();
    for (Fields point : fields.groups("heat_up")) {
      double thickness =
          point.quantityNeeded("thickness", QuantityKind.LENGTH, Range.of(0.3, 200)).orElse(1);
      double minutes = point.number("minutes", Range.of(0.1, 600)).orElse(1);
      point.finish();
      points.add(new OvenProfile.HeatUp(thickness, minutes));
    }
    points.sort(Comparator.comparingDouble(OvenProfile.HeatUp::thicknessMm));
    return points;
  }

  private Optional<Profile> kettle(String name) {
    Optional<Box> inside = sizes.box("inside", "depth");
    Optional<Box> usable = sizes.box("usable", "depth");
    sizes.within("usable", usable, "inside", inside, new double[] {1, 1, 1}, true);
    if (inside.isEmpty() || usable.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new KettleProfile(
            name,
            title(name),
            inside.get(),
            usable.get(),
            mm("rim", 150),
            fields.quantity("bath", QuantityKind.TEMPERATURE, Range.of(425, 630)).orElse(450),
            fields.quantityNeeded("zinc", QuantityKind.MASS, Range.of(100, 2_000_000)).orElse(100),
            fields.number("kg_per_hour", Range.of(1, 100_000)).orElse(0),
            fields.quantityNeeded("max_dip", QuantityKind.MASS, KG).orElse(1),
            fields.wholeOr("hook_places", 1, 20, 1),
            minutesOr("turnaround", 7),
            minutesOr("immersion_fixed", 2),
            fields.number("immersion_min_per_mm", Range.of(0, 10)).orElse(0.5),
            minutesOr("immersion_least", 3),
            fields.number("drain_min_deg", Range.of(0, 90)).orElse(10),
            fields.number("drain_max_deg", Range.of(0, 90)).orElse(45),
            manning(Manning.PEOPLE),
            cautions()));
  }

  private Optional<Profile> crane(String name) {
    return Optional.of(
        new CraneProfile(
            name,
            title(name),
            fields.quantityNeeded("max", QuantityKind.MASS, KG).orElse(1),
            fields.quantityNeeded("lift", QuantityKind.LENGTH, MM).orElse(1),
            mm("hanger", 600),
            minutesOr("move", 2),
            cautions()));
  }

  private String title(String name) {
    String title = fields.text("title");
    return title.isEmpty() ? name : title;
  }

  private List<String> cautions() {
    return fields.items("cautions").stream()
        .filter(Datum.Scalar.class::isInstance)
        .map(d -> ((Datum.Scalar) d).text())
        .toList();
  }

  private Manning manning(Manning otherwise) {
    return fields.word("works", Fields.words(Manning.values())).orElse(otherwise);
  }

  private Pace pace() {
    Optional<Fields> time = fields.inner("time");
    if (time.isEmpty()) {
      fields.missing("time");
      return new Pace(0, 0, 0, 0);
    }
    Fields t = time.get();
    Pace pace =
        new Pace(
            t.numberOr("fixed_min", MINUTES, 0),
            t.numberOr("per_piece_min", MINUTES, 0),
            t.numberOr("per_m2_min", MINUTES, 0),
            t.numberOr("per_kg_min", MINUTES, 0));
    t.finish();
    return pace;
  }

  private double mm(String base, double otherwise) {
    return fields.quantityOr(base, QuantityKind.LENGTH, MM, otherwise);
  }

  private double minutesOr(String base, double otherwise) {
    return fields.quantityOr(base, QuantityKind.DURATION, MINUTES, otherwise);
  }

  private double celsius(String base) {
    return fields.quantityNeeded(base, QuantityKind.TEMPERATURE, Range.of(20, 400)).orElse(20);
  }
}
