package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.CsvSource;
import spangle.intake.source.Datum;
import spangle.intake.source.Grid;
import spangle.intake.source.JsonSource;
import spangle.intake.source.Limits;
import spangle.intake.source.UnreadableException;
import spangle.intake.source.XlsxSource;
import spangle.intake.source.YamlSource;
import spangle.intake.week.Catalogue;
import spangle.intake.week.Shop;

/** Reads all job files of a week. A file or row that cannot be read never takes another with it. */
final class JobsReader {
  private static final String FOLDER = "jobs";
  private static final Set<String> DRAWINGS = Set.of("dxf", "stl");

  /** Kinds of files people keep lists in that are not read. */
  private static final Set<String> LISTS = Set.of("xls", "xlsb", "ods", "fods", "numbers");

  private final WeekFolder folder;
  private final ColumnRules columns;
  private final AnswerBook answers;
  private final Problems problems;
  private final JobMerge merge;
  private final Optional<PartName> only;

  /**
   * @param only the one part that is asked for; empty for all
   */
  JobsReader(
      WeekFolder folder,
      ColumnRules columns,
      AnswerBook answers,
      Problems problems,
      Optional<PartName> only) {
    this.only = only;
    this.folder = folder;
    this.columns = columns;
    this.answers = answers;
    this.problems = problems;
    this.merge = new JobMerge(answers, problems);
  }

  JobMerge read(Shop shop, Catalogue catalogue, Set<String> refusedFinishes) {
    List<String> files = folder.list(FOLDER, problems);
    DrawingShelf drawings = new DrawingShelf(folder);
    for (String file : files) {
      JobContext context =
          new JobContext(
              shop,
              catalogue,
              refusedFinishes,
              new Times(shop.weekStart(), columns.dates(file)),
              columns.decimal(file),
              columns.gaugeTable(file).or(shop::gaugeTable),
              folder,
              drawings);
      try {
        for (Datum.Group row : rows(file)) {
          if (only.isPresent() && !only.get().mayMean(row)) {
            continue;
          }
          merge.take(PartRow.read(answers.applied(row), context));
        }
      } catch (UnreadableException broken) {
        problems.add(
            broken.code() == ProblemCode.FILE_UNREADABLE
                ? ProblemCode.JOB_FILE_UNREADABLE
                : broken.code(),
            broken.place(),
            "",
            "",
            broken.limit(),
            broken.why(),
            broken.remedy());
      }
    }
    if (!merge.any() && only.isEmpty()) {
      problems.add(
          ProblemCode.FILE_MISSING,
          Place.file(FOLDER),
          "",
          "",
          "",
          "there is no job file with a row of parts in it",
          "put .csv, .xlsx, .json or .yaml job files into the folder 'jobs'");
    }
    return merge;
  }

  private List<Datum.Group> rows(String file) throws UnreadableException {
    String name = file.substring(file.lastIndexOf('/') + 1);
    String kind = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    switch (kind) {
      case "csv", "tsv", "txt" -> {
        Optional<String> text = text(file);
        return text.isEmpty() ? List.of() : table(file, CsvSource.read(file, text.get(), problems));
      }
      case "json" -> {
        Optional<String> text = text(file);
        return text.isEmpty() ? List.of() : tree(file, JsonSource.read(file, text.get(), problems));
      }
      case "yaml", "yml" -> {
        Optional<String> text = text(file);
        return text.isEmpty() ? List.of() : tree(file, YamlSource.read(file, text.get(), problems));
      }
      case "xlsx", "xlsm" -> {
        if (name.startsWith("~$")) {
          return List.of();
        }
        Optional<byte[]> bytes = folder.bytes(file, Limits.SHEET_BYTES, problems);
        return bytes.isEmpty() ? List.of() : workbook(file, bytes.get());
      }
      default -> {
        if (!DRAWINGS.contains(kind) && !name.startsWith(".") && !name.startsWith("~$")) {
          notRead(file);
        }
        return List.of();
      }
    }
  }

  private Optional<String> text(String file) {
    Optional<String> text = folder.text(file, problems);
    return only.isEmpty() ? text : text.filter(only.get()::mayStandIn);
  }

  private void notRead(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    boolean list = LISTS.contains(name.substring(name.lastIndexOf('.') + 1));
    problems.add(
        // A list nobody reads is work nobody does; a picture beside the lists is none.
        list ? ProblemCode.JOB_FILE_UNREADABLE : ProblemCode.FILE_NOT_READ,
        Place.file(file),
        "",
        "",
        ".csv .xlsx .json .yaml",
        "nothing reads this kind of file",
        "save it as .xlsx or .csv, or take it out of the folder");
  }

  private List<Datum.Group> table(String file, Grid grid) {
    return TableRows.of(grid, learned(file), new Notes(problems, false)).stream()
        .map(row -> columns.plainNumbers(file, row))
        .toList();
  }

  /** Sheets without headings beside one that has them are notes, and said to be. */
  private List<Datum.Group> workbook(String file, byte[] bytes) throws UnreadableException {
    List<XlsxSource.Sheet> sheets = XlsxSource.read(file, bytes, problems);
    Notes quiet = new Notes(new Problems(), false);
    boolean anyHeading =
        sheets.stream().anyMatch(s -> TableRows.hasHeading(s.grid(), learned(file), quiet));
    List<Datum.Group> rows = new ArrayList<>();
    for (XlsxSource.Sheet sheet : sheets) {
      boolean heading = TableRows.hasHeading(sheet.grid(), learned(file), quiet);
      if (heading && sheet.hidden()) {
        XlsxSource.noteHidden(
            problems, sheet.grid().place(), "the sheet is hidden; its rows were read like others");
      }
      if (heading || !anyHeading) {
        rows.addAll(table(file, sheet.grid()));
      } else if (!sheet.grid().rows().isEmpty() && !JobTemplate.OWN_SHEETS.contains(sheet.name())) {
        problems.add(
            ProblemCode.FILE_NOT_READ,
            sheet.grid().place(),
            "",
            sheet.name(),
            "",
            "the sheet '" + sheet.name() + "' has no row of headings; nothing in it was read",
            "give it headings if it holds parts");
      }
    }
    return rows;
  }

  private Map<String, String> learned(String file) {
    return columns.names(file);
  }

  private List<Datum.Group> tree(String file, Optional<Datum> root) {
    List<Datum.Group> rows = new ArrayList<>();
    if (root.isEmpty()) {
      return rows;
    }
    Notes notes = new Notes(problems, false);
    if (root.get() instanceof Datum.Group group) {
      Fields fields = new Fields(group, notes);
      if (!fields.has("jobs")) {
        fields.missing("jobs");
      }
      fields.items("jobs").forEach(item -> job(item, rows));
      fields.finish();
    } else if (root.get() instanceof Datum.Series series) {
      series.items().forEach(item -> job(item, rows));
    } else {
      notes.add(
          ProblemCode.JOB_FILE_UNREADABLE,
          Place.file(file),
          "",
          "",
          "",
          "the file holds one word, no jobs",
          "start it with jobs: and a list below");
    }
    return rows;
  }

  private void job(Datum item, List<Datum.Group> rows) {
    if (!(item instanceof Datum.Group job)) {
      rows.add(nothing(item));
      return;
    }
    Datum.Entry parts = job.entries().get("parts");
    if (parts == null) {
      rows.add(job);
      return;
    }
    List<Datum> items =
        parts.value() instanceof Datum.Series series ? series.items() : List.of(parts.value());
    if (items.isEmpty()) {
      rows.add(without(job, "parts"));
    }
    for (Datum part : items) {
      rows.add(part instanceof Datum.Group group ? inherited(job, group) : nothing(part));
    }
  }

  /** A row that says nothing is still counted, and refused for what it lacks. */
  private static Datum.Group nothing(Datum item) {
    return new Datum.Group(item.place(), Map.of());
  }

  private static Datum.Group without(Datum.Group job, String key) {
    Map<String, Datum.Entry> entries = new LinkedHashMap<>(job.entries());
    entries.remove(key);
    return new Datum.Group(job.place(), entries);
  }

  private static Datum.Group inherited(Datum.Group job, Datum.Group part) {
    Map<String, Datum.Entry> entries = new LinkedHashMap<>();
    for (Map.Entry<String, Datum.Entry> entry : job.entries().entrySet()) {
      boolean own =
          part.entries().keySet().stream()
              .anyMatch(k -> JobColumns.stem(k).equals(JobColumns.stem(entry.getKey())));
      if (!entry.getKey().equals("parts") && !own) {
        entries.put(entry.getKey(), entry.getValue());
      }
    }
    entries.putAll(part.entries());
    return new Datum.Group(part.place(), entries);
  }
}
