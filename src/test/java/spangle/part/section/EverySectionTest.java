package spangle.part.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of the table by the formulas the standards print beside their tables, written here
 * without the outlines the program draws: EN 10210-2 and EN 10219-2, annexes on section properties,
 * for area, surface and mass; EN 10220 for round ones; the area of an angle with root and toe
 * radius as the section books give it for EN 10056-1. The formulas are from memory; that they are
 * plain geometry can be seen. A slip in a row shows too: its name says its sizes.
 */
class EverySectionTest {
  private static final double CORNER = 1 - Math.PI / 4;

  private static List<String> rows() throws IOException {
    try (InputStream in = SectionTable.class.getResourceAsStream("sections.csv")) {
      assertThat(in).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .toList();
    }
  }

  private static double[] sizes(String row) {
    return Arrays.stream(row.split(",")).skip(2).mapToDouble(Double::parseDouble).toArray();
  }

  private static SectionProfile section(String row) {
    return SectionTable.standard().find(row.split(",")[1]).orElseThrow();
  }

  private static void agrees(SectionProfile section, double mm2, double outerMm) {
    assertThat(section.metalMm2()).isEqualTo(mm2, within(1e-6));
    assertThat(section.outerMm()).isEqualTo(outerMm, within(1e-6));
    // 7.85 kg for a square cm and a metre, as the standards reckon.
    assertThat(section.massPerMetreKg(7850)).isEqualTo(0.785 * mm2 / 100, within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void followsTheFormula(String row) {
    double[] n = sizes(row);
    SectionProfile section = section(row);
    switch (row.substring(0, row.indexOf(','))) {
      case "cold-hollow" -> {
        double outer = (n[2] <= 6 ? 2 : n[2] <= 10 ? 2.5 : 3) * n[2];
        hollow(section, n, outer, outer - n[2]);
      }
      case "hot-hollow" -> hollow(section, n, 1.5 * n[2], n[2]);
      case "round-hollow" -> agrees(section, Math.PI * (n[0] - n[1]) * n[1], Math.PI * n[0]);
      case "angle" -> {
        assertThat(n[4]).as("toe radius").isEqualTo(n[3] / 2);
        agrees(
            section,
            n[2] * (n[0] + n[1] - n[2]) + CORNER * (n[3] * n[3] - 2 * n[4] * n[4]),
            2 * (n[0] + n[1]) - (2 - Math.PI / 2) * (n[3] + 2 * n[4]));
      }
      case "parallel-channel" ->
          agrees(
              section,
              2 * n[1] * n[3] + (n[0] - 2 * n[3]) * n[2] + 2 * CORNER * n[4] * n[4],
              2 * n[0] + 4 * n[1] - 2 * n[2] - 2 * (2 - Math.PI / 2) * n[4]);
      case "taper-channel" -> {
        // The middle of the flange beside the web stands half a web off half the width; its
        // corners turn by a right angle less the slope of 8 %.
        double mean = n[3] - 0.08 * n[2] / 2;
        double half = (Math.PI / 2 - Math.atan(0.08)) / 2;
        double corners = 2 * (Math.tan(half) - half) * (n[4] * n[4] - n[5] * n[5]);
        assertThat(section.metalMm2())
            .isEqualTo(n[0] * n[2] + 2 * (n[1] - n[2]) * mean + corners, within(1e-6));
      }
      default -> throw new AssertionError("no formula for " + row);
    }
  }

  private static void hollow(SectionProfile section, double[] n, double outer, double inner) {
    agrees(
        section,
        2 * n[2] * (n[0] + n[1] - 2 * n[2]) - 4 * CORNER * (outer * outer - inner * inner),
        2 * (n[0] + n[1] - 4 * outer + Math.PI * outer));
    assertThat(section.boreMm2())
        .isEqualTo(
            (n[0] - 2 * n[2]) * (n[1] - 2 * n[2]) - 4 * CORNER * inner * inner, within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void isNamedAfterItsSizes(String row) {
    double[] n = sizes(row);
    List<Double> said =
        Pattern.compile("[0-9]+(\\.[0-9]+)?")
            .matcher(row.split(",")[1])
            .results()
            .map(MatchResult::group)
            .map(Double::valueOf)
            .toList();
    for (int i = 0; i < said.size(); i++) {
      assertThat(n[i]).isEqualTo(said.get(i));
    }
  }
}
