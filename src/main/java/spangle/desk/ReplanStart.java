package spangle.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.brief.Standing;
import spangle.intake.event.Happened;
import spangle.intake.event.Happened.PartKey;
import spangle.intake.event.Happenings;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Event;
import spangle.plan.event.LoadState;
import spangle.plan.event.LotNames;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFile;

/**
 * What a replan starts from: the week after its events, with what cannot move any more in front and
 * the rest of the plan announced: its first day sticks, later days move for a gain.
 *
 * @param week the week as it is now, ready to be planned from the minute on
 * @param earlier batches of the plan so far that may still move
 * @param state how far everything has come
 * @param happened what the events made of the week
 * @param forced by load: why a sheet that is out cannot stay as it is
 * @param reasons by load: what stands against a load nobody has touched
 */
record ReplanStart(
    PreparedWeek week,
    List<PlannedBatch> earlier,
    WeekState state,
    Happened happened,
    Map<String, String> forced,
    Map<String, String> reasons) {
  ReplanStart {
    earlier = List.copyOf(earlier);
    forced = new TreeMap<>(forced);
    reasons = new TreeMap<>(reasons);
  }

  /**
   * Works it out.
   *
   * @param input the week folder as it is now
   * @param kept the plan people worked by until now
   * @param atMin the minute from which something may change
   * @param freezeUntilMin what begins before it stays where nothing stands against it
   */
  static ReplanStart of(WeekInput input, PlanFile kept, int atMin, int freezeUntilMin) {
    Heard heard = Heard.of(kept, input.events(), atMin);
    WeekState state = heard.state();
    List<Event> events = heard.events();
    Happened happened = Happenings.of(input, events, atMin);
    Chains chains = new Chains(kept, state);
    Standing standing =
        new Standing(
            chains.settled,
            chains.open,
            happened.missing(),
            happened.cancelled(),
            happened.reworks(),
            state.scrapped());
    PreparedWeek prepared = BriefMaker.prepare(happened.input(), standing);
    Brief now = BriefChange.lots(prepared.brief(), chains.withLost(prepared.brief().lots()));
    int known = Heard.known(kept, input.events());
    FrozenFront front = new FrozenFront(kept, now, state, events, known, atMin);
    front.freeze(freezeUntilMin);
    List<String> retired = new ArrayList<>(kept.brief().retired());
    retired.addAll(state.takenDown());
    Brief brief = fromNowOn(now, front, retired, atMin);
    PreparedWeek week =
        new PreparedWeek(
            prepared.input(), brief, prepared.parts(), prepared.held(), prepared.gates());
    return new ReplanStart(week, front.open(), state, happened, front.forced(), front.reasons());
  }

  /** Loads that do not go on before a person has decided. */
  List<HeldLoad> stopped(Plan plan) {
    List<HeldLoad> stopped = new ArrayList<>(SuspectLoads.of(state, week.brief(), plan));
    stopped.addAll(StrandedLoads.of(week.brief(), plan, state.atMin()));
    return List.copyOf(stopped);
  }

  /** No station works before the minute, no open lot is ready before it. */
  private static Brief fromNowOn(Brief b, FrozenFront front, List<String> retired, int atMin) {
    Set<String> fixed = front.lots();
    Set<String> known = new HashSet<>();
    b.lots().forEach(l -> known.add(l.id()));
    List<PlannedBatch> announced =
        front.open().stream()
            .filter(p -> p.startMin() >= atMin)
            .filter(p -> p.loads().stream().allMatch(l -> known.containsAll(l.lotIds())))
            .toList();
    return BriefChange.of(b)
        .lines(b.lines().stream().map(l -> line(l, atMin)).toList())
        .lots(
            b.lots().stream()
                .map(l -> fixed.contains(l.id()) ? l : LaterWeek.notBefore(l, atMin))
                .toList())
        .frozen(front.frozen())
        .announced(announced)
        .retired(retired)
        .made();
  }

  private static LineSpec line(LineSpec line, int atMin) {
    return BriefChange.line(
        line, s -> s.during(after(s.calendar(), atMin)), m -> m.during(after(m.calendar(), atMin)));
  }

  private static WorkCalendar after(WorkCalendar calendar, int atMin) {
    return atMin <= 0 ? calendar : calendar.without(new Span(0, atMin));
  }

  /** The lots of the plan so far by part: what is settled and what is open. */
  private static final class Chains {
    final Map<PartKey, List<Standing.Chain>> settled = new LinkedHashMap<>();
    final Map<PartKey, List<Standing.Chain>> open = new LinkedHashMap<>();

    Chains(PlanFile kept, WeekState state) {
      Set<String> fixed = new HashSet<>();
      for (PlannedBatch batch : kept.plan().batches()) {
        for (PlannedLoad load : batch.loads()) {
          if (state.load(load.id()).map(LoadState::stage).filter(s -> s.fixed()).isPresent()) {
            fixed.addAll(load.lotIds());
          }
        }
      }
      Map<String, List<Lot>> byName = new LinkedHashMap<>();
      kept.brief()
          .lots()
          .forEach(l -> byName.computeIfAbsent(LotNames.chain(l), n -> new ArrayList<>()).add(l));
      byName.forEach(
          (name, lots) -> {
            Set<String> own = new HashSet<>();
            lots.stream().map(Lot::id).filter(fixed::contains).forEach(own::add);
            Lot first = lots.get(0);
            PartKey key = new PartKey(first.jobId(), first.partId());
            (own.isEmpty() ? open : settled)
                .computeIfAbsent(key, k -> new ArrayList<>())
                .add(new Standing.Chain(name, LotNames.number(first), lots, own));
          });
    }

    /** With settled lots of parts the job files do not name any more: what hangs, hangs. */
    List<Lot> withLost(List<Lot> lots) {
      Set<String> ids = new HashSet<>();
      lots.forEach(l -> ids.add(l.id()));
      List<Lot> all = new ArrayList<>(lots);
      settled
          .values()
          .forEach(
              chains ->
                  chains.forEach(
                      c -> c.lots().stream().filter(l -> ids.add(l.id())).forEach(all::add)));
      return all;
    }
  }
}
