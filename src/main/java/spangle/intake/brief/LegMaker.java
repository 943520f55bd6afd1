package spangle.intake.brief;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spangle.coating.heat.CureWindow;
import spangle.equipment.Pace;
import spangle.equipment.StationProfile;
import spangle.fit.FitAnswer;
import spangle.intake.week.Coating;
import spangle.intake.week.Defaults;
import spangle.intake.week.Hauling;
import spangle.intake.week.PartLine;
import spangle.intake.week.Powder;
import spangle.intake.week.Route;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.intake.week.WeekInput;
import spangle.plan.CarrierSpec;
import spangle.plan.Dwell;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.LineKind;
import spangle.plan.PartFacts;

/**
 * Works out the legs of a part's route. A missing link (no line, no carrier it fits, no setting
 * that cures it) ends in a {@link Stopper}, never in a leg that cannot run.
 */
final class LegMaker {
  /** Fresh zinc is painted within 48 h without further cleaning (ASTM D6386, from memory). */
  private static final int FRESH_ZINC_MIN = 48 * 60;

  private final WeekInput input;
  private final LineMaker lines;
  private final Draws draws;
  private final Map<String, OvenDwells> ovens = new HashMap<>();

  LegMaker(WeekInput input, LineMaker lines, Draws draws) {
    this.input = input;
    this.lines = lines;
    this.draws = draws;
  }

  /** Why a part cannot be planned at all. */
  record Stopper(String gate, String words, String opens, String whoAnswers) {}

  /** Either legs or what stops the part. */
  record Outcome(List<Leg> legs, Optional<Stopper> stopper) {
    static Outcome stop(Stopper stopper) {
      return new Outcome(List.of(), Optional.of(stopper));
    }
  }

  /**
   * How a part goes into the kettle: alone where it is tilted or dipped twice, and into which; work
   * that is spun goes into any.
   */
  record KettleWay(
      boolean alone, boolean reactive, String steelKey, Map<String, FitAnswer> kettles) {
    KettleWay {
      kettles = Map.copyOf(kettles);
    }
  }

  Outcome legs(PartLine line, PartFacts part, KettleWay way) {
    List<Leg> legs = new ArrayList<>();
    Route route = line.wanted().route();
    List<String> finishes = line.wanted().finishes();
    Optional<Stopper> stop = Optional.empty();
    if (route.zinc()) {
      stop = add(legs, zincLeg(line, part, way, route == Route.DUPLEX));
    }
    if (stop.isEmpty() && route == Route.DUPLEX) {
      stop = add(legs, degasLeg(line, part, coating(finishes.get(0))));
    }
    for (int i = 0; i < finishes.size() && stop.isEmpty() && route != Route.ZINC; i++) {
      boolean last = i == finishes.size() - 1;
      stop = add(legs, coatLeg(line, part, coating(finishes.get(i)), i > 0, last, route));
    }
    return stop.map(Outcome::stop).orElseGet(() -> new Outcome(legs, Optional.empty()));
  }

  private static Optional<Stopper> add(List<Leg> legs, LegOrStop result) {
    if (result.leg() != null) {
      legs.add(result.leg());
      return Optional.empty();
    }
    return Optional.ofNullable(result.stopper());
  }

  private record LegOrStop(@Nullable Leg leg, @Nullable Stopper stopper) {
    static LegOrStop stop(String gate, String words, String opens, String who) {
      return new LegOrStop(null, new Stopper(gate, words, opens, who));
    }
  }

  private Coating coating(String id) {
    return input
        .catalogue()
        .coating(id)
        .orElseThrow(() -> new IllegalStateException("coating was checked at intake: " + id));
  }

  private LegOrStop zincLeg(PartLine line, PartFacts part, KettleWay way, boolean paintedNext) {
    Optional<ShopLine> found = LineMaker.zincLine(input.shop());
    if (found.isEmpty()) {
      return noLine(LineKind.ZINC);
    }
    ShopLine shopLine = found.get();
    if (shopLine.hauling().isPresent()) {
      return sentOut(line, part, way, paintedNext, shopLine);
    }
    List<CarrierSpec> carriers = lines.carriers(shopLine);
    List<String> allowed = line.handling().carriers();
    List<CarrierRoom.Room> rooms =
        way.alone()
            ? CarrierRoom.forOneAlone(part, carriers, allowed)
            : CarrierRoom.rooms(part, carriers, allowed, part.spun());
    if (rooms.isEmpty()) {
      return noCarrier(line, part, shopLine);
    }
    List<Dwell> dwells =
        new KettleDwells(LineMaker.kettles(shopLine))
            .immersion(part.thicknessMm(), part.thickestMm(), way.reactive());
    String hung = part.spun() ? "spun" : "hung";
    String next = paintedNext ? "for paint" : "plain";
    Finish finish =
        new Finish(
            0,
            "zinc|" + hung + "|" + way.steelKey() + "|" + next,
            paintedNext ? "galvanized for powder, no quench" : "galvanized, " + hung,
            FinishKind.ZINC,
            input.catalogue().zinc().map(z -> z.id()).orElse("zinc"));
    return new LegOrStop(
        new Leg(
            shopLine.id(),
            finish,
            "zinc",
            dwells,
            shopLine.machines().stream()
                .map(StationUse::id)
                .filter(id -> part.spun() || way.kettles().containsKey(id))
                .toList(),
            rooms,
            way.alone(),
            way.alone() ? 1 : CarrierRoom.lotPieces(rooms),
            stops(shopLine, FinishKind.ZINC, false, paintedNext, part.spun()),
            0,
            Integer.MAX_VALUE,
            draws.zincKg(part)),
        null);
  }

  /** Galvanizing bought: onto a pallet, with the truck, back on its day. */
  private LegOrStop sentOut(
      PartLine line, PartFacts part, KettleWay way, boolean paintedNext, ShopLine shopLine) {
    Hauling hauling = shopLine.hauling().orElseThrow();
    List<CarrierRoom.Room> rooms =
        CarrierRoom.onPallets(part, lines.carriers(shopLine), line.handling().carriers());
    if (rooms.isEmpty()) {
      return noCarrier(line, part, shopLine);
    }
    String hung = part.spun() ? "spun" : "hung";
    Finish finish =
        new Finish(
            0,
            "outside|" + hung + "|" + way.steelKey() + "|" + (paintedNext ? "for paint" : "plain"),
            "galvanized outside"
                + (paintedNext ? " for powder, no quench, no passivation" : ", " + hung),
            FinishKind.ZINC,
            "");
    return leg(
        shopLine,
        finish,
        "outside",
        Trips.dwells(hauling),
        rooms,
        way.alone(),
        stops(shopLine, FinishKind.ZINC, false, paintedNext, part.spun()),
        0,
        Integer.MAX_VALUE,
        0);
  }

  private LegOrStop degasLeg(PartLine line, PartFacts part, Coating coating) {
    Optional<ShopLine> found = LineMaker.ofKind(input.shop(), LineKind.POWDER);
    if (found.isEmpty()) {
      return noLine(LineKind.POWDER);
    }
    if (coating.cure().isEmpty()) {
      return noCure(coating);
    }
    ShopLine shopLine = found.get();
    Defaults defaults = input.shop().defaults();
    CureWindow window = OvenDwells.window(coating.cure().get(), 1);
    OvenDwells.Walls walls =
        OvenDwells.Walls.of(part.material(), part.thicknessMm(), part.thickestMm());
    List<Dwell> dwells =
        ovens(shopLine)
            .degas(walls, window.lowestC() + defaults.degasAboveCureC(), defaults.degasMin());
    if (dwells.isEmpty()) {
      return LegOrStop.stop(
          "no-degas-setting",
          "the degassing bake needs %.0f C, the line's ovens offer no such setting"
              .formatted(window.lowestC() + defaults.degasAboveCureC()),
          "a higher oven setting in the shop file, or another powder",
          "supervisor");
    }
    List<CarrierRoom.Room> rooms =
        CarrierRoom.rooms(part, lines.carriers(shopLine), line.handling().carriers(), false);
    if (rooms.isEmpty()) {
      return noCarrier(line, part, shopLine);
    }
    Finish finish =
        new Finish(
            0, "degas|" + Math.round(window.lowestC()), "degassing bake", FinishKind.DEGAS, "");
    return leg(
        shopLine,
        finish,
        "degas",
        dwells,
        rooms,
        false,
        stops(shopLine, FinishKind.DEGAS, false, false, false),
        0,
        FRESH_ZINC_MIN,
        0);
  }

  private LegOrStop coatLeg(
      PartLine line, PartFacts part, Coating coating, boolean over, boolean last, Route route) {
    boolean powder = coating instanceof Powder;
    LineKind kind = powder ? LineKind.POWDER : LineKind.LIQUID;
    Optional<ShopLine> found = LineMaker.ofKind(input.shop(), kind);
    if (found.isEmpty()) {
      return noLine(kind);
    }
    if (coating.cure().isEmpty()) {
      return noCure(coating);
    }
    ShopLine shopLine = found.get();
    double share = coating instanceof Powder p && !last ? p.firstCoatShare() : 1;
    CureWindow window = OvenDwells.window(coating.cure().get(), share);
    OvenDwells.Walls walls =
        OvenDwells.Walls.of(part.material(), part.thicknessMm(), part.thickestMm());
    List<Dwell> dwells = ovens(shopLine).cure(walls, window);
    if (dwells.isEmpty()) {
      return LegOrStop.stop(
          "no-cure-setting",
          "no setting of the ovens cures "
              + coating.name()
              + " on this part without overbaking its thinnest wall",
          "another oven setting in the shop file, or another powder",
          "supervisor");
    }
    List<CarrierRoom.Room> rooms =
        CarrierRoom.rooms(part, lines.carriers(shopLine), line.handling().carriers(), false);
    if (rooms.isEmpty()) {
      return noCarrier(line, part, shopLine);
    }
    boolean overZinc = route == Route.DUPLEX;
    String substrate = overZinc ? "zinc" : part.material().word();
    FinishKind finishKind = powder ? FinishKind.POWDER : FinishKind.LIQUID;
    Finish finish =
        new Finish(
            lines.state(coating.id()),
            coating.id() + "|" + substrate + (over ? "|over primer" : ""),
            coating.name(),
            finishKind,
            coating.id());
    int maxGap =
        overZinc
            ? input.shop().defaults().zincToPowderMaxMin()
            : over ? Recoat.maxMin(coating) : Integer.MAX_VALUE;
    return leg(
        shopLine,
        finish,
        powder ? "powder" : "liquid",
        dwells,
        rooms,
        false,
        stops(shopLine, finishKind, over || overZinc, false, false),
        over ? Recoat.minMin(coating) : 0,
        maxGap,
        draws.coating(part, coating));
  }

  private OvenDwells ovens(ShopLine line) {
    return ovens.computeIfAbsent(
        line.id(),
        id ->
            new OvenDwells(
                LineMaker.ovens(line),
                LineMaker.settings(line),
                input.shop().defaults().heatUpMinPerMm()));
  }

  private static LegOrStop leg(
      ShopLine line,
      Finish finish,
      String group,
      List<Dwell> dwells,
      List<CarrierRoom.Room> rooms,
      boolean alone,
      List<Leg.Stop> stops,
      int minGap,
      int maxGap,
      double material) {
    return new LegOrStop(
        new Leg(
            line.id(),
            finish,
            group,
            dwells,
            line.hauling()
                .map(h -> Trips.ids(line, h))
                .orElseGet(() -> line.machines().stream().map(StationUse::id).toList()),
            rooms,
            alone,
            alone ? 1 : CarrierRoom.lotPieces(rooms),
            stops,
            minGap,
            maxGap,
            material),
        null);
  }

  private static List<Leg.Stop> stops(
      ShopLine line, FinishKind finish, boolean over, boolean paintedNext, boolean spun) {
    List<Leg.Stop> stops = new ArrayList<>();
    for (StationUse use : line.stations()) {
      if (use.profile() instanceof StationProfile station
          && Stations.stops(station.kind(), finish, over, paintedNext, spun)) {
        stops.add(new Leg.Stop(use.id(), spun ? poured(station.pace()) : station.pace()));
      }
    }
    return stops;
  }

  /** Bulk work is poured, not hung piece by piece. */
  private static Pace poured(Pace pace) {
    return new Pace(pace.fixedMin(), 0, pace.perM2Min(), pace.perKgMin());
  }

  private static LegOrStop noLine(LineKind kind) {
    return LegOrStop.stop(
        "no-line",
        "the shop has no " + kind.name().toLowerCase(Locale.ROOT) + " line",
        "a line of that kind in the shop file, or another route",
        "supervisor");
  }

  private static LegOrStop noCure(Coating coating) {
    return LegOrStop.stop(
        "no-cure-data",
        coating.name() + " has no cure data at metal temperature",
        "the data sheet's minutes at metal temperature in the coatings file",
        "purchasing, from the maker");
  }

  private static LegOrStop noCarrier(PartLine order, PartFacts part, ShopLine line) {
    List<String> named = order.handling().carriers();
    return LegOrStop.stop(
        "no-carrier",
        "no carrier of the %s%s holds a piece of %.0f x %.0f x %.0f mm and %.1f kg"
            .formatted(
                line.name(),
                named.isEmpty() ? "" : " that is named for it (" + String.join(", ", named) + ")",
                part.envelopeMm().lengthMm(),
                part.envelopeMm().widthMm(),
                part.envelopeMm().heightMm(),
                part.massKg()),
        named.isEmpty()
            ? "a larger carrier in the shop file, or the part in two"
            : "another carrier named for it, or none; a larger one in the shop file, or the part in"
                + " two",
        "supervisor");
  }
}
