package spangle.part.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Cross-sections drawn from their sizes, against plain geometry done by hand. */
class OutlinesTest {
  private static final Offset<Double> EXACT = within(1e-9);

  /** What a quarter circle of radius r leaves of its square: r2 (1 - pi / 4). */
  private static double spandrel(double radius) {
    return radius * radius * (1 - Math.PI / 4);
  }

  /** By how much rounding a square corner shortens the outline: r (2 - pi / 2). */
  private static double shortened(double radius) {
    return radius * (2 - Math.PI / 2);
  }

  @Test
  void aSharpSquareAndARoundedOne() {
    Outline sharp = Outline.rectangle(30, 20, 0);
    assertThat(sharp.area()).isEqualTo(600, EXACT);
    assertThat(sharp.perimeter()).isEqualTo(100, EXACT);
    Outline round = Outline.rectangle(20, 20, 10);
    assertThat(round.area()).isEqualTo(Math.PI * 100, EXACT);
    assertThat(round.perimeter()).isEqualTo(Math.PI * 20, EXACT);
  }

  /** A hollow corner is filled by its arc, a bulging one is cut; not at the origin. */
  @Test
  void anArcFillsAHollowCornerAndCutsABulgingOne() {
    Outline bent =
        new Outline()
            .corner(7, 5)
            .corner(47, 5)
            .corner(47, 15, 2)
            .corner(17, 15, 4)
            .corner(17, 35)
            .corner(7, 35);

    assertThat(bent.area()).isEqualTo(400 + 200 - spandrel(2) + spandrel(4), EXACT);
    assertThat(bent.perimeter()).isEqualTo(140 - shortened(2) - shortened(4), EXACT);
  }

  /** A triangle of legs 30 and 40: its sharp corner of 53.13 degrees turns by 126.87. */
  @Test
  void cornersThatAreNotSquare() {
    double turn = Math.PI - Math.atan2(40, 30);
    Outline triangle = new Outline().corner(0, 0).corner(30, 0, 2).corner(0, 40);

    assertThat(triangle.area()).isEqualTo(600 - 4 * (Math.tan(turn / 2) - turn / 2), EXACT);
    assertThat(triangle.perimeter()).isEqualTo(120 - 2 * (2 * Math.tan(turn / 2) - turn), EXACT);
  }

  @Test
  void anAngle() {
    SectionProfile angle = Outlines.angle("L80x60x7", 80, 60, 7, 8, 4);

    assertThat(angle.metalMm2()).isEqualTo(80 * 7 + 53 * 7 + spandrel(8) - 2 * spandrel(4), EXACT);
    assertThat(angle.outerMm()).isEqualTo(280 - shortened(8) - 2 * shortened(4), EXACT);
    assertThat(angle.heightMm()).isEqualTo(80);
    assertThat(angle.widthMm()).isEqualTo(60);
    assertThat(angle.thicknessMm()).isEqualTo(7);
    assertThat(angle.family()).isEqualTo(Family.ANGLE);
    assertThat(angle.hollow()).isFalse();
    assertThat(angle.boreMm2()).isZero();
  }

  @Test
  void aChannelWithParallelFlanges() {
    SectionProfile channel = Outlines.parallelChannel("UPE100", 100, 55, 4.5, 7.5, 10);

    assertThat(channel.metalMm2())
        .isEqualTo(2 * 55 * 7.5 + (100 - 15) * 4.5 + 2 * spandrel(10), EXACT);
    assertThat(channel.outerMm()).isEqualTo(2 * 55 + 2 * 50.5 + 2 * 100 - 2 * shortened(10), EXACT);
    assertThat(channel.thicknessMm()).isEqualTo(4.5);
    assertThat(channel.family()).isEqualTo(Family.PARALLEL_CHANNEL);
  }

  /** EN 10365 (from memory): 8 % slope, the flange has its thickness at half the width. */
  @Test
  void aChannelWithTaperedFlangesHasItsThicknessAtHalfTheWidth() {
    SectionProfile channel = Outlines.taperChannel("UPN", 100, 50, 6, 8.5, 0, 0);

    // Flange 44 mm beside the web: from 8.5 + 0.08 x 19 at the web to 8.5 - 0.08 x 25 at the toe.
    double flange = 44 * (8.5 + 0.08 * 19 + 8.5 - 0.08 * 25) / 2;
    assertThat(channel.metalMm2()).isEqualTo(100 * 6 + 2 * flange, EXACT);
    double slope = Math.hypot(44, 0.08 * 44);
    assertThat(channel.outerMm())
        .isEqualTo(100 + 2 * 50 + 2 * 6.5 + 2 * slope + 100 - 2 * 10.02, EXACT);
    assertThat(channel.thicknessMm()).isEqualTo(6);
    assertThat(channel.family()).isEqualTo(Family.TAPER_CHANNEL);
  }

  /** Rounded where flange meets web and at the toe, by the angle between them. */
  @Test
  void aTaperedFlangeIsRoundedByItsSlope() {
    double lean = Math.atan(0.08);
    double root = Math.PI / 2 - lean;
    double rootFill = 64 * (Math.tan(root / 2) - root / 2);
    double toeCut = 16 * (Math.tan(root / 2) - root / 2);
    SectionProfile sharp = Outlines.taperChannel("UPN", 100, 50, 6, 8.5, 0, 0);
    SectionProfile round = Outlines.taperChannel("UPN", 100, 50, 6, 8.5, 8, 4);

    assertThat(round.metalMm2() - sharp.metalMm2())
        .isEqualTo(2 * (rootFill - toeCut), within(1e-6));
  }

  /** EN 10210-2 and EN 10219-2 (from memory): 1.5 t and 1 t hot, 2 t and 1 t cold to 6 mm. */
  @Test
  void hotAndColdHollowSections() {
    SectionProfile hot = Outlines.hollow("HF", Family.HOT_HOLLOW, 100, 60, 8);
    assertThat(hot.outerMm()).isEqualTo(320 - 4 * shortened(12), EXACT);
    assertThat(hot.boreMm()).isEqualTo(2 * (84 + 44) - 4 * shortened(8), EXACT);
    assertThat(hot.boreMm2()).isEqualTo(84 * 44 - 4 * spandrel(8), EXACT);
    assertThat(hot.metalMm2())
        .isEqualTo(6000 - 4 * spandrel(12) - (84 * 44 - 4 * spandrel(8)), EXACT);
    SectionProfile cold = Outlines.hollow("C", Family.COLD_HOLLOW, 100, 60, 4);
    assertThat(cold.outerMm()).isEqualTo(320 - 4 * shortened(8), EXACT);
    assertThat(cold.boreMm()).isEqualTo(2 * (92 + 52) - 4 * shortened(4), EXACT);
    assertThat(cold.hollow()).isTrue();
    assertThat(Outlines.hollow("C", Family.COLD_HOLLOW, 200, 200, 6.3).boreMm())
        .isEqualTo(4 * 187.4 - 4 * shortened(1.5 * 6.3), EXACT);
    assertThat(Outlines.hollow("C", Family.COLD_HOLLOW, 200, 200, 12).boreMm())
        .isEqualTo(4 * 176 - 4 * shortened(24), EXACT);
  }

  @Test
  void aRoundTube() {
    SectionProfile tube = Outlines.round("CHS60x5", 60, 5);

    assertThat(tube.metalMm2()).isEqualTo(Math.PI * 55 * 5, EXACT);
    assertThat(tube.outerMm()).isEqualTo(Math.PI * 60, EXACT);
    assertThat(tube.boreMm()).isEqualTo(Math.PI * 50, EXACT);
    assertThat(tube.boreMm2()).isEqualTo(Math.PI * 625, EXACT);
    assertThat(tube.heightMm()).isEqualTo(60);
    assertThat(tube.widthMm()).isEqualTo(60);
    assertThat(tube.thicknessMm()).isEqualTo(5);
  }

  private static SectionTable read(String text) throws IOException {
    return SectionTable.read(new BufferedReader(new StringReader(text)));
  }

  @Test
  void aTableIsReadLineByLine() throws Exception {
    SectionTable table =
        read(
            "# sizes\n\nangle, L30x30x3, 30,30,3,5,2.5\nround-hollow,CHS60x5,60,5\n"
                + "parallel-channel,UPE100,100,55,4.5,7.5,10\n"
                + "taper-channel,UPN100,100,50,6,8.5,8.5,4.5\n"
                + "cold-hollow,SHS40x40x3,40,40,3\nhot-hollow,HFSHS40x40x4,40,40,4\n");

    assertThat(table.all())
        .containsExactly(
            Outlines.angle("L30x30x3", 30, 30, 3, 5, 2.5),
            Outlines.round("CHS60x5", 60, 5),
            Outlines.parallelChannel("UPE100", 100, 55, 4.5, 7.5, 10),
            Outlines.taperChannel("UPN100", 100, 50, 6, 8.5, 8.5, 4.5),
            Outlines.hollow("SHS40x40x3", Family.COLD_HOLLOW, 40, 40, 3),
            Outlines.hollow("HFSHS40x40x4", Family.HOT_HOLLOW, 40, 40, 4));
    assertThat(table.find("hfshs 40 x 4")).contains(table.all().stream().toList().get(5));
    assertThatThrownBy(() -> read("moon,M1,1,1"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("moon,M1");
  }

  /** A name of sixty characters is looked up, a longer one is not looked at. */
  @Test
  void longNamesFindNothing() throws Exception {
    String sixty = "a".repeat(60);
    SectionTable table = read("round-hollow," + sixty + ",60,5\n");

    assertThat(table.find(sixty)).isPresent();
    assertThat(table.find(sixty.substring(1) + "  ")).isEmpty();
    assertThat(table.find("a".repeat(61))).isEmpty();
  }
}
