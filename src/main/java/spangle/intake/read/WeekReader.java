package spangle.intake.read;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.problem.Severity;
import spangle.intake.source.Datum;
import spangle.intake.source.Limits;
import spangle.intake.source.UnreadableException;
import spangle.intake.source.YamlSource;
import spangle.intake.week.Answer;
import spangle.intake.week.Catalogue;
import spangle.intake.week.GateRecord;
import spangle.intake.week.Job;
import spangle.intake.week.KitOrder;
import spangle.intake.week.OverlayNote;
import spangle.intake.week.Shop;
import spangle.intake.week.WeekInput;
import spangle.plan.event.EventLog;

/** Reads a week folder: everything that can be used, and every problem of every file at once. */
public final class WeekReader {
  /**
   * What was read.
   *
   * @param input the week; empty when the program has to stop
   * @param problems danger first, then what is due first
   * @param rows part rows read, accepted, refused
   * @param digests SHA-256 of every file read
   * @param answers what people have answered to earlier questions
   */
  public record Reading(
      Optional<WeekInput> input,
      List<Problem> problems,
      WeekInput.Rows rows,
      SortedMap<String, String> digests,
      List<Answer> answers) {
    /** Copies the collections. */
    public Reading {
      problems = List.copyOf(problems);
      digests = new TreeMap<>(digests);
      answers = List.copyOf(answers);
    }

    /** Whether nothing may be planned. */
    public boolean stopped() {
      return input.isEmpty();
    }
  }

  private final WeekFolder folder;
  private final Problems problems;

  private final Besides besides;
  private final String eventsFile;
  private final Optional<PartName> only;
  private Optional<OverlayNote> overlayNote = Optional.empty();

  private WeekReader(
      WeekFolder folder,
      Besides besides,
      String eventsFile,
      Problems problems,
      Optional<PartName> only) {
    this.only = only;
    this.folder = folder;
    this.besides = besides;
    this.eventsFile = eventsFile;
    this.problems = problems;
  }

  /** Reads a folder; never throws for what is in it. */
  public static Reading read(Path week) {
    return read(week, Besides.NOTHING);
  }

  /** Reads a folder with what lies beside it; never throws for what is in them. */
  public static Reading read(Path week, Besides besides) {
    return read(week, besides, "events.yaml", Optional.empty());
  }

  /** Reads a folder as it would be with another file in the place of its events. */
  public static Reading readWithEvents(Path week, String eventsFile) {
    return read(week, Besides.NOTHING, eventsFile, Optional.empty());
  }

  /**
   * Reads of a folder what a question about one part needs: the shop, the coatings, the rows that
   * are meant, its gates. Kits, events and digests are left out.
   */
  public static Reading readFor(Path week, PartName part) {
    return read(week, Besides.NOTHING, "", Optional.of(part));
  }

  private static Reading read(
      Path week, Besides besides, String eventsFile, Optional<PartName> only) {
    Problems problems = new Problems();
    Optional<WeekFolder> folder = WeekFolder.open(week, problems, only.isEmpty());
    return folder
        .map(f -> new WeekReader(f, besides, eventsFile, problems, only).read())
        .orElseGet(
            () ->
                new Reading(
                    Optional.empty(),
                    problems.sorted(),
                    new WeekInput.Rows(0, 0, 0),
                    new TreeMap<>(),
                    List.of()));
  }

  /** A minute of a week as people write it, such as "wed 10:00"; empty where it is none. */
  public static OptionalInt minute(Path week, String text) {
    Problems quiet = new Problems();
    Optional<WeekFolder> folder = WeekFolder.open(week, quiet, false);
    Optional<LocalDate> monday =
        folder
            .flatMap(
                f ->
                    new WeekReader(f, Besides.NOTHING, "", quiet, Optional.empty())
                        .group("shop.yaml", true))
            .flatMap(g -> ShopReader.weekStart(new Fields(g, new Notes(quiet, true))));
    return monday.isEmpty()
        ? OptionalInt.empty()
        : new Times(monday.get(), Times.Order.YMD)
            .minute(
                "at",
                new Datum.Scalar(Place.file("shop.yaml"), text),
                Times.Edge.START,
                new Notes(quiet, false));
  }

  /**
   * The shop and what it puts on metal, without any job.
   *
   * @param shop the shop
   * @param catalogue powders, paints and zinc
   */
  public record Settings(Shop shop, Catalogue catalogue) {}

  /** Shop and coatings of a folder that may have no jobs yet; empty where one cannot be used. */
  public static Optional<Settings> settings(Path week, Problems problems) {
    return WeekFolder.open(week, problems)
        .flatMap(
            f -> new WeekReader(f, Besides.NOTHING, "", problems, Optional.empty()).settings());
  }

  private Optional<Settings> settings() {
    Profiles profiles = new Profiles(folder, problems);
    Optional<Shop> shop =
        group("shop.yaml", true)
            .flatMap(g -> ShopReader.read(g, profiles, new Notes(problems, true)));
    Optional<Datum.Group> coatings = group("coatings.yaml", true);
    return shop.flatMap(
        s ->
            coatings.map(
                g -> new Settings(s, CatalogueReader.read(g, s, new Notes(problems, false)))));
  }

  private Reading read() {
    Optional<Overlay> overlay = besides.overlay().flatMap(this::overlay);
    besides.jobFile().ifPresent(file -> folder.guest("jobs/", file));
    Optional<Datum.Group> shopFile = group("shop.yaml", overlay, "shop", true);
    Profiles profiles = new Profiles(folder, problems);
    Optional<Shop> shop =
        shopFile.flatMap(g -> ShopReader.read(g, profiles, new Notes(problems, true)));
    Optional<Datum.Group> coatingsFile = group("coatings.yaml", overlay, "coatings", true);
    if (shop.isEmpty() || coatingsFile.isEmpty()) {
      return reading(Optional.empty(), new WeekInput.Rows(0, 0, 0), AnswerBook.none());
    }
    Catalogue catalogue =
        CatalogueReader.read(coatingsFile.get(), shop.get(), new Notes(problems, false));
    Set<String> refusedFinishes =
        new LinkedHashSet<>(CatalogueReader.idsWritten(coatingsFile.get()));
    catalogue.coatings().forEach(c -> refusedFinishes.remove(c.id()));
    AnswerBook answers =
        group("answers.yaml", false)
            .map(g -> AnswerBook.read(g, new Notes(problems, false)))
            .orElseGet(AnswerBook::none);
    ColumnRules columns =
        group("columns.yaml", false)
            .map(g -> ColumnRules.read(g, new Notes(problems, false)))
            .orElseGet(ColumnRules::none);
    JobMerge merge =
        new JobsReader(folder, columns, answers, problems, only)
            .read(shop.get(), catalogue, refusedFinishes);
    List<Job> jobs = merge.jobs();
    List<KitOrder> kits = only.isPresent() ? List.of() : kits(shop.get(), jobs, overlay);
    List<GateRecord> gates =
        group("gates.yaml", false)
            .map(g -> GateReader.read(g, jobs, new Notes(problems, false)))
            .orElseGet(List::of);
    Optional<Datum.Group> eventGroup =
        only.isPresent() ? Optional.empty() : group(eventsFile, false);
    EventLog events =
        eventGroup.map(g -> events(g, shop.get(), catalogue, jobs)).orElse(EventLog.EMPTY);
    if (only.isEmpty()) {
      answers.noteStale(problems);
    }
    problems.removeIf(p -> measured(p, gates));
    Optional<WeekInput> input =
        problems.any(Severity.STOP)
            ? Optional.empty()
            : Optional.of(
                new WeekInput(
                    folder.name(),
                    shop.get(),
                    catalogue,
                    jobs,
                    kits,
                    gates,
                    events,
                    sorted(),
                    merge.rows(),
                    folder.digests(),
                    overlayNote));
    return reading(input, merge.rows(), answers);
  }

  /** Somebody has measured the piece and signed for its figures. */
  private static boolean measured(Problem problem, List<GateRecord> gates) {
    boolean figures =
        problem.severity() == Severity.ASK
            && (problem.field().equals("area") || problem.field().equals("mass"));
    return figures
        && gates.stream()
            .anyMatch(
                g ->
                    g.gate() == GateRecord.Gate.SIZE
                        && g.jobId().equals(problem.job())
                        && g.partId().equals(problem.part()));
  }

  private List<KitOrder> kits(Shop shop, List<Job> jobs, Optional<Overlay> overlay) {
    Times times = new Times(shop.weekStart(), Times.Order.YMD);
    return group("kits.yaml", overlay, "kits", false)
        .map(g -> KitReader.read(g, times, jobs, new Notes(problems, false)))
        .orElseGet(List::of);
  }

  private EventLog events(Datum.Group group, Shop shop, Catalogue catalogue, List<Job> jobs) {
    Times times = new Times(shop.weekStart(), Times.Order.YMD);
    return EventReader.read(group, times, jobs, shop, catalogue, new Notes(problems, false));
  }

  private Reading reading(Optional<WeekInput> input, WeekInput.Rows rows, AnswerBook answers) {
    return new Reading(input, sorted(), rows, folder.digests(), answers.all());
  }

  /** Sorted, and a problem that several rows inherit said once; of one part's row nothing is. */
  private List<Problem> sorted() {
    return only.isPresent()
        ? problems.sorted()
        : new ArrayList<>(new LinkedHashSet<>(problems.sorted()));
  }

  /**
   * Reads the overlay; one that cannot be read stops everything, or it would be left out unsaid.
   */
  private Optional<Overlay> overlay(Path path) {
    String file = folder.guest("", path);
    Optional<byte[]> bytes = folder.bytes(file, Limits.TEXT_BYTES, problems);
    Optional<Datum.Group> group = bytes.isEmpty() ? Optional.empty() : group(file, true);
    if (group.isEmpty()) {
      stop(
          Place.file(file),
          "without the overlay nothing is planned",
          "put the file right, or leave --with out");
      return Optional.empty();
    }
    Overlay overlay = Overlay.read(group.get(), new Notes(problems, true));
    overlayNote =
        Optional.of(
            new OverlayNote(overlay.title(), bytes.get().length, WeekFolder.sha256(bytes.get())));
    return Optional.of(overlay);
  }

  private Optional<Datum.Group> group(
      String file, Optional<Overlay> overlay, String name, boolean needed) {
    Optional<Datum.Group> group = group(file, needed);
    return group.map(g -> overlay.map(o -> o.over(name, g)).orElse(g));
  }

  private Optional<Datum.Group> group(String file, boolean needed) {
    if (!folder.has(file)) {
      if (needed) {
        problems.add(
            ProblemCode.FILE_MISSING,
            Place.file(file),
            "",
            "",
            "",
            "the week folder has no " + file,
            "write one; the samples show what stands in it");
      }
      return Optional.empty();
    }
    Optional<String> text = folder.text(file, problems);
    if (text.isEmpty()) {
      if (needed) {
        stop(Place.file(file), "the file cannot be read", "check the file and who may read it");
      }
      return Optional.empty();
    }
    try {
      Optional<Datum> root = YamlSource.read(file, text.get(), problems);
      if (root.isPresent() && root.get() instanceof Datum.Group group) {
        return Optional.of(group);
      }
      if (root.isPresent() || needed) {
        stop(Place.file(file), "the file holds no named values", "write it as name: value");
      }
    } catch (UnreadableException broken) {
      stop(broken.place(), broken.why(), broken.remedy());
    }
    return Optional.empty();
  }

  private void stop(Place place, String why, String remedy) {
    problems.add(ProblemCode.FILE_UNREADABLE, place, "", "", "", why, remedy);
  }
}
