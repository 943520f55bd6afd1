package spangle.plan.event;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.Scrapped;

/**
 * What a week has come to at one minute.
 *
 * @param atMin the minute
 * @param loads every load of the plan by its number
 * @param pieces every part of every order, by order and part
 * @param down stations out of use at that minute or announced to be
 * @param scrapped pieces beyond saving, report by report
 * @param takenDown loads that hung and were taken off their carriers again, their sheets void
 * @param refused events that cannot be, with the reason; all others count
 */
public record WeekState(
    int atMin,
    SortedMap<String, LoadState> loads,
    List<PieceCount> pieces,
    List<Down> down,
    List<Scrapped> scrapped,
    List<String> takenDown,
    List<Refusal> refused) {

  /** An event that does not count. */
  public record Refusal(Event event, String why) {}

  /** Copies the collections. */
  public WeekState {
    loads = new TreeMap<>(loads);
    pieces = List.copyOf(pieces);
    down = List.copyOf(down);
    scrapped = List.copyOf(scrapped);
    takenDown = List.copyOf(takenDown);
    refused = List.copyOf(refused);
  }

  /**
   * Works out the state from what was reported.
   *
   * @param brief the week the plan was made for
   * @param plan the plan people work by
   * @param log all that was reported
   * @param known number of the last event the plan was made with: what it says of loads by number
   *     was said of the plan before, so it counts here only for loads that were fixed then
   * @param atMin later events do not count
   */
  public static WeekState of(Brief brief, Plan plan, EventLog log, int known, int atMin) {
    return new StateWalk(brief, plan, known).walk(log.until(atMin), atMin);
  }

  /** The state of a load. */
  public Optional<LoadState> load(String id) {
    return Optional.ofNullable(loads.get(id));
  }

  /** The stage of a lot's load; empty for a lot without one. */
  public static Map<String, String> loadOfLot(Plan plan) {
    Map<String, String> loads = new TreeMap<>();
    plan.batches()
        .forEach(b -> b.loads().forEach(l -> l.lotIds().forEach(id -> loads.put(id, l.id()))));
    return loads;
  }
}
