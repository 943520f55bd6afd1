package spangle.report;

import java.util.List;
import java.util.Map;
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
 * @param lateCauses what holds a late part, in words, by job/part; a part may be missing
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
    Overtime overtime,
    Map<String, String> lateCauses) {
  /** Copies the collections. */
  public WeekReport {
    stops = List.copyOf(stops);
    lateCauses = Map.copyOf(lateCauses);
  }

  /** The same with what overtime would buy and what holds the late parts. */
  public WeekReport with(Overtime answer, Map<String, String> causes) {
    return new WeekReport(
        heading, brief, plan, waiting, stores, facts, yardstick, stops, answer, causes);
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
        Yardstick.EMPTY,
        List.of(),
        Overtime.NONE,
        Map.of());
  }
}
