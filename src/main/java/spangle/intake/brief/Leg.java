package spangle.intake.brief;

import java.util.List;
import spangle.equipment.Pace;
import spangle.plan.Dwell;
import spangle.plan.Finish;

/**
 * One leg of a part's route, per piece.
 *
 * @param lineId the line
 * @param finish what it gives
 * @param batchGroup what may share a machine
 * @param dwells windows by setting
 * @param machines machines it may go in
 * @param rooms carriers it fits and how many pieces each holds, most first
 * @param alone whether nothing may share its load
 * @param most pieces of a lot: of those that hang on one carrier
 * @param stops stations beside the machine
 * @param minGapMin least minutes after the leg before
 * @param maxGapMin most minutes after it
 * @param materialPerPiece powder or zinc in kg, paint in litres
 */
record Leg(
    String lineId,
    Finish finish,
    String batchGroup,
    List<Dwell> dwells,
    List<String> machines,
    List<CarrierRoom.Room> rooms,
    boolean alone,
    int most,
    List<Stop> stops,
    int minGapMin,
    int maxGapMin,
    double materialPerPiece) {
  Leg {
    dwells = List.copyOf(dwells);
    machines = List.copyOf(machines);
    rooms = List.copyOf(rooms);
    stops = List.copyOf(stops);
  }

  /** Carriers that hold so many pieces; all of them where it travels alone. */
  List<String> carriersFor(int pieces) {
    return rooms.stream()
        .filter(r -> alone || r.pieces() >= pieces)
        .map(CarrierRoom.Room::carrierId)
        .toList();
  }

  /** A station and how long it takes. */
  record Stop(String stationId, Pace pace) {}
}
