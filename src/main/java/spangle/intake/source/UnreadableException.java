package spangle.intake.source;

import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;

/** A file that cannot be read at all; carries what a person needs to put it right. */
public final class UnreadableException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Place place;
  private final ProblemCode code;
  private final String limit;
  private final String remedy;

  /** Says why a file cannot be read. */
  public UnreadableException(
      ProblemCode code, Place place, String why, String limit, String remedy) {
    super(why);
    this.code = code;
    this.place = place;
    this.limit = limit;
    this.remedy = remedy;
  }

  /** A file that does not follow its own grammar. */
  public static UnreadableException grammar(Place place, String why, String remedy) {
    return new UnreadableException(ProblemCode.FILE_UNREADABLE, place, why, "", remedy);
  }

  /** A file beyond a limit. */
  public static UnreadableException tooLarge(Place place, String why, String limit) {
    return new UnreadableException(
        ProblemCode.FILE_TOO_LARGE,
        place,
        why,
        limit,
        "split the file, or leave out what is not needed");
  }

  /** Where. */
  public Place place() {
    return place;
  }

  /** Which kind. */
  public ProblemCode code() {
    return code;
  }

  /** What would be right. */
  public String limit() {
    return limit;
  }

  /** What to do. */
  public String remedy() {
    return remedy;
  }

  /** Why, in words. */
  public String why() {
    String message = getMessage();
    return message == null ? "the file cannot be read" : message;
  }
}
