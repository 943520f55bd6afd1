package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What keeps a part of a week from being hung: open questions of its row, and thin wide faces. */
class FitQuestionsTest {
  private static final String HEAD =
      "job,part,description,qty,material,thickness_mm,mass_kg,shape,route,ready,due,welded,hollow,"
          + "overlaps,pockets,soldered,moving_parts,certificate,si_pct,p_pct,hooks\n";

  @TempDir Path folder;

  @BeforeEach
  void copyTheShop() throws IOException {
    Files.createDirectory(folder.resolve("jobs"));
    for (String name : List.of("shop.yaml", "coatings.yaml")) {
      Files.copy(Path.of("samples/first-steps", name), folder.resolve(name));
    }
  }

  private record Told(int code, String out) {
    JsonNode json() throws IOException {
      return new ObjectMapper().readTree(out);
    }
  }

  private Told fit(String thickness, String mass, String shape, String... more) throws IOException {
    Files.writeString(
        folder.resolve("jobs/one.csv"),
        HEAD
            + "Q-1,Q,piece,4,steel,"
            + thickness
            + ","
            + mass
            + ","
            + shape
            + ",zinc,mon 06:00,thu 14:00,no,no,no,no,no,no,C-8850,0.18,0.012,2\n");
    StringWriter out = new StringWriter();
    String[] words = new String[3 + more.length];
    words[0] = "fit";
    words[1] = folder.toString();
    words[2] = "Q-1/Q";
    System.arraycopy(more, 0, words, 3, more.length);
    int code = Spangle.run(new PrintWriter(out), new PrintWriter(new StringWriter()), words);
    return new Told(code, out.toString());
  }

  /** 250 x 200 x 8 mm of steel are 3.14 kg; a row that says 6 kg is wrong in size or in mass. */
  @Test
  void anOpenQuestionOfItsRowKeepsAPartOffTheBeam() throws IOException {
    Told asked = fit("8", "6", "plate 250x200 mm", "--json");
    assertThat(asked.code()).isEqualTo(ExitCode.WAITS);
    assertThat(asked.json().get("questions")).hasSize(1);
    assertThat(asked.json().get("questions").get(0).asText())
        .startsWith("area-mass-clash: ")
        .contains("3.1", "6", "; opens with: ");
    assertThat(asked.json().get("verdict").asText()).isEqualTo("straight");
    String words = fit("8", "6", "plate 250x200 mm").out();
    assertThat(words)
        .contains("NOT TO BE HUNG: a question is open", "Question area-mass-clash: ")
        .doesNotContain("a gate is shut");
  }

  @Test
  void aPartWithoutQuestionMayBeHung() throws IOException {
    Told clear = fit("8", "3.14", "plate 250x200 mm", "--json");
    assertThat(clear.code()).isEqualTo(ExitCode.DONE);
    assertThat(clear.json().get("questions")).isEmpty();
    assertThat(fit("8", "3.14", "plate 250x200 mm").out()).doesNotContain("NOT TO BE HUNG");
  }

  private String distortion(String thickness, String shape) throws IOException {
    for (JsonNode gate : fit(thickness, "", shape, "--json").json().get("gates")) {
      if (gate.get("gate").asText().equals("thin flat sheet")) {
        return gate.get("state").asText() + ": " + gate.get("words").asText();
      }
    }
    throw new AssertionError("no such gate");
  }

  /**
   * Thin walls by the faces the form has, held from 500 mm: a short tube is 600 x 550 outside but
   * each of its walls is only 300 long; a pipe has no flat wall.
   */
  @Test
  void aThinTubeIsJudgedByItsWalls() throws IOException {
    assertThat(distortion("2", "tube 600x60x2000 mm")).startsWith("shut").contains("600 mm wide");
    assertThat(distortion("2", "tube 499x60x2000 mm")).startsWith("clear").contains("499 mm wide");
    assertThat(distortion("2", "tube 600x550x300 mm")).startsWith("clear").contains("300 mm wide");
    assertThat(distortion("2", "pipe 600x2000 mm")).startsWith("clear").contains("no flat face");
    assertThat(distortion("2", "plate 600x500 mm")).startsWith("shut").contains("600 x 500 mm");
  }
}
