package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spangle.plan.PlanFigures;
import spangle.plan.json.PlanFile;
import spangle.report.WeekReport;
import spangle.report.week.KitBoard;
import spangle.report.week.KitStatus;

/**
 * What two plans come to, side by side.
 *
 * @param name what is counted, in words
 * @param before in the first plan
 * @param after in the second plan
 * @param lessIsBetter whether a smaller figure is the better one
 */
public record Balance(String name, double before, double after, boolean lessIsBetter) {

  /** Better, worse or the same, for the second plan. */
  public String verdict() {
    if (before == after) {
      return "same";
    }
    return (after < before) == lessIsBetter ? "better" : "worse";
  }

  static List<Balance> of(
      PlanFile before,
      PlanFile after,
      Map<String, PartFate> fatesBefore,
      Map<String, PartFate> fatesAfter) {
    PlanFigures a = before.plan().figures();
    PlanFigures b = after.plan().figures();
    List<Balance> rows = new ArrayList<>();
    rows.add(
        new Balance("parts late or not in the week", late(fatesBefore), late(fatesAfter), true));
    rows.add(new Balance("pieces not in the week", left(fatesBefore), left(fatesAfter), true));
    rows.add(new Balance("sets of kits complete", sets(before), sets(after), false));
    rows.add(new Balance("kits complete on time", onTime(before), onTime(after), false));
    rows.add(new Balance("hours in ovens and kettle", hours(a), hours(b), true));
    rows.add(new Balance("colour changes", a.colourChanges(), b.colourChanges(), true));
    rows.add(
        new Balance(
            "minutes changing oven settings", a.settingMinutes(), b.settingMinutes(), true));
    rows.add(new Balance("loads to hang", a.loads(), b.loads(), true));
    return rows;
  }

  private static double hours(PlanFigures figures) {
    return Math.round(figures.runMinutes() / 6.0) / 10.0;
  }

  private static long late(Map<String, PartFate> fates) {
    return fates.values().stream().filter(PartFate::late).count();
  }

  private static long left(Map<String, PartFate> fates) {
    return fates.values().stream().mapToLong(PartFate::leftOut).sum();
  }

  static List<KitStatus> kits(PlanFile file) {
    return KitBoard.of(
        new spangle.report.week.WeekIndex(WeekReport.bare(file.brief(), file.plan())));
  }

  private static long sets(PlanFile file) {
    return kits(file).stream().mapToLong(KitStatus::setsPlanned).sum();
  }

  private static long onTime(PlanFile file) {
    return kits(file).stream()
        .filter(k -> k.completeMin().isPresent() && k.completeMin().getAsInt() <= k.kit().dueMin())
        .count();
  }

  /** Such as "colour changes: 22, was 25 (better)". */
  public String words() {
    return String.format(
        Locale.ROOT, "%s: %s, was %s (%s)", name, figure(after), figure(before), verdict());
  }

  private static String figure(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
