package spangle.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/**
 * What a disk has against a file, in words; an exception of the library often says only its name.
 */
final class DiskWords {
  private DiskWords() {}

  /** A sentence without its full stop. */
  static String of(IOException refused) {
    if (!(refused instanceof FileSystemException disk) || disk.getFile() == null) {
      return String.valueOf(refused.getMessage());
    }
    return disk.getFile() + " " + why(disk);
  }

  private static String why(FileSystemException disk) {
    if (disk instanceof NoSuchFileException) {
      return "is not there; look at the path";
    }
    if (disk instanceof AccessDeniedException) {
      return "may not be opened or written; look at who may";
    }
    if (disk instanceof FileAlreadyExistsException || disk instanceof NotDirectoryException) {
      return "is a file where a folder is needed; give another path";
    }
    return disk.getReason() == null
        ? "cannot be opened or written; look at the disk and the path"
        : "cannot be opened or written (" + disk.getReason() + "); look at the disk and the path";
  }
}
