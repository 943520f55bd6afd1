package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas shipped with the program hold for every file shipped with it, and refuse others. */
class SchemasTest {
  private static final ObjectMapper YAML = new YAMLMapper();

  private static Schema schema(String name) throws IOException {
    try (InputStream in =
        SchemasTest.class.getResourceAsStream("/schema/" + name + ".schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Objects.requireNonNull(in, name));
    }
  }

  private static List<Error> errors(String schema, JsonNode file) throws IOException {
    return schema(schema).validate(file);
  }

  static Stream<Path> files() throws IOException {
    List<Path> folders =
        List.of(
            Path.of("samples/first-steps"),
            Path.of("samples/harbour-week"),
            Path.of("rack-profiles"));
    Stream.Builder<Path> found = Stream.builder();
    for (Path folder : folders) {
      try (Stream<Path> all = Files.walk(folder)) {
        all.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().forEach(found);
      }
    }
    try (Stream<Path> overlays = Files.list(Path.of("samples/what-if"))) {
      overlays.sorted().forEach(found);
    }
    return found.build();
  }

  private static String schemaOf(Path file) {
    String folder = file.getParent().getFileName().toString();
    String name = file.getFileName().toString();
    return switch (folder) {
      case "rack-profiles" -> "profile";
      case "jobs" -> "jobs";
      case "what-if" -> "overlay";
      default -> name.substring(0, name.indexOf('.'));
    };
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFileShippedKeepsItsSchema(Path file) throws IOException {
    JsonNode text = YAML.readTree(file.toFile());

    assertThat(errors(schemaOf(file), text)).as(file.toString()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void aKeyMoreBreaksIt(Path file) throws IOException {
    JsonNode text = YAML.readTree(file.toFile());
    if (text instanceof ObjectNode top) {
      top.put("surprise", 1);
      assertThat(errors(schemaOf(file), top)).as(file.toString()).isNotEmpty();
    }
  }

  /** One case that breaks each schema: a key nobody reads, or a value of another kind. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shop     | {name: Shop, week_start: 2026-11-30, timezone: here}",
        "shop     | {name: [a, b], week_start: 2026-11-30}",
        "coatings | {powders: [{id: P-1, colour_word: blue}]}",
        "coatings | {powders: blue}",
        "jobs     | {jobs: [{job: J-1, parts: [{part: A, qty: 3, thick: 2}]}]}",
        "jobs     | {jobs: 12}",
        "kits     | {kits: [{kit: K-1, pieces: 3}]}",
        "gates    | {gates: [{gate: vents, job: J-1, part: A, opened: yes}]}",
        "gates    | {gates: vents}",
        "answers  | {answers: [{question: q-1, answre: yes}]}",
        "columns  | {columns: {Teil: part}, more: 1}",
        "events   | {events: [{at: mon 06:00, what: hung, loaded: P01}]}",
        "overlay  | {shop: {name: other}}",
        "profile  | {kind: rack, words: Rack, wheels: 4}",
        "profile  | {kind: spaceship, words: Ship}",
      })
  void whatNobodyReadsBreaksIt(String schema, String text) throws IOException {
    assertThat(errors(schema, YAML.readTree(text))).isNotEmpty();
  }
}
