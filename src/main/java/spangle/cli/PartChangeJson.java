package spangle.cli;

import spangle.desk.PartChange;

/** A part's change as data. */
final class PartChangeJson {
  private PartChangeJson() {}

  static JsonOut of(PartChange change) {
    return new JsonOut()
        .put("kind", change.kind())
        .put("job", change.jobId())
        .put("part", change.partId())
        .put("minutes", change.minutes())
        .put("late", change.lateNow())
        .put("late_before", change.lateBefore())
        .put("words", change.words());
  }
}
