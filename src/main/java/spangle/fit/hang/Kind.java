package spangle.fit.hang;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Pieces alike in the units of a {@link Grid}: as described (0) and turned (1). */
final class Kind {
  /** Width of a way of hanging that is not allowed or does not fit. */
  static final int NEVER = Integer.MAX_VALUE;

  /** What the pieces are like; its key and number are those of the first item only. */
  final HangItem item;

  /** All items of which the pieces are alike. */
  private final List<HangItem> items = new ArrayList<>();

  /** Pieces of all items together. */
  int pieces;

  final int[] across = {NEVER, NEVER};
  final int[] drop = {NEVER, NEVER};

  /** Furthest right end. */
  final int[] end = {-1, -1};

  /** Lesser of the areas of the ways it may hang, square units with gaps. */
  final double area;

  Kind(Grid grid, HangItem item) {
    this.item = item;
    this.items.add(item);
    this.pieces = item.pieces();
    if (item.depthMm() <= grid.face.depthMm()) {
      lay(grid, 0, item.acrossMm(), item.dropMm());
      if (item.mayTurn() && item.acrossMm() != item.dropMm()) {
        lay(grid, 1, item.dropMm(), item.acrossMm());
      }
    }
    this.area = Math.min(areaOf(0), areaOf(1));
  }

  /** Kinds of these items, in their order; items whose pieces are alike make one kind. */
  static Kind[] of(Grid grid, List<HangItem> items) {
    Kind[] kinds = new Kind[items.size()];
    int n = 0;
    for (HangItem item : items) {
      int k = 0;
      while (k < n && !alike(kinds[k].item, item)) {
        k++;
      }
      if (k < n) {
        kinds[k].items.add(item);
        kinds[k].pieces += item.pieces();
      } else {
        kinds[n++] = new Kind(grid, item);
      }
    }
    return n == kinds.length ? kinds : Arrays.copyOf(kinds, n);
  }

  private static boolean alike(HangItem a, HangItem b) {
    return a.acrossMm() == b.acrossMm()
        && a.dropMm() == b.dropMm()
        && a.depthMm() == b.depthMm()
        && a.massKg() == b.massKg()
        && a.hooksPerPiece() == b.hooksPerPiece()
        && a.mayTurn() == b.mayTurn();
  }

  /** Key of the n-th piece of the kind, counted through its items in order, from 0. */
  String key(int n) {
    int left = n;
    for (HangItem one : items) {
      if (left < one.pieces()) {
        return one.key();
      }
      left -= one.pieces();
    }
    throw new IllegalArgumentException("piece " + n + " of " + pieces);
  }

  private void lay(Grid grid, int way, double acrossMm, double dropMm) {
    int w = grid.across(acrossMm);
    int h = grid.drop(dropMm);
    int furthest = grid.furthestEnd(acrossMm);
    if (w <= furthest && h <= grid.height) {
      across[way] = w;
      drop[way] = h;
      end[way] = furthest;
    }
  }

  private double areaOf(int way) {
    return may(way) ? (double) across[way] * drop[way] : Double.MAX_VALUE;
  }

  /** Whether it may hang this way on an empty face. */
  boolean may(int way) {
    return across[way] != NEVER;
  }

  /** Whether it may hang at all. */
  boolean hangs() {
    return may(0) || may(1);
  }

  /** The way with the lesser drop; as described when both are alike. */
  int lying() {
    return drop[1] < drop[0] ? 1 : 0;
  }

  /** The way with the greater drop of those it may hang. */
  int standing() {
    if (!may(0) || !may(1)) {
      return may(0) ? 0 : 1;
    }
    return drop[1] > drop[0] ? 1 : 0;
  }

  /** The narrowest way that drops no more than this, or -1. */
  int narrowestWithin(int mostDrop) {
    boolean first = drop[0] <= mostDrop;
    boolean second = drop[1] <= mostDrop;
    if (first && second) {
      return across[1] < across[0] ? 1 : 0;
    }
    return first ? 0 : second ? 1 : -1;
  }
}
