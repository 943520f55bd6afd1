package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import spangle.equipment.Pace;
import spangle.fit.hang.HangItem;
import spangle.intake.week.Wanted;
import spangle.plan.Chain;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.Visit;

/**
 * Splits the pieces of a part into lots. Pieces that come together stay together as far as one
 * carrier of every leg holds them: full carriers first, the rest in a lot that can share one. The
 * same pieces stay one lot through all legs, so that nothing is lost between them.
 */
final class LotMaker {
  private LotMaker() {}

  static List<Lot> lots(
      PartFacts part,
      List<Wanted.Arrival> arrivals,
      List<Leg> legs,
      List<String> kitIds,
      LotNumbers numbers) {
    int most = legs.stream().mapToInt(Leg::most).min().orElse(0);
    List<Lot> lots = new ArrayList<>();
    for (Wanted.Arrival arrival : arrivals) {
      int left = arrival.pieces();
      while (left > 0 && most > 0) {
        int pieces = Math.min(left, most);
        left -= pieces;
        String name = name(part, numbers.next(pieces, arrival.atMin()));
        lots.addAll(chain(name, part, legs, kitIds, pieces, arrival.atMin()));
      }
    }
    return lots;
  }

  private static String name(PartFacts part, int number) {
    return part.jobId() + "/" + part.partId() + "#" + number;
  }

  /** The lots of the same pieces through all legs. */
  static List<Lot> chain(
      String name, PartFacts part, List<Leg> legs, List<String> kitIds, int pieces, int readyMin) {
    List<Lot> lots = new ArrayList<>();
    String before = "";
    for (int i = 0; i < legs.size(); i++) {
      Leg leg = legs.get(i);
      String id = legs.size() > 1 ? name + "." + (i + 1) : name;
      Optional<Chain> chain =
          i == 0
              ? Optional.empty()
              : Optional.of(new Chain(before, leg.minGapMin(), leg.maxGapMin()));
      lots.add(lot(id, part, leg, i, chain, pieces, readyMin, i == legs.size() - 1, kitIds));
      before = id;
    }
    return lots;
  }

  private static Lot lot(
      String id,
      PartFacts part,
      Leg leg,
      int index,
      Optional<Chain> chain,
      int pieces,
      int readyMin,
      boolean last,
      List<String> kitIds) {
    double area = pieces * part.areaM2();
    double mass = pieces * part.massKg();
    List<Visit> visits = new ArrayList<>();
    for (Leg.Stop stop : leg.stops()) {
      Pace pace = stop.pace();
      visits.add(
          new Visit(
              stop.stationId(),
              (int) Math.ceil(pace.fixedMin()),
              pace.variableMin(pieces, area, mass)));
    }
    return new Lot(
        id,
        part.jobId(),
        part.partId(),
        part.description(),
        pieces,
        index,
        chain,
        leg.lineId(),
        leg.finish(),
        leg.alone(),
        leg.batchGroup(),
        readyMin,
        part.dueMin(),
        part.weight(),
        last,
        leg.dwells(),
        leg.machines(),
        leg.carriersFor(pieces),
        item(id, part, pieces),
        visits,
        area,
        mass,
        pieces * leg.materialPerPiece(),
        kitIds);
  }

  /** Hangs with its two longest sides seen, the longest down. */
  static HangItem item(String key, PartFacts part, int pieces) {
    double[] sides = {
      part.envelopeMm().lengthMm(), part.envelopeMm().widthMm(), part.envelopeMm().heightMm()
    };
    Arrays.sort(sides);
    return new HangItem(
        key, pieces, sides[1], sides[2], sides[0], part.massKg(), part.hooks(), true);
  }
}
