package spangle.fit.hang;

import java.util.List;
import java.util.TreeSet;

/**
 * How many carriers any hanging needs at least. Every figure holds for rows and for free places
 * alike and whatever the turning.
 *
 * <p>Room: dual feasible functions (Fekete and Schepers, "A general framework for bounds for
 * higher-dimensional orthogonal packing problems", Mathematical Methods of Operations Research 60,
 * 2004). A function f of the share a piece takes of a side is dual feasible when shares that go in
 * together never have values adding up to more than 1. With two of them, f(width) x g(height),
 * summed over all pieces, never exceeds the number of faces; a piece that may turn counts with the
 * lesser of its two values.
 */
final class HangBounds {
  private static final double ROUNDING = 1e-7;

  private final Grid grid;
  private final Kind[] kinds;

  HangBounds(Grid grid, Kind[] kinds) {
    this.grid = grid;
    this.kinds = kinds;
  }

  /** Fewest carriers by room, mass and hooks. All kinds must hang. */
  int fewestCarriers() {
    double faces = byRoom();
    int byRoom = (int) Math.ceil(faces / grid.faces - ROUNDING);
    return Math.max(1, Math.max(byRoom, Math.max(byMass(), byHooks())));
  }

  /** Fewest baskets by mass and volume. */
  static int fewestBaskets(CarrierFace basket, List<HangItem> items) {
    double massKg = 0;
    double volumeMm3 = 0;
    for (HangItem item : items) {
      massKg += item.pieces() * item.massKg();
      volumeMm3 += item.pieces() * Limits.envelopeMm3(item);
    }
    double byMass = massKg / basket.maxMassKg();
    double byVolume = volumeMm3 / Limits.usableVolumeMm3(basket);
    return Math.max(1, (int) Math.ceil(Math.max(byMass, byVolume) - ROUNDING));
  }

  private int byMass() {
    double massKg = 0;
    long heavy = 0;
    for (Kind kind : kinds) {
      massKg += kind.pieces * kind.item.massKg();
      heavy += Limits.times(grid.face.maxMassKg(), kind.item.massKg()) == 1 ? kind.pieces : 0;
    }
    return (int) Math.max(heavy, (long) Math.ceil(massKg / grid.face.maxMassKg() - ROUNDING));
  }

  private int byHooks() {
    if (grid.face.maxHooks() == Integer.MAX_VALUE) {
      return 1;
    }
    long hooks = 0;
    for (Kind kind : kinds) {
      hooks += (long) kind.pieces * kind.item.hooksPerPiece();
    }
    return hooks == 0 ? 1 : (int) ((hooks + grid.face.maxHooks() - 1) / grid.face.maxHooks());
  }

  private double byRoom() {
    TreeSet<Integer> widths = new TreeSet<>();
    TreeSet<Integer> drops = new TreeSet<>();
    for (Kind kind : kinds) {
      for (int way = 0; way < 2; way++) {
        if (kind.may(way)) {
          widths.add(kind.across[way]);
          drops.add(kind.drop[way]);
        }
      }
    }
    double[][] across = values(DualFeasible.of(grid.width, widths), true);
    double[][] down = values(DualFeasible.of(grid.height, drops), false);
    double most = 0;
    for (double[] f : across) {
      for (double[] g : down) {
        most = Math.max(most, sum(f, g));
      }
    }
    return most;
  }

  /** Values of each function for every kind and way; a way that never hangs has 0. */
  private double[][] values(List<DualFeasible> functions, boolean ofAcross) {
    double[][] values = new double[functions.size()][2 * kinds.length];
    for (int f = 0; f < values.length; f++) {
      for (int k = 0; k < kinds.length; k++) {
        for (int way = 0; way < 2; way++) {
          if (kinds[k].may(way)) {
            int size = ofAcross ? kinds[k].across[way] : kinds[k].drop[way];
            values[f][2 * k + way] = functions.get(f).of(size);
          }
        }
      }
    }
    return values;
  }

  private double sum(double[] across, double[] down) {
    double total = 0;
    for (int k = 0; k < kinds.length; k++) {
      Kind kind = kinds[k];
      double first = across[2 * k] * down[2 * k];
      double second = across[2 * k + 1] * down[2 * k + 1];
      double least = !kind.may(1) ? first : !kind.may(0) ? second : Math.min(first, second);
      total += kind.pieces * least;
    }
    return total;
  }
}
