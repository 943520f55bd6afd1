package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPacker;
import spangle.plan.CarrierSpec;
import spangle.plan.PartFacts;

/** How many pieces of a part the carriers of a line hold. */
final class CarrierRoom {
  private CarrierRoom() {}

  /**
   * Smaller lots are more lots to plan: worth it where the pieces that hang at once grow by at
   * least this part of what the number of lots grows by (chosen on the demo week).
   */
  private static final double WORTH_IT = 0.3;

  /**
   * A carrier holds so many lots at most when its pieces are parted among them (chosen on the demo
   * week).
   */
  private static final int MOST_LOTS = 3;

  /**
   * What the roomiest carrier holds makes so many lots at most: hundreds of small hooks beside one
   * rack would make a lot of each piece, more than a week can be searched with (chosen on the demo
   * week).
   */
  private static final int MOST_CUTS = 4;

  /** A carrier, how many of it the line owns, and the pieces each holds. */
  record Room(String carrierId, int owned, int pieces) {}

  /**
   * Pieces of a lot: as many as the roomiest carrier holds, or fewer where more pieces hang at once
   * that way, because smaller carriers take a lot too and several lots fill a roomy one. A lot
   * hangs on one carrier, so its size decides which carriers it may take and how full they travel.
   *
   * @param rooms carriers it fits, most pieces first; at least one
   */
  static int lotPieces(List<Room> rooms) {
    int least = rooms.get(0).pieces() / MOST_CUTS;
    int[] sizes =
        rooms.stream()
            .flatMapToInt(r -> IntStream.rangeClosed(1, MOST_LOTS).map(n -> r.pieces() / n))
            .filter(pieces -> pieces >= Math.max(1, least))
            .distinct()
            .toArray();
    Arrays.sort(sizes);
    int best = sizes[sizes.length - 1];
    for (int k = sizes.length - 2; k >= 0; k--) {
      double more = (double) atOnce(rooms, sizes[k]) / atOnce(rooms, best) - 1;
      double moreLots = (double) best / sizes[k] - 1;
      if (more > 0 && more >= WORTH_IT * moreLots) {
        best = sizes[k];
      }
    }
    return best;
  }

  /** Pieces that hang at once in lots of that size. */
  private static long atOnce(List<Room> rooms, int pieces) {
    return rooms.stream().mapToLong(r -> (long) r.owned() * pieces * (r.pieces() / pieces)).sum();
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
