package spangle.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spangle.fit.hang.HangItem;

/**
 * Pieces of one part that travel together through one leg of their route.
 *
 * @param id unique in the week: job, part, number of the lot and leg
 * @param jobId the order
 * @param partId the part
 * @param label words for the sheet
 * @param pieces how many
 * @param leg 0 for the first leg of the route
 * @param after the leg before, if any
 * @param lineId the line it runs on
 * @param finish what this leg gives
 * @param alone true when nothing may share its load (a large enclosure, a two-dip part)
 * @param batchGroup only lots of the same group share an oven at the same time (powder, liquid wet
 *     work and degassing never meet)
 * @param readyMin earliest first visit
 * @param dueMin wanted end of the last visit (of the last leg: an earlier leg carries the same)
 * @param weight how much lateness counts; 1 is usual
 * @param lastLeg true when the job's pieces are finished after this leg
 * @param dwells at which settings and how long it can stay in a machine, by setting
 * @param machines ids of the machines it may go in
 * @param carriers ids of the carriers it fits, best first
 * @param item how its pieces hang
 * @param visits needs at the stations beside the machine
 * @param areaM2 coated area of all pieces
 * @param massKg mass of all pieces
 * @param materialKg powder or zinc it draws, likely, kg; litres of mixture for liquid paint
 * @param kitIds kits that wait for it
 */
public record Lot(
    String id,
    String jobId,
    String partId,
    String label,
    int pieces,
    int leg,
    Optional<Chain> after,
    String lineId,
    Finish finish,
    boolean alone,
    String batchGroup,
    int readyMin,
    int dueMin,
    int weight,
    boolean lastLeg,
    List<Dwell> dwells,
    List<String> machines,
    List<String> carriers,
    HangItem item,
    List<Visit> visits,
    double areaM2,
    double massKg,
    double materialKg,
    List<String> kitIds) {
  /** Copies the lists. */
  public Lot {
    dwells = List.copyOf(dwells);
    machines = List.copyOf(machines);
    carriers = List.copyOf(carriers);
    visits = List.copyOf(visits);
    kitIds = List.copyOf(kitIds);
  }

  /** Equal for lots of the same pieces at the same step, which may stand in for one another. */
  public String likeness() {
    return jobId + '\n' + partId + '\n' + leg + '\n' + pieces + '\n' + finish.key();
  }

  /**
   * Likenesses of lots in order: equal for loads of the same work. A lot that is gone is its id.
   */
  public static List<String> likeness(List<String> ids, Map<String, Lot> lots) {
    return ids.stream()
        .map(id -> Optional.ofNullable(lots.get(id)).map(Lot::likeness).orElse(id))
        .sorted()
        .toList();
  }

  /** The same lot with another weight. */
  public Lot counting(int otherWeight) {
    return LotChange.of(this).weight(otherWeight).made();
  }

  /** The same lot, before which the leg ahead may be done even where this one finds no place. */
  public Lot startedAnyway() {
    return LotChange.of(this).after(after.map(Chain::anyway)).made();
  }

  /** The same lot with another finish. */
  public Lot with(Finish other) {
    return LotChange.of(this).finish(other).made();
  }

  /** What it draws, as {@code 1.90 kg of buoy yellow, gloss}. */
  public String drawWords() {
    return drawWords(List.of(this));
  }

  /** What lots of one finish draw together; there is at least one. */
  public static String drawWords(List<Lot> lots) {
    Finish finish = lots.get(0).finish();
    return String.format(
        Locale.ROOT,
        "%.2f %s of %s",
        lots.stream().mapToDouble(Lot::materialKg).sum(),
        finish.kind().materialUnit(),
        finish.name());
  }
}
