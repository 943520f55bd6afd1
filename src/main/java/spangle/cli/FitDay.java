package spangle.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import spangle.desk.FitPlace;
import spangle.fit.FitRules;
import spangle.measure.Quantities;

/** How the bath stands on the day, and what the shop asks of two dips. */
record FitDay(OptionalDouble overlapMm, OptionalDouble rimMm, double levelDropMm, double drossMm) {

  static FitDay of(
      @Nullable String overlap,
      @Nullable String rim,
      @Nullable String levelDrop,
      @Nullable String dross) {
    return new FitDay(
        length(overlap), length(rim), length(levelDrop).orElse(0), length(dross).orElse(0));
  }

  private static OptionalDouble length(@Nullable String text) {
    return text == null ? OptionalDouble.empty() : OptionalDouble.of(Quantities.lengthMm(text));
  }

  FitPlace in(FitPlace place) {
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
