package spangle.part.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spangle.part.ShapeException;

/** The separate surfaces of a body and which lies in which. */
final class Shells {
  private static final int MOST = 2_000;
  private static final long MOST_CROSSINGS = 60_000_000L;

  /** A direction that runs along no edge anybody draws. */
  private static final double[] RAY = {0.8017236, 0.2672612, 0.5345225 + 1e-4};

  /** One connected surface. */
  static final class Shell {
    final List<Integer> triangles = new ArrayList<>();
    final double[] low = {1e300, 1e300, 1e300};
    final double[] high = {-1e300, -1e300, -1e300};
    double areaMm2;
    double volumeMm3;
    int depth;
    int parent = -1;
  }

  final List<Shell> list = new ArrayList<>();
  private final Triangles triangles;

  Shells(Triangles triangles, Joints joints, boolean[] left) {
    this.triangles = triangles;
    int[] group = new int[joints.count];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int t = 0; t < left.length; t++) {
      if (!left[t]) {
        group[root(group, joints.of[t][0])] = root(group, joints.of[t][1]);
        group[root(group, joints.of[t][1])] = root(group, joints.of[t][2]);
      }
    }
    Shell[] byRoot = new Shell[joints.count];
    for (int t = 0; t < left.length; t++) {
      if (left[t]) {
        continue;
      }
      int root = root(group, joints.of[t][0]);
      if (byRoot[root] == null) {
        byRoot[root] = new Shell();
        list.add(byRoot[root]);
      }
      take(byRoot[root], t);
    }
    for (Shell shell : list) {
      double[] top = {shell.low[0], shell.low[1], shell.low[2]};
      shell.triangles.forEach(t -> shell.volumeMm3 += triangles.volumeMm3(t, top));
    }
  }

  private static int root(int[] group, int joint) {
    int at = joint;
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }

  private void take(Shell shell, int t) {
    shell.triangles.add(t);
    shell.areaMm2 += triangles.areaMm2(t);
    for (int corner = 0; corner < 3; corner++) {
      for (int axis = 0; axis < 3; axis++) {
        double value = triangles.at(t, corner, axis);
        shell.low[axis] = Math.min(shell.low[axis], value);
        shell.high[axis] = Math.max(shell.high[axis], value);
      }
    }
  }

  /** Finds which lies in which; only for closed surfaces. */
  void nest() {
    if (list.size() > MOST) {
      throw new ShapeException(
          "number of separate surfaces", list.size(), "at most " + MOST, "export one body");
    }
    list.sort(Comparator.comparingDouble(s -> -Math.abs(s.volumeMm3)));
    long crossings = 0;
    for (int i = 0; i < list.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (!covers(list.get(j), list.get(i))) {
          continue;
        }
        crossings += list.get(j).triangles.size();
        if (crossings > MOST_CROSSINGS) {
          throw new ShapeException(
              "number of surfaces lying in one another",
              list.size(),
              "few enough to be told apart",
              "export one body");
        }
        if (holds(list.get(j), list.get(i))) {
          list.get(i).parent = j;
        }
      }
      int parent = list.get(i).parent;
      list.get(i).depth = parent < 0 ? 0 : list.get(parent).depth + 1;
    }
  }

  private static boolean covers(Shell outer, Shell inner) {
    for (int axis = 0; axis < 3; axis++) {
      if (inner.low[axis] < outer.low[axis] || inner.high[axis] > outer.high[axis]) {
        return false;
      }
    }
    return true;
  }

  /** A ray from inside goes out through the surface an odd number of times. */
  private boolean holds(Shell outer, Shell inner) {
    int t = inner.triangles.get(0);
    double[] from = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      from[axis] =
          0.5 * triangles.at(t, 0, axis)
              + 0.3 * triangles.at(t, 1, axis)
              + 0.2 * triangles.at(t, 2, axis);
    }
    int crossed = 0;
    for (int triangle : outer.triangles) {
      crossed += crosses(triangle, from) ? 1 : 0;
    }
    return crossed % 2 == 1;
  }

  /** Whether the ray meets a triangle ahead of its start (Moeller and Trumbore). */
  private boolean crosses(int t, double[] from) {
    double[] ab = new double[3];
    double[] ac = new double[3];
    double[] toStart = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      double a = triangles.at(t, 0, axis);
      ab[axis] = triangles.at(t, 1, axis) - a;
      ac[axis] = triangles.at(t, 2, axis) - a;
      toStart[axis] = from[axis] - a;
    }
    double[] p = Triangles.cross(RAY, ac);
    double det = dot(ab, p);
    if (det == 0) {
      return false;
    }
    double u = dot(toStart, p) / det;
    double[] q = Triangles.cross(toStart, ab);
    double v = dot(RAY, q) / det;
    return u >= 0 && v >= 0 && u + v <= 1 && dot(ac, q) / det > 0;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
