package spangle.intake.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Cure;
import spangle.measure.MeasureException;
import spangle.measure.Numbers;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;

/** Reads cure data; only data by metal temperature can be used. */
final class CureReader {
  private static final Pattern POINT =
      Pattern.compile(
          "([0-9]+(?:[.,][0-9]+)?)\\s*(?:min)?\\s*@\\s*([0-9]+(?:[.,][0-9]+)?)\\s*([CFcf]?)");
  private static final Range METAL_C = Range.of(20, 260);

  private CureReader() {}

  /** Cure data of an entry; empty where there are none that can be used, with the reason noted. */
  static Optional<Cure> read(Fields entry, boolean expected) {
    Optional<Fields> inner = entry.inner("cure");
    if (inner.isEmpty()) {
      if (expected && !entry.has("cure")) {
        entry
            .notes()
            .add(
                ProblemCode.CURE_MISSING,
                entry.place(),
                "cure",
                "",
                "minutes at metal temperature",
                "there are no cure data; work in this powder cannot be planned into an oven",
                "copy minutes at metal temperature from the data sheet");
      }
      return Optional.empty();
    }
    Fields cure = inner.get();
    boolean metal = basis(cure);
    List<Cure.Point> points = points(cure);
    OptionalDouble max = cure.quantity("max", QuantityKind.DURATION, Range.of(0.5, 5_000));
    String source = cure.text("source");
    cure.finish();
    if (!metal || points.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Cure(points, max, source));
  }

  private static boolean basis(Fields cure) {
    Optional<Datum.Scalar> basis = cure.scalar("basis");
    String word = basis.map(b -> b.text().toLowerCase(Locale.ROOT)).orElse("");
    if (word.equals("metal") || word.equals("object")) {
      return true;
    }
    cure.notes()
        .add(
            ProblemCode.CURE_BY_AIR,
            basis.map(Datum.Scalar::place).orElse(cure.place()),
            "basis",
            word,
            "metal",
            word.isEmpty()
                ? "it is not said whether the temperatures are metal or air"
                : "the temperatures are by air; air says nothing about the metal",
            "take minutes at metal temperature from the data sheet and write basis: metal");
    return false;
  }

  private static List<Cure.Point> points(Fields cure) {
    Optional<Datum.Scalar> scalar = cure.needed("points");
    if (scalar.isEmpty()) {
      return List.of();
    }
    String text = scalar.get().text();
    Matcher matcher = POINT.matcher(text);
    List<Cure.Point> points = new ArrayList<>();
    int end = 0;
    boolean clean = true;
    while (matcher.find() && points.size() < 50) {
      clean &= text.substring(end, matcher.start()).matches("[\\s,;]*");
      end = matcher.end();
      point(cure, scalar.get(), matcher).ifPresent(points::add);
    }
    clean &= text.substring(end).matches("[\\s,;]*");
    if (!clean || points.isEmpty()) {
      if (!cure.notes().refused()) {
        bad(cure, scalar.get(), "the cure points cannot be read");
      }
      return List.of();
    }
    points.sort(Comparator.comparingDouble(Cure.Point::celsius));
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).celsius() == points.get(i - 1).celsius()
          || points.get(i).minutes() > points.get(i - 1).minutes()) {
        bad(cure, scalar.get(), "a hotter point asks for more time than a cooler one");
        return List.of();
      }
    }
    return points;
  }

  private static Optional<Cure.Point> point(Fields cure, Datum.Scalar scalar, Matcher matcher) {
    try {
      String unit = matcher.group(3).isEmpty() ? "C" : matcher.group(3);
      double minutes = Numbers.parse(matcher.group(1));
      double celsius = Quantities.read(QuantityKind.TEMPERATURE, matcher.group(2), unit);
      if (minutes > 0 && METAL_C.holds(celsius)) {
        return Optional.of(new Cure.Point(minutes, celsius));
      }
      cure.notes()
          .add(
              ProblemCode.OUT_OF_RANGE,
              scalar.place(),
              "points",
              matcher.group(),
              METAL_C.words("C metal"),
              "no coating cures there; 400 reads like Fahrenheit",
              "give C, or write the F behind the number");
    } catch (MeasureException broken) {
      bad(cure, scalar, "a cure point is no number");
    }
    return Optional.empty();
  }

  private static void bad(Fields cure, Datum.Scalar scalar, String why) {
    cure.notes()
        .add(
            ProblemCode.NOT_A_NUMBER,
            scalar.place(),
            "points",
            scalar.text(),
            "minutes@C such as 10@200 15@190",
            why,
            "write minutes at metal temperature like \"10@200 15@190\"");
  }
}
