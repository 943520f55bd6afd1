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
 * @param earliestMin when the last of those left out can be had; empty where none has a date
 * @param undated pieces left out of which nobody can say when
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
    OptionalInt earliestMin,
    int undated,
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
          add(fates, planned(lot, place.endMin()));
        }
      }
    }
    for (LeftOut left : file.plan().leftOut()) {
      Lot lot = lots.get(left.lotId());
      if (lot != null && lot.lastLeg()) {
        add(fates, leftOut(lot, firstReason(file, lot, left), left.earliestMin()));
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

  private static void add(Map<String, PartFate> fates, PartFate one) {
    fates.merge(spangle.desk.WeekIndex.key(one.jobId, one.partId), one, PartFate::plus);
  }

  private static PartFate planned(Lot lot, int endMin) {
    return new PartFate(
        lot.jobId(),
        lot.partId(),
        lot.label(),
        lot.dueMin(),
        lot.pieces(),
        OptionalInt.of(endMin),
        0,
        "",
        OptionalInt.empty(),
        0,
        0);
  }

  private static PartFate leftOut(Lot lot, String why, OptionalInt earliestMin) {
    return new PartFate(
        lot.jobId(),
        lot.partId(),
        lot.label(),
        lot.dueMin(),
        0,
        OptionalInt.empty(),
        lot.pieces(),
        why,
        earliestMin,
        earliestMin.isEmpty() ? lot.pieces() : 0,
        0);
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
            OptionalInt.empty(),
            0,
            gate.pieces()));
  }

  private PartFate plus(PartFate more) {
    return new PartFate(
        jobId,
        partId,
        label,
        Math.max(dueMin, more.dueMin),
        planned + more.planned,
        later(endMin, more.endMin),
        leftOut + more.leftOut,
        why.isEmpty() ? more.why : why,
        later(earliestMin, more.earliestMin),
        undated + more.undated,
        held + more.held);
  }

  private static OptionalInt later(OptionalInt a, OptionalInt b) {
    return a.isPresent() && b.isPresent()
        ? OptionalInt.of(Math.max(a.getAsInt(), b.getAsInt()))
        : a.isPresent() ? a : b;
  }

  /** Whether any piece is finished late or not in this week at all. */
  public boolean late() {
    return leftOut > 0 || (endMin.isPresent() && endMin.getAsInt() > dueMin);
  }

  /** Job and part in words. */
  public String name() {
    return jobId + " " + label;
  }

  /** All pieces of which this plan says something. */
  private int pieces() {
    return planned + leftOut;
  }

  /** When its last piece is finished, or how many are not in the week and why. */
  String doneWords() {
    if (held > 0 && planned == 0) {
      return "held: " + why;
    }
    if (leftOut == 0) {
      return "done " + DayWords.of(endMin.orElse(0));
    }
    return leftOutWords() + ": " + why + earliestWords();
  }

  /** The same without the reason. */
  String shortWords() {
    if (held > 0 && planned == 0) {
      return "held";
    }
    return leftOut == 0 ? "done " + DayWords.of(endMin.orElse(0)) : leftOutWords();
  }

  private String leftOutWords() {
    return planned == 0
        ? "not in this week"
        : leftOut + " of " + pieces() + " pieces not in this week";
  }

  /** When the last of them can be had, as far as that is known. */
  private String earliestWords() {
    if (earliestMin.isEmpty()) {
      return "";
    }
    return "; earliest "
        + DayWords.of(earliestMin.getAsInt())
        + (undated == 0 ? "" : " but for " + undated + " of which nobody can say");
  }
}
