package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spangle.equipment.CarrierProfile;
import spangle.equipment.CraneProfile;
import spangle.equipment.KettleProfile;
import spangle.equipment.StationProfile;
import spangle.fit.Crane;
import spangle.fit.FitAnswer;
import spangle.fit.KettleFit;
import spangle.fit.KettleWay;
import spangle.fit.Station;
import spangle.fit.UsableSpace;
import spangle.fit.Verdict;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.measure.Box;
import spangle.plan.PartFacts;

/** The tanks, kettle and crane a part passes on a shop's kettle line. */
public final class KettleWays {
  private KettleWays() {}

  /** The best answer a kettle gives. */
  public record Best(ZincWay way, FitAnswer answer) {}

  /**
   * One way per kettle with its zinc at the usual mark: for a plan, which follows the level itself
   * and dips nothing while it is too low. Dross counts as it is.
   */
  static List<ZincWay> whenFilled(Shop shop) {
    return of(shop, true);
  }

  /** One way per kettle as it stands; none where the shop has no kettle line. */
  public static List<ZincWay> of(Shop shop) {
    return of(shop, false);
  }

  private static List<ZincWay> of(Shop shop, boolean filled) {
    Optional<ShopLine> line = LineMaker.zincLine(shop);
    if (line.isEmpty()) {
      return List.of();
    }
    List<Station> others = new ArrayList<>();
    for (StationUse use : line.get().stations()) {
      if (use.profile() instanceof StationProfile station) {
        kind(station.kind()).flatMap(kind -> tank(kind, use, station)).ifPresent(others::add);
      }
    }
    Optional<Crane> crane = line.get().crane().map(KettleWays::crane);
    List<ZincWay> ways = new ArrayList<>();
    for (StationUse asItIs : line.get().stations()) {
      StationUse use = filled ? asItIs.filled() : asItIs;
      if (use.profile() instanceof KettleProfile kettle) {
        List<Station> way = new ArrayList<>(others);
        way.add(new Station(Station.Kind.KETTLE, space(use, kettle), kettle.maxDipKg()));
        ways.add(new ZincWay(use, kettle, new KettleWay(way, crane), beams(line.get())));
      }
    }
    return ways;
  }

  /** The best answer any kettle of the shop gives for one piece; empty where it has none. */
  public static Optional<Best> best(List<ZincWay> ways, PartFacts part, PartBodies bodies) {
    return best(answers(ways, part, bodies));
  }

  /** What each kettle answers for one piece. */
  static List<Best> answers(List<ZincWay> ways, PartFacts part, PartBodies bodies) {
    return ways.stream()
        .map(
            way ->
                new Best(
                    way,
                    KettleFit.answer(
                        way.request(bodies.hung(part, way), part.massKg()),
                        way.way(),
                        bodies.others())))
        .toList();
  }

  static Optional<Best> best(List<Best> answers) {
    return answers.stream().min(Comparator.comparing(best -> best.answer().verdict()));
  }

  /**
   * Kettles a part may go in, with their answers: the best, and where it goes in straight every
   * other it goes in straight, for a sheet that shows how to tilt shows it for one kettle.
   */
  static Map<String, FitAnswer> open(List<Best> answers) {
    Map<String, FitAnswer> open = new TreeMap<>();
    Optional<Best> best = best(answers).filter(b -> b.answer().verdict() != Verdict.NO);
    best.ifPresent(b -> open.put(b.way().use().id(), b.answer()));
    if (best.filter(b -> b.answer().verdict() == Verdict.STRAIGHT).isPresent()) {
      answers.stream()
          .filter(a -> a.answer().verdict() == Verdict.STRAIGHT)
          .forEach(a -> open.put(a.way().use().id(), a.answer()));
    }
    return open;
  }

  private static Optional<Station> tank(Station.Kind kind, StationUse use, StationProfile station) {
    return station
        .usable()
        .map(
            u ->
                new Station(
                    kind,
                    UsableSpace.of(use.id(), u.lengthMm(), u.widthMm(), u.heightMm())
                        .onTheDay(use.levelDownMm(), use.drossMm()),
                    station.maxMassKg()));
  }

  private static UsableSpace space(StationUse use, KettleProfile kettle) {
    Box u = kettle.usable();
    return new UsableSpace(use.id(), u.lengthMm(), u.widthMm(), u.heightMm(), kettle.rimMm())
        .onTheDay(use.levelDownMm(), use.drossMm());
  }

  private static List<ZincWay.Beam> beams(ShopLine line) {
    return line.carriers().stream()
        .filter(c -> c.profile().kind() == CarrierProfile.Kind.BEAM)
        .map(c -> new ZincWay.Beam(c.profile().ownMassKg(), c.profile().maxMassKg()))
        .sorted(Comparator.comparingDouble(ZincWay.Beam::ownKg))
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
