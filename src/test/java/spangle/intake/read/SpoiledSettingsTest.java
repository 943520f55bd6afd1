package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spangle.intake.problem.Problems;
import spangle.intake.source.Bytes;
import spangle.intake.source.Datum;
import spangle.intake.source.UnreadableException;
import spangle.intake.source.YamlSource;
import spangle.intake.week.WeekInput;

/**
 * The settings of a week with bytes spoiled, each through its reader alone and as part of a week:
 * nothing is thrown, nothing hangs, and what comes to nothing has a reason.
 */
@Timeout(value = 3, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SpoiledSettingsTest {
  private static final int FEW = 40;
  private static final int WEEKS = 5;
  private static final int WEEKS_THOROUGH = 2_000;

  /** Files of settings. */
  enum Settings {
    SHOP("shop.yaml", WeekFiles.SHOP),
    COATINGS("coatings.yaml", WeekFiles.COATINGS),
    KITS(
        "kits.yaml",
        "kits:\n  - {kit: K-1, name: set, due: fri, sets: 10, parts: [{job: J-1, part: LB-20,"
            + " per_kit: 4, visible: yes}]}\n"),
    GATES(
        "gates.yaml",
        "gates:\n  - {job: J-1, part: LB-20, gate: vents, by: [Mira, Jonas], at: 2026-10-30,"
            + " seen: two holes of 14 mm}\n"),
    ANSWERS(
        "answers.yaml",
        "answers:\n  - {ask: J-1/LB-20/qty, was: \"400\", answer: keep, by: desk}\n"),
    COLUMNS(
        "columns.yaml",
        "columns:\n  - {files: \"a*.csv\", names: {Blech: thickness_mm}, dates: dmy,"
            + " decimal: comma, gauge_table: manufacturers-standard}\n"),
    EVENTS(
        "events.yaml",
        "events:\n  - {when: mon 07:10, what: hung, load: P01}\n"
            + "  - {when: mon 08:00, what: arrived, job: J-1, part: LB-20, qty: 200}\n"
            + "  - {when: tue 09:00, what: broken, station: oven-1, until: tue 11:00}\n"),
    OVERLAY(
        "overlay.yaml",
        "title: a Saturday shift\nshop:\n  horizon_days: 6\n  extra_days:\n"
            + "    - {date: sat, from: 06:00, to: 12:00, lines: [powder]}\n"
            + "  lines: [{id: zinc, stations: [{id: kettle, profile: kettle-large}]}]\n"),
    PROFILE("rack-profiles/flat-rack.yaml", "kind: rack\nname: own\nfaces: 2\n");

    final String file;
    final String text;

    Settings(String file, String text) {
      this.file = file;
      this.text = text;
    }

    byte[] spoiled(long seed) {
      return OddFiles.spoiled(text.getBytes(StandardCharsets.UTF_8), new SplittableRandom(seed));
    }
  }

  @TempDir private Path temp;
  private WeekInput week;
  private Profiles profiles;
  private Datum.Group shop;

  @BeforeEach
  void aSoundWeek() throws UnreadableException {
    Path folder = temp.resolve("sound");
    week = WeekFiles.sound(folder).read().input().orElseThrow();
    shop = (Datum.Group) YamlSource.read("shop.yaml", WeekFiles.SHOP, new Problems()).orElseThrow();
    profiles = new Profiles(WeekFolder.open(folder, new Problems()).orElseThrow(), new Problems());
  }

  private void answered(Settings settings, long seed) {
    String text = Bytes.decode(settings.spoiled(seed)).text();
    Problems problems = new Problems();
    try {
      Optional<Datum> root = YamlSource.read(settings.file, text, problems);
      if (root.orElse(null) instanceof Datum.Group group && !read(settings, group, problems)) {
        assertThat(problems.list()).isNotEmpty();
      }
    } catch (UnreadableException broken) {
      assertThat(broken.why()).isNotBlank();
      assertThat(broken.remedy()).isNotBlank();
    }
    problems.list().forEach(p -> assertThat(p.why()).isNotBlank());
  }

  /** False where nothing came of a file the program cannot do without. */
  private boolean read(Settings settings, Datum.Group group, Problems problems) {
    Notes stopping = new Notes(problems, true);
    Notes notes = new Notes(problems, false);
    Times times = new Times(week.shop().weekStart(), Times.Order.YMD);
    switch (settings) {
      case SHOP -> {
        return ShopReader.read(group, profiles, stopping).isPresent();
      }
      case PROFILE -> {
        return ProfileReader.read("flat-rack", group, stopping).isPresent();
      }
      case COATINGS -> {
        CatalogueReader.idsWritten(group);
        CatalogueReader.read(group, week.shop(), notes);
      }
      case KITS -> KitReader.read(group, times, week.jobs(), notes);
      case GATES -> GateReader.read(group, week.jobs(), notes);
      case ANSWERS -> AnswerBook.read(group, notes);
      case COLUMNS -> ColumnRules.read(group, notes).names("jobs/a.csv");
      case EVENTS ->
          EventReader.read(group, times, week.jobs(), week.shop(), week.catalogue(), notes);
      case OVERLAY ->
          ShopReader.read(Overlay.read(group, stopping).over("shop", shop), profiles, stopping);
    }
    return true;
  }

  @ParameterizedTest
  @EnumSource(Settings.class)
  void spoiledSettingsAreAnsweredInWords(Settings settings) {
    Many.inputs(FEW, seed -> answered(settings, seed));
  }

  @ParameterizedTest
  @EnumSource(Settings.class)
  @Tag("thorough")
  void spoiledSettingsAreAnsweredInWordsLong(Settings settings) {
    Many.inputs(Many.THOROUGH, seed -> answered(settings, seed));
  }

  private void weekIsAnswered(Settings settings, long seed) {
    WeekFiles files =
        WeekFiles.sound(temp.resolve("spoiled")).put(settings.file, settings.spoiled(seed));
    WeekReader.Reading reading =
        settings == Settings.OVERLAY
            ? WeekReader.read(
                files.folder(), Besides.overlay(Optional.of(files.folder().resolve(settings.file))))
            : files.read();
    assertThat(reading.rows().read())
        .isEqualTo(reading.rows().accepted() + reading.rows().refused());
    if (reading.stopped()) {
      assertThat(reading.problems()).isNotEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(Settings.class)
  void aWeekWithSpoiledSettingsIsAnsweredInWords(Settings settings) {
    Many.inputs(WEEKS, seed -> weekIsAnswered(settings, seed));
  }

  @ParameterizedTest
  @EnumSource(Settings.class)
  @Tag("thorough")
  void aWeekWithSpoiledSettingsIsAnsweredInWordsLong(Settings settings) {
    Many.inputs(WEEKS_THOROUGH, seed -> weekIsAnswered(settings, seed));
  }
}
