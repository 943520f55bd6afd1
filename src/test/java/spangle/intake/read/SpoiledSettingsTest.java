package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spangle.intake.event.Happenings;
import spangle.intake.problem.Problems;
import spangle.intake.source.Bytes;
import spangle.intake.source.Datum;
import spangle.intake.source.UnreadableException;
import spangle.intake.source.YamlSource;
import spangle.intake.week.WeekInput;
import spangle.plan.event.EventKind;
import spangle.plan.event.EventLog;

/**
 * The settings of a week with bytes spoiled, each through its reader alone and as part of a week:
 * nothing is thrown, nothing hangs, and what comes to nothing has a reason.
 */
@Timeout(value = 3, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SpoiledSettingsTest {
  private static final int FEW = 40;
  private static final int WEEKS = 5;
  private static final int WEEKS_THOROUGH = 2_000;

  /** One event of each kind, and two that hang on others. */
  private static final String EVERY_EVENT =
      String.join(
              "}\n  - {when: mon 07:10, who: oven hand, what: ",
              "arrived, job: J-1, part: LB-20, count: 150",
              "expected, job: J-1, part: LB-20, count: 50, until: tue 09:00",
              "released, load: P01",
              "hung, load: P01",
              "started, load: P01",
              "done, load: P01",
              "inspected, load: P01",
              "withdrawn, load: P02",
              "taken-down, load: P02",
              "as-planned",
              "rejected, job: J-1, part: LB-20, count: 3, coats: 2, note: thin",
              "stripped, job: J-1, part: LB-20, count: 3",
              "scrapped, job: J-1, part: LB-20, count: 2, of: rejected",
              "broken, station: oven-1, until: tue 11:00",
              "repaired, station: oven-1",
              "slow, station: booth, factor: 1.5",
              "absent, station: booth, factor: 2, from: tue 06:00, until: tue 14:30",
              "delivered, material: P-GREY, amount: 18, lot: A-131",
              "slipped, material: P-GREY, until: thu 10:00",
              "certificate, job: J-1, part: LB-20, si_pct: 0.02, p_pct: 0.01",
              "gate-opened, job: J-1, part: LB-20, gate: vents, opened_by: [Mira, Jonas]",
              "priority-changed, job: J-1, priority: 3, due: thu 12:00",
              "level, station: kettle, level_down_mm: 60",
              "struck, event: 4",
              "cancelled, job: J-1")
          + "}\n";

  /** The profiles of machines that come with the program. */
  private static final List<byte[]> MACHINES = machines();

  private static List<byte[]> machines() {
    try (Stream<Path> files = Files.list(Path.of("rack-profiles"))) {
      List<byte[]> machines = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        machines.add(Files.readAllBytes(file));
      }
      return machines;
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  /** Files of settings. */
  enum Settings {
    SHOP("shop.yaml", WeekFiles.SHOP),
    COATINGS("coatings.yaml", WeekFiles.COATINGS),
    KITS(
        "kits.yaml",
        "kits:\n  - {id: K-1, name: set, due: fri 12:00, priority: 2, sets: 10, one_lot: yes,"
            + " lines: [{part: LB-20, job: J-1, per_set: 4, on_hand: 20}]}\n"),
    GATES(
        "gates.yaml",
        "gates:\n  - {job: J-1, part: LB-20, gate: vents, opened_by: [Mira, Jonas],"
            + " at: 2026-10-30 10:40, note: two holes of 14 mm}\n"),
    ANSWERS(
        "answers.yaml",
        "answers:\n  - {ask: J-1/LB-20/qty, was: \"400\", answer: keep, by: desk}\n"),
    COLUMNS(
        "columns.yaml",
        "columns:\n  - {files: \"a*.csv\", names: {Blech: thickness_mm}, dates: dmy,"
            + " decimal: comma, gauge_table: manufacturers-standard}\n"),
    EVENTS("events.yaml", "events:\n  - {when: mon 06:30, what: " + EVERY_EVENT),
    OVERLAY(
        "overlay.yaml",
        "title: a Saturday shift\nshop:\n  horizon_days: 6\n  extra_days:\n"
            + "    - {date: sat, from: 06:00, to: 12:00, lines: [powder]}\n"
            + "  lines: [{id: zinc, stations: [{id: kettle, profile: kettle-large}]}]\n"),
    PROFILE("rack-profiles/flat-rack.yaml", "kind: rack\nname: own\nfaces: 2\n"),
    MACHINE("rack-profiles/flat-rack.yaml", "");

    final String file;
    final String text;

    Settings(String file, String text) {
      this.file = file;
      this.text = text;
    }

    byte[] spoiled(long seed) {
      if (this == MACHINE) {
        byte[] one = MACHINES.get((int) Math.floorMod(seed, (long) MACHINES.size()));
        return OddFiles.spoiled(one, new SplittableRandom(seed));
      }
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
      case PROFILE, MACHINE -> {
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
      case EVENTS -> {
        EventLog log =
            EventReader.read(group, times, week.jobs(), week.shop(), week.catalogue(), notes);
        // What is read must also be believed: stations, stock and parts after the news.
        int noon = 12 * 60;
        assertThat(Happenings.of(week, log.until(noon), noon)).isNotNull();
      }
      case OVERLAY ->
          ShopReader.read(Overlay.read(group, stopping).over("shop", shop), profiles, stopping);
    }
    return true;
  }

  /** Spoiled settings are worth little if the sound ones are not. */
  @Test
  void theEventsAreReadWhole() throws UnreadableException {
    Problems problems = new Problems();
    Datum root = YamlSource.read("events.yaml", Settings.EVENTS.text, problems).orElseThrow();
    EventLog log =
        EventReader.read(
            (Datum.Group) root,
            new Times(week.shop().weekStart(), Times.Order.YMD),
            week.jobs(),
            week.shop(),
            week.catalogue(),
            new Notes(problems, false));
    assertThat(problems.list()).isEmpty();
    assertThat(log.events().stream().map(e -> e.kind()).distinct())
        .containsExactlyInAnyOrder(EventKind.values());
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
