package spangle.report.fitsheet;

import java.util.List;
import spangle.fit.Silhouette;
import spangle.fit.Silhouette.Corner;

/** A part's outline as it hangs: turned and moved into place, in mm. */
record Outline(List<Corner> corners) {
  static Outline turned(Silhouette side, double tiltDeg) {
    return new Outline(side.corners().stream().map(c -> c.turned(tiltDeg)).toList());
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

  /** Swung end for end about an upright line. */
  Outline swung() {
    double sum = left() + right();
    return new Outline(corners.stream().map(c -> new Corner(sum - c.xMm(), c.yMm())).toList());
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
