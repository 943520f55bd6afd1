package spangle.intake.read;

import java.time.LocalDate;
import java.util.OptionalInt;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problems;
import spangle.intake.source.Datum;

/** A moment as people write it in files and on the command line: {@code tue 09:20} or a date. */
public final class Moment {
  private Moment() {}

  /** Minutes from the week's zero; empty where the words are no moment. */
  public static OptionalInt of(LocalDate monday, String words) {
    return new Times(monday, Times.Order.YMD)
        .minute(
            "at",
            new Datum.Scalar(Place.file("at"), words),
            Times.Edge.START,
            new Notes(new Problems(), false));
  }
}
