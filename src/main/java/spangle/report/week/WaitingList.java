package spangle.report.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import spangle.plan.Finding;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.report.Danger;
import spangle.report.HeldPart;
import spangle.report.Question;

/** Everything that waits for a person, the most dangerous first, then by due time. */
public final class WaitingList {
  private static final String SUPERVISOR = "supervisor";

  private final WeekIndex index;

  private WaitingList(WeekIndex index) {
    this.index = index;
  }

  /** The list of a week. */
  public static List<WaitingPoint> of(WeekIndex index) {
    WaitingList list = new WaitingList(index);
    List<WaitingPoint> points = new ArrayList<>();
    index.report().waiting().findings().forEach(f -> points.add(list.finding(f)));
    index.report().waiting().held().forEach(h -> points.add(list.held(h)));
    points.addAll(list.leftOut());
    points.addAll(list.late());
    index.report().waiting().questions().forEach(q -> points.add(list.question(q)));
    points.sort(
        Comparator.comparingInt(WaitingPoint::rank)
            .thenComparingInt(p -> p.dueMin().orElse(Integer.MAX_VALUE))
            .thenComparing(WaitingPoint::kind)
            .thenComparing(WaitingPoint::jobId)
            .thenComparing(WaitingPoint::part));
    return List.copyOf(points);
  }

  private WaitingPoint finding(Finding finding) {
    return new WaitingPoint(
        WaitingPoint.Kind.FINDING,
        "do not use this plan there",
        -1,
        finding.subject(),
        "",
        finding.rule(),
        finding.words(),
        SUPERVISOR,
        OptionalInt.empty());
  }

  private WaitingPoint held(HeldPart held) {
    return new WaitingPoint(
        WaitingPoint.Kind.HELD,
        held.danger().words(),
        held.danger().rank(),
        held.jobId(),
        held.pieces() + " x " + held.partName(),
        held.gate(),
        held.words(),
        held.whoAnswers(),
        held.dueMin());
  }

  /** One row for the lots of a part that are left out for the same reason. */
  private List<WaitingPoint> leftOut() {
    Map<String, List<LeftOut>> alike = new LinkedHashMap<>();
    for (LeftOut left : index.report().plan().leftOut()) {
      String part =
          index.lot(left.lotId()).map(l -> l.jobId() + "\u0000" + l.partId()).orElse(left.lotId());
      alike
          .computeIfAbsent(
              part + "\u0000" + left.code() + "\u0000" + withoutAmount(left),
              k -> new ArrayList<>())
          .add(left);
    }
    return alike.values().stream().map(this::leftOutRow).toList();
  }

  /** What a lot draws differs from lot to lot of a part; the reason behind it does not. */
  private String withoutAmount(LeftOut left) {
    String own = index.lot(left.lotId()).map(Lot::drawWords).orElse("");
    return left.reason().startsWith(own) ? left.reason().substring(own.length()) : left.reason();
  }

  private String reason(List<LeftOut> alike, List<Lot> lots) {
    String rest = withoutAmount(alike.get(0));
    boolean drawn = !rest.equals(alike.get(0).reason());
    return drawn ? Lot.drawWords(lots) + rest : rest;
  }

  private WaitingPoint leftOutRow(List<LeftOut> alike) {
    LeftOut first = alike.get(0);
    List<Lot> lots = alike.stream().flatMap(l -> index.lot(l.lotId()).stream()).toList();
    int pieces = lots.stream().mapToInt(Lot::pieces).sum();
    int earliest = alike.stream().mapToInt(l -> l.earliestMin().orElse(-1)).max().orElse(-1);
    return new WaitingPoint(
        WaitingPoint.Kind.LEFT_OUT,
        Danger.DATE.words(),
        Danger.DATE.rank(),
        lots.isEmpty() ? first.lotId() : lots.get(0).jobId(),
        lots.isEmpty() ? "" : pieces + " x " + lots.get(0).label() + lotCount(lots),
        first.code(),
        earliest < 0
            ? reason(alike, lots) + "; no date can be given yet: " + first.condition()
            : "earliest " + index.time().at(earliest) + "; " + reason(alike, lots),
        SUPERVISOR,
        lots.stream().mapToInt(Lot::dueMin).min());
  }

  private static String lotCount(List<Lot> lots) {
    return lots.size() == 1 ? "" : ", " + lots.size() + " lots";
  }

  private List<WaitingPoint> late() {
    return LateWork.of(index).stream()
        .map(
            late ->
                new WaitingPoint(
                    WaitingPoint.Kind.LATE,
                    Danger.DATE.words(),
                    Danger.DATE.rank(),
                    late.jobId(),
                    late.pieces() + " x " + late.label(),
                    "late",
                    finished(late)
                        + late.cause(index).map(c -> "; held by " + c).orElse("")
                        + index.reason(late.jobId()).map(r -> ". Of the same job " + r).orElse(""),
                    "supervisor tells the customer",
                    OptionalInt.of(late.dueMin())))
        .toList();
  }

  private String finished(LateWork late) {
    return index.ends(late.endMin()).equals(WeekIndex.NOT_THIS_WEEK)
        ? WeekIndex.NOT_THIS_WEEK + ", hangs and waits on " + String.join(", ", late.loads())
        : "finished "
            + index.time().at(late.endMin())
            + ", "
            + WeekTime.stretch(late.endMin() - late.dueMin())
            + " late";
  }

  private WaitingPoint question(Question question) {
    return new WaitingPoint(
        WaitingPoint.Kind.QUESTION,
        question.danger().words(),
        question.danger().rank(),
        question.subject(),
        "",
        question.code(),
        question.words(),
        question.whoAnswers(),
        question.dueMin());
  }
}
