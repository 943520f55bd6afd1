package spangle.coating.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.measure.Interval;

/**
 * Settings of an oven a batch can share; every one of them is held against a search of them all.
 */
class OvenBatchRangeTest {
  private static BatchPart steel(double mm, String window) {
    return new BatchPart(
        "steel " + mm,
        HeatedPart.bothSides(Metal.STEEL, mm),
        ConvectionRadiation.usual(),
        CureWindow.parse(window));
  }

  private static OvenBatchRange range(List<BatchPart> parts, double low, double high) {
    return OvenBatchRange.of(parts, new Interval(low, high), 20, HeatUpTable.RULE_OF_THUMB);
  }

  private static List<Double> everySettingThatWorks(List<BatchPart> parts, int low, int high) {
    List<Double> good = new ArrayList<>();
    for (int c = low; c <= high; c++) {
      OvenBatchVerdict at =
          OvenBatchVerdict.of(parts, List.of((double) c), 20, HeatUpTable.RULE_OF_THUMB).get(0);
      if (at.common().isPresent()) {
        good.add((double) c);
      }
    }
    return good;
  }

  @ParameterizedTest
  @CsvSource({"100,240", "190,210", "193,207", "200,200", "150,196", "204,240", "100,103"})
  void findsEveryWholeDegree(int low, int high) {
    List<BatchPart> parts = List.of(steel(3, "10@190, max 20"), steel(1, "10@190, max 20"));

    List<Double> found =
        range(parts, low, high).settings().stream().map(OvenBatchVerdict::ovenC).toList();

    assertThat(found).isEqualTo(everySettingThatWorks(parts, low, high));
  }

  /** Also where the settings that work are few and lie between round numbers. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | 10@190, max 20 | 4.2 | 10@190, max 20",
        "1 | 10@190, max 20 | 3.9 | 10@190, max 20",
        "2 | 10@190, max 20 | 3 | 10@171, max 20",
        "2 | 10@190, max 20 | 2 | 10@174, max 17",
        "2 | 10@191, max 12 | 2 | 10@173, max 13",
        "1 | 10@190, max 14 | 2 | 10@176 6@188, max 16"
      })
  void findsFewSettingsToo(double one, String window, double other, String otherWindow) {
    List<BatchPart> parts = List.of(steel(one, window), steel(other, otherWindow));

    List<Double> found =
        range(parts, 150, 240).settings().stream().map(OvenBatchVerdict::ovenC).toList();

    assertThat(found).isEqualTo(everySettingThatWorks(parts, 150, 240));
  }

  @Test
  void partsOfDifferentPowdersShareWhereTheirWindowsMeet() {
    List<BatchPart> parts = List.of(steel(2, "10@190, max 20"), steel(2, "15@170 9@180, max 25"));
    OvenBatchRange range = range(parts, 150, 240);

    Interval settings = range.ovenC().orElseThrow();
    assertThat(settings.min()).isGreaterThan(190);
    assertThat(settings.max()).isLessThanOrEqualTo(200);
    assertThat(range.nearest()).isEmpty();
    OvenBatchVerdict best = range.best().orElseThrow();
    for (OvenBatchVerdict at : range.settings()) {
      assertThat(best.probe().dwell().minMin())
          .isLessThanOrEqualTo(at.probe().dwell().minMin() + 1e-9);
    }
  }

  @Test
  void whereNothingWorksTheNearestSettingNamesTheTwoAndTheMinutes() {
    List<BatchPart> parts = List.of(steel(8, "10@190, max 20"), steel(1, "10@190, max 20"));
    OvenBatchRange range = range(parts, 100, 240);

    assertThat(range.settings()).isEmpty();
    assertThat(range.ovenC()).isEmpty();
    assertThat(range.best()).isEmpty();
    OvenBatchVerdict nearest = range.nearest().orElseThrow();
    double least = Double.POSITIVE_INFINITY;
    for (int c = 100; c <= 240; c++) {
      double apart =
          OvenBatchVerdict.of(parts, List.of((double) c), 20, HeatUpTable.RULE_OF_THUMB)
              .get(0)
              .conflict()
              .map(OvenBatchVerdict.Conflict::apartMin)
              .orElse(Double.POSITIVE_INFINITY);
      least = Math.min(least, apart);
    }
    OvenBatchVerdict.Conflict conflict = nearest.conflict().orElseThrow();
    assertThat(conflict.apartMin()).isCloseTo(least, within(1e-9));
    assertThat(conflict.slow()).isEqualTo("steel 8.0");
    assertThat(conflict.quick()).isEqualTo("steel 1.0");
  }

  @Test
  void aPartThatFailsAloneLeavesNothingToCompare() {
    OvenBatchRange cold =
        range(List.of(steel(3, "10@190, max 20"), steel(1, "10@190, max 20")), 100, 180);

    assertThat(cold.settings()).isEmpty();
    assertThat(cold.nearest()).isEmpty();
  }
}
