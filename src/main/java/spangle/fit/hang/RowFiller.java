package spangle.fit.hang;

import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * Rows under bars. The longest piece that waits opens a row; behind it go pieces that drop no more,
 * each turned so that it takes the least width.
 */
final class RowFiller extends Filler {
  private static final int LYING = 0;
  private static final int STANDING = 1;
  private static final int SPARING = 2;
  private static final double[] SPREADS = {0, 0.1, 0.4, 1.2};

  /** The way each kind hangs when it opens a row. */
  private final int[] opening;

  private double skipChance;

  RowFiller(Grid grid, Kind[] kinds) {
    super(grid, kinds);
    opening = new int[kinds.length];
  }

  @Override
  int rules() {
    return 4;
  }

  @Override
  void byRule(int rule, Layout out) {
    for (int k = 0; k < kinds.length; k++) {
      Kind kind = kinds[k];
      opening[k] =
          switch (rule) {
            case LYING -> kind.lying();
            case STANDING -> kind.standing();
            case SPARING -> sparing(kind);
            default -> kind.may(0) ? 0 : 1;
          };
      key(k, kind.hangs() ? kind.drop[opening[k]] : 0);
    }
    skipChance = 0;
    fillFaces(sortWaiting(), null, out);
  }

  @Override
  void atRandom(SplittableRandom random, Layout out) {
    double spread = SPREADS[random.nextInt(SPREADS.length)];
    int policy = random.nextInt(5);
    skipChance = random.nextInt(3) == 0 ? 0.15 * random.nextDouble() : 0;
    for (int k = 0; k < kinds.length; k++) {
      if (left[k] > 0) {
        Kind kind = kinds[k];
        opening[k] =
            switch (policy) {
              case LYING -> kind.lying();
              case STANDING -> kind.standing();
              case SPARING -> sparing(kind);
              default -> random.nextBoolean() ? kind.lying() : kind.standing();
            };
        key(k, kind.drop[opening[k]] * shake(random, spread));
      }
    }
    fillFaces(sortWaiting(), random, out);
  }

  /** The way that takes the least height per piece in rows of its own. */
  private static int sparing(Kind kind) {
    if (!kind.may(0) || !kind.may(1)) {
      return kind.standing();
    }
    long perRow0 = kind.end[0] / kind.across[0];
    long perRow1 = kind.end[1] / kind.across[1];
    return kind.drop[1] * perRow0 < kind.drop[0] * perRow1 ? 1 : 0;
  }

  private void fillFaces(int waiting, @Nullable SplittableRandom random, Layout out) {
    for (int face = 0; face < grid.faces; face++) {
      int y = 0;
      int from = 0;
      while (from < waiting) {
        int opener = order[from];
        int way = opening[opener];
        int room = grid.height - y;
        if (kinds[opener].drop[way] > room) {
          way = 1 - way;
        }
        if (kinds[opener].drop[way] > room || available(opener) == 0) {
          from++;
          continue;
        }
        fillRow(from, waiting, opener, way, face, y, random, out);
        y += kinds[opener].drop[way];
      }
    }
  }

  /** One row: the opener's kind first, then whatever drops no more, in order. */
  private void fillRow(
      int from,
      int waiting,
      int opener,
      int way,
      int face,
      int y,
      @Nullable SplittableRandom random,
      Layout out) {
    int drop = kinds[opener].drop[way];
    int firstBlock = out.blocks();
    int used = 0;
    int end = 0;
    boolean mixedEnds = false;
    for (int i = from; i < waiting; i++) {
      int k = order[i];
      int count = available(k);
      if (count == 0) {
        continue;
      }
      if (random != null && i > from && skipChance > 0 && random.nextDouble() < skipChance) {
        continue;
      }
      Kind kind = kinds[k];
      int lay = kind.narrowestWithin(drop);
      if (lay < 0) {
        continue;
      }
      int reach = Math.max(end, kind.end[lay]);
      int fit = Math.min(count, (reach - used) / kind.across[lay]);
      if (fit <= 0) {
        continue;
      }
      mixedEnds |= end != 0 && end != kind.end[lay];
      end = reach;
      out.add(kinds, k, lay, face, used, y, fit, 1);
      used += fit * kind.across[lay];
      take(k, fit);
    }
    if (mixedEnds) {
      putFurthestReachingLast(firstBlock, out);
    }
  }

  /**
   * With a hook pitch some widths reach one hook place further than others; only the last piece of
   * a row has to, so one of those goes last.
   */
  private void putFurthestReachingLast(int firstBlock, Layout out) {
    int last = firstBlock;
    for (int b = firstBlock; b < out.blocks(); b++) {
      if (endOf(out, b) > endOf(out, last)) {
        last = b;
      }
    }
    int x = 0;
    for (int b = firstBlock; b < out.blocks(); b++) {
      if (b != last) {
        out.moveTo(b, x);
        x += out.count(b) * kinds[out.kind(b)].across[out.way(b)];
      }
    }
    out.moveTo(last, x);
  }

  private int endOf(Layout out, int block) {
    return kinds[out.kind(block)].end[out.way(block)];
  }
}
