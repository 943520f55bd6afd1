package spangle.intake.week;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Cure data of a data sheet, by metal temperature.
 *
 * @param points minutes at metal temperature, rising temperature
 * @param maxMin most minutes hot; empty where the sheet says nothing
 * @param source where it was read
 */
public record Cure(List<Point> points, OptionalDouble maxMin, String source) {

  /** Minutes at a metal temperature. */
  public record Point(double minutes, double celsius) {}

  /** Copies the list. */
  public Cure {
    points = List.copyOf(points);
  }
}
