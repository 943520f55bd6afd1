package spangle.report.fitsheet;

import java.util.List;

/**
 * What the page says; all words.
 *
 * @param title the part
 * @param verdict one of the four, in words
 * @param answer the answer in a sentence
 * @param figures figures with their names
 * @param drawing one svg element
 * @param holes holes to make; may be empty
 * @param shut true where a gate is shut: it must not be dipped, however well it fits
 * @param gates gates that are shut or opened; may be empty
 * @param stations every station alone; may be empty
 * @param cautions what to mind
 * @param waysOut what can be done instead; may be empty
 * @param validity until when it holds, and who decides
 */
public record FitSheet(
    String title,
    String verdict,
    String answer,
    List<Figure> figures,
    String drawing,
    List<HoleRow> holes,
    boolean shut,
    List<String> gates,
    List<Figure> stations,
    List<String> cautions,
    List<String> waysOut,
    String validity) {
  /** Copies the lists. */
  public FitSheet {
    figures = List.copyOf(figures);
    holes = List.copyOf(holes);
    gates = List.copyOf(gates);
    stations = List.copyOf(stations);
    cautions = List.copyOf(cautions);
    waysOut = List.copyOf(waysOut);
  }

  /** A figure with its name. */
  public record Figure(String name, String value) {}

  /**
   * Holes of one kind of hollow.
   *
   * @param hollow the space in words
   * @param vent holes for air
   * @param drain holes for zinc
   * @param rule the rule that won
   * @param places where they go as it hangs
   */
  public record HoleRow(
      String hollow, String vent, String drain, String rule, List<String> places) {
    /** Copies the list. */
    public HoleRow {
      places = List.copyOf(places);
    }
  }
}
