package spangle.intake.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.intake.week.StationUse;
import spangle.intake.week.WeekInput;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Lot;

/** The kettle of the harbour week is filled up on Wednesday until 14:00. */
class BathMakerTest {
  private static final Path WEEK = Path.of("samples/harbour-week");
  private static final int WED_14 = 2 * 1440 + 14 * 60;

  private static Brief brief(Optional<Path> overlay) {
    WeekInput input = WeekReader.read(WEEK, Besides.overlay(overlay)).input().orElseThrow();
    return BriefMaker.prepare(input).brief();
  }

  private static List<Lot> hung(Brief brief) {
    return brief.lots().stream()
        .filter(l -> l.finish().kind() == FinishKind.ZINC && l.finish().name().contains("hung"))
        .toList();
  }

  @Test
  void whatHangsInTheZincNeedsItsLevelAndWhatIsSpunDoesNot() {
    Brief brief = brief(Optional.empty());
    BathSpec bath = brief.baths().get(0);
    assertThat(brief.baths()).hasSize(1);
    assertThat(bath.marks())
        .containsExactly(new BathSpec.Mark(0, 0, false), new BathSpec.Mark(WED_14, 0, true));
    assertThat(hung(brief)).isNotEmpty().allMatch(l -> bath.spareMm(l.id()).isPresent());
    assertThat(brief.lots())
        .filteredOn(l -> l.finish().name().contains("spun"))
        .isNotEmpty()
        .allMatch(l -> bath.spareMm(l.id()).isEmpty());
    // 1 kg on the work takes 1 / 0.75 kg out of 4.5 x 1.3 m of zinc at 6590 - 0.97 (450 - 419)
    assertThat(bath.mmPerKg()).isCloseTo(1 / 0.75 / (5.85 * 6559.93) * 1000, within(1e-6));
  }

  @Test
  void aPartTheSmallKettleIsTooShortForIsNotPlannedIntoIt() {
    Brief both = brief(Optional.of(Path.of("samples/what-if/second-kettle.yaml")));
    assertThat(both.lots())
        .filteredOn(l -> l.jobId().equals("H-205"))
        .isNotEmpty()
        .allMatch(l -> l.machines().equals(List.of("kettle")));
    assertThat(both.baths()).extracting(BathSpec::machineId).contains("kettle", "kettle-2");
    assertThat(hung(both)).anyMatch(l -> l.machines().equals(List.of("kettle", "kettle-2")));
    BathSpec small =
        both.baths().stream().filter(b -> b.machineId().equals("kettle-2")).findFirst().get();
    assertThat(small.marks()).containsExactly(new BathSpec.Mark(0, 0, false));
    assertThat(small.needs()).noneMatch(n -> n.lotId().startsWith("H-205/"));
  }

  @Test
  void aLevelThatWasReadInTheWeekCountsFromThen(@TempDir Path folder) throws Exception {
    Path overlay = folder.resolve("low.yaml");
    Files.writeString(
        overlay,
        """
        title: low
        shop:
          lines:
            - id: zinc
              stations:
                - {id: kettle, level_mm: 40}
        """);
    assertThat(brief(Optional.of(overlay)).baths().get(0).marks())
        .startsWith(new BathSpec.Mark(0, 40, false));
    WeekInput input = WeekReader.read(WEEK).input().orElseThrow();
    StationUse kettle =
        KettleWays.of(input.shop()).stream().map(ZincWay::use).findFirst().orElseThrow();
    StationUse read =
        new StationUse(
            kettle.id(),
            kettle.profile(),
            kettle.count(),
            kettle.startsWith(),
            kettle.startsAtC(),
            25,
            600,
            0);
    assertThat(BathMaker.marks(input.shop(), read))
        .containsExactly(
            new BathSpec.Mark(0, 0, false),
            new BathSpec.Mark(600, 25, false),
            new BathSpec.Mark(WED_14, 0, true));
    assertThat(read.filled().levelDownMm()).isZero();
  }
}
