package spangle.part.mesh;

import java.util.Arrays;

/**
 * How the triangles meet along their edges. In a closed surface every edge is run along as often
 * one way as the other.
 */
final class Seams {
  private static final int BITS = 22;

  /** Edges at which the surface ends. */
  final int open;

  /** Edges along which two triangles run the same way: one of them faces the wrong way. */
  final int turned;

  /** Edges at which more than two triangles meet: surfaces touch there, or lie on one another. */
  final int shared;

  Seams(Joints joints, boolean[] left) {
    int kept = 0;
    for (boolean l : left) {
      kept += l ? 0 : 1;
    }
    long[] edges = new long[3 * kept];
    int at = 0;
    for (int t = 0; t < left.length; t++) {
      if (left[t]) {
        continue;
      }
      for (int corner = 0; corner < 3; corner++) {
        long a = joints.of[t][corner];
        long b = joints.of[t][(corner + 1) % 3];
        long low = Math.min(a, b);
        long high = Math.max(a, b);
        edges[at++] = (low << BITS | high) << 1 | (a < b ? 0 : 1);
      }
    }
    Arrays.sort(edges);
    int openEdges = 0;
    int turnedEdges = 0;
    int sharedEdges = 0;
    for (int i = 0; i < edges.length; ) {
      int j = i;
      int back = 0;
      while (j < edges.length && edges[j] >> 1 == edges[i] >> 1) {
        back += (int) (edges[j] & 1);
        j++;
      }
      int all = j - i;
      if (all % 2 == 1) {
        openEdges++;
      } else if (2 * back != all) {
        turnedEdges++;
      } else if (all > 2) {
        sharedEdges++;
      }
      i = j;
    }
    open = openEdges;
    turned = turnedEdges;
    shared = sharedEdges;
  }

  boolean closed() {
    return open == 0 && turned == 0;
  }
}
