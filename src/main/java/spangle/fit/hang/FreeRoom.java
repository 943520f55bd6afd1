package spangle.fit.hang;

import java.util.Arrays;

/**
 * The room left on one carrier as a list of the largest empty rectangles, which may overlap one
 * another: taking a place cuts every rectangle it touches into the up to four that remain, and
 * those inside another are dropped.
 */
final class FreeRoom {
  private int[] left = new int[64];
  private int[] top = new int[64];
  private int[] right = new int[64];
  private int[] bottom = new int[64];
  private int[] face = new int[64];
  private int size;

  /** Empties every face. */
  void reset(Grid grid) {
    size = 0;
    for (int f = 0; f < grid.faces; f++) {
      add(0, 0, grid.width, grid.height, f);
    }
  }

  int size() {
    return size;
  }

  int left(int i) {
    return left[i];
  }

  int top(int i) {
    return top[i];
  }

  int width(int i) {
    return right[i] - left[i];
  }

  int height(int i) {
    return bottom[i] - top[i];
  }

  int face(int i) {
    return face[i];
  }

  /** Takes a place; it must lie inside one of the rectangles. */
  void take(int x, int y, int w, int h, int onFace) {
    int x2 = x + w;
    int y2 = y + h;
    int before = size;
    int kept = 0;
    int fresh = before;
    for (int i = 0; i < before; i++) {
      boolean apart =
          face[i] != onFace || left[i] >= x2 || right[i] <= x || top[i] >= y2 || bottom[i] <= y;
      if (apart) {
        continue;
      }
      int l = left[i];
      int t = top[i];
      int r = right[i];
      int b = bottom[i];
      right[i] = l;
      if (l < x) {
        add(l, t, x, b, onFace);
      }
      if (r > x2) {
        add(x2, t, r, b, onFace);
      }
      if (t < y) {
        add(l, t, r, y, onFace);
      }
      if (b > y2) {
        add(l, y2, r, b, onFace);
      }
    }
    for (int i = 0; i < before; i++) {
      if (right[i] > left[i]) {
        move(i, kept++);
      }
    }
    int old = kept;
    for (int i = fresh; i < size; i++) {
      if (inAnother(i, old, fresh)) {
        right[i] = left[i];
      }
    }
    for (int i = fresh; i < size; i++) {
      if (right[i] > left[i]) {
        move(i, kept++);
      }
    }
    size = kept;
  }

  /**
   * Whether a new rectangle lies in an old one, or in another new one (of two alike the first
   * stays).
   */
  private boolean inAnother(int i, int old, int fresh) {
    for (int j = 0; j < old; j++) {
      if (inside(i, j)) {
        return true;
      }
    }
    for (int j = fresh; j < size; j++) {
      if (j != i && inside(i, j) && (j < i || !inside(j, i))) {
        return true;
      }
    }
    return false;
  }

  private boolean inside(int i, int j) {
    return left[i] >= left[j]
        && right[i] <= right[j]
        && top[i] >= top[j]
        && bottom[i] <= bottom[j]
        && face[i] == face[j];
  }

  private void move(int from, int to) {
    if (from != to) {
      left[to] = left[from];
      top[to] = top[from];
      right[to] = right[from];
      bottom[to] = bottom[from];
      face[to] = face[from];
    }
  }

  private void add(int l, int t, int r, int b, int onFace) {
    if (size == left.length) {
      int more = size * 2;
      left = Arrays.copyOf(left, more);
      top = Arrays.copyOf(top, more);
      right = Arrays.copyOf(right, more);
      bottom = Arrays.copyOf(bottom, more);
      face = Arrays.copyOf(face, more);
    }
    left[size] = l;
    top[size] = t;
    right[size] = r;
    bottom[size] = b;
    face[size] = onFace;
    size++;
  }
}
