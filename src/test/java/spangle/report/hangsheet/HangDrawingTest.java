package spangle.report.hangsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPacker;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;

/** What a hanger can read off the drawing. */
class HangDrawingTest {
  private static final CarrierFace RACK =
      new CarrierFace(1200, 1000, 300, 1, 20, 30, 40, 0, 500, 999, CarrierFace.Style.ROWS);

  private static HangItem part(String key, int pieces, double acrossMm, double dropMm) {
    return new HangItem(key, pieces, acrossMm, dropMm, 20, 1, 1, false);
  }

  private static HangPattern hang(CarrierFace face, HangItem... items) {
    return HangPacker.pattern(face, List.of(items)).orElseThrow();
  }

  private static Document read(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<String> words(String svg) throws Exception {
    NodeList texts = read(svg).getElementsByTagName("text");
    List<String> words = new ArrayList<>();
    for (int i = 0; i < texts.getLength(); i++) {
      words.add(texts.item(i).getTextContent());
    }
    return words;
  }

  @Test
  void rowsAlikeAreSaidOnce() throws Exception {
    // 10 a row: 10 x 100 + 9 x 20 = 1180; rows of 40 + 150 + 30; 25 pieces make 10, 10 and 5.
    List<String> words =
        words(HangDrawing.svg(hang(RACK, part("clip", 25, 100, 150)), RACK, Map.of()));
    assertThat(words).contains("rows 1-2, each: 10 x A", "row 3: 5 x A", "front: 25 pieces");
    assertThat(words).contains("25 x A; 100 x 150 mm");
    assertThat(words.stream().filter("A"::equals)).hasSize(25 + 1);
    // Bars at 0, 220 and 440 mm, the face ends at 1000.
    assertThat(words).contains("0", "220", "440", "1000", "1200 mm");
  }

  @Test
  void kindsDifferByHatchAndLetter() throws Exception {
    HangPattern pattern = hang(RACK, part("clip", 4, 100, 150), part("plate", 3, 300, 300));
    String svg = HangDrawing.svg(pattern, RACK, Map.of("clip", "B", "plate", "A"));
    assertThat(words(svg)).contains("4 x B; 100 x 150 mm", "3 x A; 300 x 300 mm");
    // Four clips and their line in the list are hatched; plates are left plain.
    NodeList hatches = read(svg).getElementsByTagName("path");
    assertThat(hatches.getLength()).isEqualTo(5);
  }

  @Test
  void ordersOfOnePartShareALetter() throws Exception {
    HangPattern pattern = hang(RACK, part("monday", 5, 100, 150), part("tuesday", 5, 100, 150));
    String svg = HangDrawing.svg(pattern, RACK, Map.of("monday", "A", "tuesday", "A"));
    assertThat(words(svg)).contains("row 1: 10 x A", "10 x A; 100 x 150 mm");
  }

  @Test
  void turnedPiecesAreMarked() throws Exception {
    HangPattern pattern =
        new HangPattern(
            List.of(
                new HungPiece("strip", 0, 0, 40, 600, 100, true),
                new HungPiece("strip", 0, 700, 40, 100, 600, false)));
    String svg = HangDrawing.svg(pattern, RACK, Map.of());
    assertThat(words(svg)).contains("2 x A, 1 turned; 100 x 600 mm", "row 1: 1 x A turned, 1 x A");
    assertThat(svg).containsOnlyOnce("rotate(90");
    assertThat(String.join(" ", words(svg))).contains("Letter on its side");
    String straight = HangDrawing.svg(hang(RACK, part("clip", 2, 100, 150)), RACK, Map.of());
    assertThat(straight).doesNotContain("rotate(90").doesNotContain("Letter on its side");
  }

  @Test
  void bothFacesAreDrawnAndAnEmptyOneIsNamed() throws Exception {
    CarrierFace two =
        new CarrierFace(1200, 1000, 300, 2, 20, 30, 40, 0, 500, 999, CarrierFace.Style.ROWS);
    List<String> one = words(HangDrawing.svg(hang(two, part("clip", 2, 100, 150)), two, Map.of()));
    assertThat(one).contains("front: 2 pieces", "nothing hangs on: back");
    List<String> both =
        words(HangDrawing.svg(hang(two, part("door", 2, 1100, 900)), two, Map.of()));
    assertThat(both).contains("front: 1 piece", "back: 1 piece", "back, row 1: 1 x A");
  }

  @Test
  void aBasketHasNoPlaces() throws Exception {
    CarrierFace basket =
        new CarrierFace(500, 400, 300, 1, 0, 0, 0, 0, 60, 0, CarrierFace.Style.BULK);
    String svg = HangDrawing.svg(hang(basket, part("pin", 40, 80, 12)), basket, Map.of());
    assertThat(words(svg)).contains("basket: 40 pieces", "40 x A; 80 x 12 mm");
    assertThat(words(svg)).noneMatch(text -> text.startsWith("row"));
  }

  @Test
  void hundredsAreAllDrawn() throws Exception {
    CarrierFace large = CarrierFace.plain(2500, 2000, CarrierFace.Style.ROWS);
    String svg = HangDrawing.svg(hang(large, part("clip", 500, 100, 100)), large, Map.of());
    // 500 pieces, the face, and the piece in the list.
    assertThat(read(svg).getElementsByTagName("rect").getLength()).isEqualTo(502);
    assertThat(words(svg)).contains("rows 1-20, each: 25 x A");
  }

  @Test
  void anyTextIsSafeAndTheSamePatternGivesTheSameBytes() throws Exception {
    HangPattern pattern = hang(RACK, part("<b>&\u0001\"", 2, 100, 150));
    String svg = HangDrawing.svg(pattern, RACK, Map.of("<b>&\u0001\"", "<script>&\u0002\""));
    assertThat(words(svg)).contains("2 x <script>& \"; 100 x 150 mm");
    assertThat(svg)
        .isEqualTo(HangDrawing.svg(pattern, RACK, Map.of("<b>&\u0001\"", "<script>&\u0002\"")));
  }

  @Test
  void theWideFormSaysTheSame() throws Exception {
    HangPattern pattern = hang(RACK, part("clip", 25, 100, 150));
    List<String> upright = words(HangDrawing.svg(pattern, RACK, Map.of()));
    List<String> wide = words(HangDrawing.wideSvg(pattern, RACK, Map.of()));
    assertThat(String.join(" ", wide)).isEqualTo(String.join(" ", upright));
  }
}
