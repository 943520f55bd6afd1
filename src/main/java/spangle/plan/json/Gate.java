package spangle.plan.json;

/**
 * A condition that stops a part before it is scheduled; only a person opens it.
 *
 * @param jobId the order
 * @param partId the part
 * @param code stable code of the gate
 * @param open true where a record opened it and the part was planned
 * @param pieces how many pieces it holds, or held
 * @param words what is wrong or not known, with value and limit, or which record opened it
 * @param whoAnswers who must answer
 */
public record Gate(
    String jobId,
    String partId,
    String code,
    boolean open,
    int pieces,
    String words,
    String whoAnswers) {}
