package spangle.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.part.FlatPattern;

/**
 * A slot is two lines and two half circles that leave them smoothly. Files hold a few decimals of
 * each, so that no end meets the next one to the last bit: that is no crossing.
 */
class SlotsTest extends FlatReading {
  private static double at(double value, int decimals) {
    return Double.parseDouble(String.format(Locale.ROOT, "%." + decimals + "f", value));
  }

  /** A slot of 100 between its centres and 20 half wide, turned about its first centre. */
  private static DxfText slot(DxfText text, double x, double y, double degrees, int decimals) {
    double a = Math.toRadians(degrees);
    double dx = 100 * Math.cos(a);
    double dy = 100 * Math.sin(a);
    double nx = -20 * Math.sin(a);
    double ny = 20 * Math.cos(a);
    for (int side : new int[] {1, -1}) {
      text.entity(
          "LINE",
          10,
          at(x + side * nx, decimals),
          20,
          at(y + side * ny, decimals),
          11,
          at(x + dx + side * nx, decimals),
          21,
          at(y + dy + side * ny, decimals));
    }
    text.entity(
        "ARC",
        10,
        at(x, decimals),
        20,
        at(y, decimals),
        40,
        20.0,
        50,
        at(degrees + 90, decimals),
        51,
        at(degrees + 270, decimals));
    return text.entity(
        "ARC",
        10,
        at(x + dx, decimals),
        20,
        at(y + dy, decimals),
        40,
        20.0,
        50,
        at(degrees + 270, decimals),
        51,
        at(degrees + 90, decimals));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 16",
    "0, 3",
    "90, 16",
    "180, 6",
    "30, 16",
    "30, 4",
    "45, 3",
    "77.7, 4",
    "123.4, 3",
    "271, 6",
    "359.9, 3"
  })
  void aSlotCrossesNothing(double degrees, int decimals) {
    FlatPattern outline = shape(slot(DxfText.mm(), 0, 0, degrees, decimals));
    assertThat(outline.netAreaMm2()).isEqualTo(4000 + 400 * Math.PI, within(0.4));
    FlatPattern hole =
        shape(slot(DxfText.mm().rectangle(-500, -500, 1000, 1000), 13, 7, degrees, decimals));
    assertThat(hole.netAreaMm2()).isEqualTo(1e6 - 4000 - 400 * Math.PI, within(0.4));
    assertThat(said()).doesNotContain("ask drawing-doubt", "ask drawing-open");
  }
}
