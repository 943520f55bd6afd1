package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import spangle.intake.read.WeekFiles;

/**
 * A week whose every name would be run by a spreadsheet, a browser or a terminal goes through every
 * command. Whatever file comes of it is looked at by its kind; a kind or a command or a way to
 * write a file that this test does not know makes it fail, so that a new one is looked at too.
 */
class EveryExportTest {
  private static final String MARKS = "=+-@\t\r\uFF1D\uFF0B\uFF0D\uFF20";
  private static final String SCRIPT = "<script>alert(1)</script>";
  private static final List<String> NAMES =
      List.of(
          "=HYPERLINK(\"http://example.org\",\"x\")",
          "+1",
          "-1",
          "-2+3",
          "@x",
          "\t=1+1",
          "\r=1+1",
          "\uFF1D1+1",
          "a\n=1+1",
          SCRIPT,
          "\u001b[31mred\u202e");

  /** Columns that take any words. */
  private static final List<String> WORDS =
      List.of(
          "customer",
          "description",
          "revision",
          "grade",
          "certificate",
          "masking",
          "show_face",
          "note");

  /** Options and arguments that name a file, in any command: read, or written and tried below. */
  private static final Set<String> READ =
      Set.of(
          "WEEK", "PLAN", "--week", "--plan", "--with", "--from", "--keep", "--job", "--flat",
          "--solid");

  private static final Set<String> WRITTEN = Set.of("--out", "--copy", "--picture", "FILE.xlsx");

  @TempDir private Path temp;
  private final Set<String> ran = new TreeSet<>();
  private Path week;

  @BeforeEach
  void aWeekOfStrangeNames() throws IOException {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int i = 0; i < NAMES.size(); i++) {
      rows.add(row("J-" + i, NAMES.get(i), "10"));
      // Refused: such an id would stand in commands.
      rows.add(row(NAMES.get(i), NAMES.get(i), NAMES.get(i)));
    }
    rows.add(row("J-90", "=1+3", "10"));
    // Asked about: such a plate does not weigh that.
    rows.get(rows.size() - 1).put("mass_kg", 20);
    Map<String, Object> kit = new LinkedHashMap<>();
    kit.put("id", "K-1");
    kit.put("name", NAMES.get(0));
    kit.put("sets", 2);
    kit.put("due", "fri");
    kit.put("lines", List.of(Map.of("part", "J-1", "per_set", 4)));
    week =
        WeekFiles.empty(temp.resolve("week"))
            .put("shop.yaml", hostile(WeekFiles.SHOP, "Harbour workshop", "Saturday dips"))
            .put(
                "coatings.yaml",
                hostile(WeekFiles.COATINGS, "light grey, gloss", "A-117", "B-2", "Z-1", "black"))
            .put("kits.yaml", new ObjectMapper().writeValueAsString(Map.of("kits", List.of(kit))))
            .put("jobs/a.json", new ObjectMapper().writeValueAsString(rows))
            .folder();
    Files.writeString(
        temp.resolve("new.json"),
        new ObjectMapper().writeValueAsString(List.of(row("N-1", "=9+9", "3"))));
  }

  private static Map<String, Object> row(String id, String name, String qty) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("job", id);
    row.put("part", id);
    for (String key : WORDS) {
      row.put(key, name);
    }
    row.put("qty", qty);
    row.put("material", "steel");
    row.put("thickness_mm", 3);
    row.put("shape", "plate 160x120 mm");
    row.put("route", "powder");
    row.put("finish", "P-GREY");
    row.put("due", "fri");
    return row;
  }

  private static String hostile(String settings, String... words) {
    String out = settings;
    for (int i = 0; i < words.length; i++) {
      out = out.replace(": " + words[i], ": \"=" + words[i] + "\"");
    }
    assertThat(out).isNotEqualTo(settings);
    return out;
  }

  private void run(String... args) {
    StringWriter out = new StringWriter();
    PrintWriter printer = new PrintWriter(out, true);
    ran.add(args[0]);
    int code = Spangle.run(printer, printer, args);
    assertThat(code).as("%s: %s", List.of(args), out).isIn(ExitCode.DONE, ExitCode.WAITS);
    assertThat(out.toString().lines().filter(EveryExportTest::obeyed))
        .as("what a terminal would obey, of %s", List.of(args))
        .isEmpty();
  }

  private void everything() {
    String folder = week.toString();
    String plan = week.resolve("plan").toString();
    run("check", folder, "--copy", temp.resolve("copy").toString());
    run("check", folder, "--json");
    run("plan", folder, "--steps", "0");
    run("why", plan, "J-1");
    run("why", plan, "J-0", "--json");
    run("order", folder, "--plan", plan);
    run("audit", plan);
    run("promise", folder, "--job", temp.resolve("new.json").toString(), "--at", "mon 08:00");
    run("fit", folder, "J-1/J-1", "--out", temp.resolve("fit.html").toString());
    run("fit", folder, "J-3/J-3", "--out", temp.resolve("fit.svg").toString());
    run("calc", "vents", "--tube", "60x40x1200mm", "--thickness", "3mm", "--out", to("v.svg"));
    run("calc", "area", "--flat", FLAT, "--thickness", "2mm", "--picture", to("=1.svg"));
    run(
        "event",
        folder,
        "expected",
        "--when",
        "mon 06:00",
        "--who",
        "=who",
        "job=J-1",
        "part=J-1",
        "count=5",
        "until=tue 09:00");
    run("replan", folder, "--at", "mon 07:00", "--steps", "1", "--out", to("replanned"));
    run("compare", plan, to("replanned"), "--all");
    run("replan", folder, "--at", "mon 07:30", "--steps", "1");
    run("back", folder);
    run("template", to("template.xlsx"), "--week", folder);
  }

  private static final String FLAT = "samples/harbour-week/jobs/pump-cabinet-door.dxf";

  private String to(String file) {
    return temp.resolve(file).toString();
  }

  @Test
  void nothingThatComesOutIsObeyed() throws IOException {
    everything();
    assertThat(ran).isEqualTo(new TreeSet<>(Spangle.COMMANDS));
    List<Path> written;
    try (Stream<Path> files = Files.walk(temp)) {
      written =
          files
              .filter(Files::isRegularFile)
              .filter(f -> !f.startsWith(week) || f.startsWith(week.resolve("plan")))
              .toList();
    }
    Set<String> kinds = new TreeSet<>();
    for (Path file : written) {
      kinds.add(looked(file));
    }
    assertThat(kinds).contains("csv", "xlsx", "html", "svg", "json", "ics");
  }

  /** Control characters, and marks that turn the reading. */
  private static boolean obeyed(String line) {
    return line.codePoints().anyMatch(c -> Character.isISOControl(c) || c == 0x202e);
  }

  private static String looked(Path file) throws IOException {
    String name = file.getFileName().toString();
    String kind = name.substring(name.lastIndexOf('.') + 1);
    switch (kind) {
      case "csv" -> table(file);
      case "xlsx" -> workbook(file);
      case "html", "svg" ->
          assertThat(Files.readString(file)).as(name).doesNotContain(SCRIPT, "\u001b", "\u202e");
      // For programs: names stand in them as they are.
      case "json" -> assertThat(new ObjectMapper().readTree(file.toFile())).as(name).isNotNull();
      case "yaml" -> assertThat(new YAMLMapper().readTree(file.toFile())).as(name).isNotNull();
      case "ics" ->
          assertThat(Files.readString(file).split("\r\n"))
              .as(name)
              .allMatch(line -> line.matches("[A-Z-]+[:;].*| .*"));
      default -> throw new AssertionError("nobody has looked at this kind of file yet: " + file);
    }
    return kind;
  }

  private static void table(Path file) throws IOException {
    try (MappingIterator<String[]> rows =
        new CsvMapper()
            .readerFor(String[].class)
            .with(CsvParser.Feature.WRAP_AS_ARRAY)
            .readValues(Files.readString(file, StandardCharsets.UTF_8))) {
      while (rows.hasNext()) {
        for (String cell : rows.next()) {
          assertThat(runs(cell)).as("%s: %s", file, cell).isFalse();
        }
      }
    }
  }

  private static boolean runs(String cell) {
    String bare = cell.stripLeading();
    return (!cell.isEmpty() && MARKS.indexOf(cell.charAt(0)) >= 0)
        || (!bare.isEmpty() && MARKS.indexOf(bare.charAt(0)) >= 0);
  }

  private static void workbook(Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            assertThat(cell.getCellType()).as("%s", file).isNotEqualTo(CellType.FORMULA);
            if (cell.getCellType() == CellType.STRING && runs(cell.getStringCellValue())) {
              assertThat(cell.getCellStyle().getQuotePrefixed())
                  .as("%s: %s", file, cell.getStringCellValue())
                  .isTrue();
            }
          }
        }
      }
    }
  }

  /** A way to write a file that is not tried above has nobody who looked at what it writes. */
  @Test
  void everyOptionThatNamesAFileIsKnown() {
    Set<String> named = new TreeSet<>();
    CommandLine all = new CommandLine(CommandLine.Model.CommandSpec.create());
    Subcommands.add(all, Spangle.COMMANDS, Spangle::command, new String[0], 0);
    collect(all, named);
    named.removeAll(READ);
    assertThat(named).isEqualTo(new TreeSet<>(WRITTEN));
  }

  private static void collect(CommandLine command, Set<String> named) {
    for (ArgSpec arg : command.getCommandSpec().args()) {
      if (arg.type() == Path.class || arg.type() == File.class) {
        named.add(
            arg instanceof CommandLine.Model.OptionSpec option
                ? option.longestName()
                : arg.paramLabel());
      }
    }
    command.getSubcommands().values().forEach(sub -> collect(sub, named));
  }
}
