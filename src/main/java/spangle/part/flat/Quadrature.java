package spangle.part.flat;

import java.util.function.DoubleUnaryOperator;

/**
 * Gauss-Legendre quadrature. One panel is exact for polynomials up to degree 31; panels are halved
 * until a panel and its halves agree.
 */
final class Quadrature {
  private static final int NODES = 16;
  private static final int DEEPEST = 9;
  private static final double AGREES = 1e-10;
  private static final double[] X = new double[NODES];
  private static final double[] W = new double[NODES];

  static {
    for (int i = 0; i < NODES; i++) {
      node(i);
    }
  }

  private Quadrature() {}

  /** Newton's method on the Legendre polynomial; weights 2 / ((1 - x2) P'2). */
  private static void node(int i) {
    double x = Math.cos(Math.PI * (i + 0.75) / (NODES + 0.5));
    double slope = 1;
    for (int round = 0; round < 50; round++) {
      double before = 1;
      double value = x;
      for (int k = 2; k <= NODES; k++) {
        double next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
        before = value;
        value = next;
      }
      slope = NODES * (x * value - before) / (x * x - 1);
      double step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-16) {
        break;
      }
    }
    X[i] = x;
    W[i] = 2 / ((1 - x * x) * slope * slope);
  }

  static double panel(DoubleUnaryOperator f, double a, double b) {
    double half = (b - a) / 2;
    double middle = (a + b) / 2;
    double sum = 0;
    for (int i = 0; i < NODES; i++) {
      sum += W[i] * f.applyAsDouble(middle + half * X[i]);
    }
    return sum * half;
  }

  static double integral(DoubleUnaryOperator f, double a, double b) {
    double whole = panel(f, a, b);
    return refined(f, a, b, whole, Math.abs(whole), DEEPEST);
  }

  private static double refined(
      DoubleUnaryOperator f, double a, double b, double whole, double scale, int depth) {
    double middle = (a + b) / 2;
    double left = panel(f, a, middle);
    double right = panel(f, middle, b);
    double both = left + right;
    double size = Math.max(scale, Math.abs(both));
    if (depth == 0 || !(Math.abs(both - whole) > AGREES * size)) {
      return both;
    }
    return refined(f, a, middle, left, size, depth - 1)
        + refined(f, middle, b, right, size, depth - 1);
  }
}
