package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Problems;
import spangle.intake.read.JobTemplate;
import spangle.intake.read.WeekReader;
import spangle.intake.week.CarrierUse;
import spangle.intake.week.Coating;

/** Writes an empty job workbook to fill in; never over a file that is there. */
public final class TemplateDesk {
  private TemplateDesk() {}

  /**
   * Writes the workbook.
   *
   * @param file where
   * @param week a week whose finishes and carriers may be chosen from
   * @return why the week offers no choices, when it was named and cannot be used
   * @throws IOException when it cannot be written or is there already
   */
  public static Optional<Problem> write(Path file, Optional<Path> week) throws IOException {
    Problems problems = new Problems();
    Optional<WeekReader.Settings> settings = week.flatMap(w -> WeekReader.settings(w, problems));
    List<String> finishes =
        settings.map(s -> s.catalogue().coatings().map(Coating::id).toList()).orElse(List.of());
    List<String> carriers =
        settings
            .map(
                s ->
                    s.shop().lines().stream()
                        .flatMap(l -> l.carriers().stream())
                        .map(CarrierUse::id)
                        .toList())
            .orElse(List.of());
    Files.write(file, JobTemplate.workbook(finishes, carriers), StandardOpenOption.CREATE_NEW);
    return week.isEmpty() || settings.isPresent()
        ? Optional.empty()
        : problems.sorted().stream().findFirst();
  }
}
