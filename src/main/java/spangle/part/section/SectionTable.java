package spangle.part.section;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The standard sections that come with the program, by name. Only nominal dimensions are stored;
 * areas and masses are computed from them.
 */
public final class SectionTable {
  private static final String RESOURCE = "sections.csv";
  private static final Pattern NAME =
      Pattern.compile("(l|upn|upe|hfshs|hfrhs|shs|rhs|chs)([0-9.x]{1,30})");

  private final Map<String, SectionProfile> byName;

  private SectionTable(Map<String, SectionProfile> byName) {
    this.byName = Collections.unmodifiableMap(byName);
  }

  /** The table that comes with the program. */
  public static SectionTable standard() {
    return Holder.STANDARD;
  }

  /** All sections in the order of the table. */
  public Collection<SectionProfile> all() {
    return byName.values();
  }

  /**
   * Finds a section. Case, blanks, {@code *} for {@code x}, a decimal comma and leaving out the
   * second of two equal sides are forgiven: {@code L 50 x 5} is {@code L50x50x5}.
   */
  public Optional<SectionProfile> find(String name) {
    return Optional.ofNullable(byName.get(key(name)));
  }

  /** Names of the same family nearest to a name that was not found, for the message. */
  public List<String> near(String name) {
    Matcher wanted = NAME.matcher(key(name));
    if (!wanted.matches()) {
      return List.of();
    }
    double size = firstNumber(wanted.group(2));
    return byName.entrySet().stream()
        .filter(entry -> sameMark(entry.getKey(), wanted.group(1)))
        .map(Map.Entry::getValue)
        .sorted(Comparator.comparingDouble(section -> Math.abs(section.heightMm() - size)))
        .limit(3)
        .map(SectionProfile::name)
        .toList();
  }

  private static boolean sameMark(String key, String mark) {
    Matcher matcher = NAME.matcher(key);
    return matcher.matches() && matcher.group(1).equals(mark);
  }

  private static double firstNumber(String sizes) {
    Matcher number = Pattern.compile("[0-9]+(\\.[0-9]+)?").matcher(sizes);
    return number.find() ? Double.parseDouble(number.group()) : 0;
  }

  private static String key(String name) {
    if (name.length() > 60) {
      return "";
    }
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("\\s", "").replace('*', 'x').replace('×', 'x');
    Matcher matcher = NAME.matcher(plain.replace(',', '.'));
    if (!matcher.matches()) {
      return plain;
    }
    String mark = matcher.group(1);
    String[] sizes = matcher.group(2).split("x", -1);
    boolean twoSided = mark.equals("l") || mark.endsWith("shs");
    if (twoSided && sizes.length == 2) {
      return mark + sizes[0] + "x" + sizes[0] + "x" + sizes[1];
    }
    return matcher.group();
  }

  private static SectionTable load() {
    try (InputStream stream = SectionTable.class.getResourceAsStream(RESOURCE)) {
      if (stream == null) {
        throw new IllegalStateException("the section table is missing from the program");
      }
      return read(new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("the section table cannot be read", e);
    }
  }

  /** A table as text, one section a line; blank lines and lines that begin with # say nothing. */
  static SectionTable read(BufferedReader reader) throws IOException {
    Map<String, SectionProfile> sections = new LinkedHashMap<>();
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      if (!line.isBlank() && !line.startsWith("#")) {
        SectionProfile section = profile(line);
        sections.put(key(section.name()), section);
      }
    }
    return new SectionTable(sections);
  }

  /** One line: kind, name, then the dimensions that kind needs. */
  private static SectionProfile profile(String line) {
    String[] cells = line.split(",", -1);
    String name = cells[1].strip();
    double[] d = new double[cells.length - 2];
    for (int i = 0; i < d.length; i++) {
      d[i] = Double.parseDouble(cells[i + 2].strip());
    }
    return switch (cells[0].strip()) {
      case "angle" -> Outlines.angle(name, d[0], d[1], d[2], d[3], d[4]);
      case "taper-channel" -> Outlines.taperChannel(name, d[0], d[1], d[2], d[3], d[4], d[5]);
      case "parallel-channel" -> Outlines.parallelChannel(name, d[0], d[1], d[2], d[3], d[4]);
      case "cold-hollow" -> Outlines.hollow(name, Family.COLD_HOLLOW, d[0], d[1], d[2]);
      case "hot-hollow" -> Outlines.hollow(name, Family.HOT_HOLLOW, d[0], d[1], d[2]);
      case "round-hollow" -> Outlines.round(name, d[0], d[1]);
      default -> throw new IllegalStateException("unknown kind in the section table: " + line);
    };
  }

  private static final class Holder {
    static final SectionTable STANDARD = load();
  }
}
