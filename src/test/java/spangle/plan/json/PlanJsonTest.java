package spangle.plan.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
  private static final String TEXT =
      new String(PlanJson.write(PlanFiles.full()), StandardCharsets.UTF_8);

  private static final Schema SCHEMA = schema();

  private static Schema schema() {
    try (InputStream in = PlanJsonTest.class.getResourceAsStream("/schema/plan.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Objects.requireNonNull(in));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static List<Error> againstSchema(String json) {
    return SCHEMA.validate(json, InputFormat.JSON);
  }

  private static PlanFile read(String json) throws PlanFileException {
    return PlanJson.read(json.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void whatIsWrittenIsReadBack() throws PlanFileException {
    assertThat(read(TEXT)).isEqualTo(PlanFiles.full());
  }

  @Test
  void whatIsWrittenKeepsTheSchema() {
    assertThat(againstSchema(TEXT)).isEmpty();
  }

  @Test
  void theSchemaRefusesWhatIsNoPlan() {
    assertThat(againstSchema(TEXT.replace("\"sha256\":\"", "\"sha256\":\"x"))).isNotEmpty();
    assertThat(againstSchema(TEXT.replace("\"horizon_min\"", "\"horizon\""))).isNotEmpty();
    assertThat(againstSchema(TEXT.replace("\"horizon_min\" : 10080", "\"horizon_min\" : \"long\"")))
        .isNotEmpty();
  }

  @Test
  void keysCarryTheirUnitAndNoLimitIsNull() {
    assertThat(TEXT)
        .contains("\"format\" : \"spangle-plan/1\"")
        .contains("\"monday\" : \"2031-03-03\"")
        .contains("\"x_mm\":250,")
        .contains("\"area_m2\" : 1")
        .contains("\"longest_wait_after_min\" : null")
        .contains("\"earliest_min\":null");
  }

  @Test
  void aPieceStandsOnOneLine() {
    assertThat(TEXT.lines())
        .anyMatch(
            line ->
                line.strip()
                    .startsWith(
                        "{\"key\":\"A\",\"face\":0,\"x_mm\":0,\"y_mm\":60,\"width_mm\":200"));
  }

  @Test
  void theSamePlanIsTheSameBytes() {
    assertThat(PlanJson.write(PlanFiles.full())).isEqualTo(PlanJson.write(PlanFiles.full()));
  }

  @Test
  void anUnknownKeyIsNamedWithItsPlace() {
    assertThatThrownBy(
            () -> read(TEXT.replace("\"horizon_min\"", "\"horizon\" : 3, \"horizon_min\"")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("line ")
        .hasMessageContaining("brief.horizon")
        .hasMessageContaining("a plan has no key \"horizon\" here");
  }

  @Test
  void aMissingKeyIsNamed() {
    assertThatThrownBy(() -> read(TEXT.replace("\"horizon_min\" : 10080,", "")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("brief.horizon_min: the key is missing");
  }

  /** A plan from before powder lots were kept, and one from a version that knows more. */
  @Test
  void aPlanOfAnotherVersionSaysWhatToDo() {
    for (String other :
        List.of(
            TEXT.replaceAll(",\"material_lot\":\"[^\"]*\"", ""),
            TEXT.replace("\"horizon_min\"", "\"horizon_max\" : 3, \"horizon_min\""),
            TEXT.replace("spangle-plan/1", "spangle-plan/2"))) {
      assertThat(other).isNotEqualTo(TEXT);
      assertThatThrownBy(() -> read(other))
          .isInstanceOf(PlanFileException.class)
          .hasMessageContaining("written by another version of the program")
          .hasMessageContaining("plan the week again");
    }
  }

  /** What was spoiled by hand is not called another version. */
  @Test
  void aSpoiledPlanIsNotCalledAnotherVersion() {
    for (String spoiled :
        List.of(
            TEXT.replace("\"horizon_min\" : 10080", "\"horizon_min\" : \"long\""),
            TEXT.substring(0, TEXT.length() / 2))) {
      assertThatThrownBy(() -> read(spoiled)).message().doesNotContain("another version");
    }
  }

  @Test
  void aTextWhereANumberBelongsIsRefused() {
    assertThatThrownBy(
            () -> read(TEXT.replace("\"horizon_min\" : 10080", "\"horizon_min\" : \"10080\"")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("brief.horizon_min: a whole number belongs here");
    assertThatThrownBy(
            () -> read(TEXT.replace("\"horizon_min\" : 10080", "\"horizon_min\" : 10080.5")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("brief.horizon_min: a whole number belongs here");
  }

  @Test
  void aNumberBeyondAllNumbersIsRefused() {
    assertThatThrownBy(() -> read(TEXT.replace("\"x_mm\":250,", "\"x_mm\":1e999,")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("too large");
  }

  @Test
  void brokenTextIsNoPlan() {
    assertThatThrownBy(() -> read(TEXT.substring(0, TEXT.length() / 2)))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("it was cut short")
        .hasMessageContaining("line ");
    assertThatThrownBy(() -> read(TEXT.replaceFirst(":", ";")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("not JSON")
        .hasMessageContaining("line ");
    assertThatThrownBy(() -> read("")).isInstanceOf(PlanFileException.class);
    assertThatThrownBy(() -> read("null")).isInstanceOf(PlanFileException.class);
    assertThatThrownBy(() -> read("[]")).isInstanceOf(PlanFileException.class);
    assertThatThrownBy(() -> read(TEXT + "{}")).isInstanceOf(PlanFileException.class);
  }

  @Test
  void anotherFormatIsRefusedInWords() {
    assertThatThrownBy(() -> read(TEXT.replace("spangle-plan/1", "spangle-plan/2")))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("this program reads \"spangle-plan/1\"");
  }

  @Test
  void inputsLieInsideTheWeekFolder() {
    for (String file : List.of("../secret", "/etc/hosts", "jobs/../../x", "jobs\\x", "")) {
      assertThatThrownBy(() -> new InputDigest(file, 1, "0".repeat(64)))
          .as(file)
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThat(new InputDigest("jobs/..week.csv", 1, "0".repeat(64)).file())
        .isEqualTo("jobs/..week.csv");
  }
}
