package spangle.fit.gate;

import java.util.List;

/**
 * A person's record.
 *
 * @param by who signed
 * @param at when, as written
 * @param seen what was seen
 */
public record GateOpening(List<String> by, String at, String seen) {
  /** Copies the list. */
  public GateOpening {
    by = List.copyOf(by);
  }

  /** Whether it says who, when and what; a record that does not opens nothing. */
  public boolean complete() {
    return by.stream().anyMatch(name -> !name.isBlank()) && !at.isBlank() && !seen.isBlank();
  }

  /** For sheets: {@code hanger 1, kettle lead, 2026-11-27 14:20: holes open}. */
  public String words() {
    return String.join(", ", by) + ", " + at + ": " + seen;
  }
}
