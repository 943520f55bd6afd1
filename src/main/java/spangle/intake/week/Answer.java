package spangle.intake.week;

/**
 * An answer to a question of the problem list.
 *
 * @param ask the question's name: job/part/field
 * @param was the value asked about, as it was written
 * @param answer the new value, or {@code keep}
 * @param by who said so
 * @param at when, as written
 */
public record Answer(String ask, String was, String answer, String by, String at) {
  /** Whether the value is right as it was written. */
  public boolean keep() {
    return answer.equalsIgnoreCase("keep");
  }
}
