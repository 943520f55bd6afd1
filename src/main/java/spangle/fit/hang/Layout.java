package spangle.fit.hang;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What hangs where on one carrier, in the units of a {@link Grid}: blocks of pieces alike, each a
 * number of columns by a number of rows. Grows as needed and is used again and again.
 */
final class Layout {
  private static final int FIELDS = 7;

  private int[] cells = new int[FIELDS * 16];
  private int blocks;

  /** Sum of the areas of the pieces, square units with gaps. */
  double area;

  void clear() {
    blocks = 0;
    area = 0;
  }

  void add(Kind[] kinds, int kind, int way, int face, int x, int y, int columns, int rows) {
    if ((blocks + 1) * FIELDS > cells.length) {
      cells = Arrays.copyOf(cells, cells.length * 2);
    }
    int at = blocks++ * FIELDS;
    cells[at] = kind;
    cells[at + 1] = way;
    cells[at + 2] = face;
    cells[at + 3] = x;
    cells[at + 4] = y;
    cells[at + 5] = columns;
    cells[at + 6] = rows;
    area += kinds[kind].area * columns * rows;
  }

  int blocks() {
    return blocks;
  }

  int kind(int block) {
    return cells[block * FIELDS];
  }

  int way(int block) {
    return cells[block * FIELDS + 1];
  }

  int face(int block) {
    return cells[block * FIELDS + 2];
  }

  int x(int block) {
    return cells[block * FIELDS + 3];
  }

  int y(int block) {
    return cells[block * FIELDS + 4];
  }

  /** Pieces in a block. */
  int count(int block) {
    return cells[block * FIELDS + 5] * cells[block * FIELDS + 6];
  }

  /** Moves the block sideways; the row builder sorts a row when it is complete. */
  void moveTo(int block, int x) {
    cells[block * FIELDS + 3] = x;
  }

  /** Takes over another layout. */
  void copyFrom(Layout other) {
    if (cells.length < other.blocks * FIELDS) {
      cells = new int[other.cells.length];
    }
    System.arraycopy(other.cells, 0, cells, 0, other.blocks * FIELDS);
    blocks = other.blocks;
    area = other.area;
  }

  /** A copy that takes no more memory than it needs. */
  Layout snapshot() {
    Layout copy = new Layout();
    copy.cells = Arrays.copyOf(cells, Math.max(FIELDS, blocks * FIELDS));
    copy.blocks = blocks;
    copy.area = area;
    return copy;
  }

  /** Adds (sign 1) or takes away (sign -1) the pieces of this layout from counts by kind. */
  void count(int[] counts, int sign) {
    for (int b = 0; b < blocks; b++) {
      counts[kind(b)] += sign * count(b);
    }
  }

  /**
   * The pattern in millimetres.
   *
   * @param dealt pieces of each kind that already have their key; counts on
   */
  HangPattern pattern(Grid grid, Kind[] kinds, int[] dealt) {
    List<HangPattern.HungPiece> pieces = new ArrayList<>();
    for (int b = 0; b < blocks; b++) {
      Kind kind = kinds[kind(b)];
      int way = way(b);
      boolean turned = way == 1;
      double widthMm = turned ? kind.item.dropMm() : kind.item.acrossMm();
      double heightMm = turned ? kind.item.acrossMm() : kind.item.dropMm();
      int columns = cells[b * FIELDS + 5];
      int rows = cells[b * FIELDS + 6];
      for (int row = 0; row < rows; row++) {
        double topMm = grid.topMm(y(b) + row * kind.drop[way]);
        for (int column = 0; column < columns; column++) {
          double leftMm = grid.leftMm(x(b) + column * kind.across[way]);
          pieces.add(
              new HangPattern.HungPiece(
                  kind.key(dealt[kind(b)]++), face(b), leftMm, topMm, widthMm, heightMm, turned));
        }
      }
    }
    return HangPattern.inReadingOrder(pieces);
  }
}
