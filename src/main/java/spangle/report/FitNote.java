package spangle.report;

import java.util.List;

/**
 * How a part goes into the kettle, or why it does not.
 *
 * @param jobId the order
 * @param partId the part
 * @param partName words for the sheet
 * @param verdict "straight", "tilted", "two dips", "no"
 * @param words margins and angles in a sentence
 * @param svg drawing as one svg element; empty where there is none
 * @param cautions what to mind
 */
public record FitNote(
    String jobId,
    String partId,
    String partName,
    String verdict,
    String words,
    String svg,
    List<String> cautions) {
  /** Copies the list. */
  public FitNote {
    cautions = List.copyOf(cautions);
  }
}
