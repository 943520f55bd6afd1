package spangle.desk;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
   * @param monday date of minute zero
   * @param purchases what to buy
   * @param baths what the week does to each kettle's bath
   * @param charges what other firms ask for the work sent to them
   * @param colours work of each powder, for spraying to waste or reclaiming it
   * @param refused problems that stop the reader; empty when there is an order
   */
  public record Order(
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

    private static Order of(PreparedWeek week, Plan plan, List<Charge> charges) {
      return new Order(
          week.brief().monday(),
          new StoreDesk(week, plan).purchases(),
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
      return planned(week, plan.get(), PlanShelf.read(plan.get()));
    }
    Optional<PlanFile> worked = PlanShelf.workedBy(week);
    return worked.isPresent()
        ? planned(week, week.resolve(PlanHistory.USUAL), worked.get())
        : quick(week);
  }

  private static Order planned(Path week, Path plan, PlanFile file)
      throws IOException, PlanFileException {
    Optional<Path> overlay = PlanShelf.overlay(plan, file);
    WeekReader.Reading reading = WeekReader.read(week, Besides.overlay(overlay));
    if (reading.input().isEmpty()) {
      return refused(reading);
    }
    WeekInput input = reading.input().get();
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
    return Order.of(asPlanned, file.plan(), Charge.of(file));
  }

  private static Order quick(Path week) {
    WeekReader.Reading reading = WeekReader.read(week);
    if (reading.input().isEmpty()) {
      return refused(reading);
    }
    WeekInput input = reading.input().get();
    PreparedWeek prepared = BriefMaker.prepare(now(input, input.events().until(Integer.MAX_VALUE)));
    Plan quick =
        new Solver()
            .solve(prepared.brief(), new SolveOptions(10, STEPS, 1, 1), ProgressListener.NOBODY);
    return Order.of(prepared, quick, Charge.of(prepared, quick));
  }

  private static Order refused(WeekReader.Reading reading) {
    return new Order(
        LocalDate.EPOCH, List.of(), List.of(), List.of(), List.of(), reading.problems());
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
