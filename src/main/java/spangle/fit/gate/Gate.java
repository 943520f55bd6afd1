package spangle.fit.gate;

/** The gates, in the order they stand on sheets. */
public enum Gate {
  /** Only plain steel and iron castings enter acid and zinc. */
  MATERIAL("material", "design", 0),
  /** What nobody has said of welded work. */
  UNKNOWN("welded work", "design", 0),
  /** Closed hollows, their holes, and the two who looked through them. */
  HOLLOW("hollows", "design", 0),
  /** Plates sealed on one another. */
  OVERLAP("overlaps", "design", 0),
  /** Places that hold air or zinc in the hung attitude. */
  POCKETS("pockets", "design", 1),
  /** Trapped air against the steel's volume. */
  FLOATING("floating", "kettle lead", 0),
  /** Parts that move in themselves. */
  MOVING_PARTS("moving parts", "design", 1),
  /** Joints that melt. */
  SOLDER("soldered joints", "design", 1),
  /** Hardened or high-strength steel. */
  STRONG_STEEL("strong steel", "design", 1),
  /** Thick steel bent tightly. */
  TIGHT_BEND("tight bends", "design", 1),
  /** Thin and thick welded together. */
  THICKNESS_RATIO("thickness ratio", "design", 1),
  /** Thin flat sheet. */
  DISTORTION("thin flat sheet", "customer", 1),
  /** What must not become hot. */
  HEAT("heat", "assembly", 0);

  private final String word;
  private final String whoAnswers;
  private final int danger;

  Gate(String word, String whoAnswers, int danger) {
    this.word = word;
    this.whoAnswers = whoAnswers;
    this.danger = danger;
  }

  /** For sheets. */
  public String word() {
    return word;
  }

  /** Who must answer while it is shut. */
  public String whoAnswers() {
    return whoAnswers;
  }

  /** 0 = can hurt people, 1 = spoils work or plant. */
  public int danger() {
    return danger;
  }
}
