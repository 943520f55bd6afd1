package spangle.fit.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static spangle.fit.hang.CarrierFace.Style.BULK;
import static spangle.fit.hang.CarrierFace.Style.FREE;
import static spangle.fit.hang.CarrierFace.Style.ROWS;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.fit.hang.HangPattern.HungPiece;

/** Mixed carriers small enough to check with a pencil. */
class HangPackerTest {
  private static HangItem part(String key, int pieces, double acrossMm, double dropMm) {
    return new HangItem(key, pieces, acrossMm, dropMm, 0, 1, 1, false);
  }

  @Test
  void aRowIsAsDeepAsItsLongestPiece() {
    // 1000 x 700: a row of two 400 x 400 and one of two 500 x 300 fill the height exactly.
    List<HangItem> items = List.of(part("plate", 2, 400, 400), part("clip", 2, 500, 300));
    assertThat(HangPacker.fits(CarrierFace.plain(1000, 700, ROWS), items)).isTrue();
    assertThat(HangPacker.fits(CarrierFace.plain(1000, 699.9, ROWS), items)).isFalse();
    assertThat(HangPacker.pattern(CarrierFace.plain(1000, 699.9, ROWS), items)).isEmpty();
  }

  @Test
  void nothingHangsBelowAShortPieceOfARowButDoesOnAMesh() {
    // 600 x 400: a 300 x 400 door; beside it only 300 mm: two clips of 300 x 200, one over the
    // other.
    List<HangItem> items = List.of(part("door", 1, 300, 400), part("clip", 2, 300, 200));
    assertThat(HangPacker.pattern(CarrierFace.plain(600, 400, ROWS), items)).isEmpty();
    assertThat(HangPacker.fits(CarrierFace.plain(600, 400, FREE), items)).isTrue();
  }

  @Test
  void massAndHooksHoldForTheWholeCarrier() {
    List<HangItem> items = List.of(part("plate", 2, 100, 100), part("clip", 2, 100, 100));
    assertThat(HangPacker.fits(limited(4, 4), items)).isTrue();
    assertThat(HangPacker.fits(limited(3.9, 4), items)).isFalse();
    assertThat(HangPacker.fits(limited(4, 3), items)).isFalse();
    assertThat(HangPacker.fewestCarriers(limited(3.9, 4), items)).isEqualTo(2);
    assertThat(HangPacker.packAll(limited(4, 3), items, HangEffort.rounds(50))).hasSize(2);
  }

  private static CarrierFace limited(double maxMassKg, int maxHooks) {
    return new CarrierFace(1000, 1000, 100, 1, 0, 0, 0, 0, maxMassKg, maxHooks, ROWS);
  }

  @Test
  void aQuarterTurnIsTakenWhereAllowed() {
    CarrierFace face = CarrierFace.plain(900, 200, ROWS);
    HangItem upright = new HangItem("strip", 1, 200, 900, 0, 1, 1, false);
    HangItem turnable = new HangItem("strip", 1, 200, 900, 0, 1, 1, true);
    assertThat(HangPacker.pattern(face, List.of(upright))).isEmpty();
    assertThat(HangPacker.pattern(face, List.of(turnable)).orElseThrow().pieces())
        .containsExactly(new HungPiece("strip", 0, 0, 0, 900, 200, true));
  }

  @Test
  void piecesHangBelowTheirHooksAtHookPlaces() {
    CarrierFace face = new CarrierFace(1000, 700, 100, 1, 20, 25, 40, 100, 500, 99, ROWS);
    HangPattern pattern =
        HangPacker.pattern(face, List.of(part("clip", 3, 450, 200))).orElseThrow();
    // 450 + 20 takes five places of 100; the second row starts 40 + 200 + 25 lower.
    assertThat(pattern.pieces())
        .containsExactly(
            new HungPiece("clip", 0, 0, 40, 450, 200, false),
            new HungPiece("clip", 0, 500, 40, 450, 200, false),
            new HungPiece("clip", 0, 0, 305, 450, 200, false));
    assertThat(pattern.rows())
        .containsExactly(
            new HungRow(0, 40, 200, List.of(new HungRow.Run("clip", 2, false))),
            new HungRow(0, 305, 200, List.of(new HungRow.Run("clip", 1, false))));
  }

  @Test
  void alikePartsOfTwoOrdersShareRowsAndKeepTheirNames() {
    // 56 have room; 28 and 28 of the same shape are as good as 56 of one.
    CarrierFace face = new CarrierFace(1200, 1800, 300, 1, 30, 30, 0, 0, 150, 999, ROWS);
    List<HangItem> items = List.of(part("monday", 28, 120, 200), part("tuesday", 28, 120, 200));
    HangPattern pattern = HangPacker.pattern(face, items).orElseThrow();
    assertThat(pattern.counts()).isEqualTo(Map.of("monday", 28, "tuesday", 28));
    PatternProof.prove(face, items, pattern);
    List<HangItem> oneMore = List.of(part("monday", 28, 120, 200), part("tuesday", 29, 120, 200));
    assertThat(HangPacker.fits(face, oneMore)).isFalse();
  }

  @Test
  void fiveHundredBracketsAreTenFullRacks() {
    // 10 x 5 brackets a rack: 100 + 20 across, 100 + 20 down on 1180 x 580.
    CarrierFace face = new CarrierFace(1180, 580, 100, 1, 20, 20, 0, 0, 500, 999, ROWS);
    List<HangItem> items = List.of(part("bracket", 500, 100, 100));
    assertThat(HangPacker.fewestCarriers(face, items)).isEqualTo(10);
    assertThat(HangPacker.packAllQuickly(face, items))
        .hasSize(10)
        .allSatisfy(pattern -> assertThat(pattern.pieces()).hasSize(50));
  }

  @Test
  void basketsTakeWhatMassAndVolumeAllow() {
    CarrierFace basket = new CarrierFace(500, 400, 300, 1, 0, 0, 0, 0, 60, 0, BULK);
    HangItem clip = new HangItem("clip", 500, 120, 50, 6, 0.1, 1, false);
    HangItem pin = new HangItem("pin", 100, 100, 12, 12, 0.1, 0, false);
    List<HangItem> sixtyKg = List.of(clip, pin);
    assertThat(HangPacker.fits(basket, sixtyKg)).isTrue();
    assertThat(HangPacker.pattern(basket, sixtyKg).orElseThrow().counts())
        .isEqualTo(Map.of("clip", 500, "pin", 100));
    assertThat(HangPacker.fits(basket, List.of(clip, pin.withPieces(101)))).isFalse();
    // 1250 clips are 125 kg: three baskets of 60 kg.
    List<HangItem> many = List.of(clip.withPieces(1250));
    assertThat(HangPacker.fewestCarriers(basket, many)).isEqualTo(3);
    assertThat(HangPacker.packAll(basket, many, HangEffort.rounds(10)))
        .extracting(pattern -> pattern.pieces().size())
        .containsExactly(600, 600, 50);
  }

  @Test
  void theBoundSeesLargePiecesThatShareNoFrame() {
    // Five 60 x 60 on 100 x 100: by area 1.8 frames, but no two share one.
    List<HangItem> items = List.of(part("hatch", 5, 60, 60));
    assertThat(HangPacker.fewestCarriers(CarrierFace.plain(100, 100, FREE), items)).isEqualTo(5);
    // 50.1 tall strips of the whole width: no two share a frame; 50.0 ones do.
    assertThat(
            HangPacker.fewestCarriers(
                CarrierFace.plain(100, 100, FREE), List.of(part("strip", 4, 100, 50.1))))
        .isEqualTo(4);
    assertThat(
            HangPacker.fewestCarriers(
                CarrierFace.plain(100, 100, FREE), List.of(part("strip", 4, 100, 50))))
        .isEqualTo(2);
  }

  @Test
  void rowsOfMatchedPairsFillTheFrame() {
    // Rows of 10 across: 6 + 4, 7 + 3, 8 + 2; drops 4 + 3 + 3 = 10.
    List<HangItem> items =
        List.of(
            part("a", 1, 6, 4),
            part("b", 1, 4, 4),
            part("c", 1, 7, 3),
            part("d", 1, 3, 3),
            part("e", 1, 8, 3),
            part("f", 1, 2, 3));
    Optional<HangPattern> pattern = HangPacker.pattern(CarrierFace.plain(10, 10, ROWS), items);
    PatternProof.prove(CarrierFace.plain(10, 10, ROWS), items, pattern.orElseThrow());
    assertThat(HangPacker.packAll(CarrierFace.plain(10, 10, ROWS), items, HangEffort.rounds(2000)))
        .hasSize(1);
  }

  @Test
  void nothingToHangNeedsNoCarrier() {
    CarrierFace face = CarrierFace.plain(100, 100, ROWS);
    assertThat(HangPacker.fits(face, List.of())).isTrue();
    assertThat(HangPacker.pattern(face, List.of()).orElseThrow().pieces()).isEmpty();
    assertThat(HangPacker.packAll(face, List.of(), HangEffort.rounds(1))).isEmpty();
    assertThat(HangPacker.fewestCarriers(face, List.of())).isZero();
  }

  @Test
  void aPartThatDoesNotHangIsNamed() {
    CarrierFace face = CarrierFace.plain(100, 100, ROWS);
    List<HangItem> items = List.of(part("gangway", 1, 101, 50));
    assertThat(HangPacker.fits(face, items)).isFalse();
    assertThatThrownBy(() -> HangPacker.packAllQuickly(face, items))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("gangway")
        .hasMessageContaining("too large");
  }

  @Test
  void impossibleSizesAreRefused() {
    assertThatThrownBy(() -> part("clip", 0, 10, 10)).hasMessageContaining("clip");
    assertThatThrownBy(() -> part("clip", 1, 0, 10)).hasMessageContaining("across");
    assertThatThrownBy(() -> part("clip", 1, 10, Double.NaN)).hasMessageContaining("drop");
    assertThatThrownBy(() -> CarrierFace.plain(0, 10, ROWS)).hasMessageContaining("width");
    assertThatThrownBy(() -> limited(0, 1)).hasMessageContaining("kg");
    assertThatThrownBy(() -> limited(1, -1)).hasMessageContaining("hooks");
  }
}
