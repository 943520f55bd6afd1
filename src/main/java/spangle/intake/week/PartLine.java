package spangle.intake.week;

import spangle.intake.problem.Place;

/**
 * One kind of piece in a job.
 *
 * @param id the part, unique in its job
 * @param description words for the sheet
 * @param revision revision of the drawing; may be empty
 * @param qty pieces ordered
 * @param metal what it is made of
 * @param body form and size
 * @param wanted finish and times
 * @param hollows welds, hollow spaces, overlaps
 * @param heat what heat does to it
 * @param handling hooks, masks, carriers
 * @param note words of the customer
 * @param place where its row starts
 */
public record PartLine(
    String id,
    String description,
    String revision,
    int qty,
    Metal metal,
    Body body,
    Wanted wanted,
    Hollows hollows,
    Heat heat,
    Handling handling,
    String note,
    Place place) {
  /** What sheets call it: its description, or its id where nobody described it. */
  public String words() {
    return description.isBlank() ? id : description;
  }
}
