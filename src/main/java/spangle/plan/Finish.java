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
 */
public record Finish(int index, String key, String name, FinishKind kind, String materialId) {}
