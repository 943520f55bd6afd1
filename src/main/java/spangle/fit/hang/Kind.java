package spangle.fit.hang;

/** Pieces alike in the units of a {@link Grid}: as described (0) and turned (1). */
final class Kind {
  /** Width of a way of hanging that is not allowed or does not fit. */
  static final int NEVER = Integer.MAX_VALUE;

  final HangItem item;
  final int pieces;
  final int[] across = {NEVER, NEVER};
  final int[] drop = {NEVER, NEVER};

  /** Furthest right end. */
  final int[] end = {-1, -1};

  /** Lesser of the areas of the ways it may hang, square units with gaps. */
  final double area;

  Kind(Grid grid, HangItem item) {
    this.item = item;
    this.pieces = item.pieces();
    if (item.depthMm() <= grid.face.depthMm()) {
      lay(grid, 0, item.acrossMm(), item.dropMm());
      if (item.mayTurn() && item.acrossMm() != item.dropMm()) {
        lay(grid, 1, item.dropMm(), item.acrossMm());
      }
    }
    this.area = Math.min(areaOf(0), areaOf(1));
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

  /** Greatest number of pieces that mass and hooks allow on one carrier. */
  int mostByMassAndHooks(CarrierFace face) {
    return Math.min(mostByMass(face), mostByHooks(face));
  }

  int mostByMass(CarrierFace face) {
    return Limits.times(face.maxMassKg(), item.massKg());
  }

  int mostByHooks(CarrierFace face) {
    if (item.hooksPerPiece() == 0 || face.maxHooks() == Integer.MAX_VALUE) {
      return Integer.MAX_VALUE;
    }
    return face.maxHooks() / item.hooksPerPiece();
  }
}
