package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.intake.problem.ProblemCode;
import spangle.intake.week.ColourChange;

/** Reads the table of colour changes. */
final class ColourChangeReader {
  private static final int LONGEST_MIN = 1_440;

  private ColourChangeReader() {}

  static ColourChange read(Fields change) {
    List<String> families = new ArrayList<>();
    Map<String, Map<String, Integer>> minutes = new LinkedHashMap<>();
    Optional<Fields> table = change.inner("minutes");
    if (table.isPresent()) {
      families.addAll(table.get().allNames());
      for (String from : families) {
        table.get().inner(from).ifPresent(row -> minutes.put(from, row(row, from, families)));
      }
    }
    ColourChange read =
        new ColourChange(
            families,
            minutes,
            change.wholeOr("other_chemistry_min", 0, LONGEST_MIN, 0),
            pairs(change));
    change.finish();
    return read;
  }

  private static Map<String, Integer> row(Fields row, String from, List<String> families) {
    Map<String, Integer> minutes = new LinkedHashMap<>();
    for (String to : families) {
      OptionalInt value = row.whole(to, 0, LONGEST_MIN);
      if (value.isPresent()) {
        minutes.put(to, value.getAsInt());
      } else if (!row.has(to)) {
        row.notes()
            .add(
                ProblemCode.VALUE_MISSING,
                row.place(),
                "colour_change",
                from + " to " + to,
                "0 to " + LONGEST_MIN,
                "the table has no minutes from '" + from + "' to '" + to + "'",
                "give a value for every pair of families");
      }
    }
    row.finish();
    return minutes;
  }

  private static List<ColourChange.Pair> pairs(Fields change) {
    List<ColourChange.Pair> pairs = new ArrayList<>();
    for (Fields pair : change.groups("overrides")) {
      Optional<String> from = pair.name("from");
      Optional<String> to = pair.name("to");
      OptionalInt minutes = pair.whole("minutes", 0, LONGEST_MIN);
      if (minutes.isEmpty() && !pair.has("minutes")) {
        pair.missing("minutes");
      }
      String why = pair.text("why");
      pair.finish();
      if (from.isPresent() && to.isPresent() && minutes.isPresent()) {
        pairs.add(new ColourChange.Pair(from.get(), to.get(), minutes.getAsInt(), why));
      }
    }
    return pairs;
  }
}
