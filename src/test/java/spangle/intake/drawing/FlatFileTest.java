package spangle.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import spangle.intake.problem.ProblemCode;
import spangle.part.FlatPattern;
import spangle.part.Measured;

/** Files in the manner of several programs, areas by hand; sheet 2 mm, steel. */
class FlatFileTest extends FlatReading {
  @Test
  void linesAndCirclesInMillimetres() {
    FlatPattern shape =
        shape(DxfText.mm().rectangle(0, 0, 160, 120).circle(30, 30, 5.5).circle(130, 90, 5.5));
    assertThat(shape.netAreaMm2()).isEqualTo(19200 - 60.5 * Math.PI, within(1e-6));
    assertThat(shape.cutEdgeMm()).isEqualTo(560 + 22 * Math.PI, within(1e-6));
    assertThat(shape.flatLengthMm()).isEqualTo(160, within(1e-9));
    Measured measured = shape.measure(7850);
    // 2 net + edge x 2 mm; mass net x 2 mm x 7850.
    double net = 19200 - 60.5 * Math.PI;
    assertThat(measured.areaM2())
        .isEqualTo((2 * net + (560 + 22 * Math.PI) * 2) / 1e6, within(1e-12));
    assertThat(measured.massKg()).isEqualTo(net * 2 * 7850e-9, within(1e-9));
    assertThat(problems.list()).isEmpty();
  }

  /** R12: no header, polylines with vertices of their own, a bulge, Latin-1 words. */
  @Test
  void anOldFileWithPolylinesAndLatinWords() {
    String text =
        "999\nwritten by hand\n"
            + DxfText.tags(0, "SECTION", 2, "ENTITIES")
            + DxfText.tags(0, "POLYLINE", 8, "AUSSEN", 66, 1, 70, 1)
            + DxfText.tags(0, "VERTEX", 8, "AUSSEN", 10, 0.0, 20, 0.0)
            + DxfText.tags(0, "VERTEX", 8, "AUSSEN", 10, 300.0, 20, 0.0, 42, 1.0)
            + DxfText.tags(0, "VERTEX", 8, "AUSSEN", 10, 300.0, 20, 100.0)
            + DxfText.tags(0, "VERTEX", 8, "AUSSEN", 10, 0.0, 20, 100.0)
            + DxfText.tags(0, "SEQEND", 8, "AUSSEN")
            + DxfText.tags(
                0, "TEXT", 8, "BESCHRIFTUNG", 10, 5.0, 20, 5.0, 40, 3.0, 1, "Stütze Größe 3")
            + DxfText.tags(0, "ENDSEC", 0, "EOF");
    FlatRead read = read(text.getBytes(StandardCharsets.ISO_8859_1), STEEL.in(DrawingUnit.MM));
    assertThat(read.shape().orElseThrow().netAreaMm2())
        .isEqualTo(30000 + 1250 * Math.PI, within(1e-6));
    assertThat(problems.list()).isEmpty();
  }

  /** R12 keeps a hatch as lines in a block without a name; nobody cuts them. */
  @Test
  void anOldHatchIsNotCutAndSaid() {
    DxfText lines = DxfText.mm().rectangle(10, 10, 20, 20);
    FlatPattern shape =
        shape(
            DxfText.mm()
                .rectangle(0, 0, 160, 120)
                .block("*X0", 0, 0, lines)
                .insert("*X0", 0, 0)
                .insert("*x0", 40, 0));
    assertThat(shape.netAreaMm2()).isEqualTo(19200, within(1e-6));
    assertThat(said()).containsExactly("warn drawing-note");
    assertThat(why(ProblemCode.DRAWING_NOTE)).contains("2 hatch");
  }

  /** A smoothed polyline of the old kind keeps its frame points, which are not on the line. */
  @Test
  void frameOfASmoothedPolylineIsPassedOver() {
    String text =
        DxfText.tags(0, "SECTION", 2, "ENTITIES", 0, "POLYLINE", 8, "0", 66, 1, 70, 5)
            + DxfText.tags(0, "VERTEX", 8, "0", 10, -500.0, 20, -500.0, 70, 16)
            + DxfText.tags(0, "VERTEX", 8, "0", 10, 0.0, 20, 0.0, 70, 8)
            + DxfText.tags(0, "VERTEX", 8, "0", 10, 100.0, 20, 0.0, 70, 8)
            + DxfText.tags(0, "VERTEX", 8, "0", 10, 100.0, 20, 100.0, 70, 8)
            + DxfText.tags(0, "SEQEND", 0, "ENDSEC", 0, "EOF");
    FlatRead read = read(text.getBytes(StandardCharsets.UTF_8), STEEL.in(DrawingUnit.MM));
    assertThat(read.shape().orElseThrow().netAreaMm2()).isEqualTo(5000, within(1e-9));
  }

  /** Light polyline, CRLF, handles and class marks between the codes. */
  @Test
  void aLightPolylineWithCarriageReturns() {
    String text =
        DxfText.mm()
            .entity(
                "LWPOLYLINE",
                5,
                "2F",
                330,
                "1F",
                100,
                "AcDbPolyline",
                90,
                4,
                70,
                1,
                43,
                0.0,
                10,
                10.0,
                20,
                0.0,
                10,
                90.0,
                20,
                0.0,
                42,
                1.0,
                10,
                90.0,
                20,
                20.0,
                10,
                10.0,
                20,
                20.0,
                42,
                1.0)
            .text()
            .replace("\n", "\r\n");
    FlatPattern shape = shape(text.getBytes(StandardCharsets.UTF_8));
    assertThat(shape.netAreaMm2()).isEqualTo(1600 + 100 * Math.PI, within(1e-6));
    assertThat(shape.flatLengthMm()).isEqualTo(100, within(1e-9));
    assertThat(problems.list()).isEmpty();
  }

  @Test
  void aFileWithOldMacintoshLineEndsReadsTheSame() {
    String text = DxfText.mm().rectangle(0, 0, 100, 50).text().replace('\n', '\r');
    assertThat(shape(text.getBytes(StandardCharsets.UTF_8)).netAreaMm2())
        .isEqualTo(5000, within(1e-9));
  }

  @Test
  void decimalCommas() {
    String text = DxfText.mm().rectangle(0, 0, 100.5, 50).text().replace('.', ',');
    assertThat(shape(text.getBytes(StandardCharsets.UTF_8)).netAreaMm2())
        .isEqualTo(5025, within(1e-9));
  }

  @Test
  void splinesOnly() {
    Object[] codes = {
      70,
      12,
      71,
      2,
      72,
      12,
      73,
      9,
      40,
      0.0,
      40,
      0.0,
      40,
      0.0,
      40,
      1.0,
      40,
      1.0,
      40,
      2.0,
      40,
      2.0,
      40,
      3.0,
      40,
      3.0,
      40,
      4.0,
      40,
      4.0,
      40,
      4.0,
      41,
      1.0,
      41,
      Math.sqrt(0.5),
      41,
      1.0,
      41,
      Math.sqrt(0.5),
      41,
      1.0,
      41,
      Math.sqrt(0.5),
      41,
      1.0,
      41,
      Math.sqrt(0.5),
      41,
      1.0,
      10,
      50.0,
      20,
      0.0,
      30,
      0.0,
      10,
      50.0,
      20,
      50.0,
      30,
      0.0,
      10,
      0.0,
      20,
      50.0,
      30,
      0.0,
      10,
      -50.0,
      20,
      50.0,
      30,
      0.0,
      10,
      -50.0,
      20,
      0.0,
      30,
      0.0,
      10,
      -50.0,
      20,
      -50.0,
      30,
      0.0,
      10,
      0.0,
      20,
      -50.0,
      30,
      0.0,
      10,
      50.0,
      20,
      -50.0,
      30,
      0.0,
      10,
      50.0,
      20,
      0.0,
      30,
      0.0
    };
    FlatPattern shape = shape(DxfText.mm().entity("SPLINE", codes));
    assertThat(shape.netAreaMm2()).isEqualTo(2500 * Math.PI, within(1e-4));
    assertThat(shape.cutEdgeMm()).isEqualTo(100 * Math.PI, within(1e-5));
  }

  @Test
  void aClosedSplineThroughFitPoints() {
    DxfText text = DxfText.mm();
    Object[] codes = new Object[4 + 24 * 4];
    codes[0] = 70;
    codes[1] = 11;
    codes[2] = 71;
    codes[3] = 3;
    for (int i = 0; i < 24; i++) {
      double t = 2 * Math.PI * i / 24;
      codes[4 + 4 * i] = 11;
      codes[5 + 4 * i] = 80 * Math.cos(t);
      codes[6 + 4 * i] = 21;
      codes[7 + 4 * i] = 80 * Math.sin(t);
    }
    // A hundredth of a per cent of the circle the points lie on.
    assertThat(shape(text.entity("SPLINE", codes)).netAreaMm2())
        .isEqualTo(6400 * Math.PI, within(0.64 * Math.PI));
  }

  @Test
  void halfAnEllipseAndALine() {
    FlatPattern shape =
        shape(
            DxfText.mm()
                .entity(
                    "ELLIPSE", 10, 0.0, 20, 0.0, 11, 60.0, 21, 0.0, 40, 0.5, 41, 0.0, 42, Math.PI)
                .line(-60, 0, 60, 0));
    assertThat(shape.netAreaMm2()).isEqualTo(900 * Math.PI, within(1e-6));
  }

  /** Four holes by an array of a block in a block that is turned, mirrored and doubled in size. */
  @Test
  void nestedBlocks() {
    DxfText hole = DxfText.mm().circle(1, 0, 2);
    DxfText row = DxfText.mm().insert("HOLE", 0, 0, 70, 2, 71, 2, 44, 20.0, 45, 10.0);
    DxfText text =
        DxfText.mm()
            .block("HOLE", 1, 0, hole)
            .block("ROW", 0, 0, row)
            .rectangle(0, 0, 200, 100)
            .insert("ROW", 100, 50, 41, -2.0, 42, 2.0, 50, 90.0);
    FlatRead read = read(text.bytes(), STEEL);
    assertThat(read.layout().holes()).hasSize(4);
    assertThat(read.shape().orElseThrow().netAreaMm2())
        .isEqualTo(20000 - 4 * 16 * Math.PI, within(1e-6));
    // Spacing 20 x 10 doubled is 40 x 20, turned by 90 degrees it stands upright.
    assertThat(
            read.layout().holes().stream().mapToDouble(c -> c.extent().maxY()).max().orElseThrow())
        .isLessThanOrEqualTo(54.0 + 1e-9);
    assertThat(problems.list()).isEmpty();
  }

  @Test
  void whatIsSeenFromBehindIsMirrored() {
    DxfText text =
        DxfText.mm()
            .line(0, 0, 100, 0)
            .line(100, 0, 100, 50)
            .entity(
                "LWPOLYLINE",
                90,
                3,
                70,
                0,
                10,
                -100.0,
                20,
                50.0,
                10,
                0.0,
                20,
                50.0,
                10,
                0.0,
                20,
                0.0,
                210,
                0.0,
                220,
                0.0,
                230,
                -1.0);
    assertThat(shape(text).netAreaMm2()).isEqualTo(5000, within(1e-9));
    assertThat(problems.list()).isEmpty();
  }

  @Test
  void layersThatAreOffOrFrozenPaperSpaceAndHiddenThingsAreNotThere() {
    DxfText text =
        DxfText.mm()
            .layer("OFF", 0, -7, "CONTINUOUS")
            .layer("FROZEN", 1, 7, "CONTINUOUS")
            .rectangle(0, 0, 100, 50)
            .on("OFF")
            .circle(20, 20, 5)
            .on("FROZEN")
            .circle(40, 20, 5)
            .on("0")
            .entity("CIRCLE", 67, 1, 10, 60.0, 20, 20.0, 40, 5.0)
            .entity("CIRCLE", 60, 1, 10, 80.0, 20, 20.0, 40, 5.0);
    assertThat(shape(text).netAreaMm2()).isEqualTo(5000, within(1e-9));
  }
}
