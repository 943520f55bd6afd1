package spangle.solve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPacker;
import spangle.fit.hang.HangPattern;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;

/** Draws where the pieces of a load hang. */
final class Patterns {
  private final Floor floor;

  Patterns(Floor floor) {
    this.floor = floor;
  }

  /** Empty for baskets and for lots that travel alone. */
  Optional<HangPattern> of(Load load) {
    CarrierFace face = floor.carriers[load.carrier].spec.face();
    if (load.alone || face.style() == CarrierFace.Style.BULK) {
      return Optional.empty();
    }
    Map<String, HangItem> items = new LinkedHashMap<>();
    for (int index : load.lots) {
      LotFacts lot = floor.lots[index];
      items.merge(
          lot.lot.item().key(), lot.lot.item(), (a, b) -> a.withPieces(a.pieces() + b.pieces()));
    }
    return HangPacker.pattern(face, List.copyOf(items.values()));
  }
}
