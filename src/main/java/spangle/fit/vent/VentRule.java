package spangle.fit.vent;

import java.util.List;

/** One published rule: what it asks of a hollow, or nothing when it does not speak of that kind. */
interface VentRule {
  List<Need> needs(Hollow hollow);

  /** The same for both tasks. */
  static List<Need> both(String rule, String source, int holes, double eachMm, String working) {
    return List.of(
        new Need(rule, source, Task.VENT, holes, eachMm, working, true),
        new Need(rule, source, Task.DRAIN, holes, eachMm, working, true));
  }
}
