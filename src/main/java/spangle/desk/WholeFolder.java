package spangle.desk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;

/**
 * Replaces a set of files as a whole: all are written and forced to disk beside the folder first,
 * then two renames put the new folder in place. A crash at any moment leaves the old folder, or the
 * new one, or, between the renames, the old one under its former name with "~old"; {@link
 * #recover}, which every reader and writer calls first, puts that back.
 */
public final class WholeFolder {
  private WholeFolder() {}

  /**
   * Looks before anything is made whether a folder of that name could be written.
   *
   * @throws java.nio.file.FileSystemException with the file or folder that stands against it
   */
  public static void requireRoom(Path folder) throws IOException {
    Path target = folder.toAbsolutePath().normalize();
    if (Files.exists(target) && !Files.isDirectory(target)) {
      throw new NotDirectoryException(target.toString());
    }
    Path there = Names.of(target).parent();
    while (there.getParent() != null && !Files.exists(there)) {
      there = there.getParent();
    }
    if (!Files.isDirectory(there)) {
      throw new NotDirectoryException(there.toString());
    }
    if (!Files.isWritable(there)) {
      throw new AccessDeniedException(there.toString());
    }
  }

  /** Called before each step that changes the disk; a test lets it fail there. */
  interface Steps {
    void before(String step) throws IOException;
  }

  private record Names(Path parent, Path target, Path old, Path next, Path lock) {
    static Names of(Path folder) throws IOException {
      Path target = folder.toAbsolutePath().normalize();
      Path parent = target.getParent();
      if (parent == null) {
        throw new IOException("a folder at the root of the disk cannot be replaced: " + target);
      }
      String name = target.getFileName().toString();
      return new Names(
          parent,
          target,
          parent.resolve(name + "~old"),
          parent.resolve(name + "~new"),
          parent.resolve(name + "~lock"));
    }
  }

  /**
   * Puts these files into the folder; whatever else lies in it stays.
   *
   * @param files content by path inside the folder
   * @throws IOException when the disk refuses; the folder is then as it was
   */
  public static void replace(Path folder, Map<String, byte[]> files) throws IOException {
    replace(folder, files, step -> {});
  }

  static synchronized void replace(Path folder, Map<String, byte[]> files, Steps steps)
      throws IOException {
    Names names = Names.of(folder);
    Files.createDirectories(names.parent());
    try (FileChannel channel =
        FileChannel.open(names.lock(), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      // Another program that writes the same folder is waited for; closing the channel lets go.
      channel.lock();
      try {
        restore(names, steps);
        swap(names, files, steps);
      } finally {
        Files.deleteIfExists(names.lock());
      }
    }
  }

  /** Puts the old folder back where a crash between the two renames left none. */
  public static synchronized void recover(Path folder) throws IOException {
    Names names = Names.of(folder);
    if (Files.isDirectory(names.old()) && !Files.exists(names.target())) {
      restore(names, step -> {});
    }
  }

  private static void restore(Names names, Steps steps) throws IOException {
    if (!Files.isDirectory(names.old())) {
      return;
    }
    if (Files.exists(names.target())) {
      steps.before("delete what was replaced last time");
      FolderTree.delete(names.old());
    } else {
      steps.before("put the old folder back");
      Files.move(names.old(), names.target(), StandardCopyOption.ATOMIC_MOVE);
      FolderTree.force(names.parent());
    }
  }

  private static void swap(Names names, Map<String, byte[]> files, Steps steps) throws IOException {
    FolderTree.delete(names.next());
    Files.createDirectory(names.next());
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path path = names.next().resolve(file.getKey()).normalize();
        if (!path.startsWith(names.next()) || path.equals(names.next())) {
          throw new IOException("a file name leads out of the folder: " + file.getKey());
        }
        steps.before("write " + file.getKey());
        write(path, file.getValue());
      }
      if (Files.isDirectory(names.target())) {
        steps.before("keep what else lies in the folder");
        FolderTree.keepOthers(names.target(), names.next());
      }
      FolderTree.forceAll(names.next());
    } catch (IOException refused) {
      FolderTree.delete(names.next());
      throw refused;
    }
    exchange(names, steps);
    steps.before("delete the old folder");
    FolderTree.delete(names.old());
  }

  private static void exchange(Names names, Steps steps) throws IOException {
    boolean renamed = false;
    try {
      if (Files.isDirectory(names.target())) {
        steps.before("rename the old folder");
        Files.move(names.target(), names.old(), StandardCopyOption.ATOMIC_MOVE);
        renamed = true;
      }
      steps.before("rename the new folder");
      Files.move(names.next(), names.target(), StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException refused) {
      if (renamed) {
        Files.move(names.old(), names.target(), StandardCopyOption.ATOMIC_MOVE);
      }
      FolderTree.delete(names.next());
      throw refused;
    }
    FolderTree.force(names.parent());
  }

  private static void write(Path path, byte[] content) throws IOException {
    Path folder = path.getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.write(path, content, StandardOpenOption.CREATE_NEW);
    FolderTree.force(path);
  }
}
