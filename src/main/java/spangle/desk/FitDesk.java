package spangle.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import spangle.equipment.CarrierProfile;
import spangle.fit.Body;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.FitRules;
import spangle.fit.KettleFit;
import spangle.fit.KettleWay;
import spangle.fit.Station;
import spangle.fit.TwoDips;
import spangle.fit.UsableSpace;
import spangle.fit.Verdict;
import spangle.fit.gate.GateCase;
import spangle.fit.vent.HolePlaces;
import spangle.fit.vent.HungHollow;
import spangle.fit.vent.Vents;
import spangle.intake.brief.AskedPart;
import spangle.intake.brief.KettleWays;
import spangle.intake.brief.PaintWays;
import spangle.intake.brief.PartBodies;
import spangle.intake.brief.PartGates;
import spangle.intake.brief.ZincWay;
import spangle.intake.read.PartName;
import spangle.intake.read.ProfileShelf;
import spangle.intake.read.WeekReader;
import spangle.intake.source.Near;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.Shop;
import spangle.intake.week.WeekInput;
import spangle.measure.Box;
import spangle.plan.LineKind;
import spangle.plan.PartFacts;
import spangle.report.week.WeekTime;

/** Does a part of a week go through the stations of its route. */
public final class FitDesk {
  private static final Optional<FitAnswer> NONE = Optional.empty();

  private final AskedPart asked;

  private FitDesk(AskedPart asked) {
    this.asked = asked;
  }

  /**
   * What came of a question.
   *
   * @param fit the answer; empty with a sentence
   * @param complaint why there is none
   * @param refused whether the week, not the question, is at fault
   */
  public record Asked(Optional<PartFit> fit, String complaint, boolean refused) {}

  /** Asks for a part by its name, its job's name where that has one part, or {@code JOB/PART}. */
  public static Asked part(Path folder, String name) {
    PartName wanted = new PartName(name);
    WeekReader.Reading quick = WeekReader.readFor(folder, wanted);
    if (quick.stopped()) {
      return unusable(folder, quick);
    }
    WeekInput input = quick.input().orElseThrow();
    List<Row> meant = meant(input, wanted);
    if (meant.isEmpty()) {
      // Only now are the other names wanted, to say which are near.
      WeekReader.Reading whole = WeekReader.read(folder);
      if (whole.stopped()) {
        return unusable(folder, whole);
      }
      input = whole.input().orElseThrow();
      meant = meant(input, wanted);
      if (meant.isEmpty()) {
        return new Asked(Optional.empty(), unknown(name, input), false);
      }
    }
    if (meant.size() > 1) {
      return new Asked(
          Optional.empty(),
          "'"
              + name
              + "' stands for several parts: say "
              + String.join(" or ", meant.stream().map(Row::words).toList()),
          false);
    }
    Row row = meant.get(0);
    return AskedPart.of(input, row.job(), row.line())
        .map(part -> new FitDesk(part).answer(part.part()))
        .orElseGet(
            () ->
                new Asked(
                    Optional.empty(),
                    row.words() + " has no size: give its shape or its outside size",
                    false));
  }

  private static Asked unusable(Path folder, WeekReader.Reading reading) {
    return new Asked(
        Optional.empty(),
        folder
            + " cannot be used: "
            + reading.problems().stream()
                .findFirst()
                .map(p -> p.place().words() + ": " + p.why())
                .orElse("nothing can be read")
            + "; see 'spangle check'",
        true);
  }

  /** An accepted row by its names. */
  private record Row(Job job, PartLine line) {
    String words() {
      return job.id() + "/" + line.id();
    }
  }

  private static List<Row> meant(WeekInput input, PartName wanted) {
    List<Row> meant = new ArrayList<>();
    for (Job job : input.jobs()) {
      for (PartLine line : job.parts()) {
        if (wanted.means(job.id(), line.id())) {
          meant.add(new Row(job, line));
        }
      }
    }
    return meant;
  }

  private static String unknown(String name, WeekInput week) {
    List<String> known = new ArrayList<>();
    for (Job job : week.jobs()) {
      job.parts().forEach(part -> known.add(new Row(job, part).words()));
    }
    String example = known.isEmpty() ? "J-1/P-1" : known.get(0);
    for (Job job : week.jobs()) {
      known.add(job.id());
      job.parts().forEach(part -> known.add(part.id()));
    }
    return "no accepted part of this week is called '"
        + name
        + "'"
        + Near.hint(name, known)
        + "; name it as JOB/PART, for example "
        + example;
  }

  private Asked answer(PartFacts part) {
    Shop shop = asked.input().shop();
    List<ZincWay> ways = KettleWays.of(shop);
    PartBodies bodies = new PartBodies(asked.input(), List.of());
    Optional<KettleWays.Best> zinc =
        onZinc(part) && !part.spun() ? best(ways, part) : Optional.empty();
    List<KettleWay> paint = paintKind(part).map(kind -> PaintWays.of(shop, kind)).orElse(List.of());
    FitRequest room =
        new FitRequest(bodies.of(part), OptionalDouble.of(part.massKg()), 0, FitRules.ROOM);
    Optional<FitAnswer> painted =
        paint.stream()
            .map(way -> KettleFit.answer(room, way))
            .min(Comparator.comparing(FitAnswer::verdict));
    Optional<FitAnswer> answer =
        Stream.of(
                zinc.map(KettleWays.Best::answer), painted, part.spun() ? basket(shop, room) : NONE)
            .flatMap(Optional::stream)
            .max(Comparator.comparing(FitAnswer::verdict));
    if (answer.isEmpty()) {
      return new Asked(
          Optional.empty(), "the shop has no line for the route '" + part.route() + "'", false);
    }
    PartGates gates = asked.gates();
    return new Asked(
        Optional.of(
            new PartFit(
                part.jobId(),
                part.partId(),
                part.description(),
                answer.get(),
                zinc.filter(best -> best.answer().verdict() == answer.get().verdict())
                    .map(best -> best.way().kettle()),
                stations(zinc, paint, room, bodies.of(part), part.massKg()),
                gates.states(),
                questions(),
                zinc.map(best -> hollows(gates, best.answer(), part)).orElse(List.of()),
                validity(shop, zinc))),
        "",
        false);
  }

  /** Other kettles are looked at only where those of the shop do not do. */
  private Optional<KettleWays.Best> best(List<ZincWay> ways, PartFacts part) {
    Optional<KettleWays.Best> own = asked.gates().best();
    boolean none = own.map(b -> b.answer().verdict() == Verdict.NO).orElse(false);
    return none
        ? KettleWays.best(ways, part, new PartBodies(asked.input(), otherKettles(ways)))
        : own;
  }

  /** Whatever keeps it out of a plan and is no gate of its own. */
  private List<String> questions() {
    Set<String> gates = new HashSet<>();
    asked.gates().states().forEach(state -> gates.add(state.code()));
    return asked.shut().stream()
        .filter(held -> !gates.contains(held.gate()) && !held.gate().equals("does-not-fit"))
        .map(held -> held.gate() + ": " + held.words() + "; opens with: " + held.opens())
        .toList();
  }

  /** Spun work goes into a basket as it falls. */
  private static Optional<FitAnswer> basket(Shop shop, FitRequest room) {
    return shop.lines().stream()
        .flatMap(line -> line.carriers().stream())
        .filter(use -> use.profile().kind() == CarrierProfile.Kind.BASKET)
        .map(use -> KettleFit.room(room, PaintWays.carrier(use.id(), use.profile())))
        .min(Comparator.comparing(FitAnswer::verdict));
  }

  private static boolean onZinc(PartFacts part) {
    return part.route().equals("zinc") || part.route().equals("duplex");
  }

  private static Optional<LineKind> paintKind(PartFacts part) {
    return switch (part.route()) {
      case "powder", "two-coat", "duplex" -> Optional.of(LineKind.POWDER);
      case "liquid" -> Optional.of(LineKind.LIQUID);
      default -> Optional.empty();
    };
  }

  /** Kettles that come with the program and are not those of the shop. */
  private static List<UsableSpace> otherKettles(List<ZincWay> ways) {
    List<String> own = ways.stream().map(way -> way.kettle().name()).toList();
    return ProfileShelf.kettles().stream()
        .filter(kettle -> !own.contains(kettle.name()))
        .map(
            kettle ->
                new UsableSpace(
                    kettle.name(),
                    kettle.usable().lengthMm(),
                    kettle.usable().widthMm(),
                    kettle.usable().heightMm(),
                    kettle.rimMm()))
        .toList();
  }

  private static List<PartFit.StationFit> stations(
      Optional<KettleWays.Best> zinc,
      List<KettleWay> paint,
      FitRequest room,
      Body body,
      double massKg) {
    Map<String, PartFit.StationFit> found = new LinkedHashMap<>();
    zinc.ifPresent(
        best -> {
          FitRequest request = best.way().request(body, massKg);
          for (Station station : best.way().way().stations()) {
            boolean dips = station.kind() != Station.Kind.DRYER;
            FitAnswer alone =
                dips
                    ? KettleFit.answer(request, KettleWay.bare(station.space()))
                    : KettleFit.room(request, station);
            found.putIfAbsent(station.name(), new PartFit.StationFit(station.name(), alone));
          }
        });
    for (KettleWay way : paint) {
      for (Station station : way.stations()) {
        found.putIfAbsent(
            station.name(), new PartFit.StationFit(station.name(), KettleFit.room(room, station)));
      }
    }
    return List.copyOf(found.values());
  }

  private List<PartFit.HollowHoles> hollows(PartGates gates, FitAnswer answer, PartFacts part) {
    List<PartFit.HollowHoles> hollows = new ArrayList<>();
    for (GateCase.Member member : gates.members()) {
      hollows.add(
          new PartFit.HollowHoles(
              member.count(),
              member.lengthMm(),
              Vents.of(member.bore()),
              HolePlaces.of(hung(answer, part.envelopeMm()))));
    }
    return hollows;
  }

  /** A part's attitude, as its hollows see it. */
  static HungHollow hung(FitAnswer answer, Box envelope) {
    HungHollow.Second second =
        answer
            .twoDips()
            .map(
                dips ->
                    dips.form() == TwoDips.Form.END_OUT
                        ? HungHollow.Second.END_FOR_END
                        : HungHollow.Second.TURNED_OVER)
            .orElse(HungHollow.Second.NONE);
    return new HungHollow(
        answer.whole().map(w -> w.side().lengthMm()).orElse(envelope.longestMm()),
        answer.whole().map(w -> w.side().heightMm()).orElse(envelope.middleMm()),
        answer.hangDeg(),
        second);
  }

  private static String validity(Shop shop, Optional<KettleWays.Best> zinc) {
    LocalDate until = shop.weekStart().plusDays(shop.horizonDays() - 1L);
    return "Valid to "
        + WeekTime.date(until)
        + " "
        + until.getYear()
        + zinc.map(
                best ->
                    ", "
                        + best.way().kettle().title()
                        + ", bath "
                        + Math.round(best.way().use().levelDownMm())
                        + " mm below its mark, "
                        + Math.round(best.way().use().drossMm())
                        + " mm of dross above the usual")
            .orElse("")
        + ". "
        + (zinc.isPresent() ? FitAnswer.VALIDITY : FitAnswer.ROOM_VALIDITY);
  }
}
