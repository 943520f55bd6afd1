package spangle.intake.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.intake.brief.CarrierRoom.Room;

/** How large lots are cut; common practice, numbers by hand. */
class CarrierRoomTest {
  @Test
  void aLotIsCutForTheRoomiestCarrierWhereItStandsAlone() {
    assertThat(CarrierRoom.lotPieces(List.of(new Room("long", 2, 30)))).isEqualTo(30);
  }

  @Test
  void fewRoomyCarriersAndManySmallOnesTakeLotsThatFitBoth() {
    // Lots of 30: two beams, 60 at once; of 18: 2 x 18 + 4 x 18 = 108; of 15: 2 x 30 + 4 x 15 =
    // 120,
    // a ninth more for a fifth more lots.
    assertThat(lots(new Room("long", 2, 30), new Room("short", 4, 18))).isEqualTo(15);
    // Of 9, two on a short one and three on a long one: 54 + 72 = 126, a twentieth more for two
    // thirds more lots.
    assertThat(lots(new Room("long", 2, 27), new Room("short", 4, 18))).isEqualTo(18);
  }

  @Test
  void smallCarriersThatAddLittleDoNotPartLots() {
    // Lots of 30: 10 x 30 = 300; of 15: 300 + 15.
    assertThat(lots(new Room("long", 10, 30), new Room("short", 1, 16))).isEqualTo(30);
  }

  @Test
  void theSmallestOfThreeKindsMayDecide() {
    // 40 at once, then 30 + 30 = 60, then 20 x (2 + 1 + 5) = 160.
    assertThat(lots(new Room("a", 1, 40), new Room("b", 1, 30), new Room("c", 5, 20)))
        .isEqualTo(20);
  }

  @Test
  void hundredsOfSmallHooksBesideOneRackDoNotMakeALotOfEachPiece() {
    // A quarter of 40 is 10: a lot may be cut to 10 but not to 9, and least of all to 1.
    assertThat(CarrierRoom.lotPieces(List.of(new Room("rack", 1, 40), new Room("hook", 500, 1))))
        .isEqualTo(40);
    assertThat(CarrierRoom.lotPieces(List.of(new Room("rack", 1, 40), new Room("bar", 50, 9))))
        .isEqualTo(40);
    assertThat(CarrierRoom.lotPieces(List.of(new Room("rack", 1, 40), new Room("bar", 50, 10))))
        .isEqualTo(10);
  }

  @Test
  void aPieceIsNotParted() {
    assertThat(lots(new Room("long", 2, 2), new Room("short", 4, 1))).isEqualTo(1);
    assertThat(lots(new Room("long", 2, 1))).isEqualTo(1);
  }

  private static int lots(Room... rooms) {
    return CarrierRoom.lotPieces(List.of(rooms));
  }
}
