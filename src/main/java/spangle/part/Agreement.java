package spangle.part;

import java.util.List;

/**
 * How well the figures of one piece agree.
 *
 * @param verdict the worst of the doubts
 * @param doubts every comparison that does not agree, largest disagreement first
 */
public record Agreement(Verdict verdict, List<Doubt> doubts) {
  /** Copies the list. */
  public Agreement {
    doubts = List.copyOf(doubts);
  }

  /** What happens to the part. */
  public enum Verdict {
    /** The figures agree. */
    AGREES,
    /** Somebody should be asked; planning goes on with what is written. */
    ASK,
    /** The part waits until somebody has answered. */
    BLOCK
  }

  /**
   * One comparison that does not agree.
   *
   * @param verdict what this one asks for
   * @param words both figures and how far they are apart
   * @param readings what would bring them together; empty when nothing known does
   */
  public record Doubt(Verdict verdict, String words, List<Reading> readings) {
    /** Copies the list. */
    public Doubt {
      readings = List.copyOf(readings);
    }
  }

  /**
   * A supposition under which the figures agree.
   *
   * @param trap the supposition
   * @param words the figure as written and as it would then be
   */
  public record Reading(Trap trap, String words) {}
}
