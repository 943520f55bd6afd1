package spangle.fit.hang;

import java.util.ArrayList;
import java.util.List;

/** Many pieces over as many carriers as they need. */
final class Packing {
  private Packing() {}

  static int fewest(CarrierFace face, List<HangItem> items) {
    requireEachHangs(face, items);
    if (items.isEmpty()) {
      return 0;
    }
    if (face.style() == CarrierFace.Style.BULK) {
      return HangBounds.fewestBaskets(face, items);
    }
    Grid grid = new Grid(face);
    return new HangBounds(grid, Kind.of(grid, items)).fewestCarriers();
  }

  static List<HangPattern> all(CarrierFace face, List<HangItem> items, HangEffort effort) {
    requireEachHangs(face, items);
    if (items.isEmpty()) {
      return List.of();
    }
    if (face.style() == CarrierFace.Style.BULK) {
      return Baskets.fill(face, items);
    }
    Grid grid = new Grid(face);
    Kind[] kinds = Kind.of(grid, items);
    LoadingSearch search = new LoadingSearch(grid, kinds, effort.seed());
    search.build();
    if (effort.rounds() > 0) {
      search.improve(effort, new HangBounds(grid, kinds).fewestCarriers());
    }
    List<HangPattern> patterns = new ArrayList<>();
    int[] dealt = new int[kinds.length];
    for (Layout layout : search.carriers()) {
      patterns.add(layout.pattern(grid, kinds, dealt));
    }
    return patterns;
  }

  private static void requireEachHangs(CarrierFace face, List<HangItem> items) {
    for (HangItem item : items) {
      HangCapacity capacity = Capacities.of(face, item.withPieces(1));
      if (capacity.pieces() == 0) {
        throw new IllegalArgumentException(
            "%s does not go on the carrier even alone: %s"
                .formatted(item.key(), capacity.limit().words()));
      }
    }
  }
}
