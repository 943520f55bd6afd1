package spangle.report.week;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spangle.report.Overtime;

/** What overtime would buy, in words. */
public final class OvertimeWords {
  private static final int FEW_JOBS = 4;

  private final Overtime overtime;
  private final WeekTime time;

  /**
   * Words for an answer.
   *
   * @param time the week
   */
  public OvertimeWords(Overtime overtime, WeekTime time) {
    this.overtime = overtime;
    this.time = time;
  }

  /** The best offer in a few words, to follow another answer; empty where there is none. */
  public String head() {
    if (overtime.offers().isEmpty()) {
      return "";
    }
    Overtime.Offer best = overtime.offers().get(0);
    String when =
        best.hours().size() == 1
            ? time.at(best.hours().get(0).startMin())
                + "-"
                + time.clock(best.hours().get(0).endMin())
            : "on " + Say.count(days(best), "day");
    return "overtime "
        + when
        + (best.lotsIn() > 0
            ? ": " + best.lotsIn() + " of " + Say.count(overtime.lotsOut(), "lot")
            : ": " + Say.count(best.jobsInTime().size(), "late job") + " in time");
  }

  /** A sentence for each offer, or why there is none; nothing where nothing is late or left out. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    overtime.offers().forEach(offer -> lines.add(offer(offer)));
    switch (overtime.state()) {
      case NOT_NEEDED -> {}
      case NOT_ALLOWED -> {
        boolean couldHelp = overtime.lotsOut() == 0 || overtime.beyondHours() < overtime.lotsOut();
        if (couldHelp) {
          lines.add(
              "Overtime: the shop file allows none from now on, so none was tried (overtime: days,"
                  + " from, to, lines, people in shop.yaml).");
        }
        beyondHours(lines);
      }
      case TOO_MUCH_OUT ->
          lines.add(
              "Overtime: the hours allowed and the lots to put into them are so many that it was not"
                  + " tried; a what-if with extra_days says what a shift more would do.");
      case TRIED -> {
        if (lines.isEmpty()) {
          lines.add(
              "Overtime: "
                  + (overtime.tried() == 1
                      ? "what the shop file allows was tried and brings nothing"
                      : overtime.tried()
                          + " ways to work what the shop file allows were tried; none brings"
                          + " anything")
                  + " in or in time.");
        }
        if (overtime.lotsTried() < overtime.lotsOut() - overtime.beyondHours()) {
          lines.add(
              "Of what is left out the "
                  + Say.count(overtime.lotsTried(), "lot")
                  + " due first were tried.");
        }
        beyondHours(lines);
      }
    }
    return lines;
  }

  private void beyondHours(List<String> lines) {
    if (overtime.beyondHours() > 0) {
      lines.add(
          "No hours help "
              + overtime.beyondHours()
              + " of the "
              + Say.count(overtime.lotsOut(), "lot")
              + " left out: see the reason of each.");
    }
  }

  /** One offer as a sentence. */
  public String offer(Overtime.Offer offer) {
    Map<String, List<String>> when = new LinkedHashMap<>();
    for (Overtime.Hours each : offer.hours()) {
      String who =
          " on "
              + String.join(" and ", each.lines())
              + (each.people() == 0 ? "" : " (" + people(each.people()) + ")");
      when.computeIfAbsent(who, w -> new ArrayList<>()).add(hours(each));
    }
    String worked =
        when.entrySet().stream()
            .map(e -> String.join(", ", e.getValue()) + e.getKey())
            .collect(Collectors.joining("; "));
    List<String> buys = new ArrayList<>();
    if (offer.lotsIn() > 0) {
      List<String> gains = new ArrayList<>();
      offer.gains().forEach(gain -> gains.add(gain(gain)));
      buys.add(
          offer.lotsIn()
              + " of the "
              + Say.count(overtime.lotsOut(), "lot")
              + " left out "
              + (offer.lotsIn() == 1 ? "comes" : "come")
              + " in: "
              + String.join(", ", gains));
    }
    if (!offer.jobsInTime().isEmpty()) {
      List<String> jobs = offer.jobsInTime();
      buys.add(
          (jobs.size() <= FEW_JOBS
                  ? String.join(", ", jobs)
                  : String.join(", ", jobs.subList(0, FEW_JOBS))
                      + " and "
                      + (jobs.size() - FEW_JOBS)
                      + " more")
              + (jobs.size() == 1 ? " is" : " are")
              + " then wholly in time");
    }
    return worked + ": " + String.join(". ", buys) + ".";
  }

  private String gain(Overtime.Gain gain) {
    return gain.jobId()
        + " "
        + gain.pieces()
        + " x "
        + gain.label()
        + " "
        + time.at(gain.endMin())
        + (gain.inTime() ? "" : " (after its date)");
  }

  private String hours(Overtime.Hours hours) {
    return time.at(hours.startMin()) + " to " + time.clock(hours.endMin());
  }

  private static long days(Overtime.Offer offer) {
    return offer.hours().stream().map(h -> WeekTime.dayOf(h.startMin())).distinct().count();
  }

  private static String people(int count) {
    return count == 1 ? "one person" : count + " people";
  }
}
