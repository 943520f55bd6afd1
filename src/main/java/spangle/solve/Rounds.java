package spangle.solve;

import org.jspecify.annotations.Nullable;
import spangle.plan.clock.WeekPlan;

/**
 * The search of one thread in rounds: a short cool one for a quick gain, one from the full heat,
 * then others that warm the best plan up again. A round ends after its moves, the last one with the
 * search; then the threads compare and go on from the best plan of all. By time, the search ends
 * when several rounds have brought nothing; a number of steps is always gone to its end.
 */
final class Rounds {
  /** One later round in so many begins mildly, at this part of the warmth; the others hot. */
  private static final int MILDLY = 3;

  private static final double MILD = 0.3;

  /** The first round ends with this part of the search, however few its moves were. */
  private static final double QUICK = 0.04;

  /** What is left is not parted again when it is shorter than this many rounds. */
  private static final double MERGED = 1.5;

  /** From the full heat only with a whole round ahead; measured on weeks of a thousand lots. */
  private static final double HASTE = 1.5;

  /** Weeks of more lots begin cooler, so that they get better from the first second on. */
  private static final double BIG = 500;

  /** The search ends after so many rounds in vain that took this long or this part of its time. */
  private static final int PATIENCE = 16;

  private static final double PATIENCE_SECONDS = 15;
  private static final double PATIENCE_PART = 0.25;

  private final Heat heat;
  private final Pace pace;
  private final int lots;
  private final long whole;
  private final Meeting meeting;
  private final int thread;
  private WeekPlan best;
  private WeekPlan common;
  private int round;
  private int vain;
  private double betterAt;
  private long began;
  private double beganFraction;
  private long length;
  private boolean last;
  private double hot;

  /**
   * Rounds of about {@code whole} moves each.
   *
   * @param lots number of lots of the week
   * @param thread number of the thread, from 0
   */
  Rounds(Heat heat, Pace pace, int lots, long whole, Meeting meeting, int thread, WeekPlan first) {
    this.lots = lots;
    this.heat = heat;
    this.pace = pace;
    this.whole = whole;
    this.meeting = meeting;
    this.thread = thread;
    this.best = first;
    this.common = first;
    begin(Math.max(1, whole / 10), Math.sqrt(heat.warm() * heat.cold()));
  }

  private void begin(long moves, double from) {
    began = pace.tried();
    beganFraction = pace.fraction();
    length = moves;
    hot = from;
  }

  /** Temperature of this moment. */
  double temperature() {
    double part =
        last
            ? (pace.fraction() - beganFraction) / Math.max(1e-12, 1 - beganFraction)
            : (double) (pace.tried() - began) / length;
    return heat.fall().temperature(hot, part);
  }

  /** Sees every plan the search stands at; another one to go on from when a round is over. */
  @Nullable WeekPlan turn(WeekPlan now) {
    if (Bulletin.better(now, best)) {
      best = now;
    }
    boolean quickOver = round == 0 && pace.fraction() >= QUICK;
    if (last || pace.over() || (pace.tried() - began < length && !quickOver)) {
      return null;
    }
    best = meeting.compare(thread, best);
    if (Bulletin.better(best, common)) {
      vain = 0;
      betterAt = pace.fraction();
    } else {
      vain++;
    }
    common = best;
    if (vain >= PATIENCE && !pace.bySteps() && pace.fraction() - betterAt >= patience()) {
      pace.end();
      return null;
    }
    round++;
    last = pace.remaining() < MERGED * whole;
    begin(whole, Math.max(2 * heat.cold(), from()));
    return best;
  }

  /** Threads begin mildly in different rounds. */
  private double from() {
    if (round == 1) {
      return opening() * heat.hot();
    }
    return (round + thread) % MILDLY == 1 ? MILD * heat.warm() : heat.hot();
  }

  /** Where too few moves are left to cool a big week down slowly, it is not made so hot. */
  private double opening() {
    double share = Math.min(1, (double) pace.remaining() / whole);
    return Math.pow(share, HASTE) * Math.min(1, BIG / lots);
  }

  private double patience() {
    return Math.min(PATIENCE_PART, PATIENCE_SECONDS / pace.seconds());
  }
}
