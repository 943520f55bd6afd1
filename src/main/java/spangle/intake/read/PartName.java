package spangle.intake.read;

import java.util.Locale;
import java.util.Optional;
import spangle.intake.problem.Problems;
import spangle.intake.source.Datum;

/**
 * What a person calls one part of a week: {@code JOB/PART}, the part, or the job where it has one
 * part. A week read for one name leaves out the rows that cannot be meant.
 *
 * @param asked as it was typed
 */
public record PartName(String asked) {

  /** Whether a part of a job is meant. */
  public boolean means(String job, String part) {
    String wanted = plain(asked);
    return wanted.equals(plain(job + "/" + part))
        || wanted.equals(plain(part))
        || wanted.equals(plain(job));
  }

  /** Small letters; a blank stands for a stroke, so that both may be typed. */
  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s/]+", "/");
  }

  /** Whether a row may be meant; a row whose names cannot be read is never left out. */
  boolean mayMean(Datum.Group row) {
    Fields fields = new Fields(row, new Notes(new Problems(), false));
    Optional<String> job = fields.name("job");
    Optional<String> part = fields.name("part");
    return job.isEmpty() || part.isEmpty() || means(job.get(), part.get());
  }

  /**
   * Whether a job file may hold the part. A text without any of the words asked for cannot; one
   * with escapes may write them otherwise.
   */
  boolean mayStandIn(String text) {
    if (text.indexOf('\\') >= 0) {
      return true;
    }
    String low = text.toLowerCase(Locale.ROOT);
    for (String word : asked.strip().toLowerCase(Locale.ROOT).split("[/\\s]+", -1)) {
      if (low.contains(word)) {
        return true;
      }
    }
    return false;
  }
}
