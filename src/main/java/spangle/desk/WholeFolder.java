package spangle.desk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Replaces a set of files as a whole: all are written and forced to disk beside the folder first,
 * then two renames put the new folder in place. A crash at any moment leaves the old folder, or the
 * new one, or the old one under its former name with a tilde, which the next call puts back.
 */
public final class WholeFolder {
  private WholeFolder() {}

  /**
   * Puts these files into the folder; files of other names that lie in it stay.
   *
   * @throws IOException when the disk refuses; the folder is then as it was
   */
  public static void replace(Path folder, Map<String, byte[]> files) throws IOException {
    Path target = folder.toAbsolutePath().normalize();
    Path parent = target.getParent();
    if (parent == null) {
      throw new IOException("a folder at the root of the disk cannot be replaced: " + target);
    }
    Files.createDirectories(parent);
    Path old = parent.resolve(target.getFileName() + "~old");
    Path next = parent.resolve(target.getFileName() + "~new");
    restore(target, old);
    delete(next);
    Files.createDirectory(next);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path path = next.resolve(file.getKey()).normalize();
      if (!path.startsWith(next)) {
        throw new IOException("a file name leads out of the folder: " + file.getKey());
      }
      write(path, file.getValue());
    }
    if (Files.isDirectory(target)) {
      keepOthers(target, next);
      Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
    }
    Files.move(next, target, StandardCopyOption.ATOMIC_MOVE);
    delete(old);
  }

  /** After a crash between the two renames the old folder comes back. */
  private static void restore(Path target, Path old) throws IOException {
    if (!Files.isDirectory(old)) {
      return;
    }
    if (Files.exists(target)) {
      delete(old);
    } else {
      Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
    }
  }

  private static void write(Path path, byte[] content) throws IOException {
    Files.createDirectories(path.getParent());
    Files.write(path, content, StandardOpenOption.CREATE_NEW);
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  private static void keepOthers(Path from, Path to) throws IOException {
    List<Path> others;
    try (Stream<Path> all = Files.list(from)) {
      others = all.filter(p -> !Files.exists(to.resolve(p.getFileName()))).toList();
    }
    for (Path other : others) {
      if (Files.isRegularFile(other)) {
        Files.copy(other, to.resolve(other.getFileName()), StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path dir, @Nullable IOException failed)
              throws IOException {
            if (failed != null) {
              throw failed;
            }
            Files.delete(dir);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
