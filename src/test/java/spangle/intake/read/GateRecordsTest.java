package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.plan.Held;

/** What a record must say to open a gate, on a copy of the demo week. */
class GateRecordsTest {
  private static final String WHOLE =
      """
      gates:
        - gate: distortion
          job: H-205
          part: HC-42
          opened_by: [buyer]
          at: 2026-11-26 11:15
          note: waviness accepted
        - gate: pockets
          job: H-205
          part: HC-42
          opened_by: [kettle lead]
          at: 2026-11-26 13:05
          note: drains seen open
      """;

  @TempDir Path folder;

  @BeforeEach
  void copyTheDemoWeek() throws IOException {
    Path sample = Path.of("samples/harbour-week");
    Files.createDirectory(folder.resolve("jobs"));
    for (String name : List.of("shop.yaml", "coatings.yaml", "jobs/enclosures.yaml")) {
      Files.copy(sample.resolve(name), folder.resolve(name));
    }
  }

  private List<String> shut(String gates) throws IOException {
    Files.writeString(folder.resolve("gates.yaml"), gates, StandardCharsets.UTF_8);
    PreparedWeek week = BriefMaker.prepare(WeekReader.read(folder).input().orElseThrow());
    return week.held().stream().filter(h -> h.partId().equals("HC-42")).map(Held::gate).toList();
  }

  private Stream<Problem> bad() {
    return WeekReader.read(folder).problems().stream()
        .filter(p -> p.code() == ProblemCode.GATE_RECORD_BAD);
  }

  @Test
  void whoWhenAndWhatOpen() throws IOException {
    assertThat(shut(WHOLE)).isEmpty();
    assertThat(bad()).isEmpty();
  }

  @Test
  void withoutATimeItStaysShut() throws IOException {
    assertThat(shut(WHOLE.replaceFirst("    at: .*\n", ""))).containsExactly("thin-flat-sheet");
    assertThat(bad()).singleElement().matches(p -> p.field().equals("at"));
  }

  @Test
  void withoutWhatWasSeenItStaysShut() throws IOException {
    assertThat(
            shut(
                WHOLE
                    .replace("          note: drains seen open\n", "")
                    .replaceAll("    note: drains seen open\n", "")))
        .containsExactly("blind-pocket");
    assertThat(bad()).singleElement().matches(p -> p.field().equals("note"));
  }

  @Test
  void solderedJointsFitAndMaterialNeverOpen() throws IOException {
    for (String never : List.of("soldered", "fit", "material")) {
      shut(WHOLE.replace("gate: distortion", "gate: " + never));
      assertThat(bad()).singleElement().matches(p -> p.why().contains("never opened"));
    }
  }

  /** Six closed faces hold a space, whatever the row says of hollows. */
  @Test
  void aClosedBoxIsAHollowEvenWhereTheRowSaysNo() throws IOException {
    Path jobs = folder.resolve("jobs/enclosures.yaml");
    String rows = Files.readString(jobs);
    Files.writeString(jobs, rows.replace("box 4250x700x400 mm open front", "box 4250x700x400 mm"));
    assertThat(shut(WHOLE)).contains("hollow-closed");
  }
}
