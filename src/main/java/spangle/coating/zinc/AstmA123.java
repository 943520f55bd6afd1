package spangle.coating.zinc;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import spangle.measure.Figures;
import spangle.measure.Limits;
import spangle.measure.MeasureException;

/**
 * ASTM A123, revision of 2024, Table 1: the grade is the least mean thickness in um; one specimen
 * of a lot may be one grade lower. The inch and the metric columns are each a standard of their own
 * (1/16, 1/8, 3/16, 1/4, 5/8 in against 1.6, 3.2, 4.8, 6.4, 16 mm), so a thickness is judged by the
 * columns of the unit it was given in.
 */
public final class AstmA123 {
  /** The standard's own mass of 1 um on 1 m2, g. */
  public static final double GRAMS_PER_UM = 7.067;

  /** mil per um in the standard's conversion. */
  public static final double MILS_PER_UM = 0.03937;

  /** oz/ft2 per um in the standard's conversion. */
  public static final double OZ_FT2_PER_UM = 0.02316;

  private static final double MM_PER_INCH = 25.4;
  private static final double SLACK = 1e-6;
  private static final List<Double> EDGES_MM = List.of(1.6, 3.2, 4.8, 6.4, 16.0);
  private static final List<Double> EDGES_IN =
      List.of(1 / 16.0, 1 / 8.0, 3 / 16.0, 1 / 4.0, 5 / 8.0);

  /** Grades of the standard in rising order (from memory). */
  private static final List<Integer> LADDER = List.of(35, 45, 50, 55, 60, 65, 75, 80, 85, 100);

  private static final List<String> COLUMNS =
      List.of(
          "under 1.6 mm",
          "1.6 to under 3.2 mm",
          "3.2 to 4.8 mm",
          "over 4.8 to under 6.4 mm",
          "6.4 to under 16 mm",
          "16 mm and over");

  private AstmA123() {}

  /** Material categories of Table 1. */
  public enum Category {
    /** Structural shapes. */
    SHAPE,
    /** Strip and bar. */
    BAR,
    /** Plate, and sheet. */
    PLATE,
    /** Pipe and tubing. */
    PIPE,
    /** Wire. */
    WIRE,
    /** Reinforcing bar. */
    REBAR,
    /** Forgings and castings. */
    CASTING;

    /** The category in lower case, as people write it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Grades by thickness column; 0 where the standard gives none. */
  private static List<Integer> grades(Category category) {
    return switch (category) {
      case SHAPE -> List.of(45, 65, 75, 75, 100, 100);
      case BAR, PLATE -> List.of(45, 65, 75, 75, 75, 100);
      case PIPE -> List.of(45, 45, 75, 75, 75, 75);
      case WIRE -> List.of(35, 50, 60, 65, 80, 80);
      case REBAR -> List.of(0, 0, 0, 0, 100, 100);
      case CASTING -> List.of(0, 0, 0, 100, 100, 100);
    };
  }

  /**
   * The row for a thickness in mm; exactly 1/16, 1/8, 3/16, 1/4 or 5/8 in count as the inch edges.
   *
   * @throws MeasureException when the standard has no grade for it
   */
  public static ZincRow row(Category category, double thicknessMm) {
    Limits.above(thicknessMm, 0, "a thickness", "mm");
    double inches = thicknessMm / MM_PER_INCH;
    boolean inchSize = EDGES_IN.stream().anyMatch(edge -> Math.abs(edge - inches) < SLACK);
    return inchSize
        ? row(category, inches, EDGES_IN, thicknessMm)
        : row(category, thicknessMm, EDGES_MM, thicknessMm);
  }

  /** The row for a thickness that was given in inches. */
  public static ZincRow rowInches(Category category, double thicknessIn) {
    Limits.above(thicknessIn, 0, "a thickness", "in");
    return row(category, thicknessIn, EDGES_IN, thicknessIn * MM_PER_INCH);
  }

  private static ZincRow row(
      Category category, double thickness, List<Double> edges, double thicknessMm) {
    int column = column(thickness, edges);
    int grade = grades(category).get(column);
    if (grade == 0) {
      throw new MeasureException(
          Figures.upTo(thicknessMm, 3) + " mm",
          "a thickness that ASTM A123 grades for " + category.word(),
          "take another category");
    }
    return new ZincRow(
        nextLower(grade),
        grade,
        GRAMS_PER_UM,
        OptionalDouble.empty(),
        "ASTM A123 (2024) Table 1, " + category.word() + " " + COLUMNS.get(column),
        false);
  }

  /** The third edge belongs to the thinner column, all others to the thicker. */
  private static int column(double thickness, List<Double> edges) {
    int column = 0;
    for (int i = 0; i < edges.size(); i++) {
      boolean beyond =
          i == 2 ? thickness > edges.get(i) + SLACK : thickness >= edges.get(i) - SLACK;
      column = beyond ? i + 1 : column;
    }
    return column;
  }

  /** The grade below on the ladder; the lowest stays. */
  static int nextLower(int grade) {
    return LADDER.get(Math.max(0, LADDER.indexOf(grade) - 1));
  }
}
