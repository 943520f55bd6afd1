package spangle.intake.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Files of the sample weeks. */
final class SampleFiles {
  private SampleFiles() {}

  static Optional<byte[]> bytes(String sample, String file) {
    Path path = Path.of("samples", sample, file);
    try {
      return Files.exists(path) ? Optional.of(Files.readAllBytes(path)) : Optional.empty();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** Drawings beside the job files. */
  static SortedMap<String, byte[]> drawings(String sample) {
    SortedMap<String, byte[]> drawings = new TreeMap<>();
    try (Stream<Path> files = Files.list(Path.of("samples", sample, "jobs"))) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".dxf") || name.endsWith(".stl")) {
          drawings.put("jobs/" + name, Files.readAllBytes(file));
        }
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return drawings;
  }
}
