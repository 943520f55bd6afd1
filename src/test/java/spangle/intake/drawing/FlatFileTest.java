package spangle.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.measure.Box;
import spangle.part.FlatPattern;
import spangle.part.Measured;

/** Files in the manner of several programs, areas by hand; sheet 2 mm, steel. */
class FlatFileTest {
  private static final Asked STEEL = Asked.of(2, 7850);

  private final Problems problems = new Problems();

  private FlatRead read(byte[] bytes, Asked asked) {
    return FlatFile.read("part.dxf", bytes, asked, problems).orElseThrow();
  }

  private FlatPattern shape(DxfText text) {
    return shape(text.bytes());
  }

  private FlatPattern shape(byte[] bytes) {
    return read(bytes, STEEL).shape().orElseThrow();
  }

  private List<String> said() {
    return problems.sorted().stream().map(p -> p.severity().word() + " " + p.code().key()).toList();
  }

  private String why(ProblemCode code) {
    return problems.list().stream()
        .filter(p -> p.code() == code)
        .map(Problem::why)
        .findFirst()
        .orElse("");
  }

  private void refused(byte[] bytes, ProblemCode code, String words) {
    assertThat(FlatFile.read("part.dxf", bytes, STEEL, problems).flatMap(FlatRead::shape))
        .isEmpty();
    assertThat(why(code)).contains(words);
  }

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

  @Test
  void aFileInInchesIsReadInInches() {
    FlatPattern shape = shape(new DxfText().unit(1).rectangle(0, 0, 10, 4));
    assertThat(shape.netAreaMm2()).isEqualTo(40 * 645.16, within(1e-6));
    assertThat(problems.list()).isEmpty();
  }

  /**
   * 160 x 120 x 2 drawn in inches and called mm: faces 645.16 times too small, with its edges 381
   * times (39520 mm2 against 103.6 mm2).
   */
  @Test
  void inchesCalledMillimetresAreAskedAbout() {
    double in = 1 / 25.4;
    FlatRead read = read(DxfText.mm().rectangle(0, 0, 160 * in, 120 * in).bytes(), STEEL);
    assertThat(said()).containsExactly("ask drawing-unit");
    assertThat(why(ProblemCode.DRAWING_UNIT)).contains("6.299 x 4.724", "160 x 120");
    double small = read.readings().get(0).measured().areaM2();
    double large = read.readings().get(1).measured().areaM2();
    assertThat(large / small).isEqualTo(39520 / 103.6138, within(0.01));
    assertThat(large).isEqualTo(0.03952, within(1e-9));
  }

  @Test
  void withoutAUnitTheOnlyLikelyOneIsTakenAndSaid() {
    FlatRead read = read(DxfText.withoutUnit().rectangle(0, 0, 160, 120).bytes(), STEEL);
    assertThat(read.unit()).isEqualTo(DrawingUnit.MM);
    assertThat(said()).containsExactly("warn drawing-note");
    assertThat(why(ProblemCode.DRAWING_NOTE)).contains("160 x 120", "4064 x 3048");
  }

  @Test
  void withoutAUnitTwoLikelyOnesAreAskedAbout() {
    FlatRead read = read(DxfText.withoutUnit().rectangle(0, 0, 50, 30).bytes(), STEEL);
    assertThat(said()).containsExactly("ask drawing-unit");
    assertThat(read.readings()).hasSize(2);
    assertThat(why(ProblemCode.DRAWING_UNIT)).contains("50 x 30", "1270 x 762");
  }

  @Test
  void withoutAUnitTheMassSettlesIt() {
    // 50 x 30 in of 2 mm steel weigh 967740 mm2 x 2 x 7850e-9 = 15.19 kg.
    FlatRead read =
        read(DxfText.withoutUnit().rectangle(0, 0, 50, 30).bytes(), STEEL.weighing(15.2));
    assertThat(read.unit()).isEqualTo(DrawingUnit.IN);
    assertThat(read.shape().orElseThrow().netAreaMm2()).isEqualTo(1500 * 645.16, within(1e-6));
    assertThat(said()).containsExactly("warn drawing-note");
  }

  @Test
  void aUnitThatWasSaidWinsOverTheFile() {
    FlatRead read = read(DxfText.mm().rectangle(0, 0, 10, 8).bytes(), STEEL.in(DrawingUnit.IN));
    assertThat(read.unit()).isEqualTo(DrawingUnit.IN);
    assertThat(said()).containsExactly("warn drawing-note");
  }

  @Test
  void bendLinesWithTheirAnglesGiveTheSizeAfterBending() {
    double half = spangle.part.BendAllowance.squareBendMm(2) / 2;
    double bend = 50 + half;
    DxfText text =
        DxfText.mm()
            .rectangle(0, 0, 80 + 2 * half, 40)
            .on("BEND_UP")
            .line(bend, 0, bend, 40)
            .on("NOTES")
            .text(bend + 2, 10, "UP 90%%d R2");
    FlatRead read = read(text.bytes(), STEEL);
    Box box = read.shape().orElseThrow().foldedMm().orElseThrow();
    assertThat(List.of(box.longestMm(), box.middleMm(), box.shortestMm()))
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b))
        .containsExactly(50.0, 40.0, 30.0);
    assertThat(read.foldedReckoned()).isTrue();
    assertThat(said()).containsExactly("warn drawing-note");
  }

  @Test
  void withoutAnglesTheSizeAfterBendingIsAskedFor() {
    DxfText text = DxfText.mm().rectangle(0, 0, 80, 40).on("Biegelinien").line(30, 0, 30, 40);
    FlatRead read = read(text.bytes(), STEEL);
    assertThat(read.shape().orElseThrow().foldedSizeUnknown()).isTrue();
    assertThat(said()).containsExactly("ask folded-size-missing");
  }

  @Test
  void brokenLinesRightAcrossAreBendsByTheTableOfLineKinds() {
    DxfText text =
        DxfText.mm()
            .lineKind("K7", 2)
            .layer("0", 0, 7, "CONTINUOUS")
            .rectangle(0, 0, 80, 40)
            .entity("LINE", 6, "K7", 10, 30.0, 20, 0.0, 11, 30.0, 21, 40.0)
            .entity("LINE", 6, "K7", 10, 50.0, 20, 10.0, 11, 50.0, 21, 20.0);
    FlatRead read = read(text.bytes(), STEEL);
    assertThat(read.layout().bends()).hasSize(1);
    assertThat(read.layout().marks()).hasSize(1);
  }

  @Test
  void wordsOnBendsAreReadInManyWays() {
    assertThat(BendWords.said("UP 90° R 2.5").orElseThrow().radiusMm()).hasValue(2.5);
    assertThat(BendWords.said("down 45 deg").orElseThrow().up()).isFalse();
    assertThat(BendWords.said("-30%%d").orElseThrow())
        .isEqualTo(new BendWords.Said(30, false, java.util.OptionalDouble.empty()));
    assertThat(BendWords.said("{\\fArial|b0;ab 120,5° R=3}").orElseThrow())
        .isEqualTo(new BendWords.Said(120.5, false, java.util.OptionalDouble.of(3)));
    assertThat(BendWords.said("M8 x 20")).isEmpty();
    assertThat(BendWords.said("90")).isEmpty();
    assertThat(BendWords.said("UP 170°")).isEmpty();
  }

  @Test
  void whatCannotBeDrawnIsNamed() {
    DxfText text =
        DxfText.mm()
            .rectangle(0, 0, 100, 50)
            .entity("REGION", 70, 1)
            .entity("REGION", 70, 1)
            .entity("DIMENSION", 10, 1.0)
            .entity("CIRCLE", 10, "abc", 20, 1.0, 40, 5.0)
            .entity("LINE", 10, 0.0, 20, 0.0, 30, 0.0, 11, 5.0, 21, 0.0, 31, 40.0)
            .insert("NOWHERE", 0, 0);
    assertThat(shape(text).netAreaMm2()).isEqualTo(5000, within(1e-9));
    assertThat(problems.list().stream().map(Problem::why))
        .anyMatch(w -> w.startsWith("2 x REGION"))
        .anyMatch(w -> w.contains("CIRCLE with 'abc'"))
        .anyMatch(w -> w.contains("LINE does not lie in the plane"))
        .anyMatch(w -> w.contains("'NOWHERE'"))
        .hasSize(4);
  }

  @Test
  void filesThatAreNoDrawingAreRefused() {
    refused(new byte[0], ProblemCode.DRAWING_UNREADABLE, "no sections");
  }

  @Test
  void textThatIsNoDrawingIsRefusedAtItsLine() {
    refused(
        "hello\nworld\n".getBytes(StandardCharsets.UTF_8),
        ProblemCode.DRAWING_UNREADABLE,
        "'hello'");
  }

  @Test
  void aBinaryFileIsRefused() {
    refused(new byte[] {'A', 'B', 13, 10, 26, 0, 1}, ProblemCode.DRAWING_UNREADABLE, "binary");
  }

  @Test
  void aFileWithoutAnOutlineIsRefused() {
    refused(
        DxfText.mm().line(0, 0, 10, 0).line(20, 5, 40, 5).bytes(),
        ProblemCode.DRAWING_UNREADABLE,
        "no closed outline");
  }

  @Test
  void aFileCutOffIsAskedAbout() {
    String whole = DxfText.mm().rectangle(0, 0, 100, 50).text();
    String half = whole.substring(0, whole.length() - 20);
    assertThat(shape(half.getBytes(StandardCharsets.UTF_8)).netAreaMm2())
        .isEqualTo(5000, within(1e-9));
    assertThat(why(ProblemCode.DRAWING_LEFT_OUT)).contains("no end mark");
  }

  @Test
  void aBlockInItselfIsRefused() {
    DxfText text = DxfText.mm().block("A", 0, 0, DxfText.mm().insert("A", 1, 1)).insert("A", 0, 0);
    refused(text.bytes(), ProblemCode.FILE_TOO_LARGE, "too deep");
  }

  @Test
  void blocksThatGrowWithoutBoundAreRefused() {
    DxfText text = DxfText.mm().block("B0", 0, 0, DxfText.mm().circle(0, 0, 1));
    for (int i = 1; i <= 12; i++) {
      text.block(
          "B" + i, 0, 0, DxfText.mm().insert("B" + (i - 1), 0, 0, 70, 10, 71, 1, 44, 5.0, 45, 0.0));
    }
    refused(text.insert("B12", 0, 0).bytes(), ProblemCode.FILE_TOO_LARGE, "too many times");
  }

  @Test
  void anArrayOfAMillionIsRefused() {
    DxfText text =
        DxfText.mm()
            .block("A", 0, 0, DxfText.mm())
            .insert("A", 0, 0, 70, 32000, 71, 32000, 44, 1.0, 45, 1.0);
    refused(text.bytes(), ProblemCode.FILE_TOO_LARGE, "too many times");
  }

  @Test
  void aFileBeyondTheLimitIsRefused() {
    refused(new byte[(int) DrawingLimits.BYTES + 1], ProblemCode.FILE_TOO_LARGE, "too large");
  }

  @Test
  void nothingIsSaidTwiceAndNothingFromChance() {
    byte[] bytes = DxfText.mm().rectangle(0, 0, 100, 50).line(2, 2, 9, 9).bytes();
    FlatRead one = read(bytes, STEEL);
    List<Problem> first = problems.sorted();
    Problems again = new Problems();
    Optional<FlatRead> other = FlatFile.read("part.dxf", bytes, STEEL, again);
    assertThat(again.sorted()).isEqualTo(first);
    assertThat(Sketch.svg(other.orElseThrow().layout(), List.of("a < b & c")))
        .isEqualTo(Sketch.svg(one.layout(), List.of("a < b & c")))
        .contains("a &lt; b &amp; c");
  }

  /**
   * Files written by another program's export: arcs as bulges, six circles by an array in a
   * squeezed and turned block (ellipses of 2 x 4), a circle seen from behind, an ellipse, a closed
   * spline, words, a hatch, a dimension, a dashed bend line. Areas by closed forms; that of the
   * uniform cubic spline by summing its basis functions finely.
   */
  @org.junit.jupiter.params.ParameterizedTest
  @org.junit.jupiter.params.provider.CsvSource({"plate-r12.dxf, 0, 7", "plate-r2010.dxf, 1, 9"})
  void filesOfAnotherProgram(String file, double later, int holes) throws java.io.IOException {
    byte[] bytes =
        java.nio.file.Files.readAllBytes(
            java.nio.file.Path.of("src/test/resources/drawings", file));
    FlatRead read = read(bytes, STEEL.in(DrawingUnit.MM));
    double turned = 4 * Math.atan(0.4);
    double radius = Math.hypot(40, 50) * 1.16 / 1.6;
    double bite = 1000 + radius * radius * (turned - Math.sin(turned)) / 2;
    double corner = 400 - 100 * Math.PI;
    double net = 60_000 - corner - bite - 6 * 8 * Math.PI - 100 * Math.PI;
    net -= later * (200 * Math.PI + 948.8888879);
    assertThat(read.shape().orElseThrow().netAreaMm2()).isEqualTo(net, within(1e-4));
    assertThat(read.layout().holes()).hasSize(holes);
    assertThat(read.layout().bends()).hasSize(1);
    assertThat(said()).containsExactly("ask folded-size-missing");
  }

  @Test
  void aTangleHasNoAreaAndIsDrawn() {
    StringBuilder tangle = new StringBuilder(DxfText.tags(0, "SECTION", 2, "ENTITIES"));
    tangle.append(DxfText.tags(0, "LWPOLYLINE", 8, "0", 90, 80, 70, 1));
    for (int i = 0; i < 80; i++) {
      double t = 2 * Math.PI * i / 4.01;
      tangle.append(DxfText.tags(10, 100 * Math.cos(t), 20, 100 * Math.sin(t)));
    }
    tangle.append(DxfText.tags(0, "ENDSEC", 0, "EOF"));
    refused(
        tangle.toString().getBytes(StandardCharsets.UTF_8),
        ProblemCode.DRAWING_UNREADABLE,
        "crosses itself");
  }
}
