package spangle.desk;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;

/**
 * The plan people work by and those before it: every earlier version stays whole, with all its
 * sheets, under {@code earlier/LETTER} in the folder of the plan.
 */
public final class PlanHistory {
  /** Where the plan people work by lies in a week folder, unless they say otherwise. */
  static final String USUAL = "plan";

  /** Folder of the earlier versions. */
  static final String EARLIER = "earlier";

  /** Letter of a plan from the beginning of the week. */
  static final String FIRST = "A";

  private final Path folder;
  private final PlanFile current;
  private final String sha256;
  private final List<String> letters;

  private PlanHistory(Path folder, PlanFile current, String sha256, List<String> letters) {
    this.folder = folder;
    this.current = current;
    this.sha256 = sha256;
    this.letters = List.copyOf(letters);
  }

  /**
   * Opens a plan with its history.
   *
   * @param plan plan.json or its folder
   * @throws PlanFileException when it is not a plan
   * @throws IOException when it cannot be read
   */
  public static PlanHistory open(Path plan) throws IOException, PlanFileException {
    PlanFile current = PlanShelf.sound(plan);
    Path file = Files.isDirectory(plan) ? plan.resolve("plan.json") : plan;
    Path parent = file.toAbsolutePath().normalize().getParent();
    Path folder = parent == null ? Path.of(".") : parent;
    List<String> letters = new ArrayList<>();
    Path earlier = folder.resolve(EARLIER);
    if (Files.isDirectory(earlier)) {
      try (DirectoryStream<Path> stream = Files.newDirectoryStream(earlier)) {
        for (Path each : stream) {
          Path name = each.getFileName();
          if (name != null && Files.isRegularFile(each.resolve("plan.json"))) {
            letters.add(name.toString());
          }
        }
      }
    }
    letters.sort(PlanHistory::byLetter);
    return new PlanHistory(folder, current, PlanShelf.sha256(file), letters);
  }

  /** The plan people work by. */
  public PlanFile current() {
    return current;
  }

  /** Its digest. */
  public String currentSha256() {
    return sha256;
  }

  /** Letters of the earlier plans that can be gone back to, oldest first. */
  public List<String> earlier() {
    return letters.stream().filter(l -> !l.equals(current.version())).toList();
  }

  /** The letter after the last ever used here. */
  public String next() {
    String last = current.version();
    for (String letter : letters) {
      last = byLetter(letter, last) > 0 ? letter : last;
    }
    return after(last);
  }

  /** A, B ... Z, AA, AB ... */
  static String after(String letter) {
    char[] signs = letter.toCharArray();
    for (int i = signs.length - 1; i >= 0; i--) {
      if (signs[i] >= 'A' && signs[i] < 'Z') {
        signs[i]++;
        return new String(signs);
      }
      signs[i] = 'A';
    }
    return "A" + new String(signs);
  }

  private static int byLetter(String a, String b) {
    return a.length() != b.length() ? a.length() - b.length() : a.compareTo(b);
  }

  /** An earlier plan. */
  PlanFile read(String letter) throws IOException, PlanFileException {
    return PlanShelf.read(folder.resolve(EARLIER).resolve(letter).resolve("plan.json"));
  }

  /** Files of the current plan, named so that they stay as an earlier one. */
  Map<String, byte[]> keptFiles() throws IOException {
    return files(folder, EARLIER + "/" + current.version() + "/");
  }

  /** Files of an earlier plan, named so that they are the current one again. */
  Map<String, byte[]> filesOf(String letter) throws IOException {
    return files(folder.resolve(EARLIER).resolve(letter), "");
  }

  /** Where the plan lies. */
  public Path folder() {
    return folder;
  }

  private static Map<String, byte[]> files(Path from, String prefix) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(from)) {
      for (Path each : stream) {
        if (Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS)) {
          files.put(prefix + each.getFileName(), Files.readAllBytes(each));
        }
      }
    }
    return files;
  }
}
