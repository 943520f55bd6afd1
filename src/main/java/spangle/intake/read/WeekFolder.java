package spangle.intake.read;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.Bytes;
import spangle.intake.source.Limits;

/**
 * The only way to the files of a week: nothing outside the folder is opened, no link is followed
 * out of it, nothing larger than the limits is read, and the digest of everything read is kept.
 */
final class WeekFolder {
  private final Path root;
  private final SortedMap<String, String> digests = new TreeMap<>();
  private final SortedMap<String, Path> guests = new TreeMap<>();

  private final boolean digested;

  private WeekFolder(Path root, boolean digested) {
    this.root = root;
    this.digested = digested;
  }

  /**
   * Lets one file from elsewhere, which the person named, be read as if it lay in the folder.
   *
   * @return its name here: that of the file, with its folder where such a file is here already
   */
  String guest(String below, Path file) {
    String name = below + file.getFileName();
    String free = exists(name) ? below + file.toString().replace('\\', '/') : name;
    guests.put(free, file);
    return free;
  }

  /** Opens a folder and keeps the digests; notes why when it cannot be opened. */
  static Optional<WeekFolder> open(Path folder, Problems problems) {
    return open(folder, problems, true);
  }

  /**
   * Opens a folder; notes why when it cannot be.
   *
   * @param digested whether anybody will ask for digests
   */
  static Optional<WeekFolder> open(Path folder, Problems problems, boolean digested) {
    try {
      Path real = folder.toRealPath();
      if (!Files.isDirectory(real)) {
        throw new NotDirectoryException(folder.toString());
      }
      return Optional.of(new WeekFolder(real, digested));
    } catch (IOException missing) {
      problems.add(
          ProblemCode.FILE_MISSING,
          Place.file(String.valueOf(folder.getFileName())),
          "",
          folder.toString(),
          "",
          "there is no such folder, or it may not be opened",
          "give the path of a week folder: one with shop.yaml, coatings.yaml and jobs/");
      return Optional.empty();
    }
  }

  String name() {
    Path name = root.getFileName();
    return name == null ? "week" : name.toString();
  }

  boolean exists(String file) {
    return Files.exists(root.resolve(file), LinkOption.NOFOLLOW_LINKS);
  }

  /** Whether it is there or a guest. */
  boolean has(String file) {
    return guests.containsKey(file) || exists(file);
  }

  /** Whether a name leads to a plain file inside the folder. */
  boolean inside(String file) {
    try {
      Path path = root.resolve(file).normalize();
      return path.startsWith(root)
          && path.toRealPath().startsWith(root)
          && Files.isRegularFile(path);
    } catch (IOException | InvalidPathException no) {
      return false;
    }
  }

  /**
   * Names of the plain files in a folder below, sorted, guests behind them: what stands in both is
   * the week's. Links out of the folder are noted.
   */
  List<String> list(String below, Problems problems) {
    List<String> names = new ArrayList<>();
    Path folder = root.resolve(below);
    if (!Files.isDirectory(folder)) {
      return names;
    }
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
      for (Path path : stream) {
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
          continue;
        }
        names.add(below + "/" + path.getFileName());
      }
    } catch (IOException unreadable) {
      problems.add(
          ProblemCode.FILE_UNREADABLE,
          Place.file(below),
          "",
          "",
          "",
          "the folder cannot be listed",
          "check who may read it");
    }
    names.sort(null);
    guests.keySet().stream().filter(name -> name.startsWith(below + "/")).forEach(names::add);
    if (names.size() > Limits.FILES) {
      problems.add(
          ProblemCode.FILE_TOO_LARGE,
          Place.file(below),
          "",
          Integer.toString(names.size()),
          Limits.FILES + " files",
          "the folder has more files than a week can have; those past the limit are not read",
          "keep one week in one folder");
      return List.copyOf(names.subList(0, Limits.FILES));
    }
    return names;
  }

  /** A file's text; empty with the reason noted when it cannot be read. */
  Optional<String> text(String file, Problems problems) {
    return bytes(file, Limits.TEXT_BYTES, problems)
        .map(
            bytes -> {
              Bytes.Decoded decoded = Bytes.decode(bytes);
              if (decoded.guessed()) {
                problems.add(
                    ProblemCode.ENCODING_GUESSED,
                    Place.file(file),
                    "",
                    decoded.charset(),
                    "UTF-8",
                    "the file is not UTF-8; it was read as " + decoded.charset(),
                    "look at names with accents, or save the file as UTF-8");
              }
              return decoded.text();
            });
  }

  /** A file's bytes; empty with the reason noted when it cannot be read. */
  Optional<byte[]> bytes(String file, long mostBytes, Problems problems) {
    Place place = Place.file(file);
    try {
      Path guest = guests.get(file);
      Path path = guest != null ? guest : root.resolve(file).normalize();
      if (guest == null && (!path.startsWith(root) || !path.toRealPath().startsWith(root))) {
        problems.add(
            ProblemCode.PATH_OUTSIDE,
            place,
            "",
            "",
            "",
            "the name or a link leads out of the week folder; it was not opened",
            "copy the file into the week folder");
        return Optional.empty();
      }
      if (!Files.isRegularFile(path)) {
        unreadable(place, "it is not a plain file", problems);
        return Optional.empty();
      }
      long size = Files.size(path);
      if (size > mostBytes) {
        problems.add(
            ProblemCode.FILE_TOO_LARGE,
            place,
            "",
            size + " bytes",
            mostBytes + " bytes",
            "the file is larger than any week's list should be; it was not read",
            "split it, or take out pictures and old rows");
        return Optional.empty();
      }
      byte[] bytes = Files.readAllBytes(path);
      if (guest == null && digested) {
        digests.put(file, sha256(bytes));
      }
      return Optional.of(bytes);
    } catch (IOException | InvalidPathException broken) {
      unreadable(place, "it cannot be opened", problems);
      return Optional.empty();
    }
  }

  private static void unreadable(Place place, String why, Problems problems) {
    problems.add(
        ProblemCode.JOB_FILE_UNREADABLE,
        place,
        "",
        "",
        "",
        why,
        "check the file and who may read it");
  }

  SortedMap<String, String> digests() {
    return digests;
  }

  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
