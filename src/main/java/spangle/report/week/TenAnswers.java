package spangle.report.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.FinishKind;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.report.Change;
import spangle.report.Danger;
import spangle.report.FitNote;
import spangle.report.LotNote;
import spangle.report.PurchaseLine;

/** The ten questions a shop asks of a week, answered. */
public final class TenAnswers {
  private final WeekIndex index;
  private final WeekTime time;
  private final List<Answer> answers = new ArrayList<>();

  private TenAnswers(WeekIndex index) {
    this.index = index;
    time = index.time();
  }

  /** The answers, in order. */
  public static List<Answer> of(WeekIndex index) {
    TenAnswers ten = new TenAnswers(index);
    ten.nextLoads();
    ten.ovens();
    ten.kettleFit();
    ten.vents();
    ten.order();
    ten.kits();
    ten.late();
    ten.leftOut();
    ten.changes();
    ten.blocked();
    return List.copyOf(ten.answers);
  }

  private void add(
      String topic, String question, String answer, List<String> details, boolean alarm) {
    answers.add(new Answer(answers.size() + 1, topic, question, answer, details, alarm));
  }

  private void nextLoads() {
    List<String> details = new ArrayList<>();
    List<String> heads = new ArrayList<>();
    for (LineSpec line : index.report().brief().lines()) {
      next(line)
          .ifPresent(
              place -> {
                heads.add(place.id() + " " + time.at(place.startMin()));
                details.add(
                    place.id()
                        + " on "
                        + place.carrier().name()
                        + " "
                        + place.load().carrierNumber()
                        + ": "
                        + index.colour(place.finish())
                        + ", "
                        + contents(place));
              });
    }
    add(
        "next load",
        "Which load is next?",
        heads.isEmpty() ? "nothing is left to hang" : String.join("; ", heads),
        details,
        false);
  }

  private Optional<LoadPlace> next(LineSpec line) {
    return index.loads(line).stream().filter(p -> p.startMin() >= index.nowMin()).findFirst();
  }

  private static String contents(LoadPlace place) {
    List<String> parts = place.lots().stream().map(l -> l.pieces() + " x " + l.label()).toList();
    return parts.size() <= 3
        ? String.join(", ", parts)
        : String.join(", ", parts.subList(0, 2)) + " and " + (parts.size() - 2) + " more";
  }

  private void ovens() {
    List<String> heads = new ArrayList<>();
    List<String> details = new ArrayList<>();
    for (LineSpec line : index.report().brief().lines()) {
      if (line.kind() == LineKind.ZINC || line.kind() == LineKind.OUTSIDE) {
        continue;
      }
      for (MachineSpec machine : line.machines()) {
        List<LoadPlace> mine =
            index.loads(line).stream()
                .filter(p -> p.machine().id().equals(machine.id()))
                .filter(p -> p.batch().endMin() > index.nowMin())
                .filter(p -> !index.report().brief().isBeyond(p.batch().startMin()))
                .sorted((a, b) -> Integer.compare(a.batch().startMin(), b.batch().startMin()))
                .toList();
        if (mine.isEmpty()) {
          continue;
        }
        LoadPlace first = mine.get(0);
        heads.add(machine.name() + ": " + first.setting());
        mine.stream()
            .filter(p -> p.batch().setting() != first.batch().setting())
            .findFirst()
            .ifPresentOrElse(
                p ->
                    details.add(
                        machine.name()
                            + " goes to "
                            + p.setting()
                            + " "
                            + time.at(p.batch().setupStartMin())),
                () -> details.add(machine.name() + " stays at " + first.setting()));
      }
    }
    add("oven", "Which oven setting?", orElse(heads, "no oven work"), details, false);
  }

  private void kettleFit() {
    List<FitNote> fits = index.report().facts().fits();
    List<String> heads = new ArrayList<>();
    for (String verdict : List.of("straight", "tilted", "two dips", "no")) {
      long count = fits.stream().filter(f -> f.verdict().replace('-', ' ').equals(verdict)).count();
      if (count > 0) {
        heads.add(count + " " + (verdict.equals("no") ? "does not fit" : verdict));
      }
    }
    List<String> details =
        fits.stream()
            .filter(f -> !f.verdict().equals("straight"))
            .map(f -> f.jobId() + " " + f.partName() + ": " + f.words())
            .toList();
    boolean alarm = fits.stream().anyMatch(f -> f.verdict().equals("no"));
    add(
        "kettle fit",
        "Does it fit the kettle, and how?",
        orElse(heads, "nothing large to try"),
        details,
        alarm);
  }

  private void vents() {
    List<String> loads =
        index.loads().stream()
            .filter(p -> p.lots().stream().anyMatch(this::needsVentCheck))
            .map(LoadPlace::id)
            .toList();
    List<String> details =
        index.report().waiting().held().stream()
            .filter(h -> h.danger() == Danger.PEOPLE)
            .map(h -> h.jobId() + " " + h.partName() + ": " + h.words())
            .toList();
    String head =
        loads.isEmpty()
            ? "no hollow part is planned"
            : "two look at " + few(loads) + " before the zinc";
    if (!details.isEmpty()) {
      head += "; " + details.size() + " held";
    }
    add("vent holes", "Where must vent holes be seen?", head, details, !details.isEmpty());
  }

  /** Without a note nobody knows whether it is hollow: then it is checked. */
  private boolean needsVentCheck(Lot lot) {
    return lot.finish().kind() == FinishKind.ZINC
        && index.note(lot).flatMap(LotNote::zinc).map(LotNote.ZincNote::hollow).orElse(true);
  }

  private void order() {
    List<PurchaseLine> shorts =
        index.report().stores().purchases().stream().filter(p -> p.packs() > 0).toList();
    List<String> details =
        shorts.stream()
            .map(
                p ->
                    p.item()
                        + ": "
                        + p.packs()
                        + " x "
                        + index.say().number(p.packSize(), 2)
                        + " "
                        + p.unit()
                        + p.latestOrder().map(this::orderDay).orElse(""))
            .toList();
    String first =
        shorts.stream()
            .flatMap(p -> p.latestOrder().stream())
            .min(LocalDate::compareTo)
            .map(
                d ->
                    d.isBefore(index.report().brief().monday())
                        ? ", at once"
                        : ", first by " + WeekTime.date(d))
            .orElse("");
    add(
        "to order",
        "What to order, by when?",
        shorts.isEmpty()
            ? "nothing: stock covers the week"
            : Say.count(shorts.size(), "item") + first,
        details,
        !shorts.isEmpty());
  }

  private String orderDay(LocalDate day) {
    boolean past = day.isBefore(index.report().brief().monday());
    return past
        ? ", order at once: the last day was " + WeekTime.date(day)
        : ", order by " + WeekTime.date(day);
  }

  private void kits() {
    List<KitStatus> kits = KitBoard.of(index);
    List<String> heads = new ArrayList<>();
    for (KitStatus.State state : KitStatus.State.values()) {
      long count = kits.stream().filter(k -> k.state() == state).count();
      if (count > 0) {
        heads.add(count + " " + state.words());
      }
    }
    List<String> details =
        kits.stream()
            .map(
                k ->
                    k.kit().name()
                        + ": "
                        + (k.completeMin().isPresent()
                            ? k.state() == KitStatus.State.COMPLETE
                                ? "complete"
                                : "complete " + time.at(k.completeMin().getAsInt())
                            : k.setsPlanned() + " of " + k.kit().sets() + ", " + k.blocker()))
            .toList();
    boolean alarm =
        kits.stream()
            .anyMatch(
                k -> k.state() == KitStatus.State.LATE || k.state() == KitStatus.State.BLOCKED);
    add("kits", "Which kits are complete?", orElse(heads, "no kits this week"), details, alarm);
  }

  private void late() {
    List<LateWork> late = LateWork.of(index);
    List<String> details =
        late.stream()
            .map(
                l ->
                    l.jobId()
                        + " "
                        + l.label()
                        + ": "
                        + index.ends(l.endMin())
                        + " for "
                        + time.due(l.dueMin())
                        + l.cause(index).map(c -> ", held by " + c).orElse("")
                        + index.reason(l.jobId()).map(r -> ". Of the same job " + r).orElse(""))
            .toList();
    long jobs = late.stream().map(LateWork::jobId).distinct().count();
    boolean fullWeek = !index.report().plan().leftOut().isEmpty();
    add(
        "late",
        "What is late, and why?",
        jobs == 0 ? "nothing" : Say.count(jobs, "job") + (fullWeek ? "" : overtimeHead()),
        fullWeek ? details : withOvertime(details),
        jobs > 0);
  }

  private void leftOut() {
    List<WaitingPoint> left =
        WaitingList.of(index).stream().filter(p -> p.kind() == WaitingPoint.Kind.LEFT_OUT).toList();
    add(
        "left out",
        "What does not go into this week?",
        left.isEmpty()
            ? "everything goes in"
            : Say.count(index.leftOutParts(), "part") + overtimeHead(),
        left.isEmpty() ? List.of() : withOvertime(left.stream().map(TenAnswers::inWords).toList()),
        !left.isEmpty());
  }

  private OvertimeWords overtime() {
    return new OvertimeWords(index.report().overtime(), time);
  }

  private String overtimeHead() {
    String head = overtime().head();
    return head.isEmpty() ? "" : "; " + head;
  }

  private List<String> withOvertime(List<String> details) {
    List<String> all = new ArrayList<>(details);
    all.addAll(overtime().lines());
    return all;
  }

  private void changes() {
    List<Change> changes = index.report().yardstick().changes();
    add(
        "changes",
        "What changed?",
        changes.isEmpty()
            ? "first plan, version " + index.report().heading().version()
            : Say.count(changes.size(), "change") + " since the last version",
        changes.stream()
            .map(
                c ->
                    c.subject()
                        + " "
                        + c.kind().toLowerCase(Locale.ROOT)
                        + ": "
                        + c.before()
                        + " -> "
                        + c.after()
                        + (c.tell().isEmpty() ? "" : ", tell " + c.tell()))
            .toList(),
        false);
  }

  private void blocked() {
    List<WaitingPoint> points =
        WaitingList.of(index).stream()
            .filter(
                p ->
                    p.kind() == WaitingPoint.Kind.HELD
                        || p.kind() == WaitingPoint.Kind.FINDING
                        || p.kind() == WaitingPoint.Kind.QUESTION)
            .toList();
    long held = points.stream().filter(p -> p.kind() == WaitingPoint.Kind.HELD).count();
    long findings = points.stream().filter(p -> p.kind() == WaitingPoint.Kind.FINDING).count();
    List<String> heads = new ArrayList<>();
    if (findings > 0) {
      heads.add(Say.count(findings, "finding") + " of the audit");
    }
    if (held > 0) {
      heads.add(Say.count(held, "part") + " held");
    }
    if (points.size() > held + findings) {
      heads.add(Say.count(points.size() - held - findings, "question"));
    }
    add(
        "blocked",
        "What is blocked, who must answer?",
        orElse(heads, "nothing"),
        whoAnswers(points),
        !points.isEmpty());
  }

  private static String inWords(WaitingPoint point) {
    return point.jobId() + " " + point.part() + ": " + point.words();
  }

  /** A line for each person who must answer, with everything that waits for them. */
  private static List<String> whoAnswers(List<WaitingPoint> points) {
    Map<String, Map<String, Set<String>>> people = new LinkedHashMap<>();
    for (WaitingPoint point : points) {
      people
          .computeIfAbsent(point.who(), who -> new LinkedHashMap<>())
          .computeIfAbsent(asked(point.kind()), what -> new LinkedHashSet<>())
          .add(point.jobId());
    }
    List<String> lines = new ArrayList<>();
    people.forEach(
        (who, asked) -> {
          List<String> what = new ArrayList<>();
          asked.forEach((word, jobs) -> what.add(word + " " + String.join(", ", jobs)));
          lines.add(who + ": " + String.join("; ", what));
        });
    return lines;
  }

  private static String asked(WaitingPoint.Kind kind) {
    return switch (kind) {
      case FINDING -> "rule broken at";
      case HELD -> "held";
      case QUESTION -> "asked";
      case LEFT_OUT, LATE -> kind.words();
    };
  }

  private static String few(List<String> ids) {
    return ids.size() <= 6
        ? String.join(", ", ids)
        : String.join(", ", ids.subList(0, 3)) + " and " + (ids.size() - 3) + " more";
  }

  private static String orElse(List<String> heads, String otherwise) {
    return heads.isEmpty() ? otherwise : String.join("; ", heads);
  }
}
