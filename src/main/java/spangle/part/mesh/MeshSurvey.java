package spangle.part.mesh;

import java.util.Optional;
import spangle.measure.Box;
import spangle.part.Solid;
import spangle.part.mesh.Shells.Shell;

/** Measures a body made of triangles. */
final class MeshSurvey {
  /** Corners this near, as a share of the size, were one corner before the file was written. */
  private static final double WELD = 2e-6;

  private final Triangles triangles;
  private final double[] low = {1e300, 1e300, 1e300};
  private final double[] high = {-1e300, -1e300, -1e300};

  MeshSurvey(Triangles triangles) {
    this.triangles = triangles;
    for (int t = 0; t < triangles.count(); t++) {
      for (int corner = 0; corner < 3; corner++) {
        for (int axis = 0; axis < 3; axis++) {
          low[axis] = Math.min(low[axis], triangles.at(t, corner, axis));
          high[axis] = Math.max(high[axis], triangles.at(t, corner, axis));
        }
      }
    }
  }

  MeshFacts facts() {
    Joints joints = new Joints(triangles, 0);
    boolean[] left = flat(joints);
    Seams seams = new Seams(joints, left);
    boolean welded = false;
    double size = Math.max(high[0] - low[0], Math.max(high[1] - low[1], high[2] - low[2]));
    if (!seams.closed() && size > 0) {
      Joints near = new Joints(triangles, WELD * size);
      boolean[] nearLeft = flat(near);
      Seams nearSeams = new Seams(near, nearLeft);
      if (nearSeams.closed()) {
        joints = near;
        left = nearLeft;
        seams = nearSeams;
        welded = true;
      }
    }
    return facts(new Shells(triangles, joints, left), seams, left, welded);
  }

  private boolean[] flat(Joints joints) {
    boolean[] left = new boolean[triangles.count()];
    for (int t = 0; t < left.length; t++) {
      left[t] = joints.flat(t);
    }
    return left;
  }

  private MeshFacts facts(Shells shells, Seams seams, boolean[] left, boolean welded) {
    int leftOut = 0;
    for (boolean l : left) {
      leftOut += l ? 1 : 0;
    }
    double surface = shells.list.stream().mapToDouble(s -> s.areaMm2).sum();
    Optional<Box> size = size();
    boolean closed = seams.closed() && !shells.list.isEmpty() && size.isPresent();
    if (closed) {
      shells.nest();
    }
    int bodies = (int) shells.list.stream().filter(s -> s.depth == 0).count();
    boolean insideOut =
        closed && shells.list.stream().anyMatch(s -> s.depth == 0 && s.volumeMm3 < 0);
    int doubtful = closed ? doubtful(shells) : 0;
    return new MeshFacts(
        left.length - leftOut,
        surface,
        size,
        bodies,
        seams.open,
        seams.turned,
        seams.shared,
        leftOut,
        insideOut,
        doubtful,
        welded,
        closed ? solid(shells, size.get(), triangles) : Optional.empty());
  }

  private Optional<Box> size() {
    double x = high[0] - low[0];
    double y = high[1] - low[1];
    double z = high[2] - low[2];
    return x > 0 && y > 0 && z > 0 ? Optional.of(new Box(x, y, z)) : Optional.empty();
  }

  /** An inner surface faces into its hollow, that is, the other way from the one around it. */
  private static int doubtful(Shells shells) {
    int count = 0;
    for (Shell shell : shells.list) {
      if (shell.parent >= 0) {
        double around = shells.list.get(shell.parent).volumeMm3;
        count += shell.depth % 2 == 1 && around * shell.volumeMm3 > 0 ? 1 : 0;
      }
    }
    return count;
  }

  private static Optional<Solid> solid(Shells shells, Box size, Triangles triangles) {
    double outer = 0;
    double inner = 0;
    double metal = 0;
    double hollow = 0;
    int voids = 0;
    for (Shell shell : shells.list) {
      double volume = Math.abs(shell.volumeMm3);
      boolean isVoid = shell.depth % 2 == 1;
      outer += isVoid ? 0 : shell.areaMm2;
      inner += isVoid ? shell.areaMm2 : 0;
      metal += isVoid ? -volume : volume;
      hollow += isVoid ? volume : shell.depth > 0 ? -volume : 0;
      voids += isVoid ? 1 : 0;
    }
    return outer > 0 && metal > 0
        ? Optional.of(
            new Solid(
                outer,
                inner,
                metal,
                voids,
                Math.max(0, hollow),
                size,
                Outline.of(triangles),
                Around.of(triangles)))
        : Optional.empty();
  }
}
