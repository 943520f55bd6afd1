package spangle.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spangle.plan.PlanFigures;

/** How it is said what holds a job. */
final class WhyWords {
  /** What was tried, as it is said where it did not help; one word may stand for several. */
  private static final Map<String, String> NOT_BY = notBy();

  private WhyWords() {}

  private static Map<String, String> notBy() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("ready", "ready time");
    words.put("material", "powder, paint or zinc in the store");
    words.put("zinc-level", "zinc level");
    words.put("leg-before", "step before");
    words.put("carrier", "carriers");
    words.put("station", "other stations");
    words.put("colour-run", "colour changes");
    words.put("setting", "oven settings");
    words.put("machine", "oven or kettle");
    words.put("truck-days", "days of the truck");
    words.put("hours", "hours");
    words.put("window", "longest waits");
    words.put("kit", "dates of kits");
    words.put("other-work", "dates of others");
    return words;
  }

  /** What holds nothing, a few words each, in the order of a load's way. */
  static List<String> notBy(Set<String> tried, Set<String> held) {
    Set<String> told = new LinkedHashSet<>(held);
    if (held.contains("powder-lot") || held.contains("kept-for-kit")) {
      told.add("material");
    }
    if (held.contains("places-out") || held.contains("crew") || held.contains("colour-run")) {
      told.add("station");
    }
    if (held.contains("kit")) {
      told.add("other-work");
    }
    return NOT_BY.entrySet().stream()
        .filter(e -> tried.contains(e.getKey()) && !told.contains(e.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  /** Which of the pieces asked for, before what becomes of them. */
  static String some(int pieces, int all) {
    return pieces == all ? "all " + WhyWords.pieces(all) + " " : pieces + " of " + all + " pieces ";
  }

  /** One time beside the time in the plan. */
  static String instead(int endMin, int announcedMin) {
    return DayWords.of(endMin) + " instead of " + DayWords.of(announcedMin);
  }

  /** What a plan spends more than another, in words; the dearest first. */
  static List<String> costs(PlanFigures was, PlanFigures is) {
    List<String> costs = new ArrayList<>();
    more(costs, is.colourChanges() - was.colourChanges(), "colour change", "colour changes");
    more(costs, is.batches() - was.batches(), "oven batch or dip", "oven batches or dips");
    more(costs, is.trips() - was.trips(), "trip of the truck", "trips of the truck");
    more(costs, is.loads() - was.loads(), "carrier to hang", "carriers to hang");
    more(costs, is.moved() - was.moved(), "announced load moved", "announced loads moved");
    minutes(costs, is.settingMinutes() - was.settingMinutes(), "of changing oven settings");
    if (costs.isEmpty()) {
      minutes(costs, is.runMinutes() - was.runMinutes(), "in ovens and kettle");
    }
    if (costs.isEmpty() && is.setMinutes() > was.setMinutes()) {
      costs.add("sets of kits that are whole later");
    }
    return costs;
  }

  private static void more(List<String> costs, long count, String one, String several) {
    if (count > 0) {
      costs.add(count + " more " + (count == 1 ? one : several));
    }
  }

  private static void minutes(List<String> costs, long minutes, String where) {
    if (minutes > 0) {
      costs.add(String.format(Locale.ROOT, "%d more minutes %s", minutes, where));
    }
  }

  /**
   * Why the plan does not do what there is room for.
   *
   * @param gains whether the whole plan would be the better for it
   * @param inTime whether the pieces are in time where they are
   */
  static String verdict(boolean gains, boolean inTime, List<String> costs) {
    if (gains) {
      return "the plan would be the better for it: a replan would find it";
    }
    String price = costs.isEmpty() ? "" : "sooner costs " + String.join(", ", costs);
    if (!inTime) {
      return costs.isEmpty() ? "work of others would then be done later" : price;
    }
    if (costs.isEmpty()) {
      return "in time where it is, nothing is won by it";
    }
    boolean colour = costs.get(0).contains("colour");
    return (colour
            ? "in time where it is, it waits for the run of its colour: "
            : "in time where it is: ")
        + price;
  }

  /** The first few of a list, and how many more. */
  static String some(List<String> names, int most) {
    String said = String.join(", ", names.subList(0, Math.min(most, names.size())));
    return names.size() > most ? said + " and " + (names.size() - most) + " more" : said;
  }

  /** Sentences of gates and places speak of pieces. */
  static String pieces(int count) {
    return count == 1 ? "1 piece" : count + " pieces";
  }
}
