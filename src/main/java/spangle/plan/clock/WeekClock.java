package spangle.plan.clock;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The clock: turns orders of batches into times and tallies. One per thread, because it keeps
 * scratch space; two clocks say the same of the same plan.
 */
public final class WeekClock {
  private final Floor floor;
  private final boolean moves;
  private final boolean anyCoupled;
  private final boolean followers;
  private final RowTrial[] trials;
  private final LineWalk[] walks;
  private final KitCount kits;
  private final long[] tally = new long[Tally.SIZE];
  private @Nullable WeekPlan base;
  private @Nullable WeekEdit edit;
  private @Nullable WeekPlan whole;

  /** A clock for that floor. */
  public WeekClock(Floor floor) {
    this.floor = floor;
    this.moves = !floor.announced.isEmpty();
    this.walks =
        Arrays.stream(floor.lines).map(line -> new LineWalk(floor, line)).toArray(LineWalk[]::new);
    this.kits = new KitCount(floor.brief);
    this.anyCoupled = floor.isCoupled();
    boolean chains = Arrays.stream(floor.lots).anyMatch(lot -> lot.after >= 0);
    this.followers = chains || floor.supplies.length > 0;
    Row none = new Row(0, 0, new Batch[0], new int[0], new long[Tally.SIZE]);
    int most = Arrays.stream(floor.lines).mapToInt(line -> line.machines.length).max().orElse(0);
    this.trials = new RowTrial[Math.max(1, most)];
    for (int k = 0; k < trials.length; k++) {
      trials[k] = new RowTrial(floor.lines[0], none, moves);
    }
  }

  /** The plan of these rows, timed from the beginning; frozen batches are put in front. */
  public WeekPlan plan(Batch[][][] rows) {
    LinePlan[] lines = new LinePlan[floor.lines.length];
    int[] lotEnd = new int[anyCoupled ? floor.lots.length : 0];
    Arrays.fill(lotEnd, -1);
    double[] drawn = new double[floor.supplies.length];
    for (int l : floor.lineOrder) {
      Batch[][] batches = rows[l];
      if (floor.coupled[l]) {
        lines[l] =
            Objects.requireNonNull(
                walks[l].walk(null, batches, lotEnd, drawn, Long.MAX_VALUE), "without a limit");
        drawn = lines[l].drawnAfter();
      } else {
        lines[l] = decode(l, batches, drawn);
      }
    }
    return week(lines, lotEnd);
  }

  private LinePlan decode(int l, Batch[][] batches, double[] drawn) {
    Row[] rows = new Row[batches.length];
    long[] sum = new long[Tally.SIZE];
    for (int m = 0; m < rows.length; m++) {
      rows[m] =
          RowTrial.fromScratch(floor.lines[l], m, floor.frozen[l][m].length, batches[m], moves);
      Tally.add(sum, rows[m].tally);
    }
    return new LinePlan(l, rows, sum, new Passage[0], drawn);
  }

  private WeekPlan week(LinePlan[] lines, int[] lotEnd) {
    long[] sum = new long[Tally.SIZE];
    for (LinePlan line : lines) {
      Tally.add(sum, line.tally);
    }
    kits.count(lotEnd, sum);
    return new WeekPlan(floor, lines, sum, lotEnd);
  }

  /**
   * Works out what the plan would come to after an edit. What {@link #left}, {@link #weighed},
   * {@link #broken} and {@link #made} say concerns the edit tried last.
   */
  public void attempt(WeekPlan plan, WeekEdit change) {
    attempt(plan, change, Long.MAX_VALUE);
  }

  /**
   * The same, given up as soon as more than that weight of lots must be left out.
   *
   * @return false where it was given up; what the clock says of the edit then means nothing
   */
  public boolean attempt(WeekPlan plan, WeekEdit change, long mayLeave) {
    base = plan;
    edit = change;
    whole = null;
    if (floor.coupled[change.line]) {
      whole = walked(plan, change, mayLeave);
      if (whole == null) {
        return false;
      }
      System.arraycopy(whole.tally, 0, tally, 0, Tally.SIZE);
      return true;
    }
    System.arraycopy(plan.tally, 0, tally, 0, Tally.SIZE);
    LinePlan line = plan.lines[change.line];
    for (int k = 0; k < change.rows; k++) {
      Row row = line.rows[change.edits[k].row];
      trials[k].decode(floor.lines[change.line], row, change.edits[k]);
      Tally.exchange(tally, row.tally, trials[k].tally);
    }
    return Tally.lost(tally) <= mayLeave;
  }

  /**
   * Walks the line that is changed and those that may follow from it; null as soon as more must be
   * left out than may be. A line not walked yet may in the end leave nothing out.
   */
  private @Nullable WeekPlan walked(WeekPlan plan, WeekEdit change, long mayLeave) {
    LinePlan[] lines = plan.lines.clone();
    int[] lotEnd = plan.lotEnd.clone();
    boolean behind = false;
    double[] drawn = new double[floor.supplies.length];
    long left = mayLeave - lostElsewhere(plan, change.line);
    for (int l : floor.lineOrder) {
      boolean changed = l == change.line;
      if (changed || (behind && follows(l))) {
        Batch[][] batches = new Batch[lines[l].rows.length][];
        for (int m = 0; m < batches.length; m++) {
          batches[m] = lines[l].rows[m].batches;
        }
        for (int k = 0; changed && k < change.rows; k++) {
          int m = change.edits[k].row;
          batches[m] = change.edits[k].applied(lines[l].rows[m]);
        }
        LinePlan walked = walks[l].walk(lines[l], batches, lotEnd, drawn, left);
        if (walked == null) {
          return null;
        }
        lines[l] = walked;
        left -= Tally.lost(walked.tally);
        behind = true;
      }
      if (floor.coupled[l]) {
        drawn = lines[l].drawnAfter();
      }
    }
    return week(lines, lotEnd);
  }

  private boolean follows(int line) {
    return followers && floor.coupled[line];
  }

  /** What the lines leave out that a change of that line cannot touch. */
  private long lostElsewhere(WeekPlan plan, int line) {
    long lost = 0;
    boolean behind = false;
    for (int l : floor.lineOrder) {
      behind |= l == line;
      if (!behind || (l != line && !follows(l))) {
        lost += Tally.lost(plan.lines[l].tally);
      }
    }
    return lost;
  }

  /** Weight of lots without a time after the edit. */
  public long left() {
    return Tally.lost(tally);
  }

  /** The weighed sum of the goals after the edit. */
  public long weighed() {
    return Tally.weighed(tally, floor.goals);
  }

  /** How far rules are broken after the edit. */
  public long broken() {
    return Tally.broken(tally);
  }

  /** The plan after the edit. */
  public WeekPlan made() {
    if (whole != null) {
      return whole;
    }
    if (base == null || edit == null) {
      throw new IllegalStateException("no edit has been tried");
    }
    LinePlan[] lines = base.lines.clone();
    LinePlan old = lines[edit.line];
    Row[] rows = old.rows.clone();
    long[] sum = old.tally.clone();
    for (int k = 0; k < edit.rows; k++) {
      Row row = trials[k].make();
      Tally.exchange(sum, rows[row.machine].tally, row.tally);
      rows[row.machine] = row;
    }
    lines[edit.line] = new LinePlan(edit.line, rows, sum, old.feed, old.drawnBefore);
    return new WeekPlan(floor, lines, tally.clone(), base.lotEnd);
  }
}
