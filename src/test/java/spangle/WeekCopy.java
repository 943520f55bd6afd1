package spangle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Copies a week folder to where a test may change it. */
public final class WeekCopy {
  private WeekCopy() {}

  /** The week with its plan and all that lies in it. */
  public static void whole(Path week, Path to) {
    copy(week, to, true);
  }

  /** The week without the plan somebody may have made in it. */
  public static void unplanned(Path week, Path to) {
    copy(week, to, false);
  }

  private static void copy(Path week, Path to, boolean planned) {
    try (Stream<Path> files = Files.walk(week)) {
      for (Path each : files.sorted().toList()) {
        Path inside = week.relativize(each);
        Path target = to.resolve(inside.toString());
        if (!planned && inside.startsWith("plan")) {
          continue;
        }
        if (Files.isDirectory(each)) {
          Files.createDirectories(target);
        } else {
          Files.copy(each, target);
        }
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
