package spangle.report.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import spangle.plan.Brief;
import spangle.plan.Kit;
import spangle.plan.Kit.KitLine;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Scrapped;
import spangle.plan.event.LotNames;
import spangle.report.HeldPart;

/**
 * Which kits are complete by when. Pieces of a part that several kits want go to the kit due first;
 * pieces that were rejected are good only once their rework is finished; complete sets = the
 * smallest over the kit's lines of good pieces divided by pieces for one set.
 */
public final class KitBoard {
  private static final int DAYS = 7;

  private final WeekIndex index;
  private final Map<String, List<Piece>> pools = new HashMap<>();

  /** Finished pieces that appear at a minute with a load. */
  private record Piece(int atMin, int pieces, String loadId) {}

  private record LineSupply(KitLine line, List<Piece> pieces) {
    int good(int atMin) {
      return line.onHand()
          + pieces.stream().filter(p -> p.atMin() <= atMin).mapToInt(Piece::pieces).sum();
    }

    int sets(int atMin) {
      return line.perSet() <= 0 ? Integer.MAX_VALUE : good(atMin) / line.perSet();
    }
  }

  private KitBoard(WeekIndex index) {
    this.index = index;
    for (LoadPlace place : index.loads()) {
      for (Lot lot : place.lots()) {
        // What hangs and has no time in the week is good in none of its days.
        if (lot.lastLeg() && place.endMin() <= index.report().brief().horizonMin()) {
          pools
              .computeIfAbsent(key(lot.jobId(), lot.partId()), k -> new ArrayList<>())
              .add(new Piece(place.endMin(), lot.pieces(), place.id()));
        }
      }
    }
    pools
        .values()
        .forEach(p -> p.sort(Comparator.comparingInt(Piece::atMin).thenComparing(Piece::loadId)));
    Brief brief = index.report().brief();
    brief.kits().stream()
        .flatMap(kit -> kit.lines().stream())
        .map(line -> List.of(line.jobId(), line.partId()))
        .distinct()
        .forEach(
            part ->
                take(
                    pools.getOrDefault(key(part.get(0), part.get(1)), new ArrayList<>()),
                    brief.rejectedWithoutLot(part.get(0), part.get(1))));
    for (Lot lot : index.report().brief().lots()) {
      if (lot.lastLeg() && LotNames.rework(lot)) {
        take(pools.getOrDefault(key(lot.jobId(), lot.partId()), new ArrayList<>()), lot.pieces());
      }
    }
  }

  /** The board, kits due first at the top. */
  public static List<KitStatus> of(WeekIndex index) {
    KitBoard board = new KitBoard(index);
    return index.report().brief().kits().stream()
        .sorted(Comparator.comparingInt(Kit::dueMin).thenComparing(Kit::id))
        .map(board::status)
        .toList();
  }

  private KitStatus status(Kit kit) {
    List<LineSupply> supplies = kit.lines().stream().map(l -> draw(kit, l)).toList();
    int now = setsAt(kit, supplies, index.nowMin());
    int planned = setsAt(kit, supplies, Integer.MAX_VALUE);
    List<Integer> byDay = new ArrayList<>();
    for (int day = 0; day < DAYS; day++) {
      byDay.add(setsAt(kit, supplies, (day + 1) * WeekTime.DAY));
    }
    if (planned < kit.sets()) {
      return new KitStatus(
          kit,
          KitStatus.State.BLOCKED,
          now,
          planned,
          byDay,
          OptionalInt.empty(),
          missing(kit, supplies),
          spread(supplies),
          KitPowder.of(index.report().brief(), kit));
    }
    int complete = completion(kit, supplies);
    KitStatus.State state =
        now >= kit.sets()
            ? KitStatus.State.COMPLETE
            : complete <= kit.dueMin() ? KitStatus.State.ON_TIME : KitStatus.State.LATE;
    String last = state == KitStatus.State.COMPLETE ? "" : lastPiece(kit, supplies, complete);
    return new KitStatus(
        kit,
        state,
        now,
        planned,
        byDay,
        OptionalInt.of(complete),
        last,
        spread(supplies),
        KitPowder.of(index.report().brief(), kit));
  }

  private static OptionalInt spread(List<LineSupply> supplies) {
    IntSummaryStatistics ends =
        supplies.stream()
            .flatMap(s -> s.pieces().stream())
            .mapToInt(Piece::atMin)
            .summaryStatistics();
    return ends.getCount() == 0
        ? OptionalInt.empty()
        : OptionalInt.of(ends.getMax() - ends.getMin());
  }

  private LineSupply draw(Kit kit, KitLine line) {
    List<Piece> pool = pools.getOrDefault(key(line.jobId(), line.partId()), new ArrayList<>());
    return new LineSupply(
        line, take(pool, Math.max(0, line.perSet() * kit.sets() - line.onHand())));
  }

  /** Takes the earliest pieces of a pool. */
  private static List<Piece> take(List<Piece> pool, int pieces) {
    int wanted = pieces;
    List<Piece> drawn = new ArrayList<>();
    while (wanted > 0 && !pool.isEmpty()) {
      Piece first = pool.remove(0);
      int taken = Math.min(wanted, first.pieces());
      drawn.add(new Piece(first.atMin(), taken, first.loadId()));
      wanted -= taken;
      if (taken < first.pieces()) {
        pool.add(0, new Piece(first.atMin(), first.pieces() - taken, first.loadId()));
      }
    }
    return drawn;
  }

  private static int setsAt(Kit kit, List<LineSupply> supplies, int atMin) {
    return supplies.stream().mapToInt(s -> s.sets(atMin)).reduce(kit.sets(), Math::min);
  }

  private static int completion(Kit kit, List<LineSupply> supplies) {
    int last = 0;
    for (LineSupply supply : supplies) {
      int good = supply.line().onHand();
      for (Piece piece : supply.pieces()) {
        if (good >= supply.line().perSet() * kit.sets()) {
          break;
        }
        good += piece.pieces();
        last = Math.max(last, piece.atMin());
      }
    }
    return last;
  }

  private String lastPiece(Kit kit, List<LineSupply> supplies, int complete) {
    for (LineSupply supply : supplies) {
      for (Piece piece : supply.pieces()) {
        if (piece.atMin() == complete && supply.line().perSet() * kit.sets() > 0) {
          return "last: " + partName(supply.line()) + " on load " + piece.loadId();
        }
      }
    }
    return "";
  }

  private String missing(Kit kit, List<LineSupply> supplies) {
    List<String> words = new ArrayList<>();
    for (LineSupply supply : supplies) {
      int wanted = supply.line().perSet() * kit.sets();
      int good = supply.good(Integer.MAX_VALUE);
      if (good < wanted) {
        int gone = Math.min(scrapped(supply.line()), wanted - good);
        if (gone > 0) {
          String name = partName(supply.line());
          words.add(gone + " x " + name + " scrapped, cut " + gone + " more");
        }
        if (gone < wanted - good) {
          int other = wanted - good - gone;
          words.add(other + " x " + partName(supply.line()) + why(supply.line()));
        }
      }
    }
    return String.join("; ", words);
  }

  private int scrapped(KitLine line) {
    return index.report().brief().scrapped().stream()
        .filter(s -> s.of(line.jobId(), line.partId()))
        .mapToInt(Scrapped::pieces)
        .sum();
  }

  private String why(KitLine line) {
    for (HeldPart held : index.report().waiting().held()) {
      if (held.jobId().equals(line.jobId())
          && held.partId().equals(line.partId())
          && !Scrapped.gate(held.gate())) {
        return " held, waits for " + held.whoAnswers();
      }
    }
    for (LeftOut left : index.report().plan().leftOut()) {
      if (index.lot(left.lotId()).filter(lot -> isOf(lot, line)).isPresent()) {
        return " left out: " + left.reason();
      }
    }
    return " not in any job of the week";
  }

  private String partName(KitLine line) {
    return index.report().brief().lots().stream()
        .filter(lot -> isOf(lot, line))
        .map(Lot::label)
        .findFirst()
        .or(
            () ->
                index.report().waiting().held().stream()
                    .filter(h -> h.jobId().equals(line.jobId()) && h.partId().equals(line.partId()))
                    .map(HeldPart::partName)
                    .findFirst())
        .orElse(line.partId());
  }

  private static boolean isOf(Lot lot, KitLine line) {
    return lot.jobId().equals(line.jobId()) && lot.partId().equals(line.partId());
  }

  private static String key(String jobId, String partId) {
    return jobId + "\u0000" + partId;
  }
}
