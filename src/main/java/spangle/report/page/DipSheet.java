package spangle.report.page;

import java.util.List;

/**
 * A dip's sheet; all words.
 *
 * @param head its head
 * @param rows parts on this page
 * @param dense true where many parts ask for smaller type
 * @param first true on the first page of the load
 * @param pieces pieces on the load
 * @param area coated area
 * @param mass mass of the parts
 * @param gross mass with the carrier: what the crane lifts
 * @param wires wires or hooks in all
 * @param level how high the zinc must stand; empty where the load does not hang deep
 * @param attitude how it goes in
 * @param special true for tilted or two dips: the sheet is bordered
 * @param sketch drawing of the dip
 * @param drawn letter of the part in that drawing; empty where the load has one part only
 * @param picture hang pattern
 * @param kettle kettle and time
 * @param minutes immersion
 * @param steel steel's reactivity
 * @param quench true where it may be quenched
 * @param hollow true where two people look through the vents; the sheet is void without them
 * @param limits least and mean thickness
 * @param readings how many pieces to measure
 * @param boxes rows of boxes for readings
 * @param cautions what can hurt or spoil
 */
public record DipSheet(
    LoadHead head,
    List<PartRow> rows,
    boolean dense,
    boolean first,
    String pieces,
    String area,
    String mass,
    String gross,
    String wires,
    String level,
    String attitude,
    boolean special,
    String sketch,
    String drawn,
    String picture,
    String kettle,
    String minutes,
    String steel,
    boolean quench,
    boolean hollow,
    String limits,
    String readings,
    List<Integer> boxes,
    List<String> cautions) {
  /** Copies the lists. */
  public DipSheet {
    rows = List.copyOf(rows);
    boxes = List.copyOf(boxes);
    cautions = List.copyOf(cautions);
  }
}
