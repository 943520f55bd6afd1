package spangle.intake.read;

import java.nio.file.FileSystems;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
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
    /** 1,250 is one and a quarter, 1.250 in a text file twelve hundred and fifty. */
    COMMA(Pattern.compile("([+-]?[0-9]{1,3})((?:\\.[0-9]{3})+)((?:,[0-9]+)?(?:\\s*[^0-9.,].*)?)")),
    /** 1,250 is twelve hundred and fifty, 1.250 one and a quarter. */
    POINT(Pattern.compile("([+-]?[0-9]{1,3})((?:,[0-9]{3})+)((?:\\.[0-9]+)?(?:\\s*[^0-9.,].*)?)"));

    private final Pattern thousands;

    Decimal(Pattern thousands) {
      this.thousands = thousands;
    }

    /** The number with a point for its decimals and nothing between its thousands. */
    String plain(String number) {
      Matcher parted = thousands.matcher(number);
      String whole =
          parted.matches()
              ? parted.group(1) + parted.group(2).replaceAll("[.,]", "") + parted.group(3)
              : number;
      return this == COMMA ? DECIMAL_COMMA.matcher(whole).replaceFirst("$1.$2") : whole;
    }
  }

  private static final Pattern DECIMAL_COMMA = Pattern.compile("^([+-]?[0-9]*),([0-9])");

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

  /** What a comma before three digits means in a file, where somebody said so. */
  Optional<Decimal> decimal(String file) {
    return matching(file).stream().flatMap(rule -> rule.decimal().stream()).findFirst();
  }

  /**
   * A row in which every quantity is written the one way that has one meaning. Numbers of a
   * workbook come with a point whatever its people write.
   */
  Datum.Group plainNumbers(String file, Datum.Group row) {
    Optional<Decimal> decimal = decimal(file);
    if (decimal.isEmpty()) {
      return row;
    }
    Map<String, Datum.Entry> entries = new LinkedHashMap<>();
    row.entries()
        .forEach(
            (key, entry) ->
                entries.put(
                    key,
                    JobColumns.kind(JobColumns.stem(key)).isEmpty()
                        ? entry
                        : plain(entry, decimal.get())));
    return new Datum.Group(row.place(), entries);
  }

  private static Datum.Entry plain(Datum.Entry entry, Decimal decimal) {
    if (!(entry.value() instanceof Datum.Scalar scalar) || isStoredNumber(scalar)) {
      return entry;
    }
    Datum.Scalar plain = new Datum.Scalar(scalar.place(), decimal.plain(scalar.text()));
    return new Datum.Entry(entry.keyPlace(), plain);
  }

  /** Whether a cell is a number of a workbook, not a text somebody typed. */
  static boolean isStoredNumber(Datum.Scalar cell) {
    return !cell.place().cell().isEmpty() && STORED.matcher(cell.text()).matches();
  }

  private static final Pattern STORED = Pattern.compile("-?[0-9]+(?:\\.[0-9]+)?");

  private List<Rule> matching(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    return rules.stream().filter(rule -> matches(rule.pattern(), name)).toList();
  }

  private static boolean matches(String pattern, String name) {
    try {
      PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + pattern);
      return matcher.matches(Path.of(name));
    } catch (PatternSyntaxException | InvalidPathException noPattern) {
      return pattern.equals(name);
    }
  }
}
