package spangle.intake.drawing;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Writes STL files by hand. */
public final class StlText {
  private final List<double[]> facets = new ArrayList<>();

  /** A box whose faces look outwards, or inwards for a hollow. */
  public StlText box(double x, double y, double z, double l, double w, double h, boolean outwards) {
    double[][] p = new double[8][];
    for (int i = 0; i < 8; i++) {
      p[i] =
          new double[] {
            x + ((i & 1) != 0 ? l : 0), y + ((i & 2) != 0 ? w : 0), z + ((i & 4) != 0 ? h : 0)
          };
    }
    int[][] faces = {
      {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}
    };
    for (int[] f : faces) {
      facet(p[f[0]], p[f[1]], p[f[2]], outwards);
      facet(p[f[0]], p[f[2]], p[f[3]], outwards);
    }
    return this;
  }

  /** A ball of rings and slices. */
  public StlText ball(double radius, int slices) {
    int rings = slices / 2;
    for (int i = 0; i < rings; i++) {
      for (int j = 0; j < slices; j++) {
        double[] a = onBall(radius, i, j, rings, slices);
        double[] b = onBall(radius, i + 1, j, rings, slices);
        double[] c = onBall(radius, i + 1, (j + 1) % slices, rings, slices);
        double[] d = onBall(radius, i, (j + 1) % slices, rings, slices);
        if (i > 0) {
          facet(a, b, d, true);
        }
        if (i < rings - 1) {
          facet(d, b, c, true);
        }
      }
    }
    return this;
  }

  private static double[] onBall(double r, int ring, int slice, int rings, int slices) {
    double tilt = Math.PI * ring / rings;
    double turn = 2 * Math.PI * slice / slices;
    double s = ring == 0 || ring == rings ? 0 : Math.sin(tilt);
    return new double[] {r * s * Math.cos(turn), r * s * Math.sin(turn), r * Math.cos(tilt)};
  }

  public StlText facet(double[] a, double[] b, double[] c, boolean outwards) {
    facets.add(
        outwards
            ? new double[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]}
            : new double[] {a[0], a[1], a[2], c[0], c[1], c[2], b[0], b[1], b[2]});
    return this;
  }

  public StlText without(int facet) {
    facets.remove(facet);
    return this;
  }

  public StlText turned(int facet) {
    double[] f = facets.get(facet);
    facets.set(facet, new double[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]});
    return this;
  }

  public StlText shuffled(long seed) {
    Collections.shuffle(facets, new Random(seed));
    return this;
  }

  public int count() {
    return facets.size();
  }

  public byte[] ascii() {
    StringBuilder out = new StringBuilder("solid part of a ship\n");
    for (double[] f : facets) {
      out.append("  facet normal 0 0 0\n    outer loop\n");
      for (int i = 0; i < 9; i += 3) {
        out.append(String.format(Locale.ROOT, "      vertex %e %e %e%n", f[i], f[i + 1], f[i + 2]));
      }
      out.append("    endloop\n  endfacet\n");
    }
    return out.append("endsolid part of a ship\n").toString().getBytes(StandardCharsets.UTF_8);
  }

  public byte[] binary(String head, int stated) {
    ByteBuffer out = ByteBuffer.allocate(84 + 50 * facets.size()).order(ByteOrder.LITTLE_ENDIAN);
    out.put(head.getBytes(StandardCharsets.UTF_8)).position(80).putInt(stated);
    for (double[] f : facets) {
      out.putFloat(0).putFloat(0).putFloat(0);
      for (double value : f) {
        out.putFloat((float) value);
      }
      out.putShort((short) 0);
    }
    return out.array();
  }

  public byte[] binary() {
    return binary("solid in its head all the same", facets.size());
  }
}
