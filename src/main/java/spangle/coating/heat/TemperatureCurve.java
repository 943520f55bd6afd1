package spangle.coating.heat;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import spangle.measure.MeasureException;

/**
 * Metal temperature over time as a probe recorded it, straight lines between the readings.
 *
 * @param readings at least two, time strictly rising
 */
public record TemperatureCurve(List<Reading> readings) {
  private static final double STEP_MIN = 0.02;
  private static final int MOST_STEPS = 5000;

  /**
   * One reading.
   *
   * @param minute time
   * @param metalC metal temperature
   */
  public record Reading(double minute, double metalC) {}

  /** Checks the order. */
  public TemperatureCurve {
    if (readings.size() < 2) {
      throw new MeasureException("", "a temperature curve", "give at least two readings");
    }
    for (int i = 1; i < readings.size(); i++) {
      if (!(readings.get(i).minute() > readings.get(i - 1).minute())) {
        throw new MeasureException(
            readings.get(i).minute() + " min", "a temperature curve", "time must rise");
      }
    }
    readings = List.copyOf(readings);
  }

  /** Cure index of the whole curve: the integral of dt / t(T); 1 is just cured. */
  public double cureIndex(CureWindow window) {
    return integral(window::ratePerMinute);
  }

  /** Minutes with the metal at or above a temperature. */
  public double minutesAtOrAbove(double metalC) {
    double minutes = 0;
    for (int i = 1; i < readings.size(); i++) {
      Reading from = readings.get(i - 1);
      Reading to = readings.get(i);
      minutes += (to.minute() - from.minute()) * shareAbove(from.metalC(), to.metalC(), metalC);
    }
    return minutes;
  }

  private static double shareAbove(double fromC, double toC, double limitC) {
    double low = Math.min(fromC, toC);
    double high = Math.max(fromC, toC);
    if (low >= limitC) {
      return 1;
    }
    return high < limitC ? 0 : (high - limitC) / (high - low);
  }

  /** Highest reading. */
  public double peakC() {
    return readings.stream().mapToDouble(Reading::metalC).max().orElseThrow();
  }

  /** Whether the curve overbakes: too long above the lowest point, or hotter than is known. */
  public boolean overbakes(CureWindow window) {
    return minutesAtOrAbove(window.lowestC()) > window.maxMinutes()
        || peakC() > window.unknownAboveC();
  }

  private double integral(DoubleUnaryOperator rate) {
    double sum = 0;
    for (int i = 1; i < readings.size(); i++) {
      Reading from = readings.get(i - 1);
      Reading to = readings.get(i);
      double length = to.minute() - from.minute();
      int steps = (int) Math.min(MOST_STEPS, Math.ceil(length / STEP_MIN));
      for (int k = 0; k < steps; k++) {
        double share = (k + 0.5) / steps;
        sum +=
            length
                / steps
                * rate.applyAsDouble(from.metalC() + share * (to.metalC() - from.metalC()));
      }
    }
    return sum;
  }
}
