package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.copy.CleanCopy;
import spangle.intake.problem.ProblemCode;
import spangle.intake.week.Metal;
import spangle.intake.week.PartLine;
import spangle.intake.week.PieceFigures;
import spangle.part.WallArea;

/** An article of several thicknesses says how much surface each has. */
class SkinsTest {
  private static final String HEAD =
      "job,part,qty,material,thickness_mm,thickest_mm,skins,area_m2,mass_kg,length_mm,width_mm,"
          + "height_mm,route,due,welded,hollow\n";

  @TempDir Path temp;

  private WeekReader.Reading read(String thickest, String skins, String area, String mass) {
    return WeekFiles.sound(temp)
        .put(
            "jobs/a.csv",
            HEAD
                + "J-1,FR-1,10,steel,3,"
                + thickest
                + ","
                + skins
                + ","
                + area
                + ","
                + mass
                + ",900,600,300,zinc,fri,no,no\n")
        .read();
  }

  private static PartLine part(WeekReader.Reading reading) {
    return reading.input().orElseThrow().jobs().get(0).parts().get(0);
  }

  /** 2.4 m2 of 3 mm and 0.6 m2 of 8 mm: (2.4 x 3 + 0.6 x 8) x 7.85 / 2 = 47.1 kg. */
  @Test
  void areaMassAndThickestWallFollowFromTheSkins() {
    PartLine part = part(read("", "8mm:0.6m2; 3mm:2.4m2", "", ""));
    Metal metal = part.metal();

    assertThat(metal.skins()).containsExactly(new WallArea(3, 2.4), new WallArea(8, 0.6));
    assertThat(metal.thickestMm()).isEqualTo(8);
    PieceFigures figures = PieceFigures.of(metal, part.body()).orElseThrow();
    assertThat(figures.areaM2()).isCloseTo(3, within(1e-9));
    assertThat(figures.massKg()).isCloseTo(47.1, within(1e-9));
    assertThat(figures.source()).startsWith("area from its skins, mass from area");
  }

  @Test
  void givenAreaAndMassWinAndMayBeRounded() {
    PartLine part = part(read("8", "3:2.4; 8:0.6", "3.05", "48"));
    PieceFigures figures = PieceFigures.of(part.metal(), part.body()).orElseThrow();

    assertThat(figures.areaM2()).isEqualTo(3.05);
    assertThat(figures.massKg()).isEqualTo(48);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | 3mm 2.4m2 | '' | a skin is a thickness and its area",
        "'' | 3mm:2.4kg | '' | 'kg' is not one of",
        "'' | 3mm:0m2 | '' | no skin of a part is like that",
        "'' | 900mm:2m2 | '' | no skin of a part is like that",
        "'' | 4mm:2.4m2; 8mm:0.6m2 | '' | the thinnest skin is 4 mm; 'thickness' says 3 mm",
        "10 | 3mm:2.4m2; 8mm:0.6m2 | '' | the thickest skin is 8 mm; 'thickest' says 10 mm",
        "'' | 3mm:2.4m2; 8mm:0.6m2 | 3.07 | the skins come to 3 m2; the area is 3.07 m2",
      })
  void refusesWhatDoesNotAddUp(String thickest, String skins, String area, String why) {
    WeekReader.Reading reading = read(thickest, skins, area, area.isEmpty() ? "" : "47");

    assertThat(reading.rows().refused()).isEqualTo(1);
    assertThat(reading.problems())
        .anySatisfy(
            p -> {
              assertThat(p.field()).isEqualTo("skins");
              assertThat(p.why().replace(",", ";")).contains(why);
              assertThat(p.place().line()).isEqualTo(2);
            });
  }

  @Test
  void aCleanCopyKeepsThem() {
    WeekReader.Reading first = read("", "3mm:2.4m2; 8mm:0.6m2", "", "");
    String copy =
        CleanCopy.of(first.input().orElseThrow(), first.answers()).values().stream()
            .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
            .reduce("", String::concat);

    assertThat(copy).contains("3mm:2.4m2; 8mm:0.6m2");
  }

  /** 47.1 kg by the skins: 46 kg are taken, 30 kg are 57 % off and the part waits. */
  @ParameterizedTest
  @CsvSource({"46, 0", "30, 1"})
  void massAndSkinsAreHeldAgainstOneAnother(String massKg, int doubts) {
    WeekReader.Reading reading = read("", "3mm:2.4m2; 8mm:0.6m2", "", massKg);

    assertThat(reading.problems().stream().filter(p -> p.code() == ProblemCode.AREA_MASS_CLASH))
        .hasSize(doubts)
        .allSatisfy(p -> assertThat(p.why()).contains("area 3 m2", "56 % apart"));
  }

  /** A plate of 160 x 120 mm has 0.04 m2, not 2.4. */
  @Test
  void skinsFarFromTheShapeAreAskedAbout() {
    WeekReader.Reading reading =
        WeekFiles.sound(temp)
            .put(
                "jobs/a.csv",
                "job,part,qty,material,thickness_mm,skins,shape,route,due,welded,hollow\n"
                    + "J-1,FR-1,10,steel,3,3mm:2.4m2,plate 160x120 mm,zinc,fri,no,no\n")
            .read();

    assertThat(reading.problems())
        .filteredOn(p -> p.code() == ProblemCode.AREA_MASS_CLASH)
        .singleElement()
        .satisfies(p -> assertThat(p.field()).isEqualTo("skins"));
  }
}
