package spangle.intake.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.equipment.CarrierProfile;
import spangle.equipment.KettleProfile;
import spangle.equipment.OvenProfile;
import spangle.equipment.Span;
import spangle.equipment.StationProfile;
import spangle.fit.hang.CarrierFace;
import spangle.intake.week.CarrierUse;
import spangle.intake.week.Catalogue;
import spangle.intake.week.Clearances;
import spangle.intake.week.Coating;
import spangle.intake.week.Defaults;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopCalendar;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.plan.CarrierSpec;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.MachineSpec;
import spangle.plan.PlacesOut;
import spangle.plan.Setting;
import spangle.plan.SetupTable;
import spangle.plan.StationSpec;

/** Turns the shop's lines into what the clock needs to know of them. */
final class LineMaker {
  private final Shop shop;
  private final List<Coating> coatings;

  LineMaker(Shop shop, Catalogue catalogue) {
    this.shop = shop;
    this.coatings = catalogue.coatings().toList();
  }

  /** State of a coating in every booth's set-up table. */
  int state(String coatingId) {
    for (int i = 0; i < coatings.size(); i++) {
      if (coatings.get(i).id().equals(coatingId)) {
        return i;
      }
    }
    return 0;
  }

  LineSpec line(ShopLine line) {
    List<Setting> settings = settings(line);
    return new LineSpec(
        line.id(),
        line.name(),
        line.kind(),
        stations(line, line.before()),
        machines(line, settings),
        stations(line, line.after()),
        settings,
        settingChange(line, settings));
  }

  private List<StationSpec> stations(ShopLine line, List<StationUse> uses) {
    List<StationSpec> specs = new ArrayList<>();
    for (StationUse use : uses) {
      StationProfile profile = (StationProfile) use.profile();
      boolean booth = Stations.isBooth(profile.kind());
      SetupTable setups = booth ? colourTable() : SetupTable.none(List.of("any"));
      int initial = booth ? use.startsWith().map(this::state).orElse(0) : 0;
      specs.add(
          new StationSpec(
              use.id(),
              profile.title(),
              use.count(),
              ShopCalendar.of(shop, line, use),
              setups,
              initial,
              longestWait(line, use, profile),
              out(use)));
    }
    return specs;
  }

  private List<PlacesOut> out(StationUse use) {
    return shop.maintenance().stream()
        .filter(m -> m.stationId().equals(use.id()) && m.leavesSome(use.count()))
        .filter(m -> m.span().startMin() < shop.horizonMin())
        .map(m -> new PlacesOut(m.places(), inPlan(m.span())))
        .toList();
  }

  private Span inPlan(Span span) {
    return new Span(span.startMin(), Math.min(span.endMin(), shop.horizonMin()));
  }

  /** The station right before a booth or kettle carries the limit of the wait into it. */
  private int longestWait(ShopLine line, StationUse use, StationProfile profile) {
    Defaults defaults = shop.defaults();
    int limit = profile.longestWaitAfterMin();
    List<StationUse> before = line.before();
    int at = before.indexOf(use);
    if (line.hauling().isPresent()) {
      // What is packed waits for its truck, over a weekend too.
      return Integer.MAX_VALUE;
    }
    if (at < 0) {
      return limit;
    }
    boolean intoBooth =
        at + 1 < before.size()
            && before.get(at + 1).profile() instanceof StationProfile next
            && Stations.isBooth(next.kind());
    if (intoBooth) {
      return Math.min(limit, defaults.washToCoatMaxMin());
    }
    boolean intoKettle = line.kind() == LineKind.ZINC && at + 1 == before.size();
    return intoKettle ? Math.min(limit, defaults.fluxToZincMaxMin()) : limit;
  }

  /**
   * Of two states at least: by its table the clock and the audit know the booth, which draws powder
   * and paint when it sprays and not when the oven starts, also where a shop has one coating only.
   */
  private SetupTable colourTable() {
    if (coatings.isEmpty()) {
      return SetupTable.none(List.of("any"));
    }
    if (coatings.size() == 1) {
      return SetupTable.none(List.of(coatings.get(0).name(), "no other"));
    }
    List<List<Integer>> minutes = new ArrayList<>();
    for (Coating from : coatings) {
      minutes.add(coatings.stream().map(to -> shop.colourChange().minutes(from, to)).toList());
    }
    return new SetupTable(coatings.stream().map(Coating::name).toList(), minutes, minutes);
  }

  private List<MachineSpec> machines(ShopLine line, List<Setting> settings) {
    if (line.hauling().isPresent()) {
      return Trips.machines(line, line.hauling().get());
    }
    List<MachineSpec> specs = new ArrayList<>();
    for (StationUse use : line.machines()) {
      if (use.profile() instanceof OvenProfile oven) {
        specs.add(
            new MachineSpec(
                use.id(),
                oven.title(),
                oven.floorUnits(),
                oven.maxMassKg(),
                ShopCalendar.of(shop, line, use),
                nearest(settings, use.startsAtC().orElse(settings.get(0).celsius())),
                (int) Math.ceil(oven.turnaroundMin()),
                0));
      } else if (use.profile() instanceof KettleProfile kettle) {
        specs.add(
            new MachineSpec(
                use.id(),
                kettle.title(),
                kettle.hookPlaces(),
                kettle.maxDipKg(),
                ShopCalendar.of(shop, line, use),
                0,
                (int) Math.ceil(kettle.turnaroundMin()),
                kettle.kgPerHour()));
      }
    }
    return specs;
  }

  static List<OvenProfile> ovens(ShopLine line) {
    return line.machines().stream()
        .map(StationUse::profile)
        .filter(OvenProfile.class::isInstance)
        .map(OvenProfile.class::cast)
        .toList();
  }

  static List<KettleProfile> kettles(ShopLine line) {
    return line.machines().stream()
        .map(StationUse::profile)
        .filter(KettleProfile.class::isInstance)
        .map(KettleProfile.class::cast)
        .toList();
  }

  /** Settings every oven of the line can hold; the bath temperature for a kettle line. */
  static List<Setting> settings(ShopLine line) {
    if (line.hauling().isPresent()) {
      return Trips.settings(line, line.hauling().get());
    }
    List<OvenProfile> ovens = ovens(line);
    List<KettleProfile> kettles = kettles(line);
    List<Double> celsius =
        ovens.isEmpty()
            ? kettles.stream().limit(1).map(KettleProfile::bathC).toList()
            : line.settingsC().stream()
                .filter(c -> ovens.stream().allMatch(o -> c >= o.minC() && c <= o.maxC()))
                .sorted()
                .distinct()
                .toList();
    List<Setting> settings = new ArrayList<>();
    for (double c : celsius) {
      settings.add(new Setting(settings.size(), Math.round(c) + " C", c));
    }
    return settings;
  }

  private static int nearest(List<Setting> settings, double celsius) {
    int best = 0;
    for (Setting setting : settings) {
      double gap = Math.abs(setting.celsius() - celsius);
      if (gap < Math.abs(settings.get(best).celsius() - celsius)) {
        best = setting.index();
      }
    }
    return best;
  }

  private static SetupTable settingChange(ShopLine line, List<Setting> settings) {
    if (line.hauling().isPresent()) {
      return Trips.change(settings);
    }
    List<OvenProfile> ovens = ovens(line);
    List<List<Integer>> minutes = new ArrayList<>();
    for (Setting from : settings) {
      List<Integer> row = new ArrayList<>();
      for (Setting to : settings) {
        row.add(changeMin(ovens, to.celsius() - from.celsius()));
      }
      minutes.add(row);
    }
    return new SetupTable(settings.stream().map(Setting::name).toList(), minutes, minutes);
  }

  private static int changeMin(List<OvenProfile> ovens, double riseK) {
    double slowest = 0;
    for (OvenProfile oven : ovens) {
      double rate = riseK >= 0 ? oven.heatsCPerMin() : oven.coolsCPerMin();
      slowest = Math.max(slowest, Math.abs(riseK) / rate);
    }
    return (int) Math.ceil(slowest);
  }

  List<CarrierSpec> carriers(ShopLine line) {
    List<CarrierSpec> specs = new ArrayList<>();
    for (CarrierUse use : line.carriers()) {
      CarrierProfile profile = use.profile();
      specs.add(
          new CarrierSpec(
              use.id(),
              profile.title(),
              line.id(),
              face(profile, shop.clearances()),
              use.usable(),
              profile.floorUnits(),
              profile.ownMassKg(),
              profile.stripAfterCycles(),
              profile.stripMin()));
    }
    return specs;
  }

  private static CarrierFace face(CarrierProfile p, Clearances clear) {
    boolean bulk = p.hanging() == CarrierProfile.Hanging.BULK;
    CarrierFace.Style style =
        switch (p.hanging()) {
          case ROWS -> CarrierFace.Style.ROWS;
          case FREE -> CarrierFace.Style.FREE;
          case BULK -> CarrierFace.Style.BULK;
        };
    return new CarrierFace(
        p.usable().lengthMm(),
        p.usable().heightMm(),
        p.usable().widthMm(),
        p.faces(),
        bulk ? 0 : Math.max(p.gapAcrossMm(), clear.partGapMm()),
        bulk ? 0 : Math.max(p.gapDownMm(), clear.rowGapMm()),
        p.hookDropMm(),
        p.hookPitchMm(),
        p.maxMassKg(),
        p.hooks(),
        style);
  }

  /** Where zinc comes from: the shop's own kettle line, else that of another firm. */
  static Optional<ShopLine> zincLine(Shop shop) {
    return ofKind(shop, LineKind.ZINC).or(() -> ofKind(shop, LineKind.OUTSIDE));
  }

  /** The line of a kind; the first where there are several. */
  static Optional<ShopLine> ofKind(Shop shop, LineKind kind) {
    return shop.lines().stream().filter(l -> l.kind() == kind).findFirst();
  }
}
