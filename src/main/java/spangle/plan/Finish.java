package spangle.plan;

/**
 * What one leg of a lot's route gives it.
 *
 * @param index state in the booth's set-up table; 0 where the line has no such table
 * @param key what must be equal to share a load (powder, its lot for visible kit parts,
 *     pretreatment, substrate; for zinc hung or spun and the steel's reactivity)
 * @param name words for the sheet: "traffic yellow, gloss", "galvanized, hung"
 * @param kind which calculators apply
 * @param materialId the powder, paint or zinc it draws on; empty for bakes
 * @param materialLot the maker's lot it must be sprayed from, so that a kit's visible parts match;
 *     empty where any lot will do
 */
public record Finish(
    int index, String key, String name, FinishKind kind, String materialId, String materialLot) {
  /** A finish any lot of its material will do for. */
  public Finish(int index, String key, String name, FinishKind kind, String materialId) {
    this(index, key, name, kind, materialId, "");
  }

  /** The same from one maker's lot and no other, which then shares no load with other lots. */
  public Finish fromLot(String lot) {
    return new Finish(index, key + "|lot " + lot, name, kind, materialId, lot);
  }
}
