package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The file a person can send when the program itself is at fault. */
final class FaultFile {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);

  private FaultFile() {}

  /**
   * Writes what happened into the first of the directories that can be written to.
   *
   * @return the file, or empty when none could be written
   */
  static Optional<Path> write(
      Throwable fault, List<String> arguments, LocalDateTime now, List<Path> directories) {
    for (Path directory : directories) {
      Path file = directory.resolve("spangle-fault-" + STAMP.format(now) + ".txt");
      try (PrintWriter out =
          new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
        out.println("spangle " + String.join(" ", arguments));
        out.println("version " + Spangle.VERSION);
        out.println(
            "java " + System.getProperty("java.version") + ", " + System.getProperty("os.name"));
        fault.printStackTrace(out);
        return Optional.of(file.toAbsolutePath());
      } catch (IOException notWritable) {
        fault.addSuppressed(notWritable);
      }
    }
    return Optional.empty();
  }
}
