package spangle.intake.source;

import java.util.List;
import java.util.Map;
import spangle.intake.problem.Place;

/** A value in a file with its place: text, a group of named values, or a series. */
public sealed interface Datum {
  /** Where it starts. */
  Place place();

  /**
   * Text as written; {@code 06:00} and {@code no} are text here like anything else.
   *
   * @param place where it starts
   * @param text as written, without outer blanks
   */
  record Scalar(Place place, String text) implements Datum {
    /** Whether nothing is written. */
    public boolean isBlank() {
      return text.isBlank();
    }
  }

  /**
   * Named values in the order of the file.
   *
   * @param place where it starts
   * @param entries by name; iteration is the order of the file
   */
  record Group(Place place, Map<String, Entry> entries) implements Datum {}

  /**
   * A named value.
   *
   * @param keyPlace where its name stands
   * @param value the value
   */
  record Entry(Place keyPlace, Datum value) {}

  /**
   * Values in a row.
   *
   * @param place where it starts
   * @param items the values
   */
  record Series(Place place, List<Datum> items) implements Datum {
    /** Copies the list. */
    public Series {
      items = List.copyOf(items);
    }
  }
}
