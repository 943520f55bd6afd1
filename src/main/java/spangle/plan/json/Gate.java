package spangle.plan.json;

import java.util.List;

/**
 * A condition that stops a part before it is scheduled; only a person opens it.
 *
 * @param jobId the order
 * @param partId the part
 * @param code stable code of the reason while it is shut, the gate's own word otherwise
 * @param state {@code shut}, {@code opened} by a person's record, or {@code clear}: nothing in the
 *     data speaks against it
 * @param open false while the part waits for it
 * @param pieces how many pieces it holds, or held
 * @param words what is wrong or not known, with value and limit, or why it is clear
 * @param whoAnswers who must answer while it is shut
 * @param openedBy who signed the record that opened it
 * @param openedAt when, as written there
 * @param seen what was seen
 */
public record Gate(
    String jobId,
    String partId,
    String code,
    String state,
    boolean open,
    int pieces,
    String words,
    String whoAnswers,
    List<String> openedBy,
    String openedAt,
    String seen) {
  /** The state of a gate that holds its part. */
  public static final String SHUT = "shut";

  /** Copies the list and refuses a shut gate that claims to be open. */
  public Gate {
    openedBy = List.copyOf(openedBy);
    if (open == state.equals(SHUT)) {
      throw new IllegalArgumentException(
          "gate "
              + code
              + " of "
              + jobId
              + "/"
              + partId
              + ": the state is "
              + state
              + ", open is "
              + open);
    }
  }

  /** A gate nobody opened. */
  public static Gate shut(
      String jobId, String partId, String code, int pieces, String words, String whoAnswers) {
    return new Gate(jobId, partId, code, SHUT, false, pieces, words, whoAnswers, List.of(), "", "");
  }
}
