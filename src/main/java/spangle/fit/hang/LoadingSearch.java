package spangle.fit.hang;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Spreads many pieces over as few equal carriers as it can. A first loading is built carrier by
 * carrier; then, again and again, the weakest carrier and a few others are taken down and hung anew
 * by chance. A new hanging stays when it needs fewer carriers, or when it gathers the pieces on
 * fewer of them (the sum of the squares of the filled areas grows, or shrinks but little), until a
 * carrier comes free or the lower bound is reached.
 */
final class LoadingSearch {
  /** Share of a full carrier's square that may be lost in one round at the start. */
  private static final double WARMTH = 0.02;

  private static final int MOST_TAKEN_DOWN = 4;
  private static final int ROUNDS_BETWEEN_CLOCK_LOOKS = 64;

  private final Kind[] kinds;
  private final Filler filler;
  private final SplittableRandom random;
  private final double fullSquare;
  private final int[] pool;
  private final Layout trial = new Layout();
  private final Layout[] rebuilt = new Layout[MOST_TAKEN_DOWN];
  private final int[] taken = new int[MOST_TAKEN_DOWN];
  private List<Layout> carriers = new ArrayList<>();

  LoadingSearch(Grid grid, Kind[] kinds, long seed) {
    this.kinds = kinds;
    this.filler = Filler.of(grid, kinds);
    this.random = new SplittableRandom(seed);
    double full = (double) grid.width * grid.height * grid.faces;
    this.fullSquare = full * full;
    this.pool = new int[kinds.length];
    for (int i = 0; i < MOST_TAKEN_DOWN; i++) {
      rebuilt[i] = new Layout();
    }
  }

  List<Layout> carriers() {
    return carriers;
  }

  /** The quick way: every carrier filled by the best of the fixed rules. */
  void build() {
    carriers = new ArrayList<>();
    for (int k = 0; k < kinds.length; k++) {
      pool[k] = kinds[k].pieces;
    }
    while (waiting()) {
      Layout best = new Layout();
      for (int rule = 0; rule < filler.rules(); rule++) {
        filler.fill(pool, rule, trial);
        if (trial.area > best.area) {
          best.copyFrom(trial);
        }
      }
      best.count(pool, -1);
      carriers.add(best.snapshot());
    }
  }

  /** Goes on until the effort is spent or no fewer carriers are possible. */
  void improve(HangEffort effort, int fewest) {
    long end = System.nanoTime() + effort.atMost().toNanos();
    for (long round = 0; round < effort.rounds() && carriers.size() > fewest; round++) {
      if (round % ROUNDS_BETWEEN_CLOCK_LOOKS == 0 && System.nanoTime() >= end) {
        return;
      }
      round();
    }
  }

  private void round() {
    int down = Math.min(carriers.size(), 2 + random.nextInt(MOST_TAKEN_DOWN - 1));
    choose(down);
    Arrays.fill(pool, 0);
    double before = 0;
    for (int i = 0; i < down; i++) {
      Layout old = carriers.get(taken[i]);
      old.count(pool, 1);
      before += old.area * old.area;
    }
    int tries = 1 + random.nextInt(4);
    double after = 0;
    int used = 0;
    while (used < down && waiting()) {
      fillOne(rebuilt[used], tries);
      rebuilt[used].count(pool, -1);
      after += rebuilt[used].area * rebuilt[used].area;
      used++;
    }
    if (waiting()) {
      return;
    }
    double loss = (before - after) / fullSquare;
    if (used == down && loss > -WARMTH * Math.log(1 - random.nextDouble())) {
      return;
    }
    replace(down, used);
  }

  private void fillOne(Layout out, int tries) {
    out.clear();
    for (int t = 0; t < tries; t++) {
      filler.fillAtRandom(pool, random, trial);
      if (trial.area > out.area) {
        out.copyFrom(trial);
      }
    }
  }

  /** The weaker of two at first, then any. */
  private void choose(int down) {
    int n = carriers.size();
    for (int i = 0; i < down; i++) {
      int pick;
      do {
        pick = random.nextInt(n);
        if (i == 0) {
          int rival = random.nextInt(n);
          pick = carriers.get(rival).area < carriers.get(pick).area ? rival : pick;
        }
      } while (alreadyTaken(pick, i));
      taken[i] = pick;
    }
  }

  private boolean alreadyTaken(int pick, int count) {
    for (int i = 0; i < count; i++) {
      if (taken[i] == pick) {
        return true;
      }
    }
    return false;
  }

  private void replace(int down, int used) {
    for (int i = 0; i < used; i++) {
      carriers.set(taken[i], rebuilt[i].snapshot());
    }
    List<Layout> gone = new ArrayList<>();
    for (int i = used; i < down; i++) {
      gone.add(carriers.get(taken[i]));
    }
    for (Layout layout : gone) {
      carriers.removeIf(other -> other == layout);
    }
  }

  private boolean waiting() {
    for (int count : pool) {
      if (count > 0) {
        return true;
      }
    }
    return false;
  }
}
