package spangle.intake.event;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.week.GateRecord;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** Works events into a week. */
public final class Happenings {
  private final WeekInput input;
  private final List<Event> events;
  private final int atMin;

  private Happenings(WeekInput input, List<Event> events, int atMin) {
    this.input = input;
    this.events = events;
    this.atMin = atMin;
  }

  /**
   * The week at a minute.
   *
   * @param input as read
   * @param events those that count, in order of time
   * @param atMin the minute
   */
  public static Happened of(WeekInput input, List<Event> events, int atMin) {
    return new Happenings(input, List.copyOf(events), atMin).made();
  }

  private Happened made() {
    Map<Happened.PartKey, Integer> missing = new HashMap<>();
    Set<Happened.PartKey> cancelled = new LinkedHashSet<>();
    List<Job> jobs = new ArrayList<>();
    for (Job job : input.jobs()) {
      List<PartLine> parts = new ArrayList<>();
      for (PartLine line : job.parts()) {
        List<Event> own =
            events.stream()
                .filter(e -> !e.job().isEmpty() && e.concerns(job.id(), line.id()))
                .toList();
        Happened.PartKey key = new Happened.PartKey(job.id(), line.id());
        PartNews news = new PartNews(line, own, atMin);
        parts.add(news.line());
        if (news.missing() > 0) {
          missing.put(key, news.missing());
        }
        if (own.stream().anyMatch(e -> e.kind() == EventKind.CANCELLED)) {
          cancelled.add(key);
        }
      }
      jobs.add(new Job(job.id(), job.customer(), parts));
    }
    WeekInput now =
        new WeekInput(
            input.name(),
            ShopNews.shop(input.shop(), events, atMin),
            StockNews.catalogue(input.catalogue(), events),
            jobs,
            input.kits(),
            gates(),
            input.events(),
            problems(),
            input.rows(),
            input.digests(),
            input.overlay());
    return new Happened(now, missing, cancelled, reworks());
  }

  private List<GateRecord> gates() {
    List<GateRecord> gates = new ArrayList<>(input.gates());
    for (Event event : events) {
      if (event.kind() == EventKind.GATE_OPENED) {
        GateRecord.Gate gate =
            GateRecord.Gate.valueOf(event.gate().toUpperCase(Locale.ROOT).replace('-', '_'));
        gates.add(
            new GateRecord(
                gate,
                event.job(),
                event.part(),
                event.openedBy(),
                "event " + event.number(),
                event.note()));
      }
    }
    return gates;
  }

  /** A certificate answers the question for one. */
  private List<Problem> problems() {
    return input.problems().stream()
        .filter(
            p ->
                p.code() != ProblemCode.STEEL_UNKNOWN
                    || events.stream()
                        .noneMatch(
                            e ->
                                e.kind() == EventKind.CERTIFICATE && e.concerns(p.job(), p.part())))
        .toList();
  }

  private List<Happened.Rework> reworks() {
    return events.stream()
        .filter(e -> e.kind() == EventKind.REJECTED || e.kind() == EventKind.STRIPPED)
        .map(
            e ->
                new Happened.Rework(
                    new Happened.PartKey(e.job(), e.part()),
                    e.number(),
                    e.figures().count().orElse(0),
                    e.atMin(),
                    e.kind() == EventKind.STRIPPED ? 0 : e.coats()))
        .toList();
  }
}
