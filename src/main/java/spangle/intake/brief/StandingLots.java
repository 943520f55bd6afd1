package spangle.intake.brief;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spangle.intake.event.Happened.PartKey;
import spangle.intake.event.Happened.Rework;
import spangle.intake.week.Coating;
import spangle.intake.week.PartLine;
import spangle.intake.week.ZincStrip;
import spangle.plan.Caged;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.LotChange;
import spangle.plan.PartFacts;
import spangle.plan.Scrapped;
import spangle.plan.event.LotNames;

/**
 * The lots of one part: what stands as it is, the rest made anew, rejected pieces once more. Every
 * piece ordered is in one of them, held, missing or cancelled.
 */
final class StandingLots {
  private static final String STRIP =
      "strip them by the shop's licensed way, then report them stripped: they are planned again";
  private static final String STRIP_ZINC =
      "strip them by the shop's licensed way (zinc in acid gives off hydrogen: exhaust on, no flame,"
          + " goggles and gloves; acid that holds zinc is kept apart), then report them stripped:"
          + " they are planned again from bare steel";

  private final Standing standing;
  private final PartKey key;
  private final PartLine line;
  private final int mostCoats;
  private final Optional<ZincStrip> strip;
  private final ReworkPool pool;

  /**
   * For one part.
   *
   * @param mostCoats coats of its last colour a piece may bear; beyond them it is stripped
   * @param strip where rejected zinc comes off; empty where a person has to see to it
   */
  StandingLots(
      Standing standing, String jobId, PartLine line, int mostCoats, Optional<ZincStrip> strip) {
    this.mostCoats = mostCoats;
    this.strip = strip;
    this.standing = standing;
    this.key = new PartKey(jobId, line.id());
    this.line = line;
    this.pool =
        ReworkPool.of(
            standing.reworks().stream().filter(r -> r.part().equals(key)).toList(),
            scrapped(true),
            mostCoats,
            this::hangsAgain);
  }

  private boolean cancelled() {
    return standing.cancelled().contains(key);
  }

  private int openPieces() {
    return line.qty() - standing.settledOrScrapped(key);
  }

  /** What a shut gate keeps out: the pieces that do not hang already, and rework. */
  List<Held> heldBack(List<Held> shut) {
    List<Held> back = new ArrayList<>();
    if (cancelled()) {
      return back;
    }
    int rework = reworks().stream().mapToInt(this::reworkLeft).sum() + toStrip();
    for (Held each : shut) {
      if (openPieces() > 0) {
        back.add(with(each, openPieces(), each.gate()));
      }
      if (rework > 0) {
        back.add(with(each, rework, "rework-" + each.gate()));
      }
    }
    return back;
  }

  /**
   * Rejected pieces of which no lot is made yet; none where there are none.
   *
   * @param stopped whether a shut gate holds the part
   */
  Optional<Caged> caged(boolean stopped) {
    int again = stopped || cancelled() ? reworks().stream().mapToInt(this::reworkLeft).sum() : 0;
    int pieces = again + toStrip();
    return pieces == 0
        ? Optional.empty()
        : Optional.of(new Caged(key.jobId(), key.partId(), pieces));
  }

  private static Held with(Held held, int pieces, String gate) {
    return new Held(
        held.jobId(),
        held.partId(),
        held.name(),
        pieces,
        gate,
        held.words(),
        held.opens(),
        held.whoAnswers(),
        held.danger(),
        held.dueMin());
  }

  /** Lots of settled pieces behind a shut gate: what has not begun finds no machine any more. */
  List<Lot> stopped() {
    List<Lot> lots = new ArrayList<>();
    for (Standing.Chain chain : standing.settled(key)) {
      for (Lot lot : chain.lots()) {
        lots.add(chain.fixed().contains(lot.id()) ? lot : LotChange.of(lot).inNone().made());
      }
    }
    return lots;
  }

  /** All lots of the part. */
  List<Lot> lots(PartFacts part, List<Leg> legs, List<String> kitIds) {
    List<Lot> lots = new ArrayList<>();
    for (Standing.Chain chain : standing.settled(key)) {
      lots.addAll(settled(chain, part, legs, kitIds));
    }
    if (!cancelled()) {
      lots.addAll(
          LotMaker.lots(
              part,
              standing.open(key, line.wanted().arrivals()),
              legs,
              kitIds,
              standing.numbers(key)));
      reworks().forEach(r -> lots.addAll(again(r, part, legs, kitIds)));
    }
    return lots;
  }

  /** Legs that have not begun follow what is known now; the others stay as they were. */
  private static List<Lot> settled(
      Standing.Chain chain, PartFacts part, List<Leg> legs, List<String> kitIds) {
    int ready = chain.lots().get(0).readyMin();
    List<Lot> now = LotMaker.chain(chain.name(), part, legs, kitIds, chain.pieces(), ready);
    boolean sameRoute =
        now.stream().map(Lot::id).toList().equals(chain.lots().stream().map(Lot::id).toList());
    List<Lot> lots = new ArrayList<>();
    for (int i = 0; i < chain.lots().size(); i++) {
      Lot lot = chain.lots().get(i);
      lots.add(chain.fixed().contains(lot.id()) || !sameRoute ? lot : now.get(i));
    }
    return lots;
  }

  /** Pieces that should be here and were not counted in, or of which nobody says when they come. */
  List<Held> notArrived(PartFacts part) {
    int pieces = standing.missing(key, line.qty(), line.wanted().arrivals());
    if (pieces == 0 || cancelled()) {
      return List.of();
    }
    return List.of(
        new Held(
            key.jobId(),
            key.partId(),
            part.description(),
            pieces,
            Held.NOT_ARRIVED,
            standing.missing().containsKey(key)
                ? pieces
                    + " pieces should be here and were not counted in, or nobody says when they come"
                : pieces + " of " + line.qty() + " pieces: nobody says when they come",
            "count them in when they come, or say when they are expected",
            "bending",
            2,
            part.dueMin()));
  }

  /** Pieces that are beyond saving: no day brings them back. */
  List<Held> scrapped() {
    List<Held> gone = new ArrayList<>();
    if (cancelled()) {
      return gone;
    }
    for (boolean rejected : new boolean[] {false, true}) {
      List<Scrapped> own = scrapped(rejected);
      int pieces = own.stream().mapToInt(Scrapped::pieces).sum();
      if (pieces > 0) {
        gone.add(
            new Held(
                key.jobId(),
                key.partId(),
                line.words(),
                pieces,
                rejected ? Scrapped.REWORK_GATE : Scrapped.GATE,
                pieces
                    + " of "
                    + line.qty()
                    + (pieces == 1 ? " pieces is" : " pieces are")
                    + " scrapped"
                    + (rejected ? " after they were rejected" : ""),
                "cut "
                    + pieces
                    + " more and order them in the job file (count "
                    + (line.qty() + pieces)
                    + "), or tell the customer",
                "cutting",
                Held.ONLY_A_DATE,
                line.wanted().dueMin()));
      }
    }
    return gone;
  }

  /** Pieces that bear as many coats as they may and did not pass: they are stripped first. */
  List<Held> toBeStripped(PartFacts part, Optional<Coating> coating) {
    int pieces = toStrip();
    if (pieces == 0 || cancelled()) {
      return List.of();
    }
    boolean strong = line.metal().strengthMpa().orElse(0) > ZincStrip.STRONGEST_MPA;
    return List.of(
        new Held(
            key.jobId(),
            key.partId(),
            part.description(),
            pieces,
            "rework-strip",
            coating.map(c -> tooManyCoats(pieces, c)).orElseGet(() -> zincOn(pieces, strong)),
            coating.isPresent() ? STRIP : STRIP_ZINC,
            "supervisor",
            coating.isEmpty() && strong ? 0 : 2,
            part.dueMin()));
  }

  private String tooManyCoats(int pieces, Coating coating) {
    return String.format(
        Locale.ROOT,
        "%d rejected pieces bear all the coats they may (%d coats of %.0f um, the limit is"
            + " %d coats and %.0f um of %s): not coated over, stripped",
        pieces,
        mostCoats,
        coating.coatUm(line),
        coating.recoating().mostCoats(),
        coating.recoating().mostUm(),
        coating.name());
  }

  private String zincOn(int pieces, boolean strong) {
    String zinc = pieces + " rejected pieces have to be stripped of their zinc before another dip";
    return strong
        ? zinc
            + String.format(
                Locale.ROOT,
                "; steel of %.0f MPa takes up hydrogen in acid and can crack later: not into it a"
                    + " second time without the engineer",
                line.metal().strengthMpa().orElse(0))
        : zinc + ", and coatings.yaml names no tank for it (zinc: strip)";
  }

  /** What was rejected and may be coated over, and what is bare again. */
  private List<Rework> reworks() {
    return pool.again();
  }

  private int toStrip() {
    return pool.toStrip();
  }

  private List<Scrapped> scrapped(boolean rejected) {
    return standing.scrapped().stream()
        .filter(s -> s.rejected() == rejected && s.of(key.jobId(), key.partId()))
        .toList();
  }

  private List<Standing.Chain> settledOf(Rework rework) {
    String name = LotNames.reworkOf(key.jobId(), key.partId(), rework.event());
    return standing.settled(key).stream()
        .filter(c -> c.name().equals(name) || c.name().startsWith(name + "-"))
        .toList();
  }

  /** Pieces of a report whose second round hangs or is done. */
  private int hangsAgain(Rework rework) {
    return settledOf(rework).stream().mapToInt(Standing.Chain::pieces).sum();
  }

  private int reworkLeft(Rework rework) {
    return rework.pieces() - hangsAgain(rework);
  }

  /**
   * The last coat again, on its own carriers, as the gun is set otherwise over a coat; all coats
   * where the pieces are bare.
   */
  private List<Lot> again(Rework rework, PartFacts part, List<Leg> legs, List<String> kitIds) {
    List<Lot> lots = new ArrayList<>();
    List<Leg> route = rework.stripped() ? fromBare(legs) : List.of(over(legs.get(legs.size() - 1)));
    int most = route.stream().mapToInt(Leg::most).min().orElse(0);
    Set<String> used = new HashSet<>();
    settledOf(rework).forEach(c -> used.add(c.name()));
    String name = LotNames.reworkOf(key.jobId(), key.partId(), rework.event());
    int left = reworkLeft(rework);
    for (int n = 1; left > 0 && most > 0; n++) {
      String own = n == 1 ? name : name + "-" + n;
      if (!used.contains(own)) {
        int pieces = Math.min(left, most);
        left -= pieces;
        lots.addAll(LotMaker.chain(own, part, route, kitIds, pieces, rework.fromMin()));
      }
    }
    return lots;
  }

  /** Under paint the zinc stays on; work that is galvanized only goes the whole way again. */
  private static List<Leg> fromBare(List<Leg> legs) {
    List<Leg> paint = legs.stream().filter(l -> l.finish().kind() != FinishKind.ZINC).toList();
    return paint.isEmpty() ? legs : paint;
  }

  /** With the minutes in which rejected zinc comes off, in the tank that is named for it. */
  private List<Leg.Stop> stripping(Leg leg) {
    if (leg.finish().kind() != FinishKind.ZINC || strip.isEmpty()) {
      return leg.stops();
    }
    ZincStrip own = strip.get();
    return leg.stops().stream()
        .map(
            s ->
                s.stationId().equals(own.stationId())
                    ? new Leg.Stop(s.stationId(), s.pace().longer(own.minutes()))
                    : s)
        .toList();
  }

  private Leg over(Leg leg) {
    Finish f = leg.finish();
    return new Leg(
        leg.lineId(),
        new Finish(
            f.index(),
            f.key() + "|rework",
            f.name() + (f.kind() == FinishKind.ZINC ? ", stripped and dipped again" : ", rework"),
            f.kind(),
            f.materialId(),
            f.materialLot()),
        leg.batchGroup(),
        leg.dwells(),
        leg.machines(),
        leg.rooms(),
        leg.alone(),
        leg.most(),
        stripping(leg),
        0,
        Integer.MAX_VALUE,
        leg.materialPerPiece());
  }
}
