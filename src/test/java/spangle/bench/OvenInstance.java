package spangle.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An instance of the Oven Scheduling Problem (Lackner, Mrkvicka, Musliu, Walkiewicz and Winter,
 * Constraints 28, 2023) as its data file has it: names to rows of whole numbers.
 */
final class OvenInstance {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+");
  private static final Pattern SET = Pattern.compile("\\{[^}]*\\}|-?\\d+\\s*\\.\\.\\s*-?\\d+");
  private final Map<String, List<int[]>> data = new LinkedHashMap<>();
  private long norm = 1;

  /** Reads a data file. */
  static OvenInstance read(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8).replace("\uFEFF", "");
    OvenInstance instance = new OvenInstance();
    for (String statement : text.replaceAll("%[^\\n]*", "").split(";")) {
      int equals = statement.indexOf('=');
      if (equals > 0) {
        String name = statement.substring(0, equals).strip();
        String value = statement.substring(equals + 1).strip();
        if (name.equals("upper_bound_integer_objective")) {
          instance.norm = Long.parseLong(value);
        } else {
          instance.data.put(name, values(value));
        }
      }
    }
    return instance;
  }

  private static List<int[]> values(String text) {
    List<int[]> rows = new ArrayList<>();
    if (text.startsWith("[|")) {
      for (String row : text.substring(2, text.lastIndexOf("|]")).split("\\|")) {
        if (!row.isBlank()) {
          rows.add(numbers(row));
        }
      }
    } else if (text.startsWith("[") && (text.contains("{") || text.contains(".."))) {
      Matcher sets = SET.matcher(text);
      while (sets.find()) {
        rows.add(set(sets.group()));
      }
    } else {
      rows.add(numbers(text));
    }
    return rows;
  }

  private static int[] set(String text) {
    int[] ends = numbers(text.replace("..", " "));
    if (text.startsWith("{")) {
      return ends;
    }
    int[] all = new int[ends[1] - ends[0] + 1];
    for (int i = 0; i < all.length; i++) {
      all[i] = ends[0] + i;
    }
    return all;
  }

  private static int[] numbers(String text) {
    Matcher matcher = NUMBER.matcher(text);
    List<Integer> found = new ArrayList<>();
    while (matcher.find()) {
      found.add(Math.toIntExact(Long.parseLong(matcher.group())));
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  private List<int[]> get(String name) {
    List<int[]> rows = data.get(name);
    if (rows == null) {
      throw new IllegalArgumentException("the instance lacks " + name);
    }
    return rows;
  }

  int number(String name) {
    return get(name).get(0)[0];
  }

  /** What the benchmark divides values by; it may pass what an int holds. */
  long norm() {
    return norm;
  }

  int[] array(String name) {
    return get(name).get(0);
  }

  List<int[]> rows(String name) {
    return get(name);
  }

  boolean has(String name) {
    return data.containsKey(name);
  }
}
