package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
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
  void whereAFileStandsInTheWayThereIsNoRoom() throws IOException {
    Path file = Files.writeString(temp.resolve("plan"), "a file");

    assertThatThrownBy(() -> WholeFolder.requireRoom(file))
        .isInstanceOf(NotDirectoryException.class)
        .hasMessageContaining(file.toString());
    assertThatThrownBy(() -> WholeFolder.requireRoom(file.resolve("a/b")))
        .isInstanceOf(NotDirectoryException.class);
    assertThatCode(() -> WholeFolder.requireRoom(temp)).doesNotThrowAnyException();
    assertThatCode(() -> WholeFolder.requireRoom(temp.resolve("new/newer")))
        .doesNotThrowAnyException();
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

  @Test
  void foldersInTheFolderStayToo() throws IOException {
    Path folder = temp.resolve("plan");
    WholeFolder.replace(folder, Map.of("a", bytes("old")));
    Files.createDirectories(folder.resolve("earlier/deep"));
    Files.writeString(folder.resolve("earlier/deep/plan-A.json"), "first");

    WholeFolder.replace(folder, Map.of("a", bytes("new"), "earlier/b", bytes("new")));

    assertThat(folder.resolve("earlier/deep/plan-A.json")).hasContent("first");
    assertThat(folder.resolve("earlier/b")).hasContent("new");
  }

  @Test
  void aReaderFindsTheOldFolderAfterACrashBetweenTheRenames() throws IOException {
    Path folder = temp.resolve("plan");
    WholeFolder.replace(folder, Map.of("a", bytes("old")));
    Files.move(folder, temp.resolve("plan~old"));

    WholeFolder.recover(folder);

    assertThat(folder.resolve("a")).hasContent("old");
  }

  /** Stands for the power going out: nothing after it happens, not even tidying up. */
  private static final class PowerCut extends Error {
    private static final long serialVersionUID = 1L;
  }

  @Test
  void aCrashAtAnyStepLeavesTheOldOrTheNewWhole() throws IOException {
    int steps = 0;
    boolean crashed = true;
    while (crashed) {
      Path folder = temp.resolve("week" + steps).resolve("plan");
      WholeFolder.replace(folder, Map.of("a", bytes("old"), "b", bytes("old")));
      crashed = crashesAt(folder, steps);

      WholeFolder.recover(folder);
      String a = Files.readString(folder.resolve("a"));
      assertThat(a).isIn("old", "new");
      assertThat(folder.resolve("b")).as("step %d", steps).hasContent(a);
      assertThat(crashed || a.equals("new")).isTrue();

      WholeFolder.replace(folder, Map.of("a", bytes("next"), "b", bytes("next")));
      assertThat(folder.resolve("b")).hasContent("next");
      assertThat(temp.resolve("week" + steps).toFile().list()).containsExactly("plan");
      steps++;
    }
    // Two files, what else lies there, two renames, the old folder: six places to crash at.
    assertThat(steps).isEqualTo(7);
  }

  private static boolean crashesAt(Path folder, int at) throws IOException {
    AtomicInteger step = new AtomicInteger();
    try {
      WholeFolder.replace(
          folder,
          Map.of("a", bytes("new"), "b", bytes("new")),
          name -> {
            if (step.getAndIncrement() == at) {
              throw new PowerCut();
            }
          });
      return false;
    } catch (PowerCut cut) {
      return true;
    }
  }

  @Test
  void aDiskThatRefusesAtAnyStepLeavesTheOldFolder() throws IOException {
    for (int at = 0; at < 5; at++) {
      Path folder = temp.resolve("week" + at).resolve("plan");
      WholeFolder.replace(folder, Map.of("a", bytes("old")));
      AtomicInteger step = new AtomicInteger();
      int refusedAt = at;
      try {
        WholeFolder.replace(
            folder,
            Map.of("a", bytes("new"), "b", bytes("new")),
            name -> {
              if (step.getAndIncrement() == refusedAt) {
                throw new IOException("no room on the disk");
              }
            });
      } catch (IOException refused) {
        assertThat(refused).hasMessage("no room on the disk");
      }
      assertThat(folder.resolve("a")).as("step %d", at).hasContent("old");
      assertThat(temp.resolve("week" + at).toFile().list()).containsExactly("plan");
    }
  }
}
