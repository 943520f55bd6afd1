package spangle.equipment;

/**
 * A stretch of time in whole minutes from the week's zero (Monday 00:00), start inside, end
 * outside.
 */
public record Span(int startMin, int endMin) {
  /** Refuses a stretch that ends before it starts. */
  public Span {
    if (endMin < startMin) {
      throw new IllegalArgumentException(
          "a span ends before it starts: " + startMin + ".." + endMin);
    }
  }

  /** Length in minutes. */
  public int minutes() {
    return endMin - startMin;
  }

  /** Whether some minute lies in both. */
  public boolean overlaps(Span other) {
    return startMin < other.endMin && other.startMin < endMin;
  }
}
