package spangle.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
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

  /** Larger files are not read as drawings either. */
  private static final long MOST_BYTES = 64L << 20;

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
    for (Path drawing : besideTheRows(from.resolve("jobs"))) {
      // Drawings of refused rows too: the rows come back once they are mended.
      files.putIfAbsent("jobs/" + drawing.getFileName(), Files.readAllBytes(drawing));
    }
    files.putAll(CleanCopy.of(input, reading.answers()));
    Path before = from.resolve(CleanCopy.REFUSED);
    if (Files.isRegularFile(before, LinkOption.NOFOLLOW_LINKS) && Files.size(before) < MOST_BYTES) {
      // A copy of a copy: what was refused the first time stays refused and on the list.
      files.merge(CleanCopy.REFUSED, Files.readAllBytes(before), (now, was) -> joined(was, now));
    }
    WholeFolder.replace(folder, files);
    return List.copyOf(files.keySet());
  }

  private static List<Path> besideTheRows(Path jobs) throws IOException {
    List<Path> drawings = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(jobs)) {
      for (Path file : all) {
        if (drawing(file.toString())
            && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
            && Files.size(file) < MOST_BYTES) {
          drawings.add(file);
        }
      }
    }
    return drawings;
  }

  /** The lines of one table and those of another that do not stand there yet. */
  private static byte[] joined(byte[] was, byte[] now) {
    Set<String> lines = new LinkedHashSet<>();
    for (byte[] table : List.of(was, now)) {
      lines.addAll(List.of(new String(table, StandardCharsets.UTF_8).split("(?<=\r\n)")));
    }
    return String.join("", lines).getBytes(StandardCharsets.UTF_8);
  }

  private static boolean drawing(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return DRAWINGS.contains(name.substring(name.lastIndexOf('.') + 1));
  }
}
