package spangle.report;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import spangle.report.page.WeekPage;
import spangle.report.table.TableFiles;
import spangle.report.week.WeekIndex;

/** All files of a week's sheets. */
public final class ReportFiles {
  private ReportFiles() {}

  /**
   * Makes the files; the same report gives the same bytes.
   *
   * @return content by file name, in the names' order
   */
  public static Map<String, byte[]> render(WeekReport report) {
    WeekIndex index = new WeekIndex(report);
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put("index.html", WeekPage.of(index).getBytes(StandardCharsets.UTF_8));
    files.putAll(TableFiles.of(index));
    return files;
  }
}
