package spangle.fit.hang;

import java.util.List;
import java.util.SplittableRandom;

/** One question to the quick rules: do these pieces go on one carrier, and how. */
final class QuickHanging {
  /** A few chances more where they cost little; the same chances every time. */
  private static final int CHANCES_IN_ROWS = 8;

  private static final int CHANCES_FREE = 4;

  /** Products of large whole numbers lose their last digits. */
  private static final double ROUNDING = 1e-12;

  private final Grid grid;
  private final Kind[] kinds;
  private final int[] pool;
  private final boolean possible;
  private final Layout layout = new Layout();

  QuickHanging(CarrierFace face, List<HangItem> items) {
    grid = new Grid(face);
    kinds = Kind.of(grid, items);
    pool = new int[kinds.length];
    double area = 0;
    boolean all = true;
    for (int k = 0; k < kinds.length; k++) {
      pool[k] = kinds[k].pieces;
      all &= kinds[k].hangs();
      area += kinds[k].area * pool[k];
    }
    possible =
        all
            && area <= (double) grid.width * grid.height * grid.faces * (1 + ROUNDING)
            && Limits.keepMassAndHooks(face, items);
  }

  static boolean fits(CarrierFace face, List<HangItem> items) {
    if (items.isEmpty()) {
      return true;
    }
    if (face.style() == CarrierFace.Style.BULK) {
      return Limits.keepMassAndHooks(face, items)
          && Limits.keepVolume(face, items)
          && items.stream().allMatch(item -> Limits.goesIn(face, item));
    }
    return new QuickHanging(face, items).hang();
  }

  /** Tries the rules one after the other until one hangs every piece. */
  boolean hang() {
    if (!possible) {
      return false;
    }
    if (kinds.length == 1) {
      layout.clear();
      return OneKind.hang(grid, kinds, 0, pool[0], layout);
    }
    Filler rows = new RowFiller(grid, kinds);
    if (hangs(rows)) {
      return true;
    }
    if (grid.rows) {
      return hangsByChance(rows, CHANCES_IN_ROWS);
    }
    Filler free = new FreeFiller(grid, kinds);
    return hangs(free) || hangsByChance(free, CHANCES_FREE);
  }

  private boolean hangs(Filler filler) {
    for (int rule = 0; rule < filler.rules(); rule++) {
      filler.fill(pool, rule, layout);
      if (filler.nothingLeft()) {
        return true;
      }
    }
    return false;
  }

  /** Tries harder: hangs by chance, with the same chances every time, until every piece hangs. */
  boolean hangByChance(int tries) {
    if (!possible || kinds.length == 1 || new HangBounds(grid, kinds).fewestCarriers() > 1) {
      return false;
    }
    return hangsByChance(Filler.of(grid, kinds), tries);
  }

  private boolean hangsByChance(Filler filler, int tries) {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < tries; i++) {
      filler.fillAtRandom(pool, random, layout);
      if (filler.nothingLeft()) {
        return true;
      }
    }
    return false;
  }

  HangPattern pattern() {
    return layout.pattern(grid, kinds, new int[kinds.length]);
  }
}
