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
    return new HangBounds(grid, kinds(grid, items)).fewestCarriers();
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
    Kind[] kinds = kinds(grid, items);
    LoadingSearch search = new LoadingSearch(grid, kinds, effort.seed());
    search.build();
    if (effort.rounds() > 0) {
      search.improve(effort, new HangBounds(grid, kinds).fewestCarriers());
    }
    List<HangPattern> patterns = new ArrayList<>();
    for (Layout layout : search.carriers()) {
      patterns.add(layout.pattern(grid, kinds));
    }
    return patterns;
  }

  private static Kind[] kinds(Grid grid, List<HangItem> items) {
    return items.stream().map(item -> new Kind(grid, item)).toArray(Kind[]::new);
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
