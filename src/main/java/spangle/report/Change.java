package spangle.report;

/**
 * One line of the change list.
 *
 * @param kind "moved", "split", "new", "dropped"
 * @param subject load or job
 * @param before where it was, in words
 * @param after where it is, in words
 * @param tell who must be told
 */
public record Change(String kind, String subject, String before, String after, String tell) {}
