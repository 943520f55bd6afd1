package spangle.fit.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.fit.hang.CarrierFace.Style.BULK;
import static spangle.fit.hang.CarrierFace.Style.FREE;
import static spangle.fit.hang.CarrierFace.Style.ROWS;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Counts of one kind per carrier; every expected number is worked out by hand in the comment. */
class HangCapacityTest {
  private static final int UNCOUNTED = Integer.MAX_VALUE;

  private static CarrierFace rack(double gapMm, double hookDropMm, double pitchMm) {
    return new CarrierFace(
        1200, 1800, 300, 1, gapMm, gapMm, hookDropMm, pitchMm, 150, UNCOUNTED, ROWS);
  }

  private static HangItem bracket(int pieces, double acrossMm, double dropMm) {
    return new HangItem("bracket", pieces, acrossMm, dropMm, 40, 0.1, 1, false);
  }

  @Test
  void gapsAreBetweenPiecesOnly() {
    // Across: 8 x 120 + 7 x 30 = 1170 <= 1200, a ninth needs 1320. Down: 200 + 30 a row:
    // 7 x 200 + 6 x 30 = 1580, an eighth ends at 1810. 8 x 7 = 56.
    assertThat(HangPacker.capacity(rack(30, 0, 0), bracket(1, 120, 200))).isEqualTo(56);
  }

  @Test
  void theHookTakesHeightInEveryRow() {
    // Down: rows of 50 + 200 with 30 between: 6 x 250 + 5 x 30 = 1650; a seventh ends at 1930.
    assertThat(HangPacker.capacity(rack(30, 50, 0), bracket(1, 120, 200))).isEqualTo(8 * 6);
  }

  @Test
  void piecesHangAtHookPlaces() {
    // Pitch 100: 120 + 30 takes 2 places; left edges at 0, 200 .. 1000; the last ends at 1120.
    assertThat(HangPacker.capacity(rack(30, 0, 100), bracket(1, 120, 200))).isEqualTo(6 * 7);
    // 70 + 30 is exactly one place: left edges 0, 100 .. 1100; the last ends at 1170: 12 a row.
    assertThat(HangPacker.capacity(rack(30, 0, 100), bracket(1, 70, 200))).isEqualTo(12 * 7);
    // 70.1 + 30 needs two places: 0, 200 .. 1000 make 6.
    assertThat(HangPacker.capacity(rack(30, 0, 100), bracket(1, 70.1, 200))).isEqualTo(6 * 7);
    // 100 + 30 needs two places; the piece at 1000 ends at 1100, one more at 1200 would not.
    assertThat(HangPacker.capacity(rack(30, 0, 100), bracket(1, 100, 200))).isEqualTo(6 * 7);
  }

  @Test
  void anExactFitFitsAndATenthMoreDoesNot() {
    CarrierFace face = rack(0, 0, 0);
    assertThat(HangPacker.capacity(face, bracket(1, 400, 600))).isEqualTo(3 * 3);
    assertThat(HangPacker.capacity(face, bracket(1, 400.1, 600))).isEqualTo(2 * 3);
    assertThat(HangPacker.capacity(face, bracket(1, 400, 600.1))).isEqualTo(3 * 2);
    assertThat(HangPacker.capacity(face, bracket(1, 1200, 1800))).isEqualTo(1);
    assertThat(HangPacker.capacity(face, bracket(1, 1200.1, 1800))).isZero();
  }

  @Test
  void depthOffTheRackCounts() {
    HangItem deep = new HangItem("cabinet", 1, 600, 800, 300, 20, 2, false);
    HangItem deeper = new HangItem("cabinet", 1, 600, 800, 300.1, 20, 2, false);
    assertThat(HangPacker.capacity(rack(0, 0, 0), deep)).isEqualTo(4);
    HangCapacity none = HangPacker.capacityOf(rack(0, 0, 0), deeper);
    assertThat(none.pieces()).isZero();
    assertThat(none.limit()).isEqualTo(HangLimit.DOES_NOT_HANG);
  }

  @Test
  void bothFacesCount() {
    CarrierFace two = new CarrierFace(1200, 1800, 300, 2, 30, 30, 0, 0, 150, UNCOUNTED, ROWS);
    assertThat(HangPacker.capacity(two, bracket(1, 120, 200))).isEqualTo(2 * 56);
  }

  @Test
  void massStopsBeforeRoomDoes() {
    // 150 kg / 4.5 kg = 33.3: 33 pieces where 56 have room.
    HangItem plate = new HangItem("plate", 1, 120, 200, 10, 4.5, 1, false);
    HangCapacity capacity = HangPacker.capacityOf(rack(30, 0, 0), plate);
    assertThat(capacity).isEqualTo(new HangCapacity(33, HangLimit.MASS, 56, 33, UNCOUNTED));
    // 150 kg / 3 kg is 50 exactly and counts.
    HangItem lighter = new HangItem("plate", 1, 120, 200, 10, 3, 1, false);
    assertThat(HangPacker.capacity(rack(30, 0, 0), lighter)).isEqualTo(50);
  }

  @Test
  void hooksStopBeforeRoomDoes() {
    CarrierFace fewHooks = new CarrierFace(1200, 1800, 300, 1, 30, 30, 0, 0, 150, 41, ROWS);
    HangItem twoHooks = new HangItem("clip", 1, 120, 200, 10, 0.1, 2, false);
    HangCapacity capacity = HangPacker.capacityOf(fewHooks, twoHooks);
    assertThat(capacity.pieces()).isEqualTo(20);
    assertThat(capacity.limit()).isEqualTo(HangLimit.HOOKS);
  }

  @Test
  void rowsMayBePartlyTurned() {
    // Bars of 100 x 40 in 1000 x 330, no gaps. As described: 10 a row, 8 rows = 80, 10 mm left.
    // Turned (40 x 100): 25 a row, 3 rows = 75, 30 mm left. Two turned rows and three as described:
    // 2 x 25 + 3 x 10 = 80. One turned, five as described: 25 + 50 = 75.
    CarrierFace face = CarrierFace.plain(1000, 330, ROWS);
    HangItem bar = new HangItem("bar", 1, 100, 40, 0, 1, 1, true);
    assertThat(HangPacker.capacity(face, bar)).isEqualTo(80);
    // With 10 mm more height: three turned rows and one as described: 75 + 10 = 85.
    assertThat(HangPacker.capacity(CarrierFace.plain(1000, 340, ROWS), bar)).isEqualTo(85);
    HangItem fixed = new HangItem("bar", 1, 100, 40, 0, 1, 1, false);
    assertThat(HangPacker.capacity(CarrierFace.plain(1000, 340, ROWS), fixed)).isEqualTo(80);
  }

  @Test
  void freePlacesMayBeTurnedBesideOneAnother() {
    // 500 x 300 on 800 x 500: one as described, one turned beside it (300 x 500).
    HangItem plate = new HangItem("plate", 1, 500, 300, 0, 1, 1, true);
    assertThat(HangPacker.capacity(CarrierFace.plain(800, 500, ROWS), plate)).isEqualTo(2);
    assertThat(HangPacker.capacity(CarrierFace.plain(1300, 600, ROWS), plate)).isEqualTo(4);
    // 1300 x 600: two columns of two (500 wide, 300 + 300 down) and one turned at the right.
    assertThat(HangPacker.capacity(CarrierFace.plain(1300, 600, FREE), plate)).isEqualTo(5);
  }

  @Test
  void basketsFillByMassAndVolume() {
    // 500 x 400 x 300 to the fill line = 60 l, of which envelopes may fill 0.6 = 36 l.
    CarrierFace basket = new CarrierFace(500, 400, 300, 1, 0, 0, 0, 0, 60, 0, BULK);
    // 120 x 50 x 6 mm = 0.036 l: 1000 pieces by volume; 0.05 kg: 1200 by mass.
    HangItem clip = new HangItem("clip", 1, 120, 50, 6, 0.05, 1, false);
    HangCapacity capacity = HangPacker.capacityOf(basket, clip);
    assertThat(capacity.pieces()).isEqualTo(1000);
    assertThat(capacity.limit()).isEqualTo(HangLimit.VOLUME);
    HangItem heavy = new HangItem("clip", 1, 120, 50, 6, 0.1, 1, false);
    assertThat(HangPacker.capacityOf(basket, heavy).limit()).isEqualTo(HangLimit.MASS);
    assertThat(HangPacker.capacity(basket, heavy)).isEqualTo(600);
    HangItem tooLong = new HangItem("bar", 1, 501, 50, 6, 0.1, 1, false);
    assertThat(HangPacker.capacity(basket, tooLong)).isZero();
  }

  @Test
  void theWholeCapacityHangsAndOneMoreDoesNot() {
    for (CarrierFace.Style style : List.of(ROWS, FREE)) {
      CarrierFace face = new CarrierFace(1170, 1310, 300, 2, 25, 30, 40, 50, 1e6, UNCOUNTED, style);
      HangItem clip = new HangItem("clip", 1, 133, 71, 12, 0.2, 1, true);
      int most = HangPacker.capacity(face, clip);
      List<HangItem> full = List.of(clip.withPieces(most));
      assertThat(HangPacker.fits(face, full)).isTrue();
      PatternProof.prove(face, full, HangPacker.pattern(face, full).orElseThrow());
      assertThat(HangPacker.fits(face, List.of(clip.withPieces(most + 1)))).isFalse();
    }
  }
}
