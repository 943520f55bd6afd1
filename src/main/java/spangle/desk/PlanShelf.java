package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.audit.Audit;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Plan;
import spangle.plan.json.InputDigest;
import spangle.plan.json.OverlayDigest;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.plan.json.PlanJson;

/** Plans on disk: reads them back, audits them, says whether their inputs have changed since. */
public final class PlanShelf {
  /** No plan of a real week is larger; more is refused unread. */
  private static final long LARGEST_BYTES = 256L * 1024 * 1024;

  /** Rules of the audit without which nothing else can be said of a plan. */
  private static final Set<String> BROKEN = Set.of("brief-sound", "names-known");

  private PlanShelf() {}

  /**
   * A plan with what the audit says now.
   *
   * @param file the plan
   * @param findings what the audit says of it
   * @param changed input files that differ from those it was made from, in words
   */
  public record Audited(PlanFile file, List<Finding> findings, List<String> changed) {
    /** Copies the lists. */
    public Audited {
      findings = List.copyOf(findings);
      changed = List.copyOf(changed);
    }
  }

  /**
   * Reads a plan; a folder stands for the plan.json in it.
   *
   * @throws PlanFileException when it is not a plan, with place and reason
   * @throws IOException when it cannot be read
   */
  public static PlanFile read(Path plan) throws IOException, PlanFileException {
    Path folder = plan.toAbsolutePath().normalize();
    boolean named = folder.getFileName() != null && folder.endsWith("plan.json");
    Path parent = folder.getParent();
    WholeFolder.recover(named && parent != null ? parent : folder);
    Path file = Files.isDirectory(plan) ? plan.resolve("plan.json") : plan;
    if (Files.size(file) > LARGEST_BYTES) {
      throw new IOException(file + " is larger than " + LARGEST_BYTES + " bytes");
    }
    return PlanJson.read(Files.readAllBytes(file));
  }

  /**
   * Reads a plan to build on: one whose own brief knows everything it names.
   *
   * @throws PlanFileException as {@link #read}, and when it names what its brief does not know
   */
  public static PlanFile sound(Path plan) throws IOException, PlanFileException {
    PlanFile file = read(plan);
    requireKnown(
        file.brief(),
        file.plan(),
        "the file was changed by hand or by another program, so plan again or take an earlier plan");
    return file;
  }

  /**
   * Refuses a plan that names what a brief does not know.
   *
   * @param why how that may have come, and what to do
   */
  static void requireKnown(Brief brief, Plan plan, String why) throws PlanFileException {
    for (Finding finding : Audit.of(brief, plan)) {
      if (BROKEN.contains(finding.rule())) {
        throw new PlanFileException(finding.subject() + ": " + finding.words() + "; " + why);
      }
    }
  }

  /** Audits a plan against its own brief and its week folder. */
  public static Audited audit(Path plan, Path week) throws IOException, PlanFileException {
    PlanFile file = read(plan);
    List<Finding> findings = new ArrayList<>(Audit.of(file.brief(), file.plan()));
    Optional<Path> overlay = file.overlay().map(o -> beside(plan, o.file()));
    List<String> changed = new ArrayList<>(changed(file, week));
    if (overlay.isPresent() && file.overlay().isPresent()) {
      overlayChanged(overlay.get(), file.overlay().get()).ifPresent(changed::add);
    }
    if (file.inputs().isEmpty()) {
      findings.add(
          new Finding(
              "inputs-named",
              "version " + file.version(),
              "names no file it was made from, so nobody can say whether one has changed"));
    }
    if (file.replanned().isEmpty() && !file.version().equals(PlanHistory.FIRST)) {
      findings.add(
          new Finding(
              "inputs-named",
              "version " + file.version(),
              "a plan from the beginning of the week has the letter " + PlanHistory.FIRST));
    }
    if (file.replanned().isEmpty()) {
      findings.addAll(GateProof.of(file, week, overlay));
    }
    if (changed.isEmpty() && file.replanned().isEmpty()) {
      findings.addAll(BriefProof.of(file, week, overlay));
    }
    if (file.replanned().isPresent()
        && changed.stream().allMatch(c -> c.startsWith(EventBook.FILE + " "))) {
      findings.addAll(LogProof.of(plan, file, week));
    }
    return new Audited(file, findings, changed);
  }

  /** The week folder a plan names, seen from where the plan lies. */
  public static Path weekOf(Path plan, PlanFile file) {
    return beside(plan, file.weekFolder());
  }

  private static Path beside(Path plan, String name) {
    Path folder = Files.isDirectory(plan) ? plan : plan.toAbsolutePath().getParent();
    return folder == null ? Path.of(name) : folder.resolve(name).normalize();
  }

  /**
   * The overlay a plan was made with, where it was made with one.
   *
   * @throws PlanFileException when it is not there any more
   */
  static Optional<Path> overlay(Path plan, PlanFile file) throws PlanFileException {
    Optional<Path> overlay = file.overlay().map(o -> beside(plan, o.file()));
    if (overlay.isPresent() && !Files.isRegularFile(overlay.get())) {
      throw new PlanFileException("its overlay " + overlay.get() + " is not there any more");
    }
    return overlay;
  }

  /**
   * The plan people work by.
   *
   * @param file the plan; empty where there is none they can still work by
   * @param whyNone why there is none, in words; empty where there is one
   */
  record Worked(Optional<PlanFile> file, String whyNone) {
    static Worked none(String why) {
      return new Worked(Optional.empty(), why);
    }

    static Worked unreadable(Exception why) {
      return none("the plan cannot be read (" + why.getMessage() + ")");
    }
  }

  /**
   * The plan in a week folder, where it is one people can still work by: no file has changed or
   * come since but what happened.
   *
   * @param input the same week, as it is now
   */
  static Worked workedBy(Path week, WeekInput input) {
    Path usual = week.resolve(PlanHistory.USUAL);
    if (!Files.isRegularFile(usual.resolve("plan.json"))) {
      return Worked.none("there is no plan");
    }
    try {
      PlanFile file = read(usual);
      List<String> changed = new ArrayList<>(differ(file, input));
      if (file.overlay().isPresent()) {
        OverlayDigest told = file.overlay().get();
        overlayChanged(beside(usual, told.file()), told).ifPresent(c -> changed.add(told.file()));
      }
      return changed.isEmpty()
          ? new Worked(Optional.of(file), "")
          : Worked.none(
              "the files have changed since plan "
                  + file.version()
                  + " ("
                  + String.join(", ", changed)
                  + ")");
    } catch (PlanFileException | IOException unusable) {
      return Worked.unreadable(unusable);
    }
  }

  /** Files of a week that are not what a plan was made from, but what happened. */
  private static Set<String> differ(PlanFile file, WeekInput input) {
    Map<String, String> then = new TreeMap<>();
    file.inputs().forEach(i -> then.put(i.file(), i.sha256()));
    Map<String, String> now = new TreeMap<>(input.digests());
    Set<String> differ = new TreeSet<>(then.keySet());
    differ.addAll(now.keySet());
    differ.removeIf(
        name -> name.equals(EventBook.FILE) || Objects.equals(then.get(name), now.get(name)));
    return differ;
  }

  private static Optional<String> overlayChanged(Path path, OverlayDigest told) throws IOException {
    if (!Files.isRegularFile(path)) {
      return Optional.of("the overlay " + told.file() + " is not there any more");
    }
    boolean same = Files.size(path) == told.bytes() && sha256(path).equals(told.sha256());
    return same
        ? Optional.empty()
        : Optional.of("the overlay " + told.file() + " has changed since the plan was made");
  }

  static List<String> changed(PlanFile file, Path week) throws IOException {
    List<String> changed = new ArrayList<>();
    for (InputDigest input : file.inputs()) {
      Path path = week.resolve(input.file()).normalize();
      if (!path.startsWith(week.normalize()) || !Files.isRegularFile(path)) {
        changed.add(input.file() + " is not there any more");
      } else if (Files.size(path) != input.bytes() || !sha256(path).equals(input.sha256())) {
        changed.add(input.file() + " has changed since the plan was made");
      }
    }
    return changed;
  }

  static String sha256(Path path) throws IOException {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(path));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException everyJdkHasIt) {
      throw new IllegalStateException(everyJdkHasIt);
    }
  }
}
