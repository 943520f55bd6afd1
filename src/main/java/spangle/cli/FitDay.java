package spangle.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import spangle.desk.FitPlace;
import spangle.fit.FitRules;
import spangle.measure.Figures;
import spangle.measure.Quantities;

/** How the bath stands on the day, and what the shop asks of two dips. */
record FitDay(OptionalDouble overlapMm, OptionalDouble rimMm, double levelDropMm, double drossMm) {
  private static final double MOST_MM = 10_000;

  static FitDay of(
      @Nullable String overlap,
      @Nullable String rim,
      @Nullable String levelDrop,
      @Nullable String dross) {
    return new FitDay(
        length("--overlap", overlap),
        length("--rim", rim),
        length("--level-drop", levelDrop).orElse(0),
        length("--dross", dross).orElse(0));
  }

  private static OptionalDouble length(String option, @Nullable String text) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    double mm = Quantities.lengthMm(text);
    if (!(mm <= MOST_MM)) {
      throw ExitException.usage(
          option + " '" + text + "' is more than 10 m: no kettle has that; look at the unit");
    }
    return OptionalDouble.of(mm);
  }

  /** The kettle as it stands that day; refused where no zinc would be left to dip into. */
  FitPlace in(FitPlace place) {
    double depth = place.station().space().depthMm();
    if (levelDropMm + drossMm > 0 && levelDropMm + drossMm >= depth) {
      throw ExitException.usage(
          "--level-drop and --dross take "
              + Figures.upTo(levelDropMm + drossMm, 0)
              + " mm of depth and the kettle has "
              + Figures.upTo(depth, 0)
              + " mm: nothing can be dipped; measure again");
    }
    return place.onTheDay(levelDropMm, drossMm, rimMm.orElse(place.station().space().rimMm()));
  }

  FitRules in(FitRules rules) {
    return overlapMm.isPresent() ? rules.withOverlapMm(overlapMm.getAsDouble()) : rules;
  }

  /** A day as people and machines write it. */
  static String date(String text) {
    try {
      return LocalDate.parse(text).toString();
    } catch (DateTimeParseException wrong) {
      throw ExitException.usage("--until '" + text + "' is no date: write it like 2026-11-30");
    }
  }
}
