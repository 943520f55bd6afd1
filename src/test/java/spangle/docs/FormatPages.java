package spangle.docs;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** One page for each file format, from its JSON Schema: an example, then every key. */
final class FormatPages {
  static final Path SCHEMAS = Path.of("src/main/resources/schema");
  static final Path PAGES = Path.of("src/docs/formats");

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Page, what the file is for, and a file of the samples that shows it. */
  private record Page(String words, String sample) {}

  private static final Map<String, Page> WORDS = words();

  private FormatPages() {}

  /** Writes all pages anew. */
  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(PAGES);
    for (Map.Entry<String, String> page : pages().entrySet()) {
      Files.writeString(PAGES.resolve(page.getKey()), page.getValue());
    }
  }

  private static Map<String, Page> words() {
    Map<String, Page> words = new LinkedHashMap<>();
    words.put(
        "shop",
        new Page(
            "The shop: its lines and their stations by equipment profile, shifts, closed days,"
                + " maintenance, colour changes.",
            "samples/first-steps/shop.yaml"));
    words.put(
        "coatings",
        new Page(
            "Powders, paints and zinc: data-sheet values, cure windows, stock by lot, packs, lead"
                + " times.",
            "samples/first-steps/coatings.yaml"));
    words.put(
        "jobs",
        new Page(
            "What is to be finished. A .csv or .xlsx has the same names as headings, one part a"
                + " row; a .yaml or .json may put the parts of a job below it. Every number"
                + " carries its unit, in the name of its column or behind the value.",
            "samples/new-jobs/railing-bracket.yaml"));
    words.put(
        "kits", new Page("Sets that assembly needs complete.", "samples/harbour-week/kits.yaml"));
    words.put(
        "gates",
        new Page(
            "Records of gates that a person has opened: who, when, what was seen. Two names for"
                + " vents. Nothing else opens a gate.",
            "samples/harbour-week/gates.yaml"));
    words.put(
        "answers",
        new Page(
            "Answers to questions of `check`. An answer holds only while the value it was given"
                + " about still stands in the file.",
            "samples/dirty-week/answers.yaml"));
    words.put(
        "columns",
        new Page(
            "Own column names of a customer's files, learned once; how they write dates.", ""));
    words.put(
        "profile",
        new Page(
            "One piece of equipment. A file of the same name in the week's own `rack-profiles/`"
                + " wins over the built-in one.",
            "rack-profiles/flat-rack.yaml"));
    words.put(
        "events",
        new Page(
            "What has happened since the plan was made. `spangle event` appends to it; a bad entry"
                + " is refused with its reason and the rest is kept.",
            ""));
    words.put(
        "overlay",
        new Page(
            "What would be different in a week, laid over its files without touching them.",
            "samples/what-if/saturday-shift.yaml"));
    words.put("plan", new Page("A plan as data, written by `plan` and `replan`.", ""));
    return words;
  }

  /** All pages by file name. */
  static SortedMap<String, String> pages() throws IOException {
    SortedMap<String, String> pages = new TreeMap<>();
    for (Map.Entry<String, Page> entry : WORDS.entrySet()) {
      pages.put(entry.getKey() + ".md", page(entry.getKey(), entry.getValue()));
    }
    return pages;
  }

  private static String page(String name, Page page) throws IOException {
    JsonNode schema = JSON.readTree(SCHEMAS.resolve(name + ".schema.json").toFile());
    List<String> lines = new ArrayList<>();
    lines.add("# " + schema.path("title").asText());
    lines.add("");
    lines.add(page.words());
    lines.add("");
    lines.add("JSON Schema: `src/main/resources/schema/" + name + ".schema.json`.");
    if (!page.sample().isEmpty()) {
      lines.add("");
      lines.add("From `" + page.sample() + "`:");
      lines.add("");
      lines.add("```yaml");
      start(page.sample()).forEach(lines::add);
      lines.add("```");
    }
    lines.add("");
    lines.add("| key | | holds | meaning |");
    lines.add("|---|---|---|---|");
    Keys keys = new Keys(schema);
    keys.rows().forEach(lines::add);
    return String.join("\n", lines) + "\n";
  }

  private static List<String> start(String file) {
    try {
      List<String> all = Files.readAllLines(Path.of(file));
      List<String> some = all.stream().limit(24).collect(Collectors.toCollection(ArrayList::new));
      if (some.size() < all.size()) {
        some.add("# ... and so on");
      }
      return some;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }
}
