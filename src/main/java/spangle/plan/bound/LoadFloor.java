package spangle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPacker;

/** Fewest carriers for lots of one finish. */
final class LoadFloor {
  private LoadFloor() {}

  /** By sums and pairs, and by the shape of the pieces as well. */
  static LineBounds.GroupBounds of(String finishKey, List<OpenLot> lots) {
    int alone = (int) lots.stream().filter(lot -> lot.lot.alone()).count();
    List<OpenLot> company = lots.stream().filter(lot -> !lot.lot.alone()).toList();
    int byMass = alone;
    int byRoom = alone;
    int byHooks = alone;
    int byConflict = alone;
    int loads = alone;
    for (List<OpenLot> part : LineWork.apart(company, Company::mayShareCarrier)) {
      int mass = fewest(part, lot -> lot.massShare);
      int room = Math.max(fewest(part, lot -> lot.roomShare), byShape(part));
      int hooks = fewest(part, lot -> lot.hookShare);
      int conflict = conflicts(part);
      byMass += mass;
      byRoom += room;
      byHooks += hooks;
      byConflict += conflict;
      loads += Math.max(Math.max(mass, room), Math.max(hooks, conflict));
    }
    return new LineBounds.GroupBounds(
        finishKey,
        lots.get(0).lot.finish().name(),
        lots.size(),
        byMass,
        byRoom,
        byHooks,
        byConflict,
        loads);
  }

  /** By sums only: for the many subsets the minutes are counted from. */
  static int quick(List<OpenLot> lots) {
    int alone = 0;
    List<OpenLot> company = new ArrayList<>();
    for (OpenLot lot : lots) {
      if (lot.lot.alone()) {
        alone++;
      } else {
        company.add(lot);
      }
    }
    int mass = fewest(company, lot -> lot.massShare);
    int room = fewest(company, lot -> lot.roomShare);
    int hooks = fewest(company, lot -> lot.hookShare);
    return alone + Math.max(mass, Math.max(room, hooks));
  }

  static int fewest(List<OpenLot> lots, ToDoubleFunction<OpenLot> share) {
    return Shares.fewest(lots.stream().mapToDouble(share).toArray(), lots.size());
  }

  private static int conflicts(List<OpenLot> part) {
    List<OpenLot> largeFirst = new ArrayList<>(part);
    largeFirst.sort(
        Comparator.comparingDouble(
                (OpenLot lot) -> -Math.max(lot.massShare, Math.max(lot.roomShare, lot.hookShare)))
            .thenComparing(lot -> lot.lot.id()));
    return LineWork.strangers(largeFirst, Company::mayShareCarrier).size();
  }

  /** Where all lots hang on one and the same kind of carrier, its own bound for the pieces. */
  private static int byShape(List<OpenLot> part) {
    if (part.get(0).carriers.size() != 1) {
      return 0;
    }
    CarrierFace face = part.get(0).carriers.get(0).face();
    Map<String, HangItem> items = new LinkedHashMap<>();
    for (OpenLot lot : part) {
      if (!lot.carriers.equals(part.get(0).carriers)
          || HangPacker.capacity(face, lot.lot.item()) == 0) {
        return 0;
      }
      items.merge(
          lot.lot.item().key(),
          lot.lot.item().withPieces(lot.lot.pieces()),
          (a, b) -> a.withPieces(a.pieces() + b.pieces()));
    }
    return HangPacker.fewestCarriers(face, List.copyOf(items.values()));
  }
}
