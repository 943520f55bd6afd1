package spangle.coating.zinc;

import spangle.measure.Limits;

/**
 * Minutes in hydrochloric acid by rust and acid age. Published: 20 minutes to 3 hours at room
 * temperature; the steps between are common practice and a shop replaces them with its own.
 */
public final class Pickling {
  private static final double LONGEST_MIN = 180;

  /** Acid is changed at about this iron, g/l (100-150, from memory). */
  public static final double SPENT_IRON_G_L = 120;

  /** State of the surface when it goes in. */
  public enum Rust {
    /** Cold-rolled or pickled sheet, bright. */
    BRIGHT(20),
    /** Light rust. */
    LIGHT(40),
    /** Rust or mill scale all over. */
    RUSTY(60),
    /** Heavy scale, pitted rust. */
    HEAVY(90);

    private final double freshAcidMin;

    Rust(double freshAcidMin) {
      this.freshAcidMin = freshAcidMin;
    }

    /** Minutes in fresh acid. */
    public double freshAcidMin() {
      return freshAcidMin;
    }
  }

  private Pickling() {}

  /**
   * Minutes in the acid: twice the fresh time when it is spent, straight between.
   *
   * @param rust the surface
   * @param ironGL iron in the acid, g/l; 0 is fresh
   */
  public static double minutes(Rust rust, double ironGL) {
    Limits.between(ironGL, 0, 250, "an iron content of the acid", "g/l");
    return Math.min(LONGEST_MIN, rust.freshAcidMin() * (1 + ironGL / SPENT_IRON_G_L));
  }

  /** Whether the acid should be changed. */
  public static boolean spent(double ironGL) {
    return ironGL >= SPENT_IRON_G_L;
  }
}
