package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.equipment.KettleProfile;
import spangle.equipment.OvenProfile;

class ProfileShelfTest {
  @Test
  void namesAreThoseOfTheFilesThatComeAlong() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("rack-profiles"))) {
      List<String> names =
          files
              .map(file -> String.valueOf(file.getFileName()))
              .filter(name -> name.endsWith(".yaml"))
              .map(name -> name.replace(".yaml", ""))
              .sorted()
              .toList();
      assertThat(ProfileShelf.NAMES).containsExactlyElementsOf(names);
    }
    assertThat(ProfileShelf.NAMES.stream().filter(name -> name.startsWith("kettle")))
        .containsExactlyInAnyOrderElementsOf(ProfileShelf.KETTLES);
  }

  @Test
  void everyNameIsAProfileThatCanBeRead() {
    assertThat(ProfileShelf.NAMES)
        .allMatch(name -> ProfileShelf.find(Optional.empty(), name).profile().isPresent());
    assertThat(ProfileShelf.kettles())
        .extracting(KettleProfile::name)
        .containsExactlyElementsOf(ProfileShelf.KETTLES);
  }

  @Test
  void aWeeksOwnProfileComesFirst(@TempDir Path week) throws IOException {
    Path own = Files.createDirectory(week.resolve("rack-profiles"));
    String kettle = Files.readString(Path.of("rack-profiles/kettle-medium.yaml"));
    Files.writeString(
        own.resolve("kettle-medium.yaml"), kettle.replace("length: 4200", "length: 4100"));
    KettleProfile found =
        (KettleProfile) ProfileShelf.find(Optional.of(week), "kettle-medium").profile().get();
    assertThat(found.usable().lengthMm()).isEqualTo(4100);
    KettleProfile builtIn =
        (KettleProfile) ProfileShelf.find(Optional.empty(), "kettle-medium").profile().get();
    assertThat(builtIn.usable().lengthMm()).isEqualTo(4200);
  }

  /** A published oven heat-load note: 4 in 0.35, 6 in 0.25 Btu/h ft2 F; 5.678 W/m2 K of each. */
  @Test
  void anOvenTellsOfItsWallsAndItsExhaust(@TempDir Path week) throws IOException {
    String told = Files.readString(Path.of("rack-profiles/box-oven-small.yaml"));
    String silent = told.replaceAll("(?m)^(panel_mm|air_changes_per_h):.*\n", "");
    assertThat(silent).isNotEqualTo(told);
    OvenProfile usual = oven(week, silent);
    assertThat(usual.wallWM2K()).isEqualTo(0.35 * 5.678263341, within(1e-9));
    assertThat(usual.airChangesPerHour()).isEqualTo(6);
    assertThat(oven(week, told)).isEqualTo(usual);
    // Inside 2.8 x 1.7 x 2.5 m.
    assertThat(usual.wallM2()).isEqualTo(2 * (4.76 + 7.0 + 4.25), within(1e-9));
    assertThat(usual.exhaustM3H()).isEqualTo(6 * 11.9, within(1e-9));

    OvenProfile thick = oven(week, silent + "panel_in: 6\nair_changes_per_h: 8\n");
    assertThat(thick.wallWM2K()).isEqualTo((0.25 - 0.05 * 2.4 / 50) * 5.678263341, within(1e-9));
    assertThat(thick.exhaustM3H()).isEqualTo(8 * 11.9, within(1e-9));
    OvenProfile measured = oven(week, silent + "panel_mm: 150\nwall_w_m2k: 1.1\n");
    assertThat(measured.wallWM2K()).isEqualTo(1.1);

    Files.writeString(week.resolve("rack-profiles/own.yaml"), silent + "panel_mm: 20\n");
    assertThat(ProfileShelf.find(Optional.of(week), "own").complaint()).contains("panel_mm");
  }

  private static OvenProfile oven(Path week, String text) throws IOException {
    Files.createDirectories(week.resolve("rack-profiles"));
    Files.writeString(week.resolve("rack-profiles/own.yaml"), text);
    return (OvenProfile) ProfileShelf.find(Optional.of(week), "own").profile().orElseThrow();
  }

  @Test
  void whatCannotBeUsedIsSaidInASentence(@TempDir Path week) throws IOException {
    assertThat(ProfileShelf.find(Optional.empty(), "kettle-mediun").complaint())
        .contains("did you mean 'kettle-medium'");
    assertThat(ProfileShelf.find(Optional.empty(), "../shop").profile()).isEmpty();
    assertThat(ProfileShelf.find(Optional.of(week.resolve("none")), "kettle-small").complaint())
        .contains("no week folder");
    Path own = Files.createDirectory(week.resolve("rack-profiles"));
    Files.writeString(own.resolve("pot.yaml"), "kind: kettle\n");
    assertThat(ProfileShelf.find(Optional.of(week), "pot").complaint())
        .contains("pot.yaml", "cannot be used");
    Files.writeString(own.resolve("bad.yaml"), "kind: [\n");
    assertThat(ProfileShelf.find(Optional.of(week), "bad").complaint()).contains("bad.yaml");
  }
}
