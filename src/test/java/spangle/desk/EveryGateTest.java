package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spangle.cli.Spangle;

/**
 * Each gate as a person meets it: one part that shuts it and one, as like it as can be, that leaves
 * it open, through check, fit, plan and audit. The limits are those of the gates' own sources.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryGateTest {
  /** A part with its shut gate, and what makes the difference. */
  record Case(String part, String code, Map<String, String> shut, Map<String, String> open) {
    @Override
    public String toString() {
      return part;
    }
  }

  private static final String HEAD =
      "job,part,qty,material,thickness_mm,thickest_mm,shape,route,due,welded,hollow,overlaps,"
          + "pockets,soldered,moving_parts,heat_sensitive,vents_checked,strength_mpa,"
          + "bend_radius_mm,certificate,si_pct,p_pct";

  private static Map<String, String> of(String... pairs) {
    Map<String, String> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put(pairs[i], pairs[i + 1]);
    }
    return map;
  }

  static List<Case> cases() {
    String[] frame = {"welded", "yes", "shape", "box 300x200x100 mm open front"};
    String wide = "1x 60x60x600 mm vents 1x25 drains 1x25";
    String narrow = "1x 60x60x600 mm vents 1x8 drains 1x8";
    String[] seen = with(frame, "hollow", wide, "vents_checked", signed("kettle lead"));
    return List.of(
        new Case(
            "METAL",
            "material-not-for-zinc",
            of("material", "aluminium", "certificate", "", "si_pct", "", "p_pct", ""),
            of("material", "steel")),
        new Case("ASKED", "welded-unknown", of(with(frame, "overlaps", "")), of(frame)),
        new Case("TOLD", "hollow-unknown", of(with(frame, "hollow", "")), of(frame)),
        new Case("CLOSED", "hollow-closed", of(with(frame, "hollow", "1x 60x60x600 mm")), of(seen)),
        new Case("SMALL", "holes-too-small", of(with(seen, "hollow", narrow)), of(seen)),
        new Case(
            "LOOKED",
            "vents-not-signed",
            of(with(seen, "vents_checked", signed("Hanger 1"))),
            of(seen)),
        new Case(
            "OVERLAP",
            "overlap-sealed",
            of(with(frame, "overlaps", "101 cm2 3+4 mm all-round")),
            of(with(frame, "overlaps", "100 cm2 3+4 mm all-round"))),
        new Case("POCKET", "blind-pocket", of(with(frame, "pockets", "yes")), of(frame)),
        new Case("MOVES", "moving-parts", of("moving_parts", "yes"), of("moving_parts", "no")),
        new Case("SOLDER", "soldered-joint", of(with(frame, "soldered", "yes")), of(frame)),
        new Case("STRONG", "steel-strong", of("strength_mpa", "1001"), of("strength_mpa", "1000")),
        new Case("BEND", "steel-strong", of("bend_radius_mm", "11.9"), of("bend_radius_mm", "12")),
        new Case(
            "RATIO",
            "thickness-ratio",
            of(with(frame, "thickness_mm", "2", "thickest_mm", "8.1")),
            of(with(frame, "thickness_mm", "2", "thickest_mm", "8"))),
        new Case(
            "FLAT",
            "thin-flat-sheet",
            of("thickness_mm", "2", "shape", "plate 600x500 mm"),
            of("thickness_mm", "2", "shape", "plate 600x499 mm")),
        new Case(
            "HEAT",
            "heat-sensitive",
            of("heat_sensitive", "rubber seal"),
            of("heat_sensitive", "no")));
  }

  /** Hanger 1 looked through the holes, and five minutes later somebody. */
  private static String signed(String second) {
    return "hanger 1 2026-11-26 10:00; " + second + " 2026-11-26 10:05";
  }

  private static String[] with(String[] some, String... more) {
    List<String> all = new ArrayList<>(List.of(some));
    all.addAll(List.of(more));
    return all.toArray(new String[0]);
  }

  private Path open;
  private Path shut;
  private JsonNode openPlan;
  private JsonNode shutPlan;
  private String openCheck = "";
  private String shutCheck = "";

  @BeforeAll
  void planBoth(@TempDir Path folder) throws Exception {
    open = week(folder.resolve("open"), false);
    shut = week(folder.resolve("shut"), true);
    openCheck = said("check", open.toString());
    shutCheck = said("check", shut.toString());
    openPlan = plan(open);
    shutPlan = plan(shut);
  }

  private static Path week(Path week, boolean shutGates) throws Exception {
    Files.createDirectories(week.resolve("jobs"));
    for (String file : List.of("shop.yaml", "coatings.yaml")) {
      Files.copy(Path.of("samples/first-steps", file), week.resolve(file));
    }
    StringBuilder jobs = new StringBuilder(HEAD).append('\n');
    for (Case one : cases()) {
      Map<String, String> row = new LinkedHashMap<>();
      for (String column : HEAD.split(",")) {
        row.put(column, "no");
      }
      row.putAll(
          of(
              "job",
              "J-" + one.part(),
              "part",
              one.part(),
              "qty",
              "1",
              "material",
              "steel",
              "thickness_mm",
              "4",
              "thickest_mm",
              "",
              "shape",
              "plate 400x300 mm",
              "route",
              "zinc",
              "due",
              "fri 14:00",
              "vents_checked",
              "",
              "strength_mpa",
              "",
              "bend_radius_mm",
              "",
              "certificate",
              "C-1",
              "si_pct",
              "0.02",
              "p_pct",
              "0.01"));
      row.putAll(shutGates ? one.shut() : one.open());
      jobs.append(String.join(",", row.values())).append('\n');
    }
    Files.writeString(week.resolve("jobs/jobs.csv"), jobs);
    return week;
  }

  private static String said(String... args) {
    StringWriter said = new StringWriter();
    Spangle.run(new PrintWriter(said), new PrintWriter(said), args);
    return said.toString();
  }

  private static JsonNode plan(Path week) throws Exception {
    said("plan", week.toString(), "--steps", "0");
    return new ObjectMapper().readTree(week.resolve("plan/plan.json").toFile());
  }

  private static List<String> planned(JsonNode plan) {
    List<String> parts = new ArrayList<>();
    plan.at("/brief/lots").forEach(lot -> parts.add(lot.get("part_id").asText()));
    return parts;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aShutGateStopsItsPartEverywhere(Case one) {
    assertThat(shutCheck).contains(one.code()).contains("J-" + one.part());
    assertThat(said("fit", shut.toString(), one.part())).contains("shut");
    assertThat(planned(shutPlan)).doesNotContain(one.part());
    assertThat(shutPlan.at("/gates"))
        .anyMatch(
            g ->
                g.get("part_id").asText().equals(one.part())
                    && g.get("code").asText().equals(one.code())
                    && g.get("state").asText().equals("shut"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void thePartBesideItIsPlanned(Case one) {
    assertThat(openCheck).doesNotContain("J-" + one.part());
    assertThat(said("fit", open.toString(), one.part())).doesNotContain("shut");
    assertThat(planned(openPlan)).contains(one.part());
  }

  @Test
  void theAuditFindsNothingInEither() {
    assertThat(said("audit", open.resolve("plan").toString())).contains("every rule is kept");
    assertThat(said("audit", shut.resolve("plan").toString())).contains("every rule is kept");
  }

  /** What the plan says of its gates counts for nothing: they are asked again of the files. */
  @ParameterizedTest
  @MethodSource("cases")
  void theAuditNamesEveryLoadBehindAGateThatIsShutNow(Case one) {
    assertThat(audited())
        .anyMatch(
            line ->
                line.contains("carries J-" + one.part() + "/" + one.part())
                    && line.contains("shut gate, " + one.code() + ": ")
                    && line.contains("[gates-shut]"));
  }

  private List<String> audited() {
    if (audited.isEmpty()) {
      audited =
          said("audit", open.resolve("plan").toString(), "--week", shut.toString())
              .lines()
              .toList();
    }
    return audited;
  }

  private List<String> audited = List.of();
}
