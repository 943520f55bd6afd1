package spangle.fit.gate;

import java.util.Optional;

/**
 * How one gate stands for one part.
 *
 * @param gate which
 * @param standing shut, opened or clear
 * @param code stable name of the reason while shut; the gate's own word otherwise
 * @param words what is wrong or why it is clear, with value and limit
 * @param opens what opens it; empty unless shut
 * @param opening the record that opened it
 */
public record GateState(
    Gate gate,
    Standing standing,
    String code,
    String words,
    String opens,
    Optional<GateOpening> opening) {
  static final String NOT_LOOKED = "vents-not-signed";

  /** How a gate stands. */
  public enum Standing {
    /** Nothing in the data speaks against it. */
    CLEAR("clear"),
    /** A person has signed for it. */
    OPENED("opened"),
    /** The part waits. */
    SHUT("shut");

    private final String word;

    Standing(String word) {
      this.word = word;
    }

    /** For sheets and data. */
    public String word() {
      return word;
    }
  }

  static GateState clear(Gate gate, String words) {
    return new GateState(gate, Standing.CLEAR, gate.word(), words, "", Optional.empty());
  }

  static GateState shut(Gate gate, String code, String words, String opens) {
    return new GateState(gate, Standing.SHUT, code, words, opens, Optional.empty());
  }

  /** Opened where a record is there, else shut. */
  static GateState shutUnless(
      Optional<GateOpening> opening, Gate gate, String code, String words, String opens) {
    return opening.isPresent()
        ? new GateState(gate, Standing.OPENED, code, words, "", opening)
        : shut(gate, code, words, opens);
  }

  /** Whether the part waits. */
  public boolean isShut() {
    return standing == Standing.SHUT;
  }

  /** Whether a person has signed for it. */
  public boolean isOpened() {
    return standing == Standing.OPENED;
  }

  /** Who must answer: holes are drawn by design, but looked through at the kettle. */
  public String whoAnswers() {
    return code.equals(NOT_LOOKED) ? "kettle lead" : gate.whoAnswers();
  }

  /** Who opened it, when, and what was seen; for a sheet with little room. */
  public String signed() {
    return gate.word() + ": " + standing.word() + opening.map(o -> " by " + o.words()).orElse("");
  }

  /** One line for a sheet. */
  public String line() {
    return gate.word()
        + ": "
        + standing.word()
        + opening.map(o -> " by " + o.words() + " (" + words + ")").orElse(", " + words);
  }
}
