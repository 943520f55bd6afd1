package spangle.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages on formats say what the schemas say. Write them anew with {@link FormatPages#main}. */
class FormatPagesTest {
  @Test
  void pagesAreCurrent() throws IOException {
    for (Map.Entry<String, String> page : FormatPages.pages().entrySet()) {
      assertThat(FormatPages.PAGES.resolve(page.getKey())).hasContent(page.getValue());
    }
  }

  @Test
  void everySchemaHasAPage() throws IOException {
    try (Stream<Path> schemas = Files.list(FormatPages.SCHEMAS)) {
      List<String> names =
          schemas
              .map(s -> s.getFileName().toString().replace(".schema.json", ".md"))
              .sorted()
              .toList();
      assertThat(FormatPages.pages().keySet()).containsExactlyElementsOf(names);
    }
  }

  @Test
  void keysThatCarryAUnitAreOnThePages() throws IOException {
    assertThat(FormatPages.pages().get("profile.md"))
        .contains("| `panel_mm` |", "| `max_kg` |", "; also in cm, dm, m, in, inch, ft |");
    assertThat(FormatPages.pages().get("coatings.md")).contains("`powders.pack_kg`");
  }

  @Test
  void everyKeySaysWhatItMeans() throws IOException {
    FormatPages.pages()
        .forEach(
            (name, text) ->
                assertThat(text.lines().filter(line -> line.startsWith("| `")))
                    .as(name)
                    .isNotEmpty()
                    .noneMatch(line -> line.endsWith("|  |")));
  }
}
