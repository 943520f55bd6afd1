package spangle.solve.move;

/** Random numbers for the search: quick, and the same for the same seed on every machine. */
public final class Dice {
  private long state;

  /** Dice with that seed. */
  public Dice(long seed) {
    state = seed * 0x9E3779B97F4A7C15L + 0x2545F4914F6CDD1DL;
  }

  /** Any 64 bits (the SplitMix64 step of Steele, Lea and Flood, 2014). */
  public long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** 0 to bound - 1. */
  public int below(int bound) {
    return (int) (((next() >>> 32) * bound) >>> 32);
  }

  /** True in so many of a hundred throws. */
  public boolean percent(int chance) {
    return below(100) < chance;
  }

  /** 0 to just under 1. */
  public double unit() {
    return (next() >>> 11) * 0x1.0p-53;
  }
}
