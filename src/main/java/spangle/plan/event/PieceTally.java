package spangle.plan.event;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.Scrapped;

/** Counts pieces: each chain of lots stands in one place, that of the leg it has come to. */
final class PieceTally {
  private static final int LEFT_OUT = 0;
  private static final int PLANNED = 1;
  private static final int RELEASED = 2;
  private static final int HUNG = 3;
  private static final int IN_PROCESS = 4;
  private static final int DONE = 5;
  private static final int SUSPECT = 6;
  private static final int REJECTED = 7;
  private static final int REWORKED = 8;
  private static final int AGAIN = 9;

  private final Brief brief;
  private final Map<String, String> loadOfLot;
  private final Map<String, LoadState> loads;
  private final List<Event> events;
  private final Map<String, int[]> sums = new TreeMap<>();
  private final Map<String, Lot> anyLot = new HashMap<>();
  private final Map<Integer, Event> byNumber = new HashMap<>();

  /** By part and coats: pieces finished with so many, those rejected since taken off. */
  private final Map<String, Map<Integer, Integer>> bearing = new HashMap<>();

  /** By part: rejected pieces no rework is planned for. */
  private final Map<String, Integer> waiting = new HashMap<>();

  private final ScrapTally scraps;

  PieceTally(Brief brief, Plan plan, Map<String, LoadState> loads, List<Event> events) {
    this.brief = brief;
    this.loadOfLot = WeekState.loadOfLot(plan);
    this.loads = loads;
    this.events = events;
    this.scraps = new ScrapTally(brief);
    events.forEach(e -> byNumber.put(e.number(), e));
  }

  /** The counts; rejections of more pieces than are finished are refused. */
  List<PieceCount> counts(List<WeekState.Refusal> refused) {
    Map<String, List<Lot>> chains = new LinkedHashMap<>();
    for (Lot lot : brief.lots()) {
      chains.computeIfAbsent(LotNames.chain(lot), c -> new ArrayList<>()).add(lot);
    }
    chains.values().forEach(this::count);
    for (Event event : events) {
      if (event.kind() == EventKind.REJECTED) {
        reject(event).ifPresent(why -> refused.add(new WeekState.Refusal(event, why)));
      } else if (event.kind() == EventKind.STRIPPED) {
        strip(event).ifPresent(why -> refused.add(new WeekState.Refusal(event, why)));
      } else if (event.kind() == EventKind.SCRAPPED) {
        scrap(event).ifPresent(why -> refused.add(new WeekState.Refusal(event, why)));
      }
    }
    List<PieceCount> counts = new ArrayList<>();
    for (Map.Entry<String, int[]> each : sums.entrySet()) {
      Lot lot = anyLot.get(each.getKey());
      int[] n = each.getValue();
      if (lot != null) {
        counts.add(
            new PieceCount(
                lot.jobId(),
                lot.partId(),
                n[LEFT_OUT],
                n[PLANNED],
                n[RELEASED],
                n[HUNG],
                n[IN_PROCESS],
                n[DONE],
                n[SUSPECT],
                n[REJECTED],
                n[REWORKED],
                scraps.pieces(lot.jobId(), lot.partId())));
      }
    }
    return counts;
  }

  /** What was scrapped and counts; after {@link #counts}. */
  List<Scrapped> scrapped() {
    return scraps.counted();
  }

  private static String key(String job, String part) {
    return job + '\n' + part;
  }

  private void count(List<Lot> chain) {
    Lot first = chain.get(0);
    String key = key(first.jobId(), first.partId());
    anyLot.putIfAbsent(key, first);
    int[] sum = sums.computeIfAbsent(key, k -> new int[AGAIN + 1]);
    int place = place(chain);
    if (place == DONE) {
      bearing
          .computeIfAbsent(key, k -> new TreeMap<>())
          .merge(coats(first), first.pieces(), Integer::sum);
    }
    if (LotNames.rework(first)) {
      sum[REWORKED] += place == DONE ? first.pieces() : 0;
      sum[AGAIN] += place >= HUNG ? first.pieces() : 0;
      if (overACoat(first)) {
        waiting.merge(key, -first.pieces(), Integer::sum);
      }
      return;
    }
    sum[place] += first.pieces();
    boolean suspect =
        chain.stream()
            .map(this::state)
            .anyMatch(s -> s != null && s.stage() != Stage.DONE && !s.suspect().isEmpty());
    sum[SUSPECT] += suspect ? first.pieces() : 0;
  }

  private int place(List<Lot> chain) {
    boolean allDone = true;
    boolean anyLeft = false;
    Stage furthest = Stage.PLANNED;
    for (Lot lot : chain) {
      LoadState state = state(lot);
      anyLeft |= state == null;
      allDone &= state != null && state.stage() == Stage.DONE;
      if (state != null && state.stage().compareTo(furthest) > 0) {
        furthest = state.stage();
      }
    }
    if (allDone) {
      return DONE;
    }
    return switch (furthest) {
      case PLANNED -> anyLeft ? LEFT_OUT : PLANNED;
      case RELEASED -> RELEASED;
      case HUNG -> HUNG;
      case IN_PROCESS, DONE -> IN_PROCESS;
    };
  }

  private @Nullable LoadState state(Lot lot) {
    String load = loadOfLot.get(lot.id());
    return load == null ? null : loads.get(load);
  }

  private Optional<String> reject(Event event) {
    int pieces = event.figures().count().orElse(0);
    int[] sum = sums.get(key(event.job(), event.part()));
    if (sum == null) {
      return Optional.of("no lot of " + event.job() + " " + event.part() + " is in the plan");
    }
    int good = sum[DONE] - sum[REJECTED] + sum[REWORKED];
    if (pieces > good) {
      return Optional.of(
          pieces + " pieces rejected, " + good + " are finished and not rejected already");
    }
    int coats = event.coats();
    Map<Integer, Integer> finished =
        bearing.computeIfAbsent(key(event.job(), event.part()), k -> new TreeMap<>());
    if (pieces > finished.getOrDefault(coats, 0)) {
      return Optional.of(wrongCoats(pieces, coats, finished));
    }
    Optional<Integer> other = coatsOf(event).filter(on -> on != coats);
    if (other.isPresent()) {
      return Optional.of(
          "the pieces of load "
              + event.load()
              + " bear "
              + coatsWord(other.get())
              + ", not "
              + coats
              + ": say coats: "
              + other.get());
    }
    finished.merge(coats, -pieces, Integer::sum);
    waiting.merge(key(event.job(), event.part()), pieces, Integer::sum);
    sum[REJECTED] += pieces;
    return Optional.empty();
  }

  private static String wrongCoats(int pieces, int coats, Map<Integer, Integer> finished) {
    StringBuilder why = new StringBuilder();
    why.append(pieces).append(" pieces with ").append(coatsWord(coats)).append(" rejected, but ");
    why.append(finished.getOrDefault(coats, 0)).append(" such are finished and passed");
    finished.forEach(
        (n, there) -> {
          if (n != coats && there > 0) {
            why.append("; ").append(there).append(there == 1 ? " bears " : " bear ");
            why.append(coatsWord(n)).append(": say coats: ").append(n).append(" for those");
          }
        });
    return why.toString();
  }

  private static String coatsWord(int coats) {
    return coats == 1 ? "1 coat" : coats + " coats";
  }

  /** Coats the pieces of that part on the load it names bear; empty where it names none. */
  private Optional<Integer> coatsOf(Event event) {
    return brief.lots().stream()
        .filter(l -> l.jobId().equals(event.job()) && l.partId().equals(event.part()))
        .filter(l -> !event.load().isEmpty() && event.load().equals(loadOfLot.get(l.id())))
        .map(this::coats)
        .findFirst();
  }

  /** Whether its pieces are what was rejected, not what has been stripped since. */
  private boolean overACoat(Lot lot) {
    Event from = byNumber.get(LotNames.eventOf(lot));
    return from == null || from.kind() != EventKind.STRIPPED;
  }

  /** Coats of their last colour its pieces bear when it is finished; zinc goes on bare steel. */
  private int coats(Lot lot) {
    if (!LotNames.rework(lot) || lot.finish().kind() == FinishKind.ZINC) {
      return 1;
    }
    Event from = byNumber.get(LotNames.eventOf(lot));
    if (from == null) {
      return 2;
    }
    return from.kind() == EventKind.STRIPPED ? 1 : from.coats() + 1;
  }

  private Optional<String> scrap(Event event) {
    String key = key(event.job(), event.part());
    int[] sum = sums.getOrDefault(key, new int[AGAIN + 1]);
    Optional<String> why =
        scraps.take(
            event, sum[LEFT_OUT] + sum[PLANNED] + sum[RELEASED], sum[REJECTED] - sum[AGAIN]);
    if (why.isEmpty() && ScrapOf.REJECTED.in(event)) {
      // Those that wait to be stripped go first.
      waiting.computeIfPresent(
          key, (k, n) -> n > 0 ? Math.max(0, n - event.figures().count().orElse(0)) : n);
    }
    return why;
  }

  private Optional<String> strip(Event event) {
    String key = key(event.job(), event.part());
    int pieces = event.figures().count().orElse(0);
    int there = waiting.getOrDefault(key, 0);
    if (pieces > there) {
      return Optional.of(
          pieces
              + " pieces stripped, "
              + Math.max(0, there)
              + " rejected ones wait to be: those planned to be coated over are not stripped");
    }
    waiting.merge(key, -pieces, Integer::sum);
    return Optional.empty();
  }
}
