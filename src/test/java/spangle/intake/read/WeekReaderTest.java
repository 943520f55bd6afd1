package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.equipment.Manning;
import spangle.equipment.Span;
import spangle.intake.brief.BriefMaker;
import spangle.intake.problem.Severity;
import spangle.intake.week.PartLine;
import spangle.intake.week.Route;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopCalendar;
import spangle.intake.week.ShopLine;
import spangle.intake.week.WeekInput;

class WeekReaderTest {
  private static final int DAY = 1440;

  @TempDir Path folder;

  @Test
  void aSoundWeekHasNoProblemsAndLosesNoRow() {
    WeekReader.Reading reading = WeekFiles.sound(folder).read();

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.rows()).isEqualTo(new WeekInput.Rows(1, 1, 0));
    WeekInput week = reading.input().orElseThrow();
    assertThat(week.jobs()).hasSize(1);
    PartLine part = week.jobs().get(0).parts().get(0);
    assertThat(part.qty()).isEqualTo(400);
    assertThat(part.wanted().route()).isEqualTo(Route.POWDER);
    assertThat(part.wanted().readyMin()).isEqualTo(7 * 60);
    assertThat(part.wanted().dueMin()).isEqualTo(3 * DAY);
    assertThat(week.digests()).containsOnlyKeys("shop.yaml", "coatings.yaml", "jobs/a.csv");
  }

  @Test
  void aPartWithoutADescriptionIsCalledByItsId() {
    WeekInput week = WeekFiles.sound(folder).read().input().orElseThrow();

    assertThat(week.jobs().get(0).parts().get(0).description()).isEmpty();
    assertThat(BriefMaker.prepare(week).brief().lots())
        .isNotEmpty()
        .allSatisfy(lot -> assertThat(lot.label()).isEqualTo("LB-20"));
  }

  @Test
  void theShopIsReadWhole() {
    Shop shop = WeekFiles.sound(folder).read().input().orElseThrow().shop();

    ShopLine powder = shop.line("powder").orElseThrow();
    assertThat(powder.before())
        .extracting("id")
        .containsExactly("hang-p", "wash", "dry-off", "booth");
    assertThat(powder.machines()).extracting("id").containsExactly("oven-1", "oven-2");
    assertThat(powder.after()).extracting("id").containsExactly("cool", "unhang-p");
    assertThat(powder.carriers().get(0).usable()).isEqualTo(5);
    assertThat(shop.line("zinc").orElseThrow().crane()).isPresent();
  }

  @Test
  void calendarsFollowShiftsBreaksOvertimeHolidayAndMaintenance() {
    Shop shop = WeekFiles.sound(folder).read().input().orElseThrow().shop();
    ShopLine zinc = shop.line("zinc").orElseThrow();

    // Monday 06:00-14:30 with breaks 09:00-09:15 and 12:00-12:30.
    assertThat(ShopCalendar.of(shop, "zinc", Manning.PEOPLE).open())
        .startsWith(new Span(360, 540), new Span(555, 720), new Span(750, 870))
        .endsWith(new Span(5 * DAY + 360, 5 * DAY + 720))
        .noneMatch(span -> span.startMin() / DAY == 3);
    // Ovens run on through breaks; the second powder shift joins the first.
    assertThat(ShopCalendar.of(shop, "powder", Manning.THROUGH_BREAKS).open())
        .first()
        .isEqualTo(new Span(360, 20 * 60));
    assertThat(ShopCalendar.of(shop, zinc, zinc.machines().get(0)).open())
        .contains(new Span(4 * DAY + 555, 4 * DAY + 720))
        .noneMatch(span -> span.endMin() > 4 * DAY + 750 && span.startMin() < 4 * DAY + 870);
  }

  @Test
  void colourChangesGoByFamilyChemistryAndOverride() {
    WeekInput week = WeekFiles.sound(folder).read().input().orElseThrow();
    var grey = week.catalogue().coating("P-GREY").orElseThrow();
    var black = week.catalogue().coating("P-BLACK").orElseThrow();
    var epoxy = week.catalogue().coating("L-EPOXY").orElseThrow();

    assertThat(week.shop().colourChange().minutes(grey, grey)).isZero();
    assertThat(week.shop().colourChange().minutes(grey, black)).isEqualTo(12);
    assertThat(week.shop().colourChange().minutes(black, grey)).isEqualTo(40);
    assertThat(week.shop().colourChange().minutes(grey, epoxy)).isEqualTo(45);
  }

  @Test
  void aMissingShopFileStops() {
    WeekReader.Reading reading = WeekReader.read(new WeekFilesWithout(folder).coatingsOnly());

    assertThat(reading.stopped()).isTrue();
    assertThat(reading.problems())
        .anySatisfy(
            p -> {
              assertThat(p.code().key()).isEqualTo("file-missing");
              assertThat(p.severity()).isEqualTo(Severity.STOP);
              assertThat(p.place().file()).isEqualTo("shop.yaml");
            });
  }

  @Test
  void aFolderThatIsNotThereStops() {
    assertThat(WeekReader.read(folder.resolve("nowhere")).stopped()).isTrue();
  }

  @Test
  void aLineMayHaveSixtyFourOvensAndNoMore() throws IOException {
    assertThat(withOvens(64).problems()).isEmpty();
    assertThat(withOvens(65).problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.code().key()).isEqualTo("line-incomplete");
              assertThat(p.why()).contains("65 ovens or kettles").contains("64");
              assertThat(p.remedy()).contains("two lines");
            });
  }

  private WeekReader.Reading withOvens(int count) throws IOException {
    WeekFiles.sound(folder);
    String oven = "      - {id: oven-2, profile: box-oven-small, starts_at_c: 190}\n";
    StringBuilder more = new StringBuilder();
    for (int k = 2; k <= count; k++) {
      more.append(oven.replace("oven-2", "oven-" + k));
    }
    Files.writeString(folder.resolve("shop.yaml"), WeekFiles.SHOP.replace(oven, more.toString()));
    return WeekReader.read(folder);
  }

  private record WeekFilesWithout(Path folder) {
    Path coatingsOnly() {
      WeekFiles.sound(folder);
      assertThat(folder.resolve("shop.yaml").toFile().delete()).isTrue();
      return folder;
    }
  }
}
