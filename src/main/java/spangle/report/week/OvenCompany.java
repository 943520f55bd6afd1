package spangle.report.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.Dwell;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.report.LotNote;

/**
 * Parts of one finish that stay in the oven for the same minutes, and those of the same finish that
 * may never be in with them: at no setting is there a stay that cures the slowest and spares the
 * quickest.
 *
 * @param line the line
 * @param finish the finish
 * @param parts the parts in words, with their thickness
 * @param dwells minutes at least and at most for each setting
 * @param never parts of the same finish it may not share an oven with, and how far they are apart
 */
public record OvenCompany(
    LineSpec line, Finish finish, List<String> parts, List<Dwell> dwells, List<String> never) {
  /** Copies the lists. */
  public OvenCompany {
    parts = List.copyOf(parts);
    dwells = List.copyOf(dwells);
    never = List.copyOf(never);
  }

  private record Group(List<Dwell> dwells, Set<String> parts) {}

  /** All finishes whose parts do not stay in alike, line by line. */
  public static List<OvenCompany> of(WeekIndex index) {
    List<OvenCompany> rows = new ArrayList<>();
    for (LineSpec line : index.report().brief().lines()) {
      groups(index, line).forEach((finish, groups) -> rows.addAll(rows(line, finish, groups)));
    }
    return rows;
  }

  private static Map<Finish, List<Group>> groups(WeekIndex index, LineSpec line) {
    Map<Finish, List<Group>> byFinish = new LinkedHashMap<>();
    for (Lot lot : index.report().brief().lots()) {
      FinishKind kind = lot.finish().kind();
      boolean cured = kind == FinishKind.POWDER || kind == FinishKind.LIQUID;
      if (!cured || !lot.lineId().equals(line.id())) {
        continue;
      }
      List<Group> groups = byFinish.computeIfAbsent(lot.finish(), f -> new ArrayList<>());
      groups.stream()
          .filter(g -> g.dwells().equals(lot.dwells()))
          .findFirst()
          .orElseGet(
              () -> {
                Group group = new Group(lot.dwells(), new LinkedHashSet<>());
                groups.add(group);
                return group;
              })
          .parts()
          .add(words(index, lot));
    }
    return byFinish;
  }

  private static String words(WeekIndex index, Lot lot) {
    String thickness =
        index
            .note(lot)
            .map(LotNote::thicknessMm)
            .map(t -> ", " + index.say().number(t, 2) + " mm")
            .orElse("");
    return lot.label() + " " + lot.jobId() + thickness;
  }

  private static List<OvenCompany> rows(LineSpec line, Finish finish, List<Group> groups) {
    if (groups.size() < 2) {
      return List.of();
    }
    groups.sort(
        Comparator.comparingInt(
            g -> g.dwells().stream().mapToInt(Dwell::minMin).min().orElse(Integer.MAX_VALUE)));
    List<OvenCompany> rows = new ArrayList<>();
    for (Group group : groups) {
      List<String> never = new ArrayList<>();
      for (Group other : groups) {
        int apart = apart(group.dwells(), other.dwells());
        if (apart == Integer.MAX_VALUE) {
          never.add(String.join(", ", other.parts()) + ": no setting suits both");
        } else if (apart > 0) {
          never.add(String.join(", ", other.parts()) + ": " + apart + " min apart");
        }
      }
      rows.add(new OvenCompany(line, finish, List.copyOf(group.parts()), group.dwells(), never));
    }
    return rows;
  }

  /** Minutes between two windows at the setting where they are nearest; none where they meet. */
  static int apart(List<Dwell> one, List<Dwell> other) {
    int least = Integer.MAX_VALUE;
    for (Dwell a : one) {
      for (Dwell b : other) {
        if (a.setting() == b.setting()) {
          int gap = Math.max(a.minMin(), b.minMin()) - Math.min(a.maxMin(), b.maxMin());
          least = Math.min(least, Math.max(0, gap));
        }
      }
    }
    return least;
  }
}
