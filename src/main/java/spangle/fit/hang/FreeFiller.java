package spangle.fit.hang;

import java.util.SplittableRandom;

/**
 * Free places. Kinds go on in order; each takes the place among the largest empty rectangles that
 * suits it best, many pieces alike as one block.
 */
final class FreeFiller extends Filler {
  private static final double[] SPREADS = {0, 0.1, 0.4, 1.0, 2.0};
  private static final int KEYS = 5;

  /** Ways to rate a place; the lower value wins. */
  private enum Rating {
    SHORT_SIDE,
    LONG_SIDE,
    AREA,
    TOP_LEFT
  }

  private static final Rating[] RATINGS = Rating.values();

  private final FreeRoom room = new FreeRoom();
  private final double unitAcross;
  private final double unitDrop;

  private int bestRect;
  private int bestWay;
  private int bestColumns;
  private int bestRows;
  private double bestRate;
  private double bestTie;

  FreeFiller(Grid grid, Kind[] kinds) {
    super(grid, kinds);
    unitAcross = 1.0 / grid.width;
    unitDrop = 1.0 / grid.height;
  }

  @Override
  int rules() {
    return 4;
  }

  @Override
  void byRule(int rule, Layout out) {
    int key = rule < 2 ? 0 : 1;
    for (int k = 0; k < kinds.length; k++) {
      key(k, left[k] > 0 ? size(k, key) : 0);
    }
    place(sortWaiting(), rule % 2 == 0 ? Rating.SHORT_SIDE : Rating.AREA, out);
  }

  @Override
  void atRandom(SplittableRandom random, Layout out) {
    double spread = SPREADS[random.nextInt(SPREADS.length)];
    int key = random.nextInt(KEYS);
    Rating rating = RATINGS[random.nextInt(RATINGS.length)];
    for (int k = 0; k < kinds.length; k++) {
      if (left[k] > 0) {
        key(k, size(k, key) * shake(random, spread));
      }
    }
    place(sortWaiting(), rating, out);
  }

  /** Several notions of how large a piece is, in shares of the face. */
  private double size(int k, int key) {
    Kind kind = kinds[k];
    int way = kind.lying();
    if (!kind.may(way)) {
      return 0;
    }
    double w = kind.across[way] * unitAcross;
    double h = kind.drop[way] * unitDrop;
    return switch (key) {
      case 0 -> w * h;
      case 1 -> Math.max(w, h) + 0.01 * Math.min(w, h);
      case 2 -> w + h;
      case 3 -> Math.min(w, h) + 0.01 * Math.max(w, h);
      default -> h;
    };
  }

  private void place(int waiting, Rating rating, Layout out) {
    room.reset(grid);
    for (int i = 0; i < waiting; i++) {
      int k = order[i];
      int count = available(k);
      while (count > 0 && findPlace(kinds[k], count, rating)) {
        int x = room.left(bestRect);
        int y = room.top(bestRect);
        int face = room.face(bestRect);
        Kind kind = kinds[k];
        out.add(kinds, k, bestWay, face, x, y, bestColumns, bestRows);
        room.take(x, y, bestColumns * kind.across[bestWay], bestRows * kind.drop[bestWay], face);
        take(k, bestColumns * bestRows);
        count = available(k);
      }
    }
  }

  private boolean findPlace(Kind kind, int count, Rating rating) {
    bestRect = -1;
    bestRate = Double.MAX_VALUE;
    for (int way = 0; way < 2; way++) {
      if (kind.may(way)) {
        findPlace(kind, way, count, rating);
      }
    }
    return bestRect >= 0;
  }

  private void findPlace(Kind kind, int way, int count, Rating rating) {
    int w = kind.across[way];
    int h = kind.drop[way];
    for (int i = 0; i < room.size(); i++) {
      int roomAcross = Math.min(room.width(i), kind.end[way] - room.left(i));
      int roomDown = room.height(i);
      if (roomAcross < w || roomDown < h) {
        continue;
      }
      int columns = count == 1 ? 1 : Math.min(count, roomAcross / w);
      int rows = count == 1 ? 1 : Math.min(count / columns, roomDown / h);
      double across = (roomAcross - columns * w) * unitAcross;
      double down = (roomDown - rows * h) * unitDrop;
      double rate;
      double tie;
      switch (rating) {
        case SHORT_SIDE -> {
          rate = Math.min(across, down);
          tie = Math.max(across, down);
        }
        case LONG_SIDE -> {
          rate = Math.max(across, down);
          tie = Math.min(across, down);
        }
        case AREA -> {
          rate =
              roomAcross * unitAcross * roomDown * unitDrop
                  - columns * w * unitAcross * rows * h * unitDrop;
          tie = Math.min(across, down);
        }
        default -> {
          rate = room.face(i) + (room.top(i) + rows * h) * unitDrop;
          tie = room.left(i);
        }
      }
      if (rate < bestRate || (rate == bestRate && tie < bestTie)) {
        bestRate = rate;
        bestTie = tie;
        bestRect = i;
        bestWay = way;
        bestColumns = columns;
        bestRows = rows;
      }
    }
  }
}
