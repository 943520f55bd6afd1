package spangle.fit.hang;

import java.util.List;

/** One question to the quick rules: do these pieces go on one carrier, and how. */
final class QuickHanging {
  private final Grid grid;
  private final Kind[] kinds;
  private final int[] pool;
  private final boolean possible;
  private final Layout layout = new Layout();

  QuickHanging(CarrierFace face, List<HangItem> items) {
    grid = new Grid(face);
    kinds = new Kind[items.size()];
    pool = new int[kinds.length];
    double area = 0;
    boolean all = true;
    for (int k = 0; k < kinds.length; k++) {
      kinds[k] = new Kind(grid, items.get(k));
      pool[k] = kinds[k].pieces;
      all &= kinds[k].hangs();
      area += kinds[k].area * pool[k];
    }
    possible =
        all
            && area <= (double) grid.width * grid.height * grid.faces
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
    return hangs(new RowFiller(grid, kinds)) || (!grid.rows && hangs(new FreeFiller(grid, kinds)));
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

  HangPattern pattern() {
    return layout.pattern(grid, kinds);
  }
}
