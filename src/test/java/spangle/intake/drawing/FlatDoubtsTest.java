package spangle.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.measure.Box;
import spangle.part.BendAllowance;
import spangle.part.FlatPattern;

/** Units, bends and files that are asked about or refused; sheet 2 mm, steel. */
class FlatDoubtsTest extends FlatReading {
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
    double half = BendAllowance.squareBendMm(2) / 2;
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
        .isEqualTo(new BendWords.Said(30, false, OptionalDouble.empty()));
    assertThat(BendWords.said("{\\fArial|b0;ab 120,5° R=3}").orElseThrow())
        .isEqualTo(new BendWords.Said(120.5, false, OptionalDouble.of(3)));
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
  void filesOfAnotherProgram(String file, double later, int holes) throws IOException {
    byte[] bytes = Files.readAllBytes(Path.of("src/test/resources/drawings", file));
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
