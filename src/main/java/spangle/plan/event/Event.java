package spangle.plan.event;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One thing that happened, as somebody reported it. Texts that were not given are empty.
 *
 * @param number its place in the log, from 1
 * @param atMin when, minutes from the week's zero
 * @param kind what
 * @param by who says so; may be empty
 * @param load load, batch or dip
 * @param job order
 * @param part part
 * @param station station, oven or kettle
 * @param material powder, paint or zinc
 * @param lot maker's lot number
 * @param gate word of the gate
 * @param of word of {@link ScrapOf}: which pieces were scrapped
 * @param openedBy who signed for the gate
 * @param figures the numbers it carries
 * @param note words
 */
public record Event(
    int number,
    int atMin,
    EventKind kind,
    String by,
    String load,
    String job,
    String part,
    String station,
    String material,
    String lot,
    String gate,
    String of,
    List<String> openedBy,
    Figures figures,
    String note) {

  /**
   * Numbers of an event; empty where not given.
   *
   * @param count pieces
   * @param amount kilograms or litres
   * @param fromMin from when on
   * @param untilMin until when, or the new time
   * @param factor how many times longer
   * @param siPct silicon, per cent
   * @param pPct phosphorus, per cent
   * @param levelDownMm mm below the usual mark
   * @param priority 1 to 9
   * @param dueMin new due time
   * @param event another event's number
   * @param coats coats of their last colour that rejected pieces bear
   */
  public record Figures(
      OptionalInt count,
      OptionalDouble amount,
      OptionalInt fromMin,
      OptionalInt untilMin,
      OptionalDouble factor,
      OptionalDouble siPct,
      OptionalDouble pPct,
      OptionalDouble levelDownMm,
      OptionalInt priority,
      OptionalInt dueMin,
      OptionalInt event,
      OptionalInt coats) {
    /** No number at all. */
    public static final Figures NONE =
        new Figures(
            OptionalInt.empty(),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            OptionalInt.empty());
  }

  /** Copies the list. */
  public Event {
    openedBy = List.copyOf(openedBy);
  }

  /** Whether it concerns that part of that order. */
  public boolean concerns(String jobId, String partId) {
    return job.equals(jobId) && (part.isEmpty() || part.equals(partId));
  }

  /** Coats that rejected pieces bear: 1 where nobody says otherwise. */
  public int coats() {
    return figures.coats().orElse(1);
  }

  /** In words: kind and what it is about. */
  public String words() {
    StringBuilder words = new StringBuilder(kind.word().replace('-', ' '));
    for (String about : List.of(load, job, part, station, material)) {
      if (!about.isEmpty()) {
        words.append(' ').append(about);
      }
    }
    String things = kind == EventKind.BROKEN ? " place" : " piece";
    figures
        .count()
        .ifPresent(n -> words.append(", ").append(n).append(things).append(n == 1 ? "" : "s"));
    if (!of.isEmpty()) {
      words.append(" of those ").append(of);
    }
    figures.coats().ifPresent(n -> words.append(" with ").append(n).append(" coats"));
    if (!note.isEmpty()) {
      words.append(" (").append(note).append(')');
    }
    return words.toString();
  }
}
