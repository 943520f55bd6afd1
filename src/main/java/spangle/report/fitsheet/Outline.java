package spangle.report.fitsheet;

import java.util.List;
import java.util.function.ToDoubleFunction;
import spangle.fit.Silhouette;
import spangle.fit.Silhouette.Corner;

/** A part's outline as it hangs: turned and moved into place, in mm. */
record Outline(List<Corner> corners) {
  static Outline turned(Silhouette side, double tiltDeg) {
    return new Outline(side.corners().stream().map(c -> c.turned(tiltDeg)).toList());
  }

  /** The same side view after it was swung end for end, at the same angle. */
  static Outline swung(Silhouette side, double tiltDeg) {
    double ends = sum(side, Corner::xMm);
    return new Outline(
        side.corners().stream()
            .map(c -> new Corner(ends - c.xMm(), c.yMm()).turned(tiltDeg))
            .toList());
  }

  private static double sum(Silhouette side, ToDoubleFunction<Corner> on) {
    return side.corners().stream().mapToDouble(on).min().orElse(0)
        + side.corners().stream().mapToDouble(on).max().orElse(0);
  }

  static Outline rectangle(double lMm, double hMm, double tiltDeg) {
    return new Outline(
        List.of(new Corner(0, 0), new Corner(lMm, 0), new Corner(lMm, hMm), new Corner(0, hMm))
            .stream()
            .map(c -> c.turned(tiltDeg))
            .toList());
  }

  double left() {
    return corners.stream().mapToDouble(Corner::xMm).min().orElse(0);
  }

  double right() {
    return corners.stream().mapToDouble(Corner::xMm).max().orElse(0);
  }

  double low() {
    return corners.stream().mapToDouble(Corner::yMm).min().orElse(0);
  }

  double high() {
    return corners.stream().mapToDouble(Corner::yMm).max().orElse(0);
  }

  /** Moved so that its left edge and its lowest point stand there. */
  Outline at(double leftMm, double lowMm) {
    double dx = leftMm - left();
    double dy = lowMm - low();
    return new Outline(corners.stream().map(c -> new Corner(c.xMm() + dx, c.yMm() + dy)).toList());
  }

  Corner lowest() {
    return corners.stream()
        .reduce((a, b) -> b.yMm() < a.yMm() - 1e-9 ? b : a)
        .orElse(new Corner(0, 0));
  }

  /** Height of the upper edge over a place. */
  double topOver(double xMm) {
    double top = low();
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = corners.get((i + 1) % corners.size());
      double from = Math.min(a.xMm(), b.xMm());
      double to = Math.max(a.xMm(), b.xMm());
      if (xMm >= from - 1e-9 && xMm <= to + 1e-9 && to > from) {
        double y = a.yMm() + (b.yMm() - a.yMm()) * (xMm - a.xMm()) / (b.xMm() - a.xMm());
        top = Math.max(top, y);
      }
    }
    return top;
  }
}
