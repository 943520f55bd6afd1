package spangle.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spangle.plan.CarrierRun;
import spangle.report.week.WeekIndex;

/** Where each rack, cart, beam and basket is, and when it is away to be stripped. */
public final class CarrierRows {
  private CarrierRows() {}

  /**
   * A kind of carrier.
   *
   * @param name in words, with its line
   * @param most how many are away at once at most, of how many, and when
   * @param rows those that carry something
   */
  public record Kind(String name, String most, List<Row> rows) {
    /** Copies the list. */
    public Kind {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One numbered carrier.
   *
   * @param number of the carrier
   * @param runs its loads and stripping in order
   */
  public record Row(int number, List<String> runs) {
    /** Copies the list. */
    public Row {
      runs = List.copyOf(runs);
    }
  }

  static List<Kind> of(WeekIndex index) {
    Map<String, List<CarrierRun>> kinds = new LinkedHashMap<>();
    for (CarrierRun run : CarrierRun.of(index.report().brief(), index.report().plan())) {
      kinds.computeIfAbsent(run.carrier().id(), k -> new ArrayList<>()).add(run);
    }
    return kinds.values().stream().map(runs -> kind(index, runs)).toList();
  }

  private static Kind kind(WeekIndex index, List<CarrierRun> runs) {
    Map<Integer, List<String>> rows = new LinkedHashMap<>();
    for (CarrierRun run : runs) {
      rows.computeIfAbsent(run.number(), n -> new ArrayList<>()).add(words(index, run));
    }
    CarrierRun first = runs.get(0);
    CarrierRun.Most most = CarrierRun.most(runs);
    boolean strips = first.carrier().stripAfterCycles() > 0;
    return new Kind(
        first.carrier().name() + line(index, first.carrier().lineId()),
        "at most "
            + most.count()
            + " of "
            + first.carrier().owned()
            + (strips ? " loaded or being stripped at once, " : " loaded at once, ")
            + index.time().at(most.atMin())
            + (strips ? "; stripped after " + cycles(first.carrier().stripAfterCycles()) : ""),
        rows.entrySet().stream().map(e -> new Row(e.getKey(), e.getValue())).toList());
  }

  /** The same kind may run on two lines. */
  private static String line(WeekIndex index, String id) {
    return index.report().brief().lines().stream()
        .filter(l -> l.id().equals(id))
        .map(l -> ", " + l.name())
        .findFirst()
        .orElse("");
  }

  private static String cycles(int count) {
    return count == 1 ? "every load" : count + " loads";
  }

  private static String words(WeekIndex index, CarrierRun run) {
    return run.loadId()
        + " "
        + index.time().at(run.fromMin())
        + " to "
        + index.time().at(run.untilMin())
        + (run.stripped() ? ", then stripped, back " + index.time().at(run.backMin()) : "");
  }
}
