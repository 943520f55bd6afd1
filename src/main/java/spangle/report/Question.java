package spangle.report;

import java.util.OptionalInt;

/**
 * A doubt that does not stop the work but should be answered: two figures that disagree, an assumed
 * steel, a bracket instead of a number.
 *
 * @param subject job, part, file or colour
 * @param code stable code
 * @param words the doubt and what was assumed
 * @param whoAnswers who can answer
 * @param danger what a wrong guess would do
 * @param dueMin when the answer is needed; empty where any time does
 */
public record Question(
    String subject,
    String code,
    String words,
    String whoAnswers,
    Danger danger,
    OptionalInt dueMin) {}
