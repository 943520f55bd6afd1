package spangle.report.table;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import spangle.report.week.WeekIndex;

/** The tables of a week as files. */
public final class TableFiles {
  private TableFiles() {}

  /** Content by file name. */
  public static SortedMap<String, byte[]> of(WeekIndex index) {
    Table schedule = Tables.schedule(index);
    Table purchases = Tables.purchases(index);
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("schedule.csv", schedule.csv().getBytes(StandardCharsets.UTF_8));
    files.put("purchases.csv", purchases.csv().getBytes(StandardCharsets.UTF_8));
    files.put("schedule.xlsx", Workbook.of(List.of(schedule, purchases)));
    files.put("week.ics", Calendar.of(index).getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
