package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spangle.part.flat.Bend;
import spangle.part.flat.BendLine;

/**
 * Finds what is written to bend lines: {@code UP 90° R2}, {@code down 45 deg R 3}. Common practice;
 * no standard says how it is written.
 */
final class BendWords {
  private static final Pattern WORDS =
      Pattern.compile(
          "(?:(up|down|auf|ab|hoch|runter)\\b[^0-9+-]{0,12})?([+-]?[0-9]{1,3}(?:[.,][0-9]{1,4})?)\\s*(°|deg|degrees|grad)?(?:[^0-9]{0,12}\\br(?:ad(?:ius)?)?\\s*[=.:]?\\s*([0-9]{1,3}(?:[.,][0-9]{1,4})?))?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern FORMAT = Pattern.compile("\\\\[A-Za-z][^;\\\\{}]{0,60};|[{}]");
  private static final double REACH = 0.15;

  /** What words say of a bend. */
  record Said(double angleDeg, boolean up, OptionalDouble radiusMm) {}

  private BendWords() {}

  static Optional<Said> said(String words) {
    String plain =
        FORMAT
            .matcher(words.replace("%%d", "°").replace("%%D", "°").replace("\\U+00B0", "°"))
            .replaceAll("")
            .replace("\\P", " ");
    Matcher matcher = WORDS.matcher(plain);
    while (matcher.find()) {
      boolean clear = matcher.group(1) != null || matcher.group(3) != null;
      double angle = Double.parseDouble(matcher.group(2).replace(',', '.'));
      if (clear && Math.abs(angle) > 0 && Math.abs(angle) <= 165) {
        String way = matcher.group(1) == null ? "" : matcher.group(1).toLowerCase(Locale.ROOT);
        boolean down = way.equals("down") || way.equals("ab") || way.equals("runter");
        OptionalDouble radius =
            matcher.group(4) == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(matcher.group(4).replace(',', '.')));
        return Optional.of(new Said(Math.abs(angle), down == angle < 0, radius));
      }
    }
    return Optional.empty();
  }

  private record Match(BendLine line, Said said, double distance) {}

  /**
   * The bends of which everything is known; fewer than the lines where something is not said.
   *
   * @param lines bend lines in mm
   * @param notes words with their places in mm
   * @param diagonalMm of the part: words further off than a share of it belong to something else
   * @param mm mm of the drawing's unit, for radii
   */
  static List<Bend> bends(
      List<BendLine> lines, List<Drawing.Note> notes, double diagonalMm, double mm, Asked asked) {
    List<Match> matches = new ArrayList<>();
    for (Drawing.Note note : notes) {
      Optional<Said> said = said(note.words());
      Optional<BendLine> nearest =
          lines.stream().min(Comparator.comparingDouble(l -> l.distance(note.at())));
      if (said.isPresent() && nearest.isPresent()) {
        double distance = nearest.get().distance(note.at());
        if (distance <= REACH * diagonalMm) {
          matches.add(new Match(nearest.get(), said.get(), distance));
        }
      }
    }
    List<Bend> bends = new ArrayList<>();
    for (BendLine line : lines) {
      matches.stream()
          .filter(m -> m.line.equals(line))
          .min(Comparator.comparingDouble(Match::distance))
          .map(Match::said)
          .or(() -> otherwise(asked))
          .ifPresent(
              said -> {
                double usual = asked.bendRadiusMm().orElse(asked.thicknessMm());
                double radius =
                    said.radiusMm().isPresent() ? said.radiusMm().getAsDouble() * mm : usual;
                bends.add(new Bend(line, said.angleDeg(), said.up(), Math.max(radius, 0.01)));
              });
    }
    return bends;
  }

  private static Optional<Said> otherwise(Asked asked) {
    return asked.bendAngleDeg().isPresent()
        ? Optional.of(new Said(asked.bendAngleDeg().getAsDouble(), true, OptionalDouble.empty()))
        : Optional.empty();
  }
}
