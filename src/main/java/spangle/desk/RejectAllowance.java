package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.plan.Lot;
import spangle.plan.event.LotNames;
import spangle.report.Allowance;

/**
 * Allowances for rejects: so many per cent of the pieces ordered, in whole pieces upwards. Bending
 * made what was ordered, so only powder, paint and zinc are kept ready for them; once the second
 * round of pieces that were rejected is planned, its material is counted there and no longer here.
 */
final class RejectAllowance {
  private RejectAllowance() {}

  /** Parts in the plan or waiting for it that are allowed any, in the order of the jobs. */
  static List<Allowance> of(PreparedWeek week) {
    Map<String, Lot> any = new HashMap<>();
    week.brief().lots().forEach(l -> any.putIfAbsent(WeekIndex.key(l.jobId(), l.partId()), l));
    Map<String, Integer> again = new HashMap<>();
    week.brief().lots().stream()
        .filter(l -> l.lastLeg() && LotNames.rework(l))
        .forEach(l -> again.merge(WeekIndex.key(l.jobId(), l.partId()), l.pieces(), Integer::sum));
    List<Allowance> all = new ArrayList<>();
    for (Job job : week.input().jobs()) {
      for (PartLine line : job.parts()) {
        String key = WeekIndex.key(job.id(), line.id());
        double percent =
            line.wanted()
                .rejectAllowancePct()
                .orElse(week.input().shop().defaults().rejectAllowancePct());
        if (percent > 0 && any.containsKey(key)) {
          all.add(
              new Allowance(
                  job.id(),
                  line.id(),
                  line.words(),
                  line.qty(),
                  percent,
                  pieces(line.qty(), percent),
                  again.getOrDefault(key, 0)));
        }
      }
    }
    return all;
  }

  /** Whole pieces upwards: three per cent of 200 are 6, of 10 one. */
  static int pieces(int ordered, double percent) {
    return (int) Math.ceil(ordered * percent / 100 - 1e-9);
  }

  /** Pieces still allowed for, by job and part. */
  static Map<String, Integer> left(PreparedWeek week) {
    Map<String, Integer> left = new LinkedHashMap<>();
    of(week).forEach(a -> left.put(WeekIndex.key(a.jobId(), a.partId()), a.left()));
    return left;
  }
}
