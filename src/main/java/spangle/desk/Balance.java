package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spangle.plan.FinishKind;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.PlanFigures;
import spangle.plan.PlannedBatch;
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
 * @param good which figure is the better one
 */
public record Balance(String name, double before, double after, Good good) {
  /** Which of two figures is the better one. */
  public enum Good {
    /** The smaller. */
    LESS,
    /** The larger. */
    MORE,
    /** Neither: it goes with how much work is in the week. */
    NEITHER
  }

  /** Better, worse or the same, for the second plan; more or less where neither is better. */
  public String verdict() {
    if (before == after) {
      return "same";
    }
    if (good == Good.NEITHER) {
      return after < before ? "less" : "more";
    }
    return (after < before) == (good == Good.LESS) ? "better" : "worse";
  }

  static List<Balance> of(
      PlanFile before,
      PlanFile after,
      Map<String, PartFate> fatesBefore,
      Map<String, PartFate> fatesAfter) {
    PlanFigures a = before.plan().figures();
    PlanFigures b = after.plan().figures();
    // What is spent says something of a plan only where both do the same work.
    boolean same = left(fatesBefore) == left(fatesAfter);
    Good spent = same ? Good.LESS : Good.NEITHER;
    List<Balance> rows = new ArrayList<>();
    rows.add(
        new Balance(
            "parts late or not in the week", late(fatesBefore), late(fatesAfter), Good.LESS));
    rows.add(new Balance("pieces not in the week", left(fatesBefore), left(fatesAfter), Good.LESS));
    rows.add(new Balance("sets of kits complete", sets(before), sets(after), Good.MORE));
    rows.add(new Balance("kits complete on time", onTime(before), onTime(after), Good.MORE));
    rows.add(new Balance("hours in ovens and kettle", hours(before), hours(after), spent));
    rows.add(new Balance("kg sent to another firm", sentKg(before), sentKg(after), spent));
    rows.add(new Balance("money other firms ask for it", money(before), money(after), spent));
    rows.add(
        new Balance("kg of the shop's own zinc on the work", zincKg(before), zincKg(after), spent));
    rows.add(new Balance("colour changes", a.colourChanges(), b.colourChanges(), Good.LESS));
    rows.add(
        new Balance(
            "minutes changing oven settings", a.settingMinutes(), b.settingMinutes(), Good.LESS));
    rows.add(new Balance("loads to hang", a.loads(), b.loads(), spent));
    return rows;
  }

  private static double hours(PlanFile file) {
    int minutes = batches(file, false).stream().mapToInt(PlannedBatch::dwellMin).sum();
    return Math.round(minutes / 6.0) / 10.0;
  }

  private static List<PlannedBatch> batches(PlanFile file, boolean outside) {
    Set<String> lines = new HashSet<>();
    for (LineSpec line : file.brief().lines()) {
      if ((line.kind() == LineKind.OUTSIDE) == outside) {
        lines.add(line.id());
      }
    }
    return file.plan().batches().stream().filter(b -> lines.contains(b.lineId())).toList();
  }

  private static double sentKg(PlanFile file) {
    Map<String, Double> kg = new HashMap<>();
    file.brief().lots().forEach(lot -> kg.put(lot.id(), lot.massKg()));
    return Math.round(
        batches(file, true).stream()
            .flatMap(b -> b.loads().stream())
            .flatMap(l -> l.lotIds().stream())
            .mapToDouble(id -> kg.getOrDefault(id, 0.0))
            .sum());
  }

  private static double money(PlanFile file) {
    return Math.round(Charge.of(file).stream().mapToDouble(Charge::money).sum());
  }

  private static double zincKg(PlanFile file) {
    Map<String, Double> kg = new HashMap<>();
    file.brief().lots().stream()
        .filter(lot -> lot.finish().kind() == FinishKind.ZINC)
        .forEach(lot -> kg.put(lot.id(), lot.materialKg()));
    return Math.round(
        batches(file, false).stream()
            .flatMap(b -> b.loads().stream())
            .flatMap(l -> l.lotIds().stream())
            .mapToDouble(id -> kg.getOrDefault(id, 0.0))
            .sum());
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
    String verdict = good == Good.NEITHER ? "not the same work" : verdict();
    return String.format(
        Locale.ROOT, "%s: %s, was %s (%s)", name, figure(after), figure(before), verdict);
  }

  private static String figure(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
