package spangle.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.StationSpec;
import spangle.plan.clock.Floor;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekEdit;
import spangle.plan.clock.WeekPlan;
import spangle.solve.move.MoveBook;

/**
 * Moves drawn and timed in a second at three sizes, on ovens alone and on whole lines with
 * stations, carriers, legs and kits. With the garbage profiler it tells the memory a move takes;
 * {@link #main} tells what a brief and its plan hold.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class MovesBenchmark {
  private static final int LOTS_A_WEEK = 50;
  private static final int FIVE_DAYS = 5 * 24 * 60;

  /** Number of lots. */
  @Param({"50", "500", "5000"})
  public int lots;

  /** Ovens alone, or whole lines. */
  @Param({"ovens", "lines"})
  public String shop;

  private WeekClock clock;
  private MoveBook book;
  private WeekEdit edit;
  private WeekPlan plan;

  /** A first plan to move in. */
  @Setup
  public void build() {
    Floor floor = Floor.of(brief(shop, lots));
    clock = new WeekClock(floor);
    plan = new Builder(floor, clock).build();
    book = new MoveBook(floor, plan, 1);
    edit = new WeekEdit();
  }

  /** One move drawn, timed, and kept when the plan does not get worse. */
  @Benchmark
  public long move() {
    while (!book.draw(plan, edit)) {
      edit.reset(0);
    }
    clock.attempt(plan, edit);
    boolean better =
        clock.broken() <= plan.broken()
            && clock.left() <= plan.left()
            && clock.weighed() <= plan.weighed();
    if (better) {
      plan = clock.made();
    }
    return clock.weighed();
  }

  private static Brief brief(String shop, int lots) {
    return shop.equals("ovens")
        ? OvenWeek.of(1, lots)
        : weeks(RandomWeek.of(1, lots), Math.max(1, lots / LOTS_A_WEEK));
  }

  /** The same lots over so many weeks, every calendar repeated. */
  private static Brief weeks(Brief brief, int weeks) {
    List<LineSpec> lines = brief.lines().stream().map(line -> weeks(line, weeks)).toList();
    List<Lot> lots = brief.lots().stream().map(lot -> later(lot, weeks)).toList();
    return new Brief(
        brief.name(),
        brief.monday(),
        weeks * FIVE_DAYS,
        lines,
        brief.carriers(),
        lots,
        brief.kits(),
        List.of(),
        brief.goals(),
        brief.frozen(),
        brief.announced(),
        List.of());
  }

  private static LineSpec weeks(LineSpec line, int weeks) {
    List<MachineSpec> machines =
        line.machines().stream()
            .map(
                m ->
                    new MachineSpec(
                        m.id(),
                        m.name(),
                        m.capacityUnits(),
                        m.maxMassKg(),
                        weeks(m.calendar(), weeks),
                        m.initialSetting(),
                        m.turnaroundMin(),
                        m.kgPerHour()))
            .toList();
    return new LineSpec(
        line.id(),
        line.name(),
        line.kind(),
        line.before().stream().map(s -> weeks(s, weeks)).toList(),
        machines,
        line.after().stream().map(s -> weeks(s, weeks)).toList(),
        line.settings(),
        line.settingChange());
  }

  private static StationSpec weeks(StationSpec s, int weeks) {
    return new StationSpec(
        s.id(),
        s.name(),
        s.alike(),
        weeks(s.calendar(), weeks),
        s.setups(),
        s.initialState(),
        s.longestWaitAfterMin());
  }

  private static WorkCalendar weeks(WorkCalendar calendar, int weeks) {
    List<Span> spans = new ArrayList<>();
    for (int week = 0; week < weeks; week++) {
      int from = week * FIVE_DAYS;
      for (Span span : calendar.open()) {
        int end = Math.min(span.endMin(), FIVE_DAYS);
        if (span.startMin() < end) {
          spans.add(new Span(from + span.startMin(), from + end));
        }
      }
    }
    return new WorkCalendar(spans);
  }

  /** Lots of one number, a first and a second leg, stay together. */
  private static Lot later(Lot lot, int weeks) {
    int number = Integer.parseInt(lot.id().substring(1));
    int shift = number % weeks * FIVE_DAYS;
    return new Lot(
        lot.id(),
        lot.jobId(),
        lot.partId(),
        lot.label(),
        lot.pieces(),
        lot.leg(),
        lot.after(),
        lot.lineId(),
        lot.finish(),
        lot.alone(),
        lot.batchGroup(),
        lot.readyMin() + shift,
        lot.dueMin() + shift,
        lot.weight(),
        lot.lastLeg(),
        lot.dwells(),
        lot.machines(),
        lot.carriers(),
        lot.item(),
        lot.visits(),
        lot.areaM2(),
        lot.massKg(),
        lot.materialKg(),
        List.of());
  }

  /** Memory a brief in arrays and its first plan hold, and how long that plan takes to build. */
  public static void main(String[] args) {
    for (String shop : List.of("ovens", "lines")) {
      for (int lots : new int[] {50, 500, 5000}) {
        Brief brief = brief(shop, lots);
        long before = used();
        long start = System.nanoTime();
        Floor floor = Floor.of(brief);
        Optional<WeekPlan> plan = Optional.of(new Builder(floor, new WeekClock(floor)).build());
        double seconds = (System.nanoTime() - start) / 1e9;
        long after = used();
        System.out.printf(
            Locale.ROOT,
            "%s, %d lots: first plan after %.2f s, %.1f MB held, %d of their weight left out%n",
            shop,
            lots,
            seconds,
            (after - before) / 1e6,
            plan.get().left());
      }
    }
  }

  private static long used() {
    Runtime runtime = Runtime.getRuntime();
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
