package spangle.report.page;

import java.util.List;

/**
 * A rack's sheet; all words.
 *
 * @param head its head
 * @param rows parts on this page
 * @param dense true where many parts ask for smaller type
 * @param first true on the first page of the load
 * @param pieces pieces on the whole load
 * @param area coated area of the load
 * @param mass mass of the parts
 * @param gross mass with the carrier
 * @param verb "weigh out", "mix" or empty
 * @param draw amount to weigh out
 * @param drawWords stock lot, mixing; may be empty
 * @param picture hang pattern; empty where nothing is drawn
 * @param oven oven, setting and time in
 * @param batch what goes in with it
 * @param probe part the probe goes on; empty where not known
 * @param heat minutes after part temperature; empty where not known
 * @param out earliest and latest out
 * @param bake true for a bake without paint
 * @param wet true for liquid paint
 * @param away true for a load that a truck takes to another firm
 * @param cautions what can hurt or spoil
 */
public record RackSheet(
    LoadHead head,
    List<PartRow> rows,
    boolean dense,
    boolean first,
    String pieces,
    String area,
    String mass,
    String gross,
    String verb,
    String draw,
    String drawWords,
    String picture,
    String oven,
    String batch,
    String probe,
    String heat,
    String out,
    boolean bake,
    boolean wet,
    boolean away,
    List<String> cautions) {
  /** Copies the lists. */
  public RackSheet {
    rows = List.copyOf(rows);
    cautions = List.copyOf(cautions);
  }
}
