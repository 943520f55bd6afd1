package spangle.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import spangle.plan.Kit;
import spangle.plan.Plan;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LinePlan;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.Passage;
import spangle.plan.clock.WeekPlan;

/** What a plan has promised, and whether another still keeps it. */
final class Pledges {
  private final Floor floor;
  private final Freedom freedom;

  /** Start of the first visit and end of the last, by lot; -1 where it was not planned. */
  private final int[] first;

  private final int[] end;

  /** Latest end that breaks no word given, by lot. */
  private final int[] latest;

  /** What began before this minute stays as it is. */
  private final int begunBefore;

  Pledges(WeekPlan kept, Freedom freedom) {
    this(kept, freedom, 0);
  }

  /**
   * The word given by a plan that has run up to a minute.
   *
   * @param begunBefore lots hung before it stay where and when they are, whatever the freedom
   */
  Pledges(WeekPlan kept, Freedom freedom, int begunBefore) {
    this.floor = kept.floor;
    this.freedom = freedom;
    this.begunBefore = begunBefore;
    this.first = firsts(kept);
    this.end = new int[floor.lots.length];
    for (LotFacts lot : floor.lots) {
      end[lot.index] = first[lot.index] < 0 ? -1 : kept.lotEnd(lot.index);
    }
    this.latest = latest();
  }

  /**
   * The word given by a plan as it was written, for a week in which some lots are put anew.
   *
   * @param free lots of that plan whose dates are not to be kept
   */
  Pledges(Floor floor, Plan written, Set<String> free) {
    this.floor = floor;
    this.freedom = Freedom.DATES_KEPT;
    this.begunBefore = 0;
    this.end = new int[floor.lots.length];
    Arrays.fill(end, -1);
    Map<String, Integer> ends = written.lotEnds();
    for (LotFacts lot : floor.lots) {
      if (!free.contains(lot.lot.id())) {
        end[lot.index] = ends.getOrDefault(lot.lot.id(), -1);
      }
    }
    this.first = end;
    this.latest = latest();
  }

  private int[] latest() {
    Map<String, Integer> parts = new HashMap<>();
    int[] kits = new int[floor.brief.kits().size()];
    for (LotFacts lot : floor.lots) {
      if (lot.lot.lastLeg() && end[lot.index] >= 0) {
        parts.merge(part(lot), end[lot.index], Math::max);
        for (int kit : lot.kits) {
          kits[kit] = Math.max(kits[kit], end[lot.index]);
        }
      }
    }
    int[] until = new int[floor.lots.length];
    Arrays.fill(until, Integer.MAX_VALUE);
    for (LotFacts lot : floor.lots) {
      if (lot.lot.lastLeg() && end[lot.index] >= 0) {
        int word = Math.max(lot.lot.dueMin(), parts.getOrDefault(part(lot), 0));
        for (int k : lot.kits) {
          Kit kit = floor.brief.kits().get(k);
          word = Math.min(word, Math.max(kit.dueMin(), kits[k]));
        }
        until[lot.index] = word;
      }
    }
    return until;
  }

  private static String part(LotFacts lot) {
    return lot.lot.jobId() + "/" + lot.lot.partId();
  }

  boolean kept(WeekPlan plan) {
    if (plan.broken() != 0) {
      return false;
    }
    boolean exact = freedom == Freedom.NOTHING_MOVES || begunBefore > 0;
    int[] now = exact ? firsts(plan) : first;
    for (int lot = 0; lot < end.length; lot++) {
      if (end[lot] < 0) {
        continue;
      }
      int is = plan.lotEnd(lot);
      boolean sound =
          switch (first[lot] < begunBefore ? Freedom.NOTHING_MOVES : freedom) {
            case NOTHING_MOVES -> is == end[lot] && now[lot] == first[lot];
            case DATES_KEPT -> is >= 0 && is <= latest[lot];
            case DATES_MAY_SLIP -> is >= 0;
          };
      if (!sound) {
        return false;
      }
    }
    return true;
  }

  private static int[] firsts(WeekPlan plan) {
    int[] first = new int[plan.floor.lots.length];
    Arrays.fill(first, -1);
    for (int l = 0; l < plan.floor.lines.length; l++) {
      LinePlan line = plan.line(l);
      for (int k = 0; k < line.fed(); k++) {
        Passage passage = line.passage(k);
        for (int i = 0; passage.runs() && i < passage.batch.loads.length; i++) {
          for (int lot : passage.batch.loads[i].lots) {
            first[lot] = passage.loadFirst(i);
          }
        }
      }
    }
    return first;
  }
}
