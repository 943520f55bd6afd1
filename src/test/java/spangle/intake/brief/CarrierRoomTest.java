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
    // Lots of 30: two beams, 60 at once; lots of 16: six beams, 96 at once.
    assertThat(CarrierRoom.lotPieces(List.of(new Room("long", 2, 30), new Room("short", 4, 16))))
        .isEqualTo(16);
  }

  @Test
  void aFewSmallCarriersMoreAreNotWorthHalfFilledRoomyOnes() {
    // Lots of 30: 120 at once; lots of 16: 96. And 60 against 80 is less than half as many again.
    assertThat(CarrierRoom.lotPieces(List.of(new Room("long", 4, 30), new Room("short", 2, 16))))
        .isEqualTo(30);
    assertThat(CarrierRoom.lotPieces(List.of(new Room("long", 2, 30), new Room("short", 3, 16))))
        .isEqualTo(30);
  }

  @Test
  void theSmallestOfThreeKindsMayDecide() {
    // 40 at once, then 30 x 2 = 60, then 20 x 7 = 140.
    assertThat(
            CarrierRoom.lotPieces(
                List.of(new Room("a", 1, 40), new Room("b", 1, 30), new Room("c", 5, 20))))
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
}
