package spangle.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.WeekInput;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.Supply;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.solve.Freedom;
import spangle.solve.Inserted;
import spangle.solve.Inserter;

/**
 * Looks for the dates a new job can have: this week, with what can be ordered, or the weeks behind.
 */
final class OfferSearch {
  private static final String UNSOUND =
      "a sooner date would rest on a plan that breaks a rule, so it is not said; plan or"
          + " replan with more time, then ask again";

  private final WeekInput input;
  private final PreparedWeek week;
  private final PlanFile kept;
  private final int atMin;
  private final List<String> notes;
  private final OfferMaker maker;

  /**
   * A search.
   *
   * @param kept the announced plan
   * @param atMin nothing new starts before this minute of the week
   * @param notes takes what has to be said beside the dates
   */
  OfferSearch(WeekInput input, PreparedWeek week, PlanFile kept, int atMin, List<String> notes) {
    this.input = input;
    this.week = week;
    this.kept = kept;
    this.atMin = atMin;
    this.notes = notes;
    this.maker = new OfferMaker(input, kept, notes);
  }

  /**
   * Adds the dates found, or what is lacking for one.
   *
   * @throws PlanFileException when the announced plan is of another shop than the week's
   */
  void offers(List<Lot> wanted, Set<String> jobs, List<Promise.Offer> offers, List<String> lacking)
      throws PlanFileException {
    Brief brief = joined(wanted, List.of());
    PlanShelf.requireKnown(
        brief,
        kept.plan(),
        "the shop is not the one this plan was made for, so plan the week again, then promise");
    Inserter inserter = new Inserter(brief, kept.plan());
    for (Freedom freedom : Freedom.values()) {
      inserter
          .insert(ids(wanted), freedom, atMin)
          .map(i -> maker.offer(freedom, brief, i, ids(wanted), jobs, List.of()))
          .filter(this::sound)
          .filter(o -> offers.stream().allMatch(other -> worthSaying(o, other)))
          .ifPresent(offers::add);
    }
    if (gentle(offers).findAny().isEmpty()) {
      later(brief, wanted, jobs, offers, lacking);
    }
  }

  /** Offers for which nobody's date slips. */
  private static Stream<Promise.Offer> gentle(List<Promise.Offer> offers) {
    return offers.stream().filter(o -> o.freedom() != Freedom.DATES_MAY_SLIP);
  }

  /** No date is said of a plan that breaks a rule; that there was one is noted. */
  private boolean sound(Promise.Offer offer) {
    if (!offer.findings().isEmpty() && !notes.contains(UNSOUND)) {
      notes.add(UNSOUND);
    }
    return offer.findings().isEmpty();
  }

  /** A date that costs others something is only worth saying when it is clearly sooner. */
  private static boolean worthSaying(Promise.Offer offer, Promise.Offer gentler) {
    return offer.endMin() + PartChange.WORTH_SAYING_MIN <= gentler.endMin();
  }

  /** The kept plan's brief, the new lots, and more of what they draw where it is ordered now. */
  private Brief joined(List<Lot> wanted, List<Reorder> ordered) {
    Brief b = kept.brief();
    boolean underWay = kept.replanned().isPresent() || !b.frozen().isEmpty();
    List<Lot> all = new ArrayList<>(b.lots());
    all.addAll(wanted);
    boolean boxesKept = b.supplies().stream().anyMatch(s -> !s.keptLot().isEmpty());
    List<Supply> stock = underWay || boxesKept ? b.supplies() : week.brief().supplies();
    return BriefChange.of(b)
        .lines(underWay ? b.lines() : week.brief().lines())
        .carriers(underWay ? b.carriers() : week.brief().carriers())
        .lots(all)
        .supplies(Reorder.with(ordered, stock))
        .made();
  }

  private static List<String> ids(List<Lot> lots) {
    return lots.stream().map(Lot::id).toList();
  }

  /** The week has no room, or not the material: the weeks behind it, and what can be ordered. */
  private void later(
      Brief brief,
      List<Lot> wanted,
      Set<String> jobs,
      List<Promise.Offer> offers,
      List<String> lacking) {
    List<Reorder> ordered = Reorder.of(input, brief, kept.plan(), wanted, atMin);
    List<String> conditions = ordered.stream().map(Reorder::words).toList();
    int end = brief.horizonMin();
    Brief within = joined(wanted, ordered);
    if (!ordered.isEmpty()) {
      Inserter inserter = new Inserter(within, kept.plan());
      for (Freedom freedom : List.of(Freedom.NOTHING_MOVES, Freedom.DATES_KEPT)) {
        inserter
            .insert(ids(wanted), freedom, atMin)
            .map(i -> maker.offer(freedom, within, i, ids(wanted), jobs, ordered))
            .filter(this::sound)
            .filter(o -> gentle(offers).allMatch(other -> worthSaying(o, other)))
            .ifPresent(o -> offers.add((int) gentle(offers).count(), o));
      }
      if (gentle(offers).findAny().isPresent()) {
        return;
      }
    }
    List<Lot> next = wanted.stream().map(l -> LaterWeek.notBefore(l, end)).toList();
    Set<String> waiting = new HashSet<>();
    kept.plan().leftOut().forEach(l -> waiting.add(l.lotId()));
    List<Lot> all = new ArrayList<>();
    List<String> queue = new ArrayList<>();
    for (Lot lot : kept.brief().lots()) {
      boolean waits = waiting.contains(lot.id());
      all.add(waits ? LaterWeek.notBefore(lot, end) : lot);
      if (waits) {
        queue.add(lot.id());
      }
    }
    all.addAll(next);
    Brief longer = LaterWeek.behind(within, LaterWeek.of(input).brief(), all);
    Plan base = kept.plan();
    int placed = 0;
    for (String id : queue) {
      Optional<Inserted> one =
          new Inserter(longer, base).insert(List.of(id), Freedom.NOTHING_MOVES);
      if (one.isPresent()) {
        base = one.get().plan();
        placed++;
      }
    }
    Optional<Inserted> then =
        new Inserter(longer, base).insert(ids(next), Freedom.NOTHING_MOVES, atMin);
    if (then.isEmpty()) {
      lacking.add(
          "no place was found before "
              + DayWords.of(longer.horizonMin() - 1)
              + " either"
              + (conditions.isEmpty() ? "" : ", even " + String.join(", ", conditions)));
      return;
    }
    if (placed > 0) {
      notes.add(
          placed
              + " lots that are left out of this week already wait; they were put in front of it");
    }
    Promise.Offer sure =
        maker.offer(Freedom.NOTHING_MOVES, longer, then.get(), ids(next), jobs, ordered);
    if (!sure.findings().isEmpty()) {
      lacking.add("no plan that keeps every rule was found from the announced one");
      return;
    }
    offers.add(0, sure);
    if (offers.size() == 1 && ordered.isEmpty()) {
      sooner(longer, base, wanted, jobs, sure).ifPresent(offers::add);
    }
  }

  /** In the week after all, where others may be pushed into the next. */
  private Optional<Promise.Offer> sooner(
      Brief longer, Plan base, List<Lot> wanted, Set<String> jobs, Promise.Offer sure) {
    List<Lot> lots = new ArrayList<>(longer.lots());
    lots.removeIf(l -> jobs.contains(l.jobId()));
    lots.addAll(wanted);
    Brief brief = BriefChange.lots(longer, lots);
    return new Inserter(brief, base)
        .insert(ids(wanted), Freedom.DATES_MAY_SLIP, atMin)
        .map(i -> maker.offer(Freedom.DATES_MAY_SLIP, brief, i, ids(wanted), jobs, List.of()))
        .filter(this::sound)
        .filter(o -> worthSaying(o, sure));
  }
}
