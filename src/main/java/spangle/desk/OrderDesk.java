package spangle.desk;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spangle.estimate.Purchase;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.event.Happenings;
import spangle.intake.problem.Problem;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.intake.week.WeekInput;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.event.Event;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/** What to buy for a week. */
public final class OrderDesk {
  /** Moves tried where no plan is given: enough for the order of the colours. */
  private static final long STEPS = 3000;

  private OrderDesk() {}

  /**
   * Either an order, or the problems that keep the week from being read.
   *
   * @param boughtFor which plan is bought for, and where it is a quick one, why, in words
   * @param monday date of minute zero
   * @param purchases what to buy
   * @param baths what the week does to each kettle's bath
   * @param charges what other firms ask for the work sent to them
   * @param colours work of each powder, for spraying to waste or reclaiming it
   * @param refused problems that stop the reader; empty when there is an order
   */
  public record Order(
      String boughtFor,
      LocalDate monday,
      List<Purchase> purchases,
      List<BathDesk.Bath> baths,
      List<Charge> charges,
      List<ColourWork> colours,
      List<Problem> refused) {
    /** Copies the lists. */
    public Order {
      purchases = List.copyOf(purchases);
      baths = List.copyOf(baths);
      charges = List.copyOf(charges);
      colours = List.copyOf(colours);
      refused = List.copyOf(refused);
    }

    private static Order of(
        String boughtFor, PreparedWeek week, Plan plan, OptionalInt now, List<Charge> charges) {
      return new Order(
          boughtFor,
          week.brief().monday(),
          new StoreDesk(week, plan, now).purchases(),
          new BathDesk(week, plan).baths(),
          charges,
          ColourWork.of(week),
          List.of());
    }
  }

  /**
   * The order, with what was delivered and reported since counted.
   *
   * @param week the week folder
   * @param plan a plan of it; without one the plan people work by, where no file it was made from
   *     has changed since, else a quick one
   * @throws IOException when the plan cannot be read
   * @throws PlanFileException when it is none, or is of another week
   */
  public static Order order(Path week, Optional<Path> plan) throws IOException, PlanFileException {
    if (plan.isPresent()) {
      return supposed(week, plan.get(), PlanShelf.read(plan.get()));
    }
    WeekReader.Reading reading = WeekReader.read(week);
    if (reading.input().isEmpty()) {
      return refused(reading);
    }
    WeekInput input = reading.input().get();
    PlanShelf.Worked worked = PlanShelf.workedBy(week, input);
    if (worked.file().isEmpty()) {
      return quick(input, worked.whyNone());
    }
    PlanFile file = worked.file().get();
    Path usual = week.resolve(PlanHistory.USUAL);
    // Only a plan that supposes an overlay needs the week read again, with it.
    return file.overlay().isPresent()
        ? supposed(week, usual, file)
        : planned(week, usual, file, input);
  }

  /** For a plan of the week as the plan supposes it. */
  private static Order supposed(Path week, Path plan, PlanFile file)
      throws IOException, PlanFileException {
    Besides overlay = Besides.overlay(PlanShelf.overlay(plan, file));
    WeekReader.Reading reading = WeekReader.read(week, overlay);
    return reading.input().isEmpty()
        ? refused(reading)
        : planned(week, plan, file, reading.input().get());
  }

  private static Order planned(Path week, Path plan, PlanFile file, WeekInput input)
      throws PlanFileException {
    List<Event> events = Heard.of(file, input.events(), Integer.MAX_VALUE).events();
    PreparedWeek prepared = BriefMaker.prepare(now(input, events));
    PreparedWeek asPlanned =
        new PreparedWeek(
            prepared.input(), file.brief(), prepared.parts(), prepared.held(), prepared.gates());
    Optional<String> stranger = stranger(asPlanned, file.plan());
    if (stranger.isPresent()) {
      throw new PlanFileException(
          "it is no plan of "
              + week
              + ": it has "
              + stranger.get()
              + ", which this week has not; give a plan of this week");
    }
    OptionalInt replanned =
        file.replanned().map(r -> OptionalInt.of(r.atMin())).orElseGet(OptionalInt::empty);
    return Order.of(
        "for plan " + file.version() + " in " + plan,
        asPlanned,
        file.plan(),
        latest(events, replanned),
        Charge.of(file));
  }

  private static Order quick(WeekInput input, String why) {
    List<Event> events = input.events().until(Integer.MAX_VALUE);
    PreparedWeek prepared = BriefMaker.prepare(now(input, events));
    Plan quick =
        new Solver()
            .solve(prepared.brief(), new SolveOptions(10, STEPS, 1, 1), ProgressListener.NOBODY);
    return Order.of(
        "for a quick plan of the week: " + why,
        prepared,
        quick,
        latest(events, OptionalInt.empty()),
        Charge.of(prepared, quick));
  }

  private static Order refused(WeekReader.Reading reading) {
    return new Order(
        "", LocalDate.EPOCH, List.of(), List.of(), List.of(), List.of(), reading.problems());
  }

  /** Up to when it is known what came: the last report, or the minute of the plan. */
  private static OptionalInt latest(List<Event> events, OptionalInt replanned) {
    return IntStream.concat(events.stream().mapToInt(Event::atMin), replanned.stream()).max();
  }

  private static WeekInput now(WeekInput input, List<Event> events) {
    int last = events.stream().mapToInt(Event::atMin).max().orElse(0);
    return Happenings.of(input, events, last).input();
  }

  /** The first lot or line of a plan that its week does not know. */
  private static Optional<String> stranger(PreparedWeek week, Plan plan) {
    Set<String> parts =
        week.parts().stream().map(p -> WeekIndex.key(p.jobId(), p.partId())).collect(toSet());
    Set<String> lots =
        week.brief().lots().stream()
            .filter(l -> parts.contains(WeekIndex.key(l.jobId(), l.partId())))
            .map(Lot::id)
            .collect(toSet());
    Set<String> lines = week.brief().lines().stream().map(LineSpec::id).collect(toSet());
    Stream<String> strangeLots =
        plan.batches().stream()
            .flatMap(b -> b.loads().stream())
            .flatMap(l -> l.lotIds().stream())
            .filter(id -> !lots.contains(id));
    Stream<String> strangeLines =
        plan.batches().stream().map(PlannedBatch::lineId).filter(id -> !lines.contains(id));
    return Stream.concat(strangeLots, strangeLines).findFirst();
  }
}
