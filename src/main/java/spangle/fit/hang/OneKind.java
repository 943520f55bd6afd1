package spangle.fit.hang;

/**
 * One kind of piece alone on a face: every split into an upright and a turned part is tried. Under
 * bars the answer is the most there can be, for in a row of one kind nothing is gained by mixing.
 */
final class OneKind {
  private final Grid grid;
  private final Kind kind;

  private long best;
  private boolean cutAcross;
  private int firstWay;
  private int firstLines;

  private OneKind(Grid grid, Kind kind) {
    this.grid = grid;
    this.kind = kind;
    for (int way = 0; way < 2; way++) {
      if (kind.may(way)) {
        tryRowsOf(way);
        if (!grid.rows) {
          tryColumnsOf(way);
        }
      }
    }
  }

  /** Most pieces on one carrier. */
  static int perCarrier(Grid grid, Kind kind) {
    return (int) Math.min(Integer.MAX_VALUE, new OneKind(grid, kind).best * grid.faces);
  }

  /** Hangs the given number, face after face; false when they do not all go on. */
  static boolean hang(Grid grid, Kind[] kinds, int index, int pieces, Layout out) {
    OneKind plan = new OneKind(grid, kinds[index]);
    if (plan.best * grid.faces < pieces) {
      return false;
    }
    int left = pieces;
    for (int face = 0; face < grid.faces && left > 0; face++) {
      left = plan.hangFace(kinds, index, face, left, out);
    }
    return left == 0;
  }

  /** Rows of one way on top, the rest of the height in rows of the other. */
  private void tryRowsOf(int way) {
    int other = 1 - way;
    long perRow = perRow(way, 0);
    int mostRows = grid.height / kind.drop[way];
    int from = kind.may(other) ? 1 : mostRows;
    for (int rows = mostRows; rows >= from; rows--) {
      long below = kind.may(other) ? (grid.height - rows * kind.drop[way]) / kind.drop[other] : 0;
      keep(rows * perRow + below * perRow(other, 0), false, way, rows);
    }
  }

  /** Columns of one way at the left, the rest of the width in columns of the other. */
  private void tryColumnsOf(int way) {
    int other = 1 - way;
    long perColumn = grid.height / kind.drop[way];
    int mostColumns = perRow(way, 0);
    int from = kind.may(other) ? 1 : mostColumns;
    for (int columns = mostColumns; columns >= from; columns--) {
      long beside =
          kind.may(other)
              ? (long) perRow(other, columns * kind.across[way]) * (grid.height / kind.drop[other])
              : 0;
      keep(columns * perColumn + beside, true, way, columns);
    }
  }

  private void keep(long count, boolean across, int way, int lines) {
    if (count > best) {
      best = count;
      cutAcross = across;
      firstWay = way;
      firstLines = lines;
    }
  }

  /** Pieces side by side from a left edge to the end of the face. */
  private int perRow(int way, int left) {
    return kind.may(way) ? Math.max(0, kind.end[way] - left) / kind.across[way] : 0;
  }

  private int hangFace(Kind[] kinds, int index, int face, int pieces, Layout out) {
    int way = firstWay;
    int other = 1 - way;
    int left = pieces;
    if (cutAcross) {
      int x = firstLines * kind.across[way];
      left =
          block(kinds, index, way, face, 0, 0, firstLines, grid.height / kind.drop[way], left, out);
      if (kind.may(other)) {
        int rows = grid.height / kind.drop[other];
        left = block(kinds, index, other, face, x, 0, perRow(other, x), rows, left, out);
      }
    } else {
      int y = firstLines * kind.drop[way];
      left = block(kinds, index, way, face, 0, 0, perRow(way, 0), firstLines, left, out);
      if (kind.may(other)) {
        int rows = (grid.height - y) / kind.drop[other];
        left = block(kinds, index, other, face, 0, y, perRow(other, 0), rows, left, out);
      }
    }
    return left;
  }

  /** Hangs a block row by row until it or the pieces end; returns the pieces left. */
  private int block(
      Kind[] kinds,
      int index,
      int way,
      int face,
      int x,
      int y,
      int columns,
      int rows,
      int pieces,
      Layout out) {
    if (columns == 0 || rows == 0 || pieces == 0) {
      return pieces;
    }
    int full = Math.min(rows, pieces / columns);
    if (full > 0) {
      out.add(kinds, index, way, face, x, y, columns, full);
    }
    int left = pieces - full * columns;
    if (full < rows && left > 0) {
      out.add(kinds, index, way, face, x, y + full * kind.drop[way], left, 1);
      return 0;
    }
    return left;
  }
}
