package spangle.desk;

import java.util.List;
import java.util.Locale;

/**
 * What is different after a replan, for the people who work by the sheets.
 *
 * @param lines one for each load or group of pieces that is elsewhere, in the order of time
 * @param held loads that must be looked at and pieces that must be stripped before they go on, and
 *     why
 * @param loadsMoved loads with another place or, by more than a quarter of an hour, another time
 * @param minutesMoved by how many minutes, all moved loads together
 * @param coloursReordered colours sprayed in another order than announced
 */
public record ChangeList(
    List<Line> lines, List<String> held, int loadsMoved, long minutesMoved, int coloursReordered) {
  /** Copies the lists. */
  public ChangeList {
    lines = List.copyOf(lines);
    held = List.copyOf(held);
  }

  /** Loads whose pieces, all or some, are on no load any more. */
  public int loadsDropped() {
    return (int) lines.stream().filter(l -> l.kind() == Kind.DROPPED).count();
  }

  /** What happened to it. */
  public enum Kind {
    /** Hangs already and waits longer. */
    LATER,
    /** Elsewhere or at another time. */
    MOVED,
    /** In its place, but some other pieces, another carrier, setting or time in the machine. */
    CHANGED,
    /** Carries fewer pieces than announced. */
    SMALLER,
    /** Carries more pieces than announced. */
    LARGER,
    /** Its pieces hang on other carriers than announced. */
    SPLIT,
    /** All its pieces hang on another load now. */
    MERGED,
    /** Not in the plan before. */
    NEW,
    /** Not in the plan any more. */
    DROPPED,
    /** Pieces that were on no load and find no place. */
    LEFT_OUT,
    /** Pieces that were on no load and wait behind a gate. */
    HELD;

    /** The word on the list. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * One line.
   *
   * @param kind what happened
   * @param load number on the sheet; the old one for what was dropped, empty for pieces on no load
   * @param what pieces in words
   * @param before old place and time
   * @param after new place and time, or why there is none
   * @param reason why: what forced it, or whose room it takes; empty where neither shows
   * @param tell who must be told
   * @param sheet letter of the sheet that is valid now; empty where the old sheet stays
   * @param startMin when it starts now, or did before; for pieces on no load, the minute of the
   *     plan
   */
  public record Line(
      Kind kind,
      String load,
      String what,
      String before,
      String after,
      String reason,
      String tell,
      String sheet,
      int startMin) {}
}
