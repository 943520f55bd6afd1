package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.problem.Problem;
import spangle.intake.read.WeekReader;
import spangle.intake.week.PartLine;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.Visit;
import spangle.plan.event.WeekState;

/** Rejected galvanized work: stripped on the way where the shop names a tank, else it waits. */
class ZincReworkTest {
  private static final String PLATES = "job: F-3, part: MP-08";
  private static final String STRIP = "strip: {station: pickle, minutes: 45}";
  @TempDir Path folder;
  private LivingWeek week;

  private void begin(String... lines) {
    week = new LivingWeek(Path.of("samples/first-steps"), folder.resolve("week"), 300);
    for (String line : lines) {
      zinc(line);
    }
    week.event("when: tue 14:00, what: as-planned");
    week.event("when: tue 14:01, what: rejected, " + PLATES + ", count: 5, note: bare spots");
  }

  private void zinc(String line) {
    try {
      Path file = folder.resolve("week/coatings.yaml");
      String text = Files.readString(file);
      Files.writeString(file, text.replace("yield: 0.75", "yield: 0.75\n  " + line));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private int pickling(Lot lot) {
    return lot.visits().stream()
        .filter(v -> v.stationId().equals("pickle"))
        .mapToInt(Visit::fixedMin)
        .sum();
  }

  private int pickling(boolean rework) {
    return week.plan().brief().lots().stream()
        .filter(l -> l.jobId().equals("F-3") && l.id().contains("#r") == rework)
        .mapToInt(this::pickling)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void withoutATankForItRejectedZincWaitsUntilSomebodyReportsItStripped() {
    begin();
    week.heard("tue 14:02");
    assertThat(week.again()).isEmpty();
    assertThat(week.toStrip())
        .singleElement()
        .satisfies(
            h -> {
              assertThat(h.pieces()).isEqualTo(5);
              assertThat(h.words())
                  .contains("stripped of their zinc", "coatings.yaml names no tank");
              assertThat(h.opens()).contains("hydrogen", "report them stripped");
            });

    week.event("when: wed 06:10, what: stripped, " + PLATES + ", count: 3, who: supervisor");
    ReplanDesk.Rest bare = week.heard("wed 06:15");
    assertThat(week.toStrip()).extracting(Held::pieces).containsExactly(2);
    Lot anew = week.again().get(0);
    assertThat(anew.pieces()).isEqualTo(3);
    assertThat(anew.readyMin()).isGreaterThanOrEqualTo(2 * 1440 + 370);
    // Bare steel goes the whole way: degreased, pickled as ever, fluxed.
    assertThat(pickling(true)).isEqualTo(pickling(false));
    assertThat(anew.visits()).extracting(Visit::stationId).contains("degrease", "pickle", "flux");
    assertThat(week.cautions(anew.id())).anyMatch(w -> w.startsWith("Stripped pieces: bare metal"));
  }

  @Test
  void inATankTheShopNamesItComesOffBeforeItIsPickled() {
    begin(STRIP);
    week.heard("tue 14:02");
    assertThat(week.toStrip()).isEmpty();
    assertThat(week.again()).extracting(Lot::pieces).containsExactly(5);
    assertThat(pickling(true)).isEqualTo(pickling(false) + 45);
    assertThat(week.cautions(week.again().get(0).id()))
        .anyMatch(w -> w.startsWith("REWORK: 45 min in pickle until the zinc is off"))
        .anyMatch(w -> w.contains("hydrogen"));

    // What is dipped again bears one coat of zinc, as after the first dip.
    week.event("when: thu 14:00, what: as-planned");
    week.event("when: thu 14:01, what: rejected, " + PLATES + ", count: 60");
    week.heard("thu 14:02");
    assertThat(week.again().stream().mapToInt(Lot::pieces).sum()).isEqualTo(65);
  }

  @Test
  void whatIsPlannedToBeStrippedIsNotReportedStrippedBesides() {
    begin(STRIP);
    week.heard("tue 14:02");
    week.event("when: tue 14:05, what: stripped, " + PLATES + ", count: 1");
    assertThat(week.replan("tue 14:06").start().state().refused())
        .extracting(WeekState.Refusal::why)
        .singleElement()
        .asString()
        .contains("0 rejected ones wait to be");
  }

  @Test
  void steelThatHydrogenCouldCrackGoesIntoNoAcidTwiceUnasked() {
    begin(STRIP);
    week.jobs(
        "strong.yaml",
        """
        jobs:
          - job: F-9
            due: fri 14:00
            parts:
              - {part: PIN, description: tow pin, qty: 4, material: steel, thickness: 8 mm,
                 shape: plate 300x60 mm, route: zinc, ready: mon 06:00, welded: no, hollow: no,
                 strength_mpa: 1100, hooks: 1}
        """);
    PartLine pin = line("F-9");
    assertThat(week.input().mostCoats(pin)).isEqualTo(1);
    assertThat(week.input().mostCoats(line("F-3"))).isEqualTo(Integer.MAX_VALUE);
  }

  private PartLine line(String job) {
    return week.input().jobs().stream()
        .filter(j -> j.id().equals(job))
        .flatMap(j -> j.parts().stream())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aTankTheShopDoesNotHaveIsRefusedWithThoseItHas() {
    begin();
    zinc("strip: {station: pickel, minutes: 45}");
    List<Problem> problems = WeekReader.read(folder.resolve("week")).problems();
    assertThat(problems)
        .filteredOn(p -> p.place().file().equals("coatings.yaml"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.field()).isEqualTo("station");
              assertThat(p.limit()).isEqualTo("pickle");
              assertThat(p.why()).contains("no pickling tank 'pickel'", "pickle");
              assertThat(p.remedy()).contains("until it is reported stripped");
            });
  }
}
