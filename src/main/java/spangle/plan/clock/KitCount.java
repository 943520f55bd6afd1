package spangle.plan.clock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spangle.plan.Brief;
import spangle.plan.Goals;
import spangle.plan.Kit;
import spangle.plan.Kit.KitLine;
import spangle.plan.Lot;
import spangle.plan.event.LotNames;

/**
 * Counts when the sets of the kits are whole, from the ends of lots. Finished pieces of a part form
 * one pool, the earliest first; pieces that go round again as rework are taken off its front; the
 * kit due first draws first. Keeps scratch space: one for each thread.
 */
public final class KitCount {
  private static final int NO_DAY = -1;
  private static final int INCOMPLETE = Integer.MAX_VALUE;

  private final Pool[] pools;
  private final Bill[] bills;
  private final int horizonMin;

  /** Lots that finish pieces of one part, in the order of their ends as last seen. */
  private static final class Pool {
    final int[] lots;
    final int[] pieces;
    final int rejected;

    /** The lot drawn from and how many of its pieces are gone. */
    int next;

    int gone;

    Pool(int[] lots, int[] pieces, int rejected) {
      this.lots = lots;
      this.pieces = pieces;
      this.rejected = rejected;
    }

    /** Puts the lots in the order of their ends, those without one behind, and starts anew. */
    void sort(int[] lotEnd) {
      for (int i = 1; i < lots.length; i++) {
        int lot = lots[i];
        int own = pieces[i];
        int end = key(lotEnd[lot]);
        int k = i - 1;
        while (k >= 0 && key(lotEnd[lots[k]]) > end) {
          lots[k + 1] = lots[k];
          pieces[k + 1] = pieces[k];
          k--;
        }
        lots[k + 1] = lot;
        pieces[k + 1] = own;
      }
      next = 0;
      gone = 0;
      take(rejected, lotEnd, null);
    }

    private static int key(int end) {
      return end < 0 ? Integer.MAX_VALUE : end;
    }

    /** Takes so many pieces, or as many as there are, and notes when each share is there. */
    void take(int wanted, int[] lotEnd, @Nullable Line into) {
      int left = wanted;
      while (left > 0 && next < lots.length && lotEnd[lots[next]] >= 0) {
        int taken = Math.min(left, pieces[next] - gone);
        left -= taken;
        gone += taken;
        if (into != null) {
          into.step(lotEnd[lots[next]], taken);
        }
        if (gone == pieces[next]) {
          next++;
          gone = 0;
        }
      }
    }
  }

  /** One line of a kit: how many sets it has pieces for, from which minute on. */
  private static final class Line {
    final int pool;
    final int perSet;
    final int onHand;
    final int wanted;
    final int[] ends;
    final int[] sets;
    int steps;
    int good;
    int at;

    Line(int pool, KitLine line, int sets, int lots) {
      this.pool = pool;
      this.perSet = line.perSet();
      this.onHand = line.onHand();
      this.wanted = Math.max(0, line.perSet() * sets - line.onHand());
      this.ends = new int[lots + 1];
      this.sets = new int[lots + 1];
    }

    void begin() {
      steps = 0;
      good = 0;
      at = 0;
      step(-1, onHand);
    }

    void step(int end, int pieces) {
      good += pieces;
      ends[steps] = end;
      sets[steps++] = good / perSet;
    }

    /** Goes on to the step with more sets than these; false where there is none. */
    boolean beyond(int set) {
      while (at < steps && sets[at] <= set) {
        at++;
      }
      return at < steps;
    }
  }

  /** A kit with its lines. */
  private static final class Bill {
    final Kit kit;
    final Line[] lines;

    /** The day on which an earlier plan has it complete; {@link #NO_DAY} where it does not say. */
    int day = NO_DAY;

    Bill(Kit kit, Line[] lines) {
      this.kit = kit;
      this.lines = lines;
    }

    void announce(int endMin) {
      day = endMin == INCOMPLETE ? NO_DAY : endMin / Brief.DAY_MIN;
    }

    boolean later(int endMin) {
      return day != NO_DAY && endMin / Brief.DAY_MIN > day;
    }
  }

  /** A count of the kits of that brief; ends are given in the order of its lots. */
  public KitCount(Brief brief) {
    horizonMin = brief.horizonMin();
    Map<List<String>, Integer> numbers = new HashMap<>();
    List<List<Integer>> lots = new ArrayList<>();
    brief.kits().stream()
        .flatMap(kit -> kit.lines().stream())
        .forEach(
            line -> {
              if (numbers.putIfAbsent(List.of(line.jobId(), line.partId()), lots.size()) == null) {
                lots.add(new ArrayList<>());
              }
            });
    int[] rejected = new int[lots.size()];
    for (int i = 0; i < brief.lots().size() && !lots.isEmpty(); i++) {
      Lot lot = brief.lots().get(i);
      Integer pool = numbers.get(List.of(lot.jobId(), lot.partId()));
      if (pool != null && lot.lastLeg()) {
        lots.get(pool).add(i);
        rejected[pool] += LotNames.rework(lot) ? lot.pieces() : 0;
      }
    }
    numbers.forEach(
        (part, pool) -> rejected[pool] += brief.rejectedWithoutLot(part.get(0), part.get(1)));
    pools = new Pool[lots.size()];
    for (int p = 0; p < pools.length; p++) {
      int[] own = lots.get(p).stream().mapToInt(Integer::intValue).toArray();
      int[] pieces = Arrays.stream(own).map(i -> brief.lots().get(i).pieces()).toArray();
      pools[p] = new Pool(own, pieces, rejected[p]);
    }
    bills =
        brief.kits().stream()
            .sorted(Comparator.comparingInt(Kit::dueMin).thenComparing(Kit::id))
            .filter(kit -> kit.sets() > 0)
            .map(kit -> new Bill(kit, lines(kit, numbers)))
            .filter(bill -> bill.lines.length > 0)
            .toArray(Bill[]::new);
    if (!brief.announced().isEmpty() && bills.length > 0) {
      announce(brief);
    }
  }

  /** Notes the day on which each kit would be complete if all ran as announced. */
  private void announce(Brief brief) {
    Map<String, Integer> ends = brief.announcedEnds();
    int[] lotEnd = brief.lots().stream().mapToInt(l -> ends.getOrDefault(l.id(), -1)).toArray();
    long[] tally = new long[Tally.SIZE];
    for (Pool pool : pools) {
      pool.sort(lotEnd);
    }
    for (Bill bill : bills) {
      bill.announce(count(bill, lotEnd, tally));
    }
  }

  private Line[] lines(Kit kit, Map<List<String>, Integer> numbers) {
    return kit.lines().stream()
        .filter(line -> line.perSet() > 0)
        .map(
            line -> {
              int pool = numbers.getOrDefault(List.of(line.jobId(), line.partId()), 0);
              return new Line(pool, line, kit.sets(), pools[pool].lots.length);
            })
        .toArray(Line[]::new);
  }

  /** Adds what the kits come to, from the end of every lot (-1 where it is not planned). */
  public void count(int[] lotEnd, long[] tally) {
    if (bills.length == 0) {
      return;
    }
    for (Pool pool : pools) {
      pool.sort(lotEnd);
    }
    for (Bill bill : bills) {
      int end = count(bill, lotEnd, tally);
      tally[Tally.MOVED] += bill.later(end) ? Goals.KIT_DAY : 0;
    }
  }

  /** From one number of whole sets to the next that some line allows; the end of the last. */
  private int count(Bill bill, int[] lotEnd, long[] tally) {
    for (Line line : bill.lines) {
      line.begin();
      pools[line.pool].take(line.wanted, lotEnd, line);
    }
    int wanted = bill.kit.sets();
    int made = 0;
    int end = -1;
    long spread = 0;
    long whole = 0;
    while (made < wanted) {
      int to = wanted;
      int first = Integer.MAX_VALUE;
      int last = -1;
      for (Line line : bill.lines) {
        if (!line.beyond(made)) {
          to = -1;
          break;
        }
        to = Math.min(to, line.sets[line.at]);
        last = Math.max(last, line.ends[line.at]);
        first = line.ends[line.at] < 0 ? first : Math.min(first, line.ends[line.at]);
      }
      if (to < 0) {
        break;
      }
      whole += (long) (to - made) * Math.max(0, last);
      spread += last < 0 ? 0 : (long) (to - made) * (last - first);
      end = last;
      made = to;
    }
    whole += (long) (wanted - made) * horizonMin;
    tally[Tally.KIT_MIN] += spread / wanted;
    tally[Tally.SET_MIN] += whole / wanted * bill.kit.weight();
    tally[Tally.LATE_KITS] += end > bill.kit.dueMin() ? bill.kit.weight() : 0;
    return made < wanted ? INCOMPLETE : Math.max(0, end);
  }
}
