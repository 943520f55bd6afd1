package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;

/** What a folder must not do to the program: lead it out, fill the memory, or hold it up. */
class HostileFolderTest {
  @TempDir private Path temp;

  private static Optional<Problem> found(WeekReader.Reading reading, ProblemCode code) {
    return reading.problems().stream().filter(p -> p.code() == code).findFirst();
  }

  private static void soundRowStays(WeekReader.Reading reading) {
    assertThat(reading.input()).isPresent();
    assertThat(reading.rows().accepted()).isEqualTo(1);
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
    WeekFiles files = WeekFiles.sound(temp.resolve("week"));
    Path outside = Files.writeString(temp.resolve("secret.csv"), WeekFiles.HEADING + WeekFiles.ROW);
    Files.createSymbolicLink(files.folder().resolve("jobs/b.csv"), outside);
    WeekReader.Reading reading = files.read();
    soundRowStays(reading);
    assertThat(found(reading, ProblemCode.PATH_OUTSIDE))
        .get()
        .satisfies(p -> assertThat(p.place().file()).isEqualTo("jobs/b.csv"));
    assertThat(reading.digests()).doesNotContainKey("jobs/b.csv");
  }

  @Test
  void aLinkInsideTheFolderIsAFileLikeAnother() throws IOException {
    WeekFiles files = WeekFiles.sound(temp.resolve("week"));
    Files.move(files.folder().resolve("jobs/a.csv"), files.folder().resolve("kept.csv"));
    Files.createSymbolicLink(
        files.folder().resolve("jobs/a.csv"), files.folder().resolve("kept.csv"));
    soundRowStays(files.read());
  }

  @ParameterizedTest
  @ValueSource(strings = {"jobs/b.csv", "jobs/b.xlsx", "jobs/b.json", "jobs/b.yaml"})
  void aFileOfHalfAGigabyteIsRefusedUnread(String name) throws IOException {
    WeekFiles files = WeekFiles.sound(temp.resolve("week"));
    try (RandomAccessFile sparse =
        new RandomAccessFile(files.folder().resolve(name).toFile(), "rw")) {
      sparse.setLength(500L << 20);
    }
    WeekReader.Reading reading = files.read();
    soundRowStays(reading);
    assertThat(found(reading, ProblemCode.FILE_TOO_LARGE))
        .get()
        .satisfies(p -> assertThat(p.value()).isEqualTo("524288000 bytes"))
        .satisfies(p -> assertThat(p.limit()).endsWith(" bytes"));
  }

  @Test
  void aliasesThatMultiplyAreRefused() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 12; i++) {
      String before = "*a" + (i - 1);
      bomb.append("a" + i + ": &a" + i + " [" + (before + ", ").repeat(8) + before + "]\n");
    }
    WeekReader.Reading reading = WeekFiles.sound(temp).put("jobs/b.yaml", bomb.toString()).read();
    soundRowStays(reading);
    assertThat(reading.problems()).anyMatch(p -> p.place().file().equals("jobs/b.yaml"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"jobs/b.json", "jobs/b.yaml"})
  void aFileNestedWithoutEndIsRefused(String name) {
    WeekReader.Reading reading = WeekFiles.sound(temp).put(name, "[".repeat(100_000)).read();
    soundRowStays(reading);
    assertThat(reading.problems()).anyMatch(p -> p.place().file().equals(name));
  }

  @Test
  void aNameThatLeadsOutOfAFolderIsRefused() {
    WeekReader.Reading reading =
        WeekFiles.rows(
                temp,
                "../J-1,x,LB-1,4,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,",
                "J-2,x,/etc/LB,4,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,",
                "J-3,x,LB-3,4,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,")
            .read();
    soundRowStays(reading);
    assertThat(reading.problems())
        .filteredOn(p -> p.code() == ProblemCode.BAD_NAME)
        .extracting(Problem::field)
        .containsExactlyInAnyOrder("job", "part");
  }

  @Test
  void tenThousandRowsAreReadAndNoneIsLost() {
    String rows =
        IntStream.range(0, 10_000)
            .mapToObj(
                i ->
                    "J-"
                        + i
                        + ",x,LB-1,"
                        + (i % 10 == 0 ? "1 lot" : "4")
                        + ",steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,")
            .collect(Collectors.joining("\n", WeekFiles.HEADING, "\n"));
    WeekReader.Reading reading = WeekFiles.sound(temp).put("jobs/a.csv", rows).read();
    assertThat(reading.rows().read()).isEqualTo(10_000);
    assertThat(reading.rows().refused()).isEqualTo(1_000);
    assertThat(reading.problems())
        .filteredOn(p -> p.code() == ProblemCode.NOT_A_COUNT)
        .hasSize(1_000);
  }

  @Test
  void aNoteMayHoldAnythingAndHurtsNobody() {
    WeekReader.Reading reading =
        WeekFiles.rows(
                temp,
                "J-1,<script>alert(1)</script>,LB-1,4,steel,3,plate 160x120 mm,,,powder,P-GREY,"
                    + "mon,wed,no,no,,,,\"${jndi:x} %n \u202e\u0000\"")
            .read();
    soundRowStays(reading);
  }

  /** Found by chance bytes: the library throws for these escapes what is no complaint of YAML. */
  @ParameterizedTest
  @ValueSource(strings = {"\\x", "\\xg1", "\\u12", "\\UFFFFFFFF"})
  void aBrokenEscapeIsSaid(String escape) {
    WeekFiles week =
        WeekFiles.sound(temp)
            .put("jobs/b.yaml", "jobs:\n  - {job: \"J-9" + escape + "\", part: X}\n");

    WeekReader.Reading reading = week.read();

    assertThat(reading.problems())
        .extracting(p -> p.code().key() + " " + p.place().file())
        .containsExactly("job-file-unreadable jobs/b.yaml");
    soundRowStays(reading);
  }
}
