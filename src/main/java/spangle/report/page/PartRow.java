package spangle.report.page;

import java.util.List;

/**
 * A row of a load sheet's parts table; all words.
 *
 * @param letter stands on the pieces of the drawing
 * @param pieces how many
 * @param part the part
 * @param job the order
 * @param thickness governing thickness
 * @param hook hook or wire, and how many of them
 * @param pitch middle to middle
 * @param face which side out
 * @param film film or zinc wanted
 * @param masks what is masked
 * @param kits kits that wait for it
 * @param due wanted
 */
public record PartRow(
    String letter,
    String pieces,
    String part,
    String job,
    String thickness,
    String hook,
    String pitch,
    String face,
    String film,
    List<String> masks,
    String kits,
    String due) {
  /** Copies the list. */
  public PartRow {
    masks = List.copyOf(masks);
  }
}
