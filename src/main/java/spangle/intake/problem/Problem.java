package spangle.intake.problem;

import java.util.Comparator;

/**
 * One thing that is wrong or doubtful in the inputs.
 *
 * @param code stable name
 * @param severity how bad
 * @param place file, line, column
 * @param field key or column as the program calls it; empty for a whole row or file
 * @param value the text as written, shortened
 * @param limit what would be right, with its unit; empty where there is no limit
 * @param why what is wrong, in words
 * @param remedy what to do
 * @param meanwhile what happens until then
 * @param ask name under which an answer can be given; empty where none can
 * @param job the job concerned; may be empty
 * @param part the part concerned; may be empty
 * @param dueMin when the job is due, minutes from the week's zero; {@link #NO_DUE} where unknown
 */
public record Problem(
    ProblemCode code,
    Severity severity,
    Place place,
    String field,
    String value,
    String limit,
    String why,
    String remedy,
    Meanwhile meanwhile,
    String ask,
    String job,
    String part,
    int dueMin) {

  /** No due time known: sorts behind all that have one. */
  public static final int NO_DUE = Integer.MAX_VALUE;

  /** Longest value shown. */
  public static final int LONGEST_VALUE = 80;

  /** Danger first, then what is due first, then by place. */
  public static final Comparator<Problem> BY_DANGER_THEN_DUE =
      Comparator.comparing(Problem::severity)
          .thenComparingInt(Problem::dueMin)
          .thenComparing(Problem::place)
          .thenComparing(Problem::code)
          .thenComparing(Problem::field)
          .thenComparing(Problem::why);

  /** Shortens the value so that no input can flood a screen, and blanks control characters. */
  public Problem {
    value = shown(value);
    why = shownLong(why);
    job = shown(job);
    part = shown(part);
    field = shown(field);
  }

  /** A problem of no known job, to which no answer can be given by name. */
  public Problem(
      ProblemCode code,
      Severity severity,
      Place place,
      String field,
      String value,
      String limit,
      String why,
      String remedy,
      Meanwhile meanwhile) {
    this(code, severity, place, field, value, limit, why, remedy, meanwhile, "", "", "", NO_DUE);
  }

  /** The same problem of a known job and part. */
  public Problem of(String jobId, String partId, int due) {
    return new Problem(
        code, severity, place, field, value, limit, why, remedy, meanwhile, ask, jobId, partId,
        due);
  }

  /** The same problem under a name an answer can be given to. */
  public Problem asking(String name) {
    return new Problem(
        code, severity, place, field, value, limit, why, remedy, meanwhile, name, job, part,
        dueMin);
  }

  private static String shown(String text) {
    String clean = clean(text);
    return clean.length() <= LONGEST_VALUE ? clean : clean.substring(0, LONGEST_VALUE - 3) + "...";
  }

  private static String shownLong(String text) {
    String clean = clean(text);
    return clean.length() <= 600 ? clean : clean.substring(0, 597) + "...";
  }

  private static String clean(String text) {
    StringBuilder out = new StringBuilder(Math.min(text.length(), 700));
    for (int i = 0; i < text.length() && out.length() < 700; i++) {
      char c = text.charAt(i);
      boolean control = Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
      out.append(control ? ' ' : c);
    }
    return out.toString();
  }
}
