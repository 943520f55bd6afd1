package spangle.desk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Whole trees of files: kept, forced to disk, deleted. Links are kept or deleted, never followed.
 */
final class FolderTree {
  private static final boolean FOLDERS_CANNOT_BE_OPENED =
      System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");

  private FolderTree() {}

  /** Brings what lies in one folder and not in the other into the other, as links or copies. */
  static void keepOthers(Path from, Path to) throws IOException {
    Files.walkFileTree(
        from,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes)
              throws IOException {
            Path twin = to.resolve(from.relativize(dir));
            if (!Files.exists(twin, LinkOption.NOFOLLOW_LINKS)) {
              Files.createDirectory(twin);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Path twin = to.resolve(from.relativize(file));
            if (!Files.exists(twin, LinkOption.NOFOLLOW_LINKS)) {
              keep(file, twin, attributes);
            }
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private static void keep(Path file, Path twin, BasicFileAttributes attributes)
      throws IOException {
    if (attributes.isRegularFile()) {
      try {
        Files.createLink(twin, file);
        return;
      } catch (IOException | UnsupportedOperationException noLinksOnThisDisk) {
        Files.deleteIfExists(twin);
      }
    }
    Files.copy(file, twin, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
  }

  /** Forces one file, or the names in one folder, to disk. */
  static void force(Path path) throws IOException {
    boolean folder = Files.isDirectory(path);
    if (folder && FOLDERS_CANNOT_BE_OPENED) {
      return;
    }
    try (FileChannel channel =
        FileChannel.open(path, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Forces the names in a folder and in all folders below it to disk. */
  static void forceAll(Path folder) throws IOException {
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult postVisitDirectory(Path dir, @Nullable IOException failed)
              throws IOException {
            force(dir);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /** Deletes a tree; nothing happens where there is none. */
  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
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
