package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * What another plan means for one part of a job, as it is said to people.
 *
 * @param kind "later", "earlier", "more", "less", "new", "gone"
 * @param jobId the order
 * @param partId the part
 * @param label the part in words
 * @param minutes how much later (earlier: below zero) its last piece is finished; 0 where it is not
 *     finished in both plans
 * @param lateNow whether it is late, or partly out of the week, in the second plan
 * @param lateBefore whether it was in the first
 * @param words the whole in one sentence
 */
public record PartChange(
    String kind,
    String jobId,
    String partId,
    String label,
    int minutes,
    boolean lateNow,
    boolean lateBefore,
    String words) {
  /** Nobody is told of a shift shorter than this, unless it makes the part late. */
  static final int WORTH_SAYING_MIN = 30;

  /** All changes worth saying: what becomes late first, then the largest shifts. */
  static List<PartChange> of(Map<String, PartFate> before, Map<String, PartFate> after) {
    return of(before, after, WORTH_SAYING_MIN);
  }

  /** The same with another shortest shift that is said. */
  static List<PartChange> of(
      Map<String, PartFate> before, Map<String, PartFate> after, int worthSayingMin) {
    Set<String> keys = new TreeSet<>(before.keySet());
    keys.addAll(after.keySet());
    List<PartChange> changes = new ArrayList<>();
    for (String key : keys) {
      PartFate was = before.get(key);
      PartFate is = after.get(key);
      if (was == null && is != null) {
        changes.add(change("new", is, 0, false, is.doneWords() + due(is)));
      } else if (was != null && is == null) {
        changes.add(change("gone", was, 0, was.late(), "not in the second plan"));
      } else if (was != null && is != null) {
        compare(was, is, worthSayingMin, changes);
      }
    }
    changes.sort(
        Comparator.comparing((PartChange c) -> !(c.lateNow && !c.lateBefore))
            .thenComparing(c -> !c.lateNow)
            .thenComparing(c -> -Math.abs(c.minutes))
            .thenComparing(PartChange::jobId)
            .thenComparing(PartChange::partId));
    return changes;
  }

  private static void compare(
      PartFate was, PartFate is, int worthSayingMin, List<PartChange> changes) {
    OptionalInt shift = shift(was, is);
    if (was.planned() != is.planned()) {
      String kind = is.planned() > was.planned() ? "more" : "less";
      changes.add(
          change(
              kind,
              is,
              shift.orElse(0),
              was.late(),
              is.doneWords() + " (before: " + was.shortWords() + ")" + due(is)));
      return;
    }
    boolean turns = was.late() != is.late();
    if (shift.isPresent()
        && shift.getAsInt() != 0
        && (turns || Math.abs(shift.getAsInt()) >= worthSayingMin)) {
      String kind = shift.getAsInt() > 0 ? "later" : "earlier";
      changes.add(
          change(
              kind,
              is,
              shift.getAsInt(),
              was.late(),
              inWeek(is)
                  + "done "
                  + DayWords.of(is.endMin().orElse(0))
                  + ", "
                  + DayWords.length(Math.abs(shift.getAsInt()))
                  + " "
                  + kind
                  + " than "
                  + DayWords.of(was.endMin().orElse(0))
                  + due(is)));
    }
  }

  /** Where some are left out in both plans: of which pieces it speaks. */
  private static String inWeek(PartFate is) {
    return is.leftOut() == 0
        ? ""
        : is.planned()
            + " of "
            + (is.planned() + is.leftOut())
            + " pieces, the others in no plan, ";
  }

  private static OptionalInt shift(PartFate was, PartFate is) {
    return was.endMin().isPresent() && is.endMin().isPresent()
        ? OptionalInt.of(is.endMin().getAsInt() - was.endMin().getAsInt())
        : OptionalInt.empty();
  }

  private static String due(PartFate is) {
    if (is.planned() + is.leftOut() == 0) {
      return "";
    }
    boolean past =
        is.leftOut() == 0 && is.endMin().isPresent() && is.endMin().getAsInt() > is.dueMin();
    String due = "due " + DayWords.due(is.dueMin());
    return past
        ? "; late by " + DayWords.length(is.endMin().getAsInt() - is.dueMin()) + ", " + due
        : "; " + due;
  }

  private static PartChange change(
      String kind, PartFate fate, int minutes, boolean lateBefore, String words) {
    return new PartChange(
        kind,
        fate.jobId(),
        fate.partId(),
        fate.label(),
        minutes,
        fate.late(),
        lateBefore,
        fate.name() + ": " + words);
  }
}
