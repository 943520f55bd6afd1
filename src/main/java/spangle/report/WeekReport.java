package spangle.report;

import java.util.List;
import spangle.plan.Brief;
import spangle.plan.Plan;

/**
 * All the sheets of a week are made from. Only the brief and the plan are indispensable: every
 * other part may be empty, and the sheets then leave a box to fill by hand instead of a figure.
 *
 * @param heading whose week, which version, how numbers are written
 * @param brief what was known
 * @param plan what was decided
 * @param waiting what waits for a person
 * @param stores what to buy, colours, bath levels
 * @param facts what the sheets of single loads, batches and parts say
 * @param yardstick how good the plan is and what it changed
 * @param stops when stations are kept for other things than work
 * @param overtime what hours beyond the shifts would buy
 */
public record WeekReport(
    Heading heading,
    Brief brief,
    Plan plan,
    Waiting waiting,
    Stores stores,
    SheetFacts facts,
    Yardstick yardstick,
    List<Stop> stops,
    Overtime overtime) {
  /** Copies the list. */
  public WeekReport {
    stops = List.copyOf(stops);
  }

  /** A report of which nobody asked what overtime would buy. */
  public WeekReport(
      Heading heading,
      Brief brief,
      Plan plan,
      Waiting waiting,
      Stores stores,
      SheetFacts facts,
      Yardstick yardstick,
      List<Stop> stops) {
    this(heading, brief, plan, waiting, stores, facts, yardstick, stops, Overtime.NONE);
  }

  /** A report that knows of no stops. */
  public WeekReport(
      Heading heading,
      Brief brief,
      Plan plan,
      Waiting waiting,
      Stores stores,
      SheetFacts facts,
      Yardstick yardstick) {
    this(heading, brief, plan, waiting, stores, facts, yardstick, List.of());
  }

  /** The same with the answer to what overtime would buy. */
  public WeekReport with(Overtime answer) {
    return new WeekReport(heading, brief, plan, waiting, stores, facts, yardstick, stops, answer);
  }

  /** A report that knows nothing beyond the brief and the plan. */
  public static WeekReport bare(Brief brief, Plan plan) {
    return new WeekReport(
        Heading.plain(brief.name()),
        brief,
        plan,
        Waiting.NOBODY,
        Stores.EMPTY,
        SheetFacts.EMPTY,
        Yardstick.EMPTY);
  }
}
