package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.WeekCopy;
import spangle.cli.Spangle;
import spangle.plan.json.PlanFile;
import spangle.plan.json.StartedFrom;

/** A what-if of the smallest sample starts from the plan of its week. */
class WhatIfStartTest {
  @TempDir Path temp;

  private Path week = Path.of("");

  @BeforeEach
  void copyTheWeek() {
    week = temp.resolve("week");
    WeekCopy.unplanned(Path.of("samples/first-steps"), week);
  }

  private Path overlay(String name, String... lines) throws IOException {
    return Files.write(temp.resolve(name + ".yaml"), List.of(lines));
  }

  /** Planned, whether or not something waits for a person. */
  private String run(String... args) {
    return run(-1, args);
  }

  private String run(int exit, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Spangle.run(new PrintWriter(out), new PrintWriter(err), args);
    if (exit < 0) {
      assertThat(code).as(err + "\n" + out).isBetween(0, 1);
    } else {
      assertThat(code).as(err + "\n" + out).isEqualTo(exit);
    }
    return out + "\n" + err;
  }

  private PlanFile planned(Path folder) throws Exception {
    return PlanShelf.read(folder);
  }

  @Test
  void anOverlayThatChangesNothingAPlanDependsOnGivesThePlanOfTheWeek() throws Exception {
    run("plan", week.toString(), "--steps", "300");
    Path dearer =
        overlay(
            "dearer",
            "title: The powder is dearer",
            "coatings:",
            "  powders:",
            "    - {id: P-LIGHT-GREY, price_kg: 99}");

    String said = run("plan", week.toString(), "--with", dearer.toString(), "--steps", "5000");

    PlanFile base = planned(week.resolve("plan"));
    PlanFile whatIf = planned(temp.resolve("dearer.plan"));
    assertThat(whatIf.plan()).isEqualTo(base.plan());
    assertThat(whatIf.overlay().orElseThrow().startedFrom())
        .contains(
            new StartedFrom(
                "A", PlanShelf.sha256(week.resolve("plan").resolve("plan.json")), true));
    assertThat(said)
        .contains("What if: the overlay changes nothing a plan depends on: this is plan A");
    assertThat(PlanCompare.of(base, whatIf).made())
        .contains(
            "the overlay changes nothing a plan depends on: the second plan is plan A of the week")
        .noneMatch(w -> w.startsWith("the search"));
    run(0, "audit", temp.resolve("dearer.plan").toString());
  }

  @Test
  void anOverlayThatHelpsIsNeverWorseThanThePlanItStartsFrom() throws Exception {
    run("plan", week.toString(), "--steps", "20000");
    Path more =
        overlay(
            "more",
            "title: One more rack",
            "shop:",
            "  lines:",
            "    - id: powder",
            "      carriers:",
            "        - {id: flat-rack, owned: 9}");

    String said = run("plan", week.toString(), "--with", more.toString(), "--steps", "1");

    PlanFile base = planned(week.resolve("plan"));
    PlanFile whatIf = planned(temp.resolve("more.plan"));
    assertThat(whatIf.plan().figures().goal()).isLessThanOrEqualTo(base.plan().figures().goal());
    assertThat(whatIf.overlay().orElseThrow().startedFrom().orElseThrow().same()).isFalse();
    assertThat(said).contains("What if: the search starts from plan A of the week");
    assertThat(PlanCompare.of(base, whatIf).made())
        .anyMatch(w -> w.startsWith("the search of the second plan started from plan A"))
        .noneMatch(w -> w.contains("changes nothing"));
  }

  @Test
  void withoutAPlanOfTheWeekItStartsAnewAndSaysSo() throws Exception {
    Path more = overlay("more", "title: Longer", "shop:", "  horizon_days: 6");

    String said = run("plan", week.toString(), "--with", more.toString(), "--steps", "1");

    assertThat(said).contains("there is no plan of the week in ", "the search starts anew");
    assertThat(planned(temp.resolve("more.plan")).overlay().orElseThrow().startedFrom()).isEmpty();

    Files.createDirectories(week.resolve("plan"));
    Files.writeString(week.resolve("plan").resolve("plan.json"), "{}");
    assertThat(WhatIfStart.of(week, Optional.empty()).words())
        .contains("cannot be used (", "the search starts anew");
  }

  @Test
  void aPlanThatIsNamedMustBeThereAndGoesWithAnOverlayOnly() throws Exception {
    Path more = overlay("more", "title: Longer", "shop:", "  horizon_days: 6");

    assertThat(run(2, "plan", week.toString(), "--from", "x.plan")).contains("--from goes with");
    assertThat(run(3, "plan", week.toString(), "--with", more.toString(), "--from", "no-such.plan"))
        .contains("is not there");
    assertThat(WhatIfStart.of(week, Optional.empty()).words()).contains("no plan of the week");
  }
}
