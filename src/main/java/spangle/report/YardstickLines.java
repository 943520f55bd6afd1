package spangle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spangle.report.week.WeekIndex;

/** What the screen says of how good a plan is. */
final class YardstickLines {
  private static final String HEAT = "kWh a tonne of work";

  /** What the screen says of the yardstick, shorter than the sheet. */
  private static final Map<String, String> SHORT =
      Map.of(
          "oven batches and dips",
          "batches",
          "hours in ovens and kettles",
          "h",
          "colour changes",
          "changes",
          "late lots, weighted",
          "late",
          "lots left out",
          "out",
          "loads",
          "loads",
          HEAT,
          "kWh/t");

  /** The words that change beside a single one. */
  private static final Map<String, String> ONE =
      Map.of("loads", "load", "batches", "batch", "changes", "change");

  private YardstickLines() {}

  /**
   * How near to the floors, and what the usual rule makes of the week, in the order of the figures
   * of the plan itself; nothing where neither is known.
   */
  static List<String> of(WeekIndex index) {
    Yardstick yardstick = index.report().yardstick();
    List<String> lines = new ArrayList<>();
    if (!yardstick.bounds().isEmpty()) {
      lines.add(
          "No plan under: "
              + yardstick.bounds().stream()
                  .filter(bound -> SHORT.containsKey(bound.name()))
                  .map(bound -> amount(index, bound.name(), bound.noPlanFewerThan()))
                  .collect(Collectors.joining(", ")));
    }
    if (!yardstick.comparisons().isEmpty()) {
      lines.add(
          "By hand: "
              + yardstick.comparisons().stream()
                  .filter(each -> SHORT.containsKey(each.name()))
                  .map(each -> amount(index, each.name(), each.byHand()))
                  .collect(Collectors.joining(", ")));
    }
    return lines;
  }

  /** The plan's own heat, led by a comma; empty where it is not known. */
  static String heat(WeekIndex index) {
    return index.report().yardstick().comparisons().stream()
        .filter(each -> each.name().equals(HEAT))
        .map(each -> ", " + amount(index, HEAT, each.plan()))
        .collect(Collectors.joining());
  }

  static String amount(WeekIndex index, String name, double value) {
    int decimals = name.startsWith("hours") ? 1 : 0;
    String figure = index.say().number(value, decimals);
    String word = SHORT.getOrDefault(name, name);
    return figure + " " + (figure.equals("1") ? ONE.getOrDefault(word, word) : word);
  }
}
