package spangle.intake.read;

import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;

/** What a week's settings say of one customer's files: column names, order of dates, gauges. */
final class ColumnRules {
  /**
   * Rules for the files of a name pattern.
   *
   * @param pattern on the file name
   * @param names heading in small letters to the program's key; empty key = left out on purpose
   * @param dates order of day and month
   * @param gaugeTable named gauge table
   * @param decimal what a comma before three digits means
   */
  record Rule(
      String pattern,
      Map<String, String> names,
      Times.Order dates,
      Optional<String> gaugeTable,
      Optional<Decimal> decimal) {}

  /** What a comma before three digits means in one customer's files. */
  enum Decimal {
    /** 1,250 is one and a quarter. */
    COMMA,
    /** 1,250 is one thousand two hundred and fifty. */
    POINT
  }

  private static final Pattern TWO_WAYS = Pattern.compile("[+-]?[0-9]{1,3},[0-9]{3}(\\s*\\D.*)?");

  private final List<Rule> rules;

  private ColumnRules(List<Rule> rules) {
    this.rules = rules;
  }

  static ColumnRules none() {
    return new ColumnRules(List.of());
  }

  static ColumnRules read(Datum.Group group, Notes notes) {
    Fields fields = new Fields(group, notes);
    List<Rule> rules = new ArrayList<>();
    for (Fields rule : fields.groups("columns")) {
      Optional<Datum.Scalar> files = rule.needed("files");
      Map<String, String> names = names(rule);
      Times.Order dates =
          rule.word("dates", Fields.words(Times.Order.values())).orElse(Times.Order.UNKNOWN);
      Optional<Decimal> decimal = rule.word("decimal", Fields.words(Decimal.values()));
      rule.text("customer");
      Optional<String> gauges = rule.word("gauge_table", Gauges.names());
      rule.finish();
      files.ifPresent(f -> rules.add(new Rule(f.text(), names, dates, gauges, decimal)));
    }
    fields.finish();
    return new ColumnRules(rules);
  }

  private static Map<String, String> names(Fields rule) {
    Map<String, String> names = new LinkedHashMap<>();
    Optional<Fields> inner = rule.inner("names");
    if (inner.isEmpty()) {
      return names;
    }
    for (String heading : inner.get().allNames()) {
      String key = inner.get().text(heading).toLowerCase(Locale.ROOT);
      if (key.equals("ignore") || key.isEmpty()) {
        names.put(heading.toLowerCase(Locale.ROOT), "");
        continue;
      }
      Optional<String> known = JobColumns.key(key, Map.of());
      if (known.isEmpty()) {
        inner
            .get()
            .notes()
            .add(
                ProblemCode.UNKNOWN_NAME,
                inner.get().valuePlace(heading),
                "names",
                key,
                String.join(", ", JobColumns.names()),
                "the program has no column '" + key + "'" + Near.hint(key, JobColumns.names()),
                "use one of the program's columns, or ignore");
      }
      known.ifPresent(k -> names.put(heading.toLowerCase(Locale.ROOT), k));
    }
    return names;
  }

  /** Names learned for a file, heading in small letters to key. */
  Map<String, String> names(String file) {
    Map<String, String> names = new LinkedHashMap<>();
    matching(file).forEach(rule -> names.putAll(rule.names()));
    return names;
  }

  Times.Order dates(String file) {
    return matching(file).stream()
        .map(Rule::dates)
        .filter(order -> order != Times.Order.UNKNOWN)
        .findFirst()
        .orElse(Times.Order.UNKNOWN);
  }

  Optional<String> gaugeTable(String file) {
    return matching(file).stream().flatMap(rule -> rule.gaugeTable().stream()).findFirst();
  }

  /** A row in which commas before three digits are written the way that has one meaning. */
  Datum.Group plainNumbers(String file, Datum.Group row) {
    Optional<Decimal> decimal =
        matching(file).stream().flatMap(rule -> rule.decimal().stream()).findFirst();
    if (decimal.isEmpty()) {
      return row;
    }
    Map<String, Datum.Entry> entries = new LinkedHashMap<>();
    row.entries().forEach((key, entry) -> entries.put(key, plain(entry, decimal.get())));
    return new Datum.Group(row.place(), entries);
  }

  private static Datum.Entry plain(Datum.Entry entry, Decimal decimal) {
    if (!(entry.value() instanceof Datum.Scalar scalar)
        || !TWO_WAYS.matcher(scalar.text()).matches()) {
      return entry;
    }
    String text = scalar.text().replace(",", decimal == Decimal.COMMA ? "." : "");
    return new Datum.Entry(entry.keyPlace(), new Datum.Scalar(scalar.place(), text));
  }

  private List<Rule> matching(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    return rules.stream().filter(rule -> matches(rule.pattern(), name)).toList();
  }

  private static boolean matches(String pattern, String name) {
    try {
      PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + pattern);
      return matcher.matches(Path.of(name));
    } catch (PatternSyntaxException | java.nio.file.InvalidPathException noPattern) {
      return pattern.equals(name);
    }
  }
}
