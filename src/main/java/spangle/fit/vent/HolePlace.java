package spangle.fit.vent;

/**
 * Where a hole goes.
 *
 * @param task what it is for there
 * @param farEnd at the end that l points to (upper end of a tilted part)
 * @param topSide on the side that h points to
 * @param words for the person with the drill
 */
public record HolePlace(Task task, boolean farEnd, boolean topSide, String words) {}
