package spangle.report;

/**
 * The drawing a part's figures come from, as it was understood.
 *
 * @param jobId the order
 * @param partId the part
 * @param partName words for the sheet
 * @param words the file, and what is doubtful in it
 * @param svg drawing as one svg element
 */
public record DrawingNote(String jobId, String partId, String partName, String words, String svg) {}
