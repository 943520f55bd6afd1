package spangle.report;

import java.util.List;

/**
 * What the floor must know of a load beyond the plan.
 *
 * @param loadId the load
 * @param drawAmount powder to weigh out, paint to mix; 0 where none
 * @param drawUnit "kg" or "l"
 * @param drawWords stock lot to open, mixing ratio; may be empty
 * @param level how high the zinc must stand for it; empty where it does not hang deep
 * @param cautions what can hurt or spoil here
 */
public record LoadNote(
    String loadId,
    double drawAmount,
    String drawUnit,
    String drawWords,
    String level,
    List<String> cautions) {
  /** Copies the list. */
  public LoadNote {
    cautions = List.copyOf(cautions);
  }
}
