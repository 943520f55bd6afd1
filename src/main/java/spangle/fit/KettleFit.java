package spangle.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.measure.Interval;

/** Answers whether a part goes in, by every station on its way. */
public final class KettleFit {
  /** How finely an angle under a low hook is looked for, in each range. */
  private static final int HOOK_STEPS = 400;

  private KettleFit() {}

  /** The answer for one kettle of which nothing else is known. */
  public static FitAnswer answer(FitRequest request, UsableSpace kettle) {
    return answer(request, KettleWay.bare(kettle), List.of());
  }

  /** The answer for a whole way. */
  public static FitAnswer answer(FitRequest request, KettleWay way) {
    return answer(request, way, List.of());
  }

  /**
   * The answer for a whole way.
   *
   * @param others other kettles that may be named as a way out
   */
  public static FitAnswer answer(FitRequest request, KettleWay way, List<UsableSpace> others) {
    Optional<String> overloaded = overloaded(request, way);
    if (overloaded.isPresent()) {
      return no(request, way, others, overloaded);
    }
    Optional<Attitude> whole = WholeFit.best(request.body(), way.tightest(), request.rules());
    if (whole.isPresent()) {
      return whole(request, way, whole.get(), others);
    }
    Optional<TwoDips> dips =
        request.rules().twoDips()
            ? TwoDipSearch.find(request.body(), way.kettle(), request.rules().overlapMm())
            : Optional.empty();
    return dips.isPresent()
        ? twoDips(request, way, dips.get(), others)
        : no(request, way, others, Optional.of(Bottleneck.of(request, way)));
  }

  /**
   * Whether one immersion covers a part at every station of a way without rolling it sideways; the
   * crane is not asked.
   */
  public static boolean goesInUnrolled(Body body, KettleWay way, FitRules rules) {
    return WholeFit.best(body, way.tightest(), rules)
        .filter(attitude -> attitude.rollDeg().isEmpty())
        .isPresent();
  }

  /** The answer for a room of a station that bears only so much. */
  public static FitAnswer room(FitRequest request, Station room) {
    Station only = new Station(Station.Kind.KETTLE, room.space(), room.maxMassKg());
    return answer(
        request.withRules(FitRules.ROOM),
        new KettleWay(List.of(only), Optional.empty()),
        List.of());
  }

  /** The answer for a room: oven, booth, door, carrier. The part goes in whole or not at all. */
  public static FitAnswer room(FitRequest request, UsableSpace room) {
    return answer(request.withRules(FitRules.ROOM), KettleWay.bare(room), List.of());
  }

  private static FitAnswer whole(
      FitRequest request, KettleWay way, Attitude attitude, List<UsableSpace> others) {
    // Nothing runs off in a room: what goes in straight stands straight.
    double wanted =
        request.rules().twoDips()
            ? attitude.hangDeg(request.rules().drainDeg())
            : attitude.statedDeg();
    double hang = way.crane().map(c -> underHook(attitude, wanted, c)).orElse(wanted);
    Optional<Lift> lift = lift(request, way, attitude.side().uprightMm(hang), 0);
    if (lift.isPresent() && !lift.get().possible()) {
      return no(request, way, others, craneOf(way), lift);
    }
    List<String> cautions = new ArrayList<>(Cautions.whole(attitude, request.rules()));
    if (hang != wanted) {
      cautions.add(Cautions.hookLowersTheAngle(way, request.rules(), wanted, hang));
    }
    cautions.addAll(Cautions.lift(request, way, lift));
    return new FitAnswer(
        attitude.straight() ? Verdict.STRAIGHT : Verdict.TILTED,
        way.tightest(),
        request.rules(),
        Optional.of(attitude),
        Optional.empty(),
        Optional.empty(),
        hang,
        lift,
        Bottleneck.forWhole(request, way, attitude),
        cautions,
        List.of());
  }

  /** The angle next to the wanted one at which the hook is high enough; the lowest if none is. */
  private static double underHook(Attitude attitude, double wantedDeg, Crane crane) {
    Silhouette side = attitude.side();
    double most = crane.hookAboveRimMm() - Crane.OVER_RIM_MM - crane.slingMm();
    if (side.uprightMm(wantedDeg) <= most) {
      return wantedDeg;
    }
    double best = lowestDeg(attitude);
    if (side.uprightMm(best) > most) {
      return best;
    }
    for (Interval window : attitude.windowsDeg()) {
      for (int step = 0; step <= HOOK_STEPS; step++) {
        double deg = window.min() + window.width() * step / HOOK_STEPS;
        if (side.uprightMm(deg) <= most && Math.abs(deg - wantedDeg) < Math.abs(best - wantedDeg)) {
          best = deg;
        }
      }
    }
    return best;
  }

  /** The allowed angle at which the part hangs least high; heights are lowest at range ends. */
  private static double lowestDeg(Attitude attitude) {
    double best = attitude.statedDeg();
    for (Interval window : attitude.windowsDeg()) {
      for (double end : new double[] {window.min(), window.max()}) {
        if (attitude.side().uprightMm(end) < attitude.side().uprightMm(best)) {
          best = end;
        }
      }
    }
    return best;
  }

  private static FitAnswer twoDips(
      FitRequest request, KettleWay way, TwoDips dips, List<UsableSpace> others) {
    double upright = dips.side().uprightMm(dips.hangDeg());
    double freeEnd = Math.max(0, upright - way.kettle().depthMm() - way.kettle().rimMm());
    Optional<Lift> lift = lift(request, way, upright, freeEnd);
    Optional<String> refused = Pickles.refusedBy(request, way, dips);
    if (refused.isPresent()) {
      return no(request, way, others, refused, lift);
    }
    if (lift.isPresent() && !lift.get().possible()) {
      return no(request, way, others, craneOf(way), lift);
    }
    List<String> cautions = new ArrayList<>(Cautions.twoDips(dips, freeEnd));
    cautions.addAll(Pickles.words(request, way));
    cautions.addAll(Cautions.lift(request, way, lift));
    return new FitAnswer(
        Verdict.TWO_DIPS,
        way.kettle(),
        request.rules(),
        Optional.empty(),
        Optional.of(dips),
        Optional.empty(),
        dips.hangDeg(),
        lift,
        Optional.of(Bottleneck.of(request, way)),
        cautions,
        List.of());
  }

  private static FitAnswer no(
      FitRequest request, KettleWay way, List<UsableSpace> others, Optional<String> limitedBy) {
    Silhouette nearest = Shortage.of(request.body(), way.tightest()).lay().side();
    return no(request, way, others, limitedBy, lift(request, way, nearest.uprightMm(0), 0));
  }

  private static FitAnswer no(
      FitRequest request,
      KettleWay way,
      List<UsableSpace> others,
      Optional<String> limitedBy,
      Optional<Lift> lift) {
    Shortage nearest = Shortage.of(request.body(), way.tightest());
    return new FitAnswer(
        Verdict.NO,
        way.tightest(),
        request.rules(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(nearest),
        nearest.tiltDeg(),
        lift,
        limitedBy,
        Cautions.lift(request, way, lift),
        WaysOut.of(request, way, nearest, others, lift));
  }

  /** The first station that does not bear the work with its jig. */
  private static Optional<String> overloaded(FitRequest request, KettleWay way) {
    double kg = request.massKg().orElse(0) + request.jigKg();
    return way.stations().stream()
        .filter(station -> request.massKg().isPresent() && kg > station.maxMassKg())
        .map(Station::name)
        .findFirst();
  }

  private static Optional<String> craneOf(KettleWay way) {
    return way.crane().map(Crane::name);
  }

  private static Optional<Lift> lift(
      FitRequest request, KettleWay way, double uprightMm, double freeEndMm) {
    return way.crane()
        .map(
            crane ->
                new Lift(
                    crane,
                    request.massKg().isPresent()
                        ? OptionalDouble.of(
                            request.massKg().getAsDouble() * (1 + Crane.DRAINING_ZINC_SHARE)
                                + request.jigKg())
                        : OptionalDouble.empty(),
                    Crane.OVER_RIM_MM + uprightMm + crane.slingMm(),
                    freeEndMm));
  }
}
