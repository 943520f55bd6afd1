package spangle.coating.heat;

import spangle.measure.Limits;

/**
 * Temperature of a lumped part in surroundings of one steady temperature, warming or cooling.
 *
 * <p>Time is integrated over u = ln((To - Ti) / (To - T)) instead of over T: the integrand stays
 * smooth and finite right up to the temperature of the surroundings, which is never quite reached.
 *
 * @param mass heat capacity of the part per m2 of its surface
 * @param transfer how heat passes
 * @param startC temperature of the metal at minute 0
 * @param surroundingsC temperature of air and walls
 * @param stretch factor on all times: 1 as calculated, above 1 for a part known to warm more slowly
 */
public record HeatPath(
    ThermalMass mass, HeatTransfer transfer, double startC, double surroundingsC, double stretch) {
  private static final double PANEL = 0.05;
  private static final double END_OF_U = 45;
  private static final double SECONDS_PER_MINUTE = 60;

  /** Checks the numbers. */
  public HeatPath {
    Limits.between(startC, -60, 700, "a metal temperature", "C");
    Limits.between(surroundingsC, -60, 700, "an air temperature", "C");
    Limits.above(stretch, 0, "a factor on time", "");
  }

  /** The path of a part as calculated. */
  public static HeatPath of(
      HeatedPart part, HeatTransfer transfer, double startC, double surroundingsC) {
    return new HeatPath(part.thermalMass(transfer), transfer, startC, surroundingsC, 1);
  }

  /** The same path with all times multiplied. */
  public HeatPath stretched(double factor) {
    return new HeatPath(mass, transfer, startC, surroundingsC, stretch * factor);
  }

  /**
   * The same path with its times scaled so that a temperature is reached when it was measured to be
   * reached; unchanged when the path starts there or never gets there.
   */
  public HeatPath through(double celsius, double measuredMinutes) {
    double calculated = minutesTo(celsius);
    return calculated > 0 && Double.isFinite(calculated)
        ? stretched(measuredMinutes / calculated)
        : this;
  }

  /**
   * Minutes until the metal passes a temperature; 0 when it starts at or beyond it, infinite when
   * it never does.
   */
  public double minutesTo(double celsius) {
    if (isPassed(startC, celsius)) {
      return 0;
    }
    double u = uAt(celsius);
    return Double.isInfinite(u) ? Double.POSITIVE_INFINITY : minutesBetween(0, u);
  }

  /** Metal temperature at a minute. */
  public double celsiusAt(double minutes) {
    double u = 0;
    double gone = 0;
    while (u < END_OF_U) {
      double panel = simpson(u, u + PANEL);
      if (gone + panel >= minutes) {
        return celsiusAtU(inPanel(u, minutes - gone));
      }
      gone += panel;
      u += PANEL;
    }
    return surroundingsC;
  }

  private double inPanel(double from, double minutes) {
    double low = 0;
    double high = PANEL;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (simpson(from, from + middle) < minutes) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return from + (low + high) / 2;
  }

  private boolean isPassed(double metalC, double celsius) {
    return surroundingsC >= startC ? metalC >= celsius : metalC <= celsius;
  }

  /** Place of a temperature on the path; infinite when it lies at or beyond the surroundings. */
  double uAt(double celsius) {
    double ratio = (surroundingsC - startC) / (surroundingsC - celsius);
    return ratio > 0 && Double.isFinite(ratio) ? Math.log(ratio) : Double.POSITIVE_INFINITY;
  }

  /** Temperature at a place on the path. */
  double celsiusAtU(double u) {
    return surroundingsC - (surroundingsC - startC) * Math.exp(-u);
  }

  /** Minutes per unit of u at a place on the path. */
  double minutesPerU(double u) {
    double celsius = celsiusAtU(u);
    return stretch
        * mass.capacityJM2K(celsius)
        / transfer.coefficientWM2K(surroundingsC, celsius)
        / SECONDS_PER_MINUTE;
  }

  private double minutesBetween(double from, double to) {
    int panels = Math.max(1, (int) Math.ceil((to - from) / PANEL));
    double width = (to - from) / panels;
    double minutes = 0;
    for (int i = 0; i < panels; i++) {
      minutes += simpson(from + i * width, from + (i + 1) * width);
    }
    return minutes;
  }

  private double simpson(double from, double to) {
    return (to - from)
        / 6
        * (minutesPerU(from) + 4 * minutesPerU((from + to) / 2) + minutesPerU(to));
  }
}
