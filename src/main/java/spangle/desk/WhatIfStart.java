package spangle.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spangle.plan.Brief;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.plan.json.StartedFrom;

/**
 * What the search of a what-if starts from: the plan of the week as it is, where there is one. Two
 * searches that start alike differ by what the overlay changes, not by chance.
 *
 * @param base the plan; empty where the search starts anew
 * @param sha256 digest of its file; empty without one
 * @param words what is said of it
 */
public record WhatIfStart(Optional<PlanFile> base, String sha256, String words) {
  /** A search that starts anew, of which nothing is said. */
  public static final WhatIfStart ANEW = new WhatIfStart(Optional.empty(), "", "");

  private static final String CHANCE =
      ", so the search starts anew: beside the plan of the week it also shows the luck of two"
          + " searches";

  /**
   * Looks for it.
   *
   * @param week the week folder
   * @param from a plan somebody names; empty for the one in the week folder
   * @throws IOException when the plan somebody names cannot be read
   * @throws PlanFileException when it is none
   */
  public static WhatIfStart of(Path week, Optional<Path> from)
      throws IOException, PlanFileException {
    if (from.isPresent()) {
      return found(from.get());
    }
    Path usual = week.resolve("plan");
    if (!Files.isRegularFile(usual.resolve("plan.json"))) {
      return anew("there is no plan of the week in " + usual);
    }
    try {
      return found(usual);
    } catch (IOException | PlanFileException unusable) {
      return anew("the plan in " + usual + " cannot be used (" + unusable.getMessage() + ")");
    }
  }

  private static WhatIfStart anew(String why) {
    return new WhatIfStart(Optional.empty(), "", why + CHANCE);
  }

  private static WhatIfStart found(Path plan) throws IOException, PlanFileException {
    PlanFile file = PlanShelf.sound(plan);
    String sha256 = PlanShelf.sha256(Files.isDirectory(plan) ? plan.resolve("plan.json") : plan);
    String words = "the search starts from plan " + file.version() + " of the week, " + plan;
    return new WhatIfStart(Optional.of(file), sha256, words);
  }

  /** What came of it: the overlay may change nothing that a plan depends on. */
  public String words(PlanDesk.Made made) {
    return made.startedFrom().filter(StartedFrom::same).isPresent()
        ? "the overlay changes nothing a plan depends on: this is plan "
            + base.map(PlanFile::version).orElse("")
            + " of the week"
        : words;
  }

  /** Whether the overlay changes nothing the planner knows. */
  boolean same(Brief brief) {
    // The title of an overlay stands in the name and changes nothing.
    return base.map(PlanFile::brief)
        .filter(b -> b.equals(BriefChange.of(brief).name(b.name()).made()))
        .isPresent();
  }

  /** The plan itself, where the overlay changes nothing. */
  Optional<Plan> unchanged(Brief brief) {
    return base.filter(file -> same(brief)).map(PlanFile::plan);
  }

  /** Where the search begins. */
  List<PlannedBatch> batches() {
    return base.map(file -> file.plan().batches()).orElse(List.of());
  }

  /** As it is kept in the plan. */
  Optional<StartedFrom> kept(Brief brief) {
    return base.map(file -> new StartedFrom(file.version(), sha256, same(brief)));
  }
}
