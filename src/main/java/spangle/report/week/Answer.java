package spangle.report.week;

import java.util.List;

/**
 * One of the ten answers of the week.
 *
 * @param number 1 to 10
 * @param topic the question in one or two words, for a narrow screen
 * @param question as the shop asks it
 * @param answer in a few words
 * @param details more, line by line; may be empty
 * @param alarm true when it needs a person
 */
public record Answer(
    int number, String topic, String question, String answer, List<String> details, boolean alarm) {
  /** Copies the list. */
  public Answer {
    details = List.copyOf(details);
  }
}
