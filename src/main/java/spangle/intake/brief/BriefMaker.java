package spangle.intake.brief;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.fit.FitAnswer;
import spangle.intake.week.Coating;
import spangle.intake.week.Job;
import spangle.intake.week.KitOrder;
import spangle.intake.week.PartLine;
import spangle.intake.week.ShopLine;
import spangle.intake.week.WeekInput;
import spangle.intake.week.Zinc;
import spangle.plan.Brief;
import spangle.plan.Caged;
import spangle.plan.CarrierSpec;
import spangle.plan.Goals;
import spangle.plan.Held;
import spangle.plan.Kit;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PartFacts;

/** From a week as read to a week ready to be planned. */
public final class BriefMaker {
  private final WeekInput input;
  private final Standing standing;
  private final LineMaker lines;
  private final LegMaker legs;
  private final GateStep gates;
  private final List<PartFacts> parts = new ArrayList<>();
  private final List<Held> held = new ArrayList<>();
  private final List<PartGates> states = new ArrayList<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Caged> caged = new ArrayList<>();
  private final Map<String, Map<String, FitAnswer>> kettles = new HashMap<>();

  private BriefMaker(WeekInput input, Standing standing) {
    this.input = input;
    this.standing = standing;
    this.lines = new LineMaker(input.shop(), input.catalogue());
    this.legs = new LegMaker(input, lines, new Draws(input));
    this.gates = new GateStep(input);
  }

  /** Measures, asks the gates, makes legs and lots. */
  public static PreparedWeek prepare(WeekInput input) {
    return prepare(input, Standing.NOTHING);
  }

  /** The same in the middle of a week: what stands already is taken over as it is. */
  public static PreparedWeek prepare(WeekInput input, Standing standing) {
    return new BriefMaker(input, standing).prepare();
  }

  private PreparedWeek prepare() {
    for (Job job : input.jobs()) {
      for (PartLine line : job.parts()) {
        part(job, line);
      }
    }
    List<LineSpec> lineSpecs = input.shop().lines().stream().map(lines::line).toList();
    List<CarrierSpec> carriers =
        input.shop().lines().stream().flatMap((ShopLine l) -> lines.carriers(l).stream()).toList();
    if (input.shop().defaults().startHalfRoutes()) {
      lots.replaceAll(Lot::startedAnyway);
    }
    PowderLots.Kept kept = PowderLots.keep(lots, input.kits(), input.catalogue(), standing);
    Brief brief =
        new Brief(
            name(),
            input.shop().weekStart(),
            input.shop().horizonMin(),
            lineSpecs,
            carriers,
            kept.lots(),
            kits(),
            kept.supplies(),
            Goals.usual(),
            List.of(),
            List.of(),
            BathMaker.baths(input, kept.lots(), kettles),
            standing.scrapped(),
            caged,
            List.of());
    return new PreparedWeek(input, brief, parts, held, states);
  }

  /** A what-if says so wherever its name stands. */
  private String name() {
    return input.shop().name() + input.overlay().map(o -> " - what if: " + o.title()).orElse("");
  }

  private void part(Job job, PartLine line) {
    Optional<PartFacts> measured = PartMeasurer.measure(input, job, line);
    Optional<Coating> last = input.lastCoating(line);
    StandingLots stand =
        new StandingLots(
            standing,
            job.id(),
            line,
            input.mostCoats(line),
            input.catalogue().zinc().flatMap(Zinc::strip));
    held.addAll(stand.scrapped());
    if (measured.isEmpty()) {
      held.addAll(stand.heldBack(List.of(unmeasured(job, line))));
      stop(stand);
      return;
    }
    PartFacts part = measured.get();
    parts.add(part);
    GateStep.Outcome outcome = gates.ask(line, part);
    states.add(outcome.gates());
    if (!outcome.shut().isEmpty()) {
      held.addAll(stand.heldBack(outcome.shut()));
      stop(stand);
      return;
    }
    kettles.put(part.jobId() + "\n" + part.partId(), outcome.way().kettles());
    LegMaker.Outcome made = legs.legs(line, part, outcome.way());
    if (made.stopper().isPresent()) {
      held.addAll(stand.heldBack(List.of(stopped(part, made.stopper().get()))));
      stop(stand);
      return;
    }
    List<String> kits = kitIds(job, line);
    stand.lots(part, made.legs(), kits).stream().map(l -> kitsFirst(l, kits)).forEach(lots::add);
    held.addAll(stand.notArrived(part));
    held.addAll(stand.toBeStripped(part, last));
    stand.caged(false).ifPresent(caged::add);
  }

  private void stop(StandingLots stand) {
    lots.addAll(stand.stopped());
    stand.caged(true).ifPresent(caged::add);
  }

  /**
   * What is short goes to kits first: a lot a kit waits for counts as much as the kit, and one more
   * than the same part for stock.
   */
  private Lot kitsFirst(Lot lot, List<String> kitIds) {
    int weight =
        input.kits().stream()
            .filter(k -> kitIds.contains(k.id()))
            .mapToInt(k -> Math.max(k.weight(), lot.weight()) + 1)
            .max()
            .orElse(lot.weight());
    return lot.counting(weight);
  }

  private List<String> kitIds(Job job, PartLine line) {
    return input.kits().stream()
        .filter(
            k ->
                k.lines().stream()
                    .anyMatch(l -> l.partId().equals(line.id()) && l.jobId().equals(job.id())))
        .map(KitOrder::id)
        .toList();
  }

  private List<Kit> kits() {
    return input.kits().stream()
        .map(
            k ->
                new Kit(
                    k.id(),
                    k.name(),
                    k.sets(),
                    k.dueMin(),
                    k.weight(),
                    k.oneLot(),
                    k.lines().stream()
                        .map(l -> new Kit.KitLine(l.partId(), l.jobId(), l.perSet(), l.onHand()))
                        .toList()))
        .toList();
  }

  private static Held unmeasured(Job job, PartLine line) {
    return new Held(
        job.id(),
        line.id(),
        line.words(),
        line.qty(),
        "size-unknown",
        "area, mass or outside size is not given and cannot be computed from what is",
        "a shape, or area, mass and size of one piece",
        "design",
        2,
        line.wanted().dueMin());
  }

  private static Held stopped(PartFacts part, LegMaker.Stopper stop) {
    return new Held(
        part.jobId(),
        part.partId(),
        part.description(),
        part.pieces(),
        stop.gate(),
        stop.words(),
        stop.opens(),
        stop.whoAnswers(),
        1,
        part.dueMin());
  }
}
