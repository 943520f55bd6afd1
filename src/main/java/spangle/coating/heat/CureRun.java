package spangle.coating.heat;

import java.util.ArrayList;
import java.util.List;

/**
 * One part on one path against one cure window, with the clock at 0 when the oven air is back at
 * its setting.
 *
 * @param heatUpMin minutes until the metal is at the lowest listed temperature; infinite when it
 *     never is
 * @param minDwellMin minutes until the cure index, the integral of dt / t(T), is 1; infinite when
 *     it never is
 * @param metalCAtMinDwell metal temperature then
 * @param maxDwellMin minutes after which the coating is overbaked or its metal hotter than anything
 *     the data sheet speaks of
 * @param limitedByHeat true when that temperature sets the maximum, not the longest time
 */
public record CureRun(
    double heatUpMin,
    double minDwellMin,
    double metalCAtMinDwell,
    double maxDwellMin,
    boolean limitedByHeat) {
  private static final double PANEL = 0.02;
  private static final double END_OF_U = 45;

  /** Whether some dwell both cures and does not overbake. */
  public boolean cures() {
    return Double.isFinite(minDwellMin) && minDwellMin <= maxDwellMin;
  }

  /** Follows the metal along its path. */
  public static CureRun of(HeatPath path, CureWindow window) {
    double heatUp = path.minutesTo(window.lowestC());
    double tooHot = path.minutesTo(window.unknownAboveC());
    double tooLong = heatUp + window.maxMinutes();
    double[] cured =
        Double.isInfinite(heatUp)
            ? new double[] {Double.POSITIVE_INFINITY, path.surroundingsC()}
            : follow(path, window, heatUp);
    return new CureRun(heatUp, cured[0], cured[1], Math.min(tooLong, tooHot), tooHot < tooLong);
  }

  private static double[] follow(HeatPath path, CureWindow window, double heatUpMin) {
    double minutes = heatUpMin;
    double index = 0;
    List<Double> marks = marks(path, window);
    for (int i = 0; i + 1 < marks.size(); i++) {
      double from = marks.get(i);
      int panels = Math.max(1, (int) Math.ceil((marks.get(i + 1) - from) / PANEL));
      double width = (marks.get(i + 1) - from) / panels;
      for (int k = 0; k < panels; k++) {
        Panel panel = new Panel(path, window, from + k * width);
        double gain = panel.index(width);
        if (index + gain >= 1) {
          double step = panel.widthForIndex(1 - index, width);
          double u = from + k * width + step;
          return new double[] {minutes + panel.minutes(step), path.celsiusAtU(u)};
        }
        index += gain;
        minutes += panel.minutes(width);
      }
    }
    double steady = path.surroundingsC();
    return new double[] {minutes + (1 - index) * window.minutesAt(steady), steady};
  }

  /** Places on the path where the window bends, so that no panel reaches over a bend. */
  private static List<Double> marks(HeatPath path, CureWindow window) {
    double start = path.startC() >= window.lowestC() ? 0 : path.uAt(window.lowestC());
    List<Double> marks = new ArrayList<>();
    marks.add(start);
    for (CurePoint point : window.points()) {
      double u = path.uAt(point.metalC());
      if (u > start && u < END_OF_U) {
        marks.add(u);
      }
    }
    marks.add(Math.max(END_OF_U, marks.get(marks.size() - 1) + 1));
    return marks;
  }

  private record Panel(HeatPath path, CureWindow window, double from) {
    double minutes(double width) {
      return width
          / 6
          * (path.minutesPerU(from)
              + 4 * path.minutesPerU(from + width / 2)
              + path.minutesPerU(from + width));
    }

    double index(double width) {
      return width
          / 6
          * (indexPerU(from) + 4 * indexPerU(from + width / 2) + indexPerU(from + width));
    }

    private double indexPerU(double u) {
      double metalC = Math.max(path.celsiusAtU(u), window.lowestC());
      return path.minutesPerU(u) * window.ratePerMinute(metalC);
    }

    double widthForIndex(double index, double width) {
      double low = 0;
      double high = width;
      for (int i = 0; i < 50; i++) {
        double middle = (low + high) / 2;
        if (index(middle) < index) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }
  }
}
