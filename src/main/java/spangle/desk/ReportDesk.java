package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.coating.zinc.ZincInspection;
import spangle.estimate.Purchase;
import spangle.estimate.StoreItem;
import spangle.fit.FitAnswer;
import spangle.fit.Verdict;
import spangle.intake.brief.Draws;
import spangle.intake.brief.PartGates;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Severity;
import spangle.intake.week.Coating;
import spangle.part.Material;
import spangle.plan.Finding;
import spangle.plan.FinishKind;
import spangle.plan.Held;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.Plan;
import spangle.report.BatchNote;
import spangle.report.BathLevel;
import spangle.report.Danger;
import spangle.report.FitNote;
import spangle.report.Heading;
import spangle.report.HeldPart;
import spangle.report.JobReason;
import spangle.report.LotNote;
import spangle.report.Overtime;
import spangle.report.PurchaseLine;
import spangle.report.Question;
import spangle.report.SheetFacts;
import spangle.report.Stop;
import spangle.report.Stores;
import spangle.report.Swatch;
import spangle.report.Waiting;
import spangle.report.WeekReport;
import spangle.report.Yardstick;

/** Gathers what the sheets say beyond the brief and the plan. */
final class ReportDesk {
  private final PreparedWeek week;
  private final Plan plan;
  private final List<HeldLoad> stopped;
  private final Draws draws;
  private final WeekIndex index;
  private final Map<String, FitAnswer> fits = new HashMap<>();
  private final Map<String, Optional<LotNote.Drawings>> drawings = new HashMap<>();

  ReportDesk(PreparedWeek week, Plan plan) {
    this(week, plan, List.of());
  }

  /**
   * Sheets of a week in its middle.
   *
   * @param stopped loads that do not go on before a person has decided
   */
  ReportDesk(PreparedWeek week, Plan plan, List<HeldLoad> stopped) {
    this.week = week;
    this.plan = plan;
    this.stopped = List.copyOf(stopped);
    this.draws = new Draws(week.input());
    this.index = new WeekIndex(week.brief(), week.parts());
    for (PartGates gates : week.gates()) {
      gates.fit().ifPresent(a -> fits.put(WeekIndex.key(gates.jobId(), gates.partId()), a));
    }
  }

  WeekReport report(List<Purchase> purchases, List<Finding> findings, Yardstick yardstick) {
    return report(Heading.plain(week.brief().name()), purchases, findings, yardstick);
  }

  WeekReport report(
      Heading heading, List<Purchase> purchases, List<Finding> findings, Yardstick yardstick) {
    return new WeekReport(
        heading,
        week.brief(),
        plan,
        new Waiting(held(), questions(), reasons(), findings),
        new Stores(
            purchases.stream().map(ReportDesk::line).toList(),
            baths(),
            RejectAllowance.of(week),
            swatches()),
        new SheetFacts(
            lotNotes(),
            HeldLoad.marked(new LoadNotes(week, purchases).of(plan), stopped),
            batchNotes(),
            fitNotes(),
            DrawnParts.notes(week.input()),
            cautions()),
        yardstick,
        stops(),
        Overtime.NONE,
        Map.of());
  }

  private List<Stop> stops() {
    int end = week.brief().horizonMin();
    return week.input().shop().maintenance().stream()
        .filter(m -> m.span().startMin() < end)
        .map(
            m ->
                new Stop(
                    m.stationId(),
                    m.span().startMin(),
                    Math.min(m.span().endMin(), end),
                    m.why().isEmpty() ? m.topUp() ? "top-up" : "stop" : m.why()))
        .toList();
  }

  private List<HeldPart> held() {
    List<HeldPart> held = new ArrayList<>(HeldLoad.rows(stopped));
    week.held().stream().map(ReportDesk::held).forEach(held::add);
    return held;
  }

  private static HeldPart held(Held h) {
    return new HeldPart(
        h.jobId(),
        h.partId(),
        h.name(),
        h.pieces(),
        h.gate(),
        h.words() + ". Opens with: " + h.opens(),
        h.whoAnswers(),
        danger(h),
        OptionalInt.of(h.dueMin()));
  }

  private static Danger danger(Held held) {
    return switch (held.danger()) {
      case 0 -> Danger.PEOPLE;
      case 1 -> Danger.WORK;
      case Held.ONLY_A_DATE -> Danger.DATE;
      default -> Danger.FACT;
    };
  }

  private List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    week.input().problems().stream()
        .filter(p -> p.meanwhile() != Meanwhile.GATE_SHUT)
        .map(ReportDesk::question)
        .forEach(questions::add);
    for (PartFacts part : week.parts()) {
      boolean zinc = part.route().equals("zinc") || part.route().equals("duplex");
      if (zinc && part.material() == Material.STEEL) {
        boolean asked = asked(part, ProblemCode.STEEL_UNKNOWN);
        draws.steel(part).questions().stream()
            .filter(q -> !asked)
            .forEach(q -> questions.add(steel(part, q)));
        draws.steel(part).warnings().forEach(w -> questions.add(steel(part, w)));
      }
    }
    return questions;
  }

  private boolean asked(PartFacts part, ProblemCode code) {
    return week.input().problems().stream()
        .anyMatch(
            p ->
                p.code() == code && p.job().equals(part.jobId()) && p.part().equals(part.partId()));
  }

  private static Question steel(PartFacts part, String words) {
    return new Question(
        WeekIndex.key(part.jobId(), part.partId()),
        "steel",
        words,
        "design",
        Danger.WORK,
        OptionalInt.of(part.dueMin()));
  }

  /** Who can answer: counts and dates are not drawn by anybody. */
  private static String asked(ProblemCode code) {
    return switch (code) {
      case ARRIVALS_DO_NOT_ADD_UP -> "bending";
      case KIT_PART_MISSING, KIT_ODD, KIT_SHORT -> "assembly";
      case STOCK_BAD, LOT_OLD -> "stores";
      case DUE_IN_THE_PAST, DUE_ON_A_FREE_DAY, READY_AFTER_DUE -> "sales";
      default -> "design";
    };
  }

  private static Question question(Problem p) {
    String named = p.job().isEmpty() ? p.part() : WeekIndex.key(p.job(), p.part());
    String subject = named.isEmpty() ? p.place().words() : named;
    Danger danger = p.severity() == Severity.DANGER ? Danger.PEOPLE : Danger.FACT;
    return new Question(
        subject,
        p.code().key(),
        p.place().words()
            + ": "
            + p.why()
            + ". Do: "
            + p.remedy()
            + ". Meanwhile "
            + p.meanwhile().words()
            + ".",
        asked(p.code()),
        danger,
        p.dueMin() == Problem.NO_DUE ? OptionalInt.empty() : OptionalInt.of(p.dueMin()));
  }

  /** For each job the first step that is left out, all its lots that wait for the same reason. */
  private List<JobReason> reasons() {
    record Step(String jobId, String label, int leg, String why) {}
    Map<Step, Integer> pieces = new LinkedHashMap<>();
    for (LeftOut left : plan.leftOut()) {
      Lot lot = index.lot(left.lotId());
      pieces.merge(
          new Step(lot.jobId(), lot.label(), lot.leg(), left.reason()), lot.pieces(), Integer::sum);
    }
    return pieces.entrySet().stream()
        .map(
            e ->
                new JobReason(
                    e.getKey().jobId(),
                    e.getValue() + " x " + e.getKey().label() + " left out: " + e.getKey().why()))
        .toList();
  }

  private static PurchaseLine line(Purchase p) {
    String dry =
        p.firstShort()
            .map(
                m ->
                    "the store runs dry on "
                        + DayWords.of(m)
                        + (p.tooLate() ? "; the order is late already" : "")
                        + (p.item().lead().assumed() ? "; " + p.item().lead().words() : ""))
            .orElse("");
    List<String> notes = new ArrayList<>();
    p.item().deliveries().stream()
        .filter(StoreItem.Coming::came)
        .map(d -> came(d, p.item().unit()))
        .forEach(notes::add);
    if (!dry.isEmpty()) {
      notes.add(dry);
    }
    return new PurchaseLine(
        p.item().id(),
        p.item().name(),
        p.item().unit(),
        p.need().low(),
        p.need().likely(),
        p.need().high(),
        p.allowance(),
        p.item().inStore(),
        p.item().onOrder(),
        p.shortBy(),
        p.packs(),
        p.item().pack(),
        p.latestOrder(),
        p.jobs().stream().filter(j -> !j.equals("colour loss")).toList(),
        String.join("; ", notes));
  }

  private static String came(StoreItem.Coming delivery, String unit) {
    return String.format(
        Locale.ROOT, "%.1f %s came %s", delivery.amount(), unit, DayWords.of(delivery.atMin()));
  }

  private List<Swatch> swatches() {
    return week.input()
        .catalogue()
        .coatings()
        .map(c -> new Swatch(c.id(), c.name(), c.id(), c.swatch().replace("#", "")))
        .toList();
  }

  private List<BathLevel> baths() {
    return new BathDesk(week, plan).baths().stream().map(ReportDesk::bath).toList();
  }

  private static BathLevel bath(BathDesk.Bath bath) {
    return new BathLevel(
        bath.machineId(),
        bath.steelKg(),
        bath.zincKg(),
        100 * bath.zincKg() / bath.steelKg(),
        bath.level().dropMm(),
        BathWords.of(bath));
  }

  private List<LotNote> lotNotes() {
    return week.brief().lots().stream().map(this::lotNote).toList();
  }

  private LotNote lotNote(Lot lot) {
    PartFacts part = index.part(lot);
    boolean zinc = lot.finish().kind() == FinishKind.ZINC;
    String film =
        zinc || lot.finish().kind() == FinishKind.DEGAS
            ? ""
            : week.input()
                .catalogue()
                .coating(lot.finish().materialId())
                .map(Coating::film)
                .map(
                    f ->
                        String.format(
                            Locale.ROOT,
                            "%.0f to %.0f um, aim %.0f",
                            f.minUm(),
                            f.maxUm(),
                            f.aimUm()))
                .orElse("");
    return new LotNote(
        lot.id(),
        part.thickestMm(),
        part.hooks() == 1 ? "hook" : "hook, " + part.hooks() + " a piece",
        part.showFace(),
        part.masking(),
        film,
        week.gates(part.jobId(), part.partId()).map(GateList::lines).orElse(List.of()),
        zinc ? Optional.of(zincNote(part)) : Optional.empty());
  }

  private LotNote.ZincNote zincNote(PartFacts part) {
    FitAnswer answer = fits.get(WeekIndex.key(part.jobId(), part.partId()));
    boolean duplex = part.route().equals("duplex");
    return new LotNote.ZincNote(
        answer == null ? "in the basket" : FitWording.attitude(answer),
        answer == null ? 0 : answer.hangDeg(),
        answer == null ? 1 : answer.dips(),
        answer != null && answer.verdict() != Verdict.STRAIGHT,
        draws.steel(part).steelClass().word() + ": " + draws.steel(part).steelClass().look(),
        !duplex,
        part.hollow(),
        CoatLimits.of(draws, part),
        ZincInspection.sample(part.pieces()),
        answer == null ? Optional.empty() : drawings(part));
  }

  /** A part's lots share its drawings. */
  private Optional<LotNote.Drawings> drawings(PartFacts part) {
    return drawings.computeIfAbsent(
        WeekIndex.key(part.jobId(), part.partId()),
        key -> FitSheets.drawings(week.gates(part.jobId(), part.partId()), part));
  }

  /** Parts whose answer is worth a page: all that do not simply go in, and all with holes. */
  private List<FitNote> fitNotes() {
    List<FitNote> notes = new ArrayList<>();
    for (PartFacts part : week.parts()) {
      FitAnswer answer = fits.get(WeekIndex.key(part.jobId(), part.partId()));
      boolean holes =
          week.gates(part.jobId(), part.partId()).map(g -> !g.members().isEmpty()).orElse(false);
      if (answer != null && (answer.verdict() != Verdict.STRAIGHT || holes)) {
        List<String> cautions = new ArrayList<>(answer.cautions());
        cautions.add(FitAnswer.VALIDITY);
        notes.add(
            new FitNote(
                part.jobId(),
                part.partId(),
                part.description(),
                FitWording.verdict(answer.verdict()),
                FitWording.sentence(answer),
                drawings(part).map(LotNote.Drawings::alone).orElse(""),
                cautions));
      }
    }
    return notes;
  }

  private List<BatchNote> batchNotes() {
    return plan.batches().stream()
        .filter(b -> index.first(b).finish().kind() != FinishKind.ZINC)
        .map(b -> new BatchFacts(index, week.input(), week.brief().carriers()).note(b))
        .toList();
  }

  private static List<String> cautions() {
    return List.of(
        "Sealed hollows explode in molten zinc. No vent check signed by two people, no dip.",
        "Acid, molten zinc, hot loads, dust and solvent: local codes and licensed practice decide,"
            + " not this plan.",
        "Powder in the booth air, earth of every hook, oven exhaust and purge: the equipment maker"
            + " and the local code set the limits.");
  }
}
