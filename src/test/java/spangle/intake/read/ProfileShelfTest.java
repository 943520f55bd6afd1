package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.equipment.KettleProfile;

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
