package spangle.desk;

import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.json.Gate;
import spangle.plan.json.PlanFile;
import spangle.report.WeekReport;
import spangle.report.week.LoadPlace;
import spangle.report.week.WeekIndex;

/**
 * What becomes of one part of a job in a plan: ordered = planned + left out + held.
 *
 * @param jobId the order
 * @param partId the part
 * @param label the part in words
 * @param dueMin when its last piece is wanted
 * @param planned pieces the plan finishes
 * @param endMin when the last of them is finished; empty where none is
 * @param leftOut pieces that do not fit into the week
 * @param why why, in words; empty where all fit
 * @param held pieces behind a shut gate
 */
public record PartFate(
    String jobId,
    String partId,
    String label,
    int dueMin,
    int planned,
    OptionalInt endMin,
    int leftOut,
    String why,
    int held) {

  /** All parts of a plan by job and part. */
  static Map<String, PartFate> of(PlanFile file) {
    Map<String, PartFate> fates = new TreeMap<>();
    Map<String, Lot> lots = new TreeMap<>();
    file.brief().lots().forEach(lot -> lots.put(lot.id(), lot));
    WeekIndex index = new WeekIndex(WeekReport.bare(file.brief(), file.plan()));
    for (LoadPlace place : index.loads()) {
      for (Lot lot : place.lots()) {
        if (lot.lastLeg()) {
          add(fates, lot, lot.pieces(), OptionalInt.of(place.endMin()), 0, "");
        }
      }
    }
    for (LeftOut left : file.plan().leftOut()) {
      Lot lot = lots.get(left.lotId());
      if (lot != null && lot.lastLeg()) {
        add(
            fates,
            lot,
            0,
            OptionalInt.empty(),
            lot.pieces(),
            firstReason(file, lot, left) + earliest(left));
      }
    }
    file.gates().stream().filter(gate -> !gate.open()).forEach(gate -> hold(fates, gate));
    return fates;
  }

  /** When it can be had, as far as that is known. */
  static String earliest(LeftOut left) {
    return left.earliestMin().isEmpty()
        ? ""
        : "; earliest " + DayWords.of(left.earliestMin().getAsInt());
  }

  /** A later leg is left out because of an earlier one: the first of them has the reason. */
  private static String firstReason(PlanFile file, Lot lot, LeftOut left) {
    String why = left.reason();
    Lot at = lot;
    while (at.after().isPresent()) {
      String before = at.after().get().lotId();
      why =
          file.plan().leftOut().stream()
              .filter(l -> l.lotId().equals(before))
              .map(LeftOut::reason)
              .findFirst()
              .orElse(why);
      at =
          file.brief().lots().stream()
              .filter(l -> l.id().equals(before))
              .findFirst()
              .orElseThrow(() -> new IllegalArgumentException("no lot " + before));
    }
    return why;
  }

  private static void add(
      Map<String, PartFate> fates, Lot lot, int planned, OptionalInt end, int leftOut, String why) {
    PartFate one =
        new PartFate(
            lot.jobId(), lot.partId(), lot.label(), lot.dueMin(), planned, end, leftOut, why, 0);
    fates.merge(spangle.desk.WeekIndex.key(lot.jobId(), lot.partId()), one, PartFate::plus);
  }

  private static void hold(Map<String, PartFate> fates, Gate gate) {
    fates.putIfAbsent(
        spangle.desk.WeekIndex.key(gate.jobId(), gate.partId()),
        new PartFate(
            gate.jobId(),
            gate.partId(),
            gate.partId(),
            0,
            0,
            OptionalInt.empty(),
            0,
            gate.words(),
            gate.pieces()));
  }

  private PartFate plus(PartFate more) {
    OptionalInt last =
        endMin.isPresent() && more.endMin.isPresent()
            ? OptionalInt.of(Math.max(endMin.getAsInt(), more.endMin.getAsInt()))
            : endMin.isPresent() ? endMin : more.endMin;
    return new PartFate(
        jobId,
        partId,
        label,
        Math.max(dueMin, more.dueMin),
        planned + more.planned,
        last,
        leftOut + more.leftOut,
        why.isEmpty() ? more.why : why,
        held + more.held);
  }

  /** Whether any piece is finished late or not in this week at all. */
  public boolean late() {
    return leftOut > 0 || (endMin.isPresent() && endMin.getAsInt() > dueMin);
  }

  /** Job and part in words. */
  public String name() {
    return jobId + " " + label;
  }

  /** When it is finished, in words. */
  String doneWords() {
    if (held > 0 && planned == 0) {
      return "held: " + why;
    }
    if (endMin.isEmpty()) {
      return "not in this week: " + why;
    }
    String done = "done " + DayWords.of(endMin.getAsInt());
    return leftOut == 0
        ? done
        : planned + " of " + (planned + leftOut) + " pieces " + done + ", the rest: " + why;
  }
}
