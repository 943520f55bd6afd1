package spangle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.heat.CureWindow;
import spangle.coating.heat.TemperatureCurve;
import spangle.measure.Figures;
import spangle.measure.MeasureException;
import spangle.measure.Numbers;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** Metal temperatures a probe has recorded. */
final class CurveOptions {
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final Pattern COLUMNS = Pattern.compile("\\s*[;,:\\t]\\s*");
  private static final long LARGEST_FILE = 5_000_000;

  @Option(
      names = "--curve",
      paramLabel = "\"MIN:TEMP ...\"",
      description =
          "A probe's readings, e.g. \"0:20 5:150 10:195 20:200\", or a file with one"
              + " minute;temperature a line.")
  private @Nullable String curve;

  boolean given() {
    return curve != null;
  }

  Optional<TemperatureCurve> read() {
    if (curve == null) {
      return Optional.empty();
    }
    List<TemperatureCurve.Reading> readings = new ArrayList<>();
    int line = 0;
    for (String entry : entries(curve)) {
      line++;
      if (!entry.isBlank()) {
        reading(entry, line, readings);
      }
    }
    return Optional.of(new TemperatureCurve(readings));
  }

  private static List<String> entries(String text) {
    if (text.contains(":")) {
      return List.of(BLANKS.split(text.strip(), -1));
    }
    try {
      Path file = Path.of(text);
      if (Files.size(file) > LARGEST_FILE) {
        throw ExitException.usage("--curve '" + text + "' is larger than 5 MB: give one run only");
      }
      return Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (IOException | InvalidPathException unreadable) {
      throw ExitException.usage(
          "--curve '"
              + text
              + "' is neither readings like \"0:20 5:150\" nor a file that can be read");
    }
  }

  private static void reading(String entry, int number, List<TemperatureCurve.Reading> readings) {
    String[] columns = COLUMNS.split(entry.strip(), -1);
    try {
      if (columns.length < 2) {
        throw new MeasureException(entry, "a reading", "write minute and temperature, like 5:150");
      }
      readings.add(
          new TemperatureCurve.Reading(
              Numbers.parse(columns[0]),
              Quantities.read(QuantityKind.TEMPERATURE, columns[1], "C")));
    } catch (MeasureException unreadable) {
      if (number > 1 || !readings.isEmpty() || columns.length < 2) {
        throw ExitException.usage("--curve, reading " + number + ": " + unreadable.getMessage());
      }
    }
  }

  static String verdict(TemperatureCurve curve, CureWindow window) {
    if (curve.cureIndex(window) < 1) {
      return "not cured";
    }
    return curve.overbakes(window) ? "overbaked" : "cured";
  }

  static JsonOut json(TemperatureCurve curve, CureWindow window) {
    return new JsonOut()
        .put("cure_index", curve.cureIndex(window))
        .put("minutes_hot", curve.minutesAtOrAbove(window.lowestC()))
        .put("peak_c", curve.peakC())
        .put("verdict", verdict(curve, window))
        .put("max_assumed", window.maxIsAssumed());
  }

  static void say(Answer answer, TemperatureCurve curve, CureWindow window) {
    answer.say("verdict", verdict(curve, window));
    answer.line("index", "%.2f of the cure (1 is just cured)", curve.cureIndex(window));
    answer.line(
        "hot",
        "%.1f min at %.0f C or more, most %.0f min%s; peak %.0f C, nothing is known over %.0f C",
        curve.minutesAtOrAbove(window.lowestC()),
        window.lowestC(),
        window.maxMinutes(),
        window.maxIsAssumed() ? " (assumed)" : "",
        curve.peakC(),
        window.unknownAboveC());
    answer.say(
        "working",
        "integral of dt / t(T) along the curve, window "
            + Figures.upTo(window.lowestC(), 0)
            + " C and up: "
            + window.text());
    answer.end();
  }
}
