package spangle.coating.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import spangle.measure.Figures;
import spangle.measure.Limits;
import spangle.measure.MeasureException;
import spangle.measure.Numbers;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/**
 * What a coating needs and what it bears. Between the data sheet's points ln t is a straight line
 * over 1/T (kelvin); below the lowest nothing cures; above the highest its time holds without
 * credit, up to {@link #UNKNOWN_ABOVE_HIGHEST_K} more. Data-sheet points do not lie on one
 * Arrhenius line, so no activation energy is taken from them.
 *
 * @param points at least one, hotter points never with a longer time; kept in rising temperature
 * @param statedMaxMinutes most minutes with metal at or above the lowest point, when the sheet
 *     gives it
 */
public record CureWindow(List<CurePoint> points, OptionalDouble statedMaxMinutes) {
  /** Above the highest listed temperature plus this, nothing is known of the coating. */
  public static final double UNKNOWN_ABOVE_HIGHEST_K = 20;

  /** A ten-minute powder usually bears twenty (published trade article): assumed when not given. */
  private static final double ASSUMED_MAX_FACTOR = 2;

  private static final double ZERO_CELSIUS_K = 273.15;
  private static final Pattern MAX = Pattern.compile("[,;]?\\s*max\\s*");
  private static final Pattern SPACES = Pattern.compile("\\s+");

  /** Sorts and checks the points. */
  public CureWindow {
    List<CurePoint> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(CurePoint::metalC));
    requireOrder(sorted);
    if (statedMaxMinutes.isPresent()) {
      double max = statedMaxMinutes.getAsDouble();
      double shortest = sorted.get(sorted.size() - 1).minutes();
      Limits.between(max, shortest, 10_000, "a longest time for this window", "min");
    }
    points = List.copyOf(sorted);
  }

  private static void requireOrder(List<CurePoint> sorted) {
    if (sorted.isEmpty()) {
      throw new MeasureException("", "a cure window", "give at least one point such as 10@190");
    }
    for (int i = 1; i < sorted.size(); i++) {
      CurePoint cooler = sorted.get(i - 1);
      CurePoint hotter = sorted.get(i);
      if (hotter.metalC() == cooler.metalC() || hotter.minutes() > cooler.minutes()) {
        throw new MeasureException(
            text(cooler) + " " + text(hotter),
            "a cure window",
            "each hotter point must have another temperature and no longer time");
      }
    }
  }

  /** A window of points with no stated maximum. */
  public static CureWindow of(CurePoint... points) {
    return new CureWindow(List.of(points), OptionalDouble.empty());
  }

  /**
   * Reads {@code 12@190 10@200 8@210, max 20}: minutes at metal temperature, separated by spaces; a
   * temperature may carry C or F, the bare number is C.
   *
   * @throws MeasureException when it cannot be read
   */
  public static CureWindow parse(String text) {
    String[] halves = MAX.split(text.toLowerCase(Locale.ROOT), -1);
    if (halves.length > 2 || text.length() > 500) {
      throw new MeasureException(text, "a cure window", "write it like \"10@190, max 20\"");
    }
    List<CurePoint> points = new ArrayList<>();
    for (String point : SPACES.split(halves[0].strip(), -1)) {
      points.add(point(text, point.endsWith(",") ? point.substring(0, point.length() - 1) : point));
    }
    return new CureWindow(
        points,
        halves.length == 2 ? OptionalDouble.of(minutes(halves[1])) : OptionalDouble.empty());
  }

  private static CurePoint point(String window, String text) {
    int at = text.indexOf('@');
    if (at < 1) {
      throw new MeasureException(
          window, "a cure window", "write each point as minutes@metal temperature, like 10@190");
    }
    return new CurePoint(
        Quantities.read(QuantityKind.TEMPERATURE, text.substring(at + 1), "C"),
        minutes(text.substring(0, at)));
  }

  private static double minutes(String text) {
    String number = text.strip();
    return Character.isLetter(number.isEmpty() ? '0' : number.charAt(number.length() - 1))
        ? Quantities.minutes(number)
        : Numbers.parse(number);
  }

  /** Lowest listed metal temperature: below it nothing counts, and the clock starts at it. */
  public double lowestC() {
    return points.get(0).metalC();
  }

  /** Highest listed metal temperature. */
  public double highestC() {
    return points.get(points.size() - 1).metalC();
  }

  /** Metal temperature above which nothing is known. */
  public double unknownAboveC() {
    return highestC() + UNKNOWN_ABOVE_HIGHEST_K;
  }

  /** Whether the longest time is assumed because the sheet does not give it. */
  public boolean maxIsAssumed() {
    return statedMaxMinutes.isEmpty();
  }

  /** Most minutes with the metal at or above the lowest listed temperature. */
  public double maxMinutes() {
    return statedMaxMinutes.orElse(ASSUMED_MAX_FACTOR * points.get(0).minutes());
  }

  /** Least minutes at one steady metal temperature; infinite below the lowest point. */
  public double minutesAt(double metalC) {
    if (metalC < lowestC()) {
      return Double.POSITIVE_INFINITY;
    }
    for (int i = 1; i < points.size(); i++) {
      if (metalC < points.get(i).metalC()) {
        return between(points.get(i - 1), points.get(i), metalC);
      }
    }
    return points.get(points.size() - 1).minutes();
  }

  private static double between(CurePoint cooler, CurePoint hotter, double metalC) {
    double inverse = 1 / (metalC + ZERO_CELSIUS_K);
    double inverseCool = 1 / (cooler.metalC() + ZERO_CELSIUS_K);
    double inverseHot = 1 / (hotter.metalC() + ZERO_CELSIUS_K);
    double share = (inverseCool - inverse) / (inverseCool - inverseHot);
    return Math.exp(
        Math.log(cooler.minutes())
            + share * (Math.log(hotter.minutes()) - Math.log(cooler.minutes())));
  }

  /** Share of the cure that one minute at a metal temperature gives. */
  public double ratePerMinute(double metalC) {
    return 1 / minutesAt(metalC);
  }

  /** The window as it is written, for sheets and messages. */
  public String text() {
    StringBuilder text = new StringBuilder();
    for (CurePoint point : points) {
      text.append(text.length() == 0 ? "" : " ").append(text(point));
    }
    return text + ", max " + Figures.upTo(maxMinutes(), 1) + (maxIsAssumed() ? " assumed" : "");
  }

  private static String text(CurePoint point) {
    return Figures.upTo(point.minutes(), 1) + "@" + Figures.upTo(point.metalC(), 1);
  }
}
