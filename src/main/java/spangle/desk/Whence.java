package spangle.desk;

/**
 * Where pieces were that come onto a load from none.
 *
 * @param how in a word
 * @param words the reason as it was told; empty where there is none to tell
 */
record Whence(How how, String words) {
  /** What they were, and whether it kept them off every load until now. */
  enum How {
    /** There was no room for them. */
    LEFT_OUT("left out", true),
    /** A gate was shut on them. */
    HELD("held", true),
    /** They were reported beyond saving. */
    SCRAPPED("scrapped", true),
    /** They hung, and were rejected. */
    REJECTED("rejected", false),
    /** They hung, were rejected and are stripped. */
    STRIPPED("stripped", false),
    /** Nobody had told of them. */
    UNPLANNED("not in the plan", false);

    private final String word;
    private final boolean over;

    How(String word, boolean over) {
      this.word = word;
      this.over = over;
    }
  }

  static Whence of(How how) {
    return new Whence(how, "");
  }

  /** As the change list says it beside what they hung on before. */
  String said() {
    return words.isEmpty() ? how.word : how.word + ": " + words;
  }

  /** The same where it could be read as what they are now. */
  String sofar() {
    return how.over ? "until now " + said() : said();
  }
}
