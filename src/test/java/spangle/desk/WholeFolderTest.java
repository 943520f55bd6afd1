package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFolderTest {
  @TempDir Path temp;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void filesAreReplacedAndOthersStay() throws IOException {
    Path folder = temp.resolve("plan");
    WholeFolder.replace(folder, Map.of("a", bytes("old"), "b", bytes("old")));
    Files.writeString(folder.resolve("notes.txt"), "mine");

    WholeFolder.replace(folder, Map.of("a", bytes("new"), "b", bytes("new")));

    assertThat(folder.resolve("a")).hasContent("new");
    assertThat(folder.resolve("b")).hasContent("new");
    assertThat(folder.resolve("notes.txt")).hasContent("mine");
    assertThat(temp.toFile().list()).containsExactly("plan");
  }

  @Test
  void aCrashBetweenTheRenamesLeavesTheOldFolderToComeBack() throws IOException {
    Path folder = temp.resolve("plan");
    WholeFolder.replace(folder, Map.of("a", bytes("old"), "only-old", bytes("old")));
    Files.move(folder, temp.resolve("plan~old"));
    Files.createDirectory(temp.resolve("plan~new"));

    WholeFolder.replace(folder, Map.of("a", bytes("new")));

    assertThat(folder.resolve("a")).hasContent("new");
    assertThat(folder.resolve("only-old")).hasContent("old");
    assertThat(temp.toFile().list()).containsExactly("plan");
  }

  @Test
  void aNameThatLeadsOutIsRefusedAndTheOldFolderStays() throws IOException {
    Path folder = temp.resolve("plan");
    WholeFolder.replace(folder, Map.of("a", bytes("old")));

    assertThatThrownBy(() -> WholeFolder.replace(folder, Map.of("../b", bytes("x"))))
        .isInstanceOf(IOException.class);

    assertThat(folder.resolve("a")).hasContent("old");
  }
}
