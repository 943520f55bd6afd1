package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPacker;
import spangle.plan.CarrierSpec;
import spangle.plan.PartFacts;

/** How many pieces of a part the carriers of a line hold. */
final class CarrierRoom {
  private CarrierRoom() {}

  /**
   * Lots are cut smaller than the roomiest carrier holds where at least so many times as many
   * pieces then hang at once (common practice: the roomy ones then travel less full).
   */
  private static final double WORTH_IT = 1.5;

  /**
   * And not into more than so many lots for what the roomiest holds: hundreds of small hooks beside
   * one rack would make a lot of each piece, more than a week can be searched with.
   */
  private static final int MOST_CUTS = 4;

  /** A carrier, how many of it the line owns, and the pieces each holds. */
  record Room(String carrierId, int owned, int pieces) {}

  /**
   * Pieces of a lot: as many as the roomiest carrier holds, or as many as a smaller one does where
   * the roomy ones are few and the smaller ones would stand idle. A lot hangs on one carrier, so
   * its size decides which carriers it may take.
   *
   * @param rooms carriers it fits, most pieces first; at least one
   */
  static int lotPieces(List<Room> rooms) {
    int best = rooms.get(0).pieces();
    for (Room room : rooms) {
      if (room.pieces() * MOST_CUTS >= rooms.get(0).pieces()
          && atOnce(rooms, room.pieces()) >= WORTH_IT * atOnce(rooms, best)) {
        best = room.pieces();
      }
    }
    return best;
  }

  /** Pieces that hang at once, in lots of that size, one lot on each carrier that holds it. */
  private static long atOnce(List<Room> rooms, int pieces) {
    return rooms.stream()
        .filter(r -> r.pieces() >= pieces)
        .mapToLong(r -> (long) r.owned() * pieces)
        .sum();
  }

  /**
   * Carriers that hold at least one piece, most pieces first.
   *
   * @param part the part
   * @param carriers all carriers of the line
   * @param allowed ids allowed; empty = all
   * @param spun whether it goes into a basket; hung work never does
   */
  static List<Room> rooms(
      PartFacts part, List<CarrierSpec> carriers, List<String> allowed, boolean spun) {
    return rooms(
        part, carriers, allowed, c -> (c.face().style() == CarrierFace.Style.BULK) == spun);
  }

  /** Carriers for a piece that travels alone, tilted or in two dips: only its weight counts. */
  static List<Room> forOneAlone(PartFacts part, List<CarrierSpec> carriers, List<String> allowed) {
    return carriers.stream()
        .filter(c -> c.owned() > 0 && (allowed.isEmpty() || allowed.contains(c.id())))
        .filter(c -> c.face().style() != CarrierFace.Style.BULK)
        .filter(c -> part.massKg() <= c.face().maxMassKg())
        .map(c -> new Room(c.id(), c.owned(), 1))
        .toList();
  }

  /**
   * Carriers that hold work that is sent out: spun or hung, it lies on a pallet or the truck's
   * floor.
   */
  static List<Room> onPallets(PartFacts part, List<CarrierSpec> carriers, List<String> allowed) {
    List<String> known = carriers.stream().map(CarrierSpec::id).filter(allowed::contains).toList();
    return rooms(part, carriers, known, c -> true);
  }

  private static List<Room> rooms(
      PartFacts part,
      List<CarrierSpec> carriers,
      List<String> allowed,
      Predicate<CarrierSpec> suits) {
    HangItem one = LotMaker.item(part.partId(), part, 1);
    List<Room> rooms = new ArrayList<>();
    for (CarrierSpec carrier : carriers) {
      boolean wanted = allowed.isEmpty() || Set.copyOf(allowed).contains(carrier.id());
      if (wanted && suits.test(carrier) && carrier.owned() > 0) {
        int pieces = HangPacker.capacity(carrier.face(), one);
        if (pieces > 0) {
          rooms.add(new Room(carrier.id(), carrier.owned(), pieces));
        }
      }
    }
    rooms.sort(Comparator.comparingInt((Room r) -> -r.pieces()).thenComparing(Room::carrierId));
    return rooms;
  }
}
