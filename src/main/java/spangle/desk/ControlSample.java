package spangle.desk;

/** How many pieces of a lot are measured (ISO 1461 Table 1, from memory). */
final class ControlSample {
  private ControlSample() {}

  static int pieces(int lot) {
    if (lot <= 3) {
      return lot;
    }
    if (lot <= 500) {
      return 3;
    }
    if (lot <= 1200) {
      return 5;
    }
    if (lot <= 3200) {
      return 8;
    }
    return lot <= 10_000 ? 13 : 20;
  }
}
