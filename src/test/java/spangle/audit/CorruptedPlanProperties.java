package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.LeftOut;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;

/** A good plan, damaged in one place: the audit must object, whatever the place. */
class CorruptedPlanProperties {
  private static final Brief BRIEF = DuplexWeek.brief();
  private static final Plan GOOD = DuplexWeek.plan(BRIEF);

  /** One way to damage a plan: in which batch, load, visit or piece is drawn. */
  private enum Damage {
    LOT_LOST,
    LOT_TWICE,
    LOT_RENAMED,
    LOAD_LOST,
    BATCH_LOST,
    BATCH_SOONER,
    BATCH_SHORTER,
    BATCH_TOO_LONG,
    SETTING_CHANGED,
    MACHINE_UNKNOWN,
    CARRIER_SWAPPED,
    CARRIER_NUMBER,
    VISIT_LOST,
    VISIT_SOONER,
    VISIT_SHORTER,
    VISIT_PLACE,
    VISIT_TWICE,
    PATTERN_LOST,
    PIECE_LOST,
    PIECE_TWICE,
    PIECE_MOVED,
    PIECE_SIZED,
    REASON_LOST,
    FIGURE_CHANGED
  }

  @Provide
  Arbitrary<Damage> damages() {
    return Arbitraries.of(Damage.class);
  }

  @Example
  void theWeekIsGoodToBeginWith() {
    assertThat(Audit.of(BRIEF, GOOD)).isEmpty();
  }

  @Property(tries = 400)
  void theAuditObjects(
      @ForAll("damages") Damage damage,
      @ForAll @IntRange(min = 0, max = 999) int where,
      @ForAll @IntRange(min = 1, max = 60) int howMuch) {
    Plan bad = damaged(damage, where, howMuch);
    assertThat(bad).isNotEqualTo(GOOD);
    List<Finding> findings = Audit.of(BRIEF, bad);
    assertThat(findings).as("%s at %d by %d", damage, where, howMuch).isNotEmpty();
    if (damage != Damage.FIGURE_CHANGED) {
      // Figures counted anew hide nothing: it is the rules that object, not the sums.
      assertThat(Audit.of(BRIEF, Audited.counted(BRIEF, bad)))
          .as("%s at %d by %d, figures counted anew", damage, where, howMuch)
          .isNotEmpty();
    }
  }

  private static Plan damaged(Damage damage, int where, int n) {
    int b = where % GOOD.batches().size();
    PlannedBatch batch = GOOD.batches().get(b);
    PlannedLoad load = batch.loads().get(0);
    int v = where % load.visits().size();
    PlannedVisit visit = load.visits().get(v);
    List<HungPiece> pieces = load.pattern().orElseThrow().pieces();
    int p = where % pieces.size();
    HungPiece piece = pieces.get(p);
    return switch (damage) {
      case LOT_LOST -> load(b, l -> l.carrying(l.lotIds().subList(1, l.lotIds().size())));
      case LOT_TWICE -> load(b, l -> l.carrying(plus(l.lotIds(), l.lotIds().get(0))));
      case LOT_RENAMED -> load(b, l -> l.carrying(List.of("lot " + n)));
      case LOAD_LOST -> batch(b, x -> x.with(List.of()));
      case BATCH_LOST -> batches(without(GOOD.batches(), b));
      case BATCH_SOONER -> batch(b, x -> times(x, x.startMin() - n, x.endMin() - n));
      case BATCH_SHORTER -> batch(b, x -> times(x, x.startMin(), x.endMin() - n));
      case BATCH_TOO_LONG -> batch(b, x -> times(x, x.startMin(), x.endMin() + n));
      case SETTING_CHANGED -> batch(b, x -> setting(x, x.setting() + n));
      case MACHINE_UNKNOWN -> batch(b, x -> machine(x, "oven-" + (n + 2)));
      case CARRIER_SWAPPED -> load(b, l -> carrier(l, other(l.carrierId()), 1));
      case CARRIER_NUMBER -> load(b, l -> carrier(l, l.carrierId(), n > 30 ? 2 + n : -n));
      case VISIT_LOST -> load(b, l -> l.visiting(without(l.visits(), v)));
      case VISIT_SOONER -> load(b, l -> l.visiting(set(l.visits(), v, shift(visit, -n, -n))));
      case VISIT_SHORTER -> load(b, l -> l.visiting(set(l.visits(), v, shift(visit, 0, -n))));
      case VISIT_PLACE -> load(b, l -> l.visiting(set(l.visits(), v, place(visit, 2 + n))));
      case VISIT_TWICE -> load(b, l -> l.visiting(plus(l.visits(), visit)));
      case PATTERN_LOST -> load(b, l -> pattern(l, List.of()));
      case PIECE_LOST -> load(b, l -> pattern(l, without(pieces, p)));
      case PIECE_TWICE -> load(b, l -> pattern(l, plus(pieces, piece)));
      case PIECE_MOVED -> load(b, l -> pattern(l, set(pieces, p, moved(piece, 0, n + 0.5))));
      case PIECE_SIZED -> load(b, l -> pattern(l, set(pieces, p, sized(piece, n))));
      case REASON_LOST ->
          new Plan(
              GOOD.batches(),
              List.of(new LeftOut("E", "", "", GOOD.leftOut().get(0).earliestMin())),
              GOOD.figures(),
              GOOD.solve());
      case FIGURE_CHANGED ->
          new Plan(
              GOOD.batches(),
              GOOD.leftOut(),
              Figures.of(new PlanView(BRIEF, batches(without(GOOD.batches(), b)))),
              GOOD.solve());
    };
  }

  private static String other(String carrierId) {
    return carrierId.equals("rack") ? "beam" : "rack";
  }

  private static Plan batches(List<PlannedBatch> batches) {
    return new Plan(batches, GOOD.leftOut(), GOOD.figures(), GOOD.solve());
  }

  private static Plan batch(int b, UnaryOperator<PlannedBatch> change) {
    return batches(set(GOOD.batches(), b, change.apply(GOOD.batches().get(b))));
  }

  private static Plan load(int b, UnaryOperator<PlannedLoad> change) {
    return batch(b, x -> x.with(set(x.loads(), 0, change.apply(x.loads().get(0)))));
  }

  private static PlannedBatch times(PlannedBatch x, int start, int end) {
    return new PlannedBatch(
        x.id(), x.lineId(), x.machineId(), x.setting(), start, start, end, x.loads());
  }

  private static PlannedBatch setting(PlannedBatch x, int setting) {
    return new PlannedBatch(
        x.id(),
        x.lineId(),
        x.machineId(),
        setting,
        x.setupStartMin(),
        x.startMin(),
        x.endMin(),
        x.loads());
  }

  private static PlannedBatch machine(PlannedBatch x, String machine) {
    return new PlannedBatch(
        x.id(),
        x.lineId(),
        machine,
        x.setting(),
        x.setupStartMin(),
        x.startMin(),
        x.endMin(),
        x.loads());
  }

  private static PlannedLoad carrier(PlannedLoad l, String carrier, int number) {
    return new PlannedLoad(l.id(), carrier, number, l.lotIds(), l.visits(), l.pattern());
  }

  private static PlannedLoad pattern(PlannedLoad l, List<HungPiece> pieces) {
    return new PlannedLoad(
        l.id(),
        l.carrierId(),
        l.carrierNumber(),
        l.lotIds(),
        l.visits(),
        pieces.isEmpty() ? Optional.empty() : Optional.of(new HangPattern(pieces)));
  }

  private static PlannedVisit shift(PlannedVisit x, int start, int end) {
    return new PlannedVisit(
        x.stationId(),
        x.place(),
        x.setupStartMin() + start,
        x.startMin() + start,
        x.endMin() + end);
  }

  private static PlannedVisit place(PlannedVisit x, int place) {
    return new PlannedVisit(x.stationId(), place, x.setupStartMin(), x.startMin(), x.endMin());
  }

  private static HungPiece moved(HungPiece x, double acrossMm, double downMm) {
    return new HungPiece(
        x.key(),
        x.face(),
        x.xMm() + acrossMm,
        x.yMm() + downMm,
        x.widthMm(),
        x.heightMm(),
        x.turned());
  }

  private static HungPiece sized(HungPiece x, double lessMm) {
    return new HungPiece(
        x.key(), x.face(), x.xMm(), x.yMm(), x.widthMm() - lessMm, x.heightMm(), x.turned());
  }

  private static <T> List<T> without(List<T> list, int at) {
    List<T> copy = new ArrayList<>(list);
    copy.remove(at);
    return copy;
  }

  private static <T> List<T> set(List<T> list, int at, T value) {
    List<T> copy = new ArrayList<>(list);
    copy.set(at, value);
    return copy;
  }

  private static <T> List<T> plus(List<T> list, T value) {
    List<T> copy = new ArrayList<>(list);
    copy.add(value);
    return copy;
  }
}
