package spangle.intake.read;

import java.nio.file.Path;
import java.util.List;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;

/** Lists of other shops in a sound week, and what was read of them. */
final class OtherLists {
  /** Minutes of a day. */
  static final int DAY = 1440;

  private OtherLists() {}

  static WeekReader.Reading read(Path folder, String csv) {
    return WeekFiles.sound(folder).put("jobs/a.csv", csv).read();
  }

  static List<PartLine> parts(WeekReader.Reading reading) {
    return reading.input().orElseThrow().jobs().stream()
        .map(Job::parts)
        .flatMap(List::stream)
        .toList();
  }

  static List<String> codes(WeekReader.Reading reading) {
    return reading.problems().stream().map(p -> p.code().key() + " " + p.value()).toList();
  }
}
