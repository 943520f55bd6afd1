package spangle.part.mesh;

import java.util.Arrays;

/** Corners of triangles, nine numbers each; grows while a file is read. */
public final class Triangles {
  private static final int NUMBERS = 9;
  private double[] numbers;
  private int count;

  /** Starts with room for so many. */
  public Triangles(int expected) {
    numbers = new double[Math.max(1, expected) * NUMBERS];
  }

  /** Adds one; the nine numbers are x, y, z of its three corners. */
  public void add(double[] corners) {
    if ((count + 1) * NUMBERS > numbers.length) {
      numbers = Arrays.copyOf(numbers, numbers.length * 2);
    }
    System.arraycopy(corners, 0, numbers, count * NUMBERS, NUMBERS);
    count++;
  }

  /** How many there are. */
  public int count() {
    return count;
  }

  /** One number: of a triangle, one of its corners, one of the three axes. */
  double at(int triangle, int corner, int axis) {
    return numbers[triangle * NUMBERS + corner * 3 + axis];
  }

  /** Twice the area as a vector: (b - a) x (c - a). */
  double[] normal(int triangle) {
    double[] b = new double[3];
    double[] c = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      b[axis] = at(triangle, 1, axis) - at(triangle, 0, axis);
      c[axis] = at(triangle, 2, axis) - at(triangle, 0, axis);
    }
    return cross(b, c);
  }

  static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  double areaMm2(int triangle) {
    double[] normal = normal(triangle);
    return Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]) / 2;
  }

  /** Signed volume of the pyramid over a triangle with its top at a point. */
  double volumeMm3(int triangle, double[] top) {
    double[] normal = normal(triangle);
    double volume = 0;
    for (int axis = 0; axis < 3; axis++) {
      volume += normal[axis] * (at(triangle, 0, axis) - top[axis]);
    }
    return volume / 6;
  }
}
