package spangle.desk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import spangle.intake.copy.CleanCopy;
import spangle.intake.read.WeekReader;
import spangle.intake.week.WeekInput;

/** Writes a week anew with clean job files, never over anything that is there. */
public final class CopyDesk {
  /** Files whose content the clean job files already hold. */
  private static final Set<String> TAKEN_IN = Set.of("answers.yaml", "columns.yaml");

  private static final Set<String> DRAWINGS = Set.of("dxf", "stl");

  private CopyDesk() {}

  /**
   * Copies a week.
   *
   * @return the files written, paths below the new folder
   * @throws FileAlreadyExistsException when the folder is there
   * @throws IOException when the week cannot be planned at all, or the disk refuses
   */
  public static List<String> copy(Path week, Path folder) throws IOException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(folder.toString());
    }
    Path from = week.toRealPath();
    if (folder.toAbsolutePath().normalize().startsWith(from)) {
      throw new IOException("it lies inside the week it would copy; give a folder beside it");
    }
    WeekReader.Reading reading = WeekReader.read(week);
    if (reading.input().isEmpty()) {
      throw new IOException("the week cannot be read as a whole; see the problems");
    }
    WeekInput input = reading.input().get();
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (String file : reading.digests().keySet()) {
      if (!TAKEN_IN.contains(file) && (!file.startsWith("jobs/") || drawing(file))) {
        files.put(file, Files.readAllBytes(from.resolve(file)));
      }
    }
    files.putAll(CleanCopy.of(input, reading.answers()));
    WholeFolder.replace(folder, files);
    return List.copyOf(files.keySet());
  }

  private static boolean drawing(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return DRAWINGS.contains(name.substring(name.lastIndexOf('.') + 1));
  }
}
