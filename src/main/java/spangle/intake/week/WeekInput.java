package spangle.intake.week;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import spangle.intake.problem.Problem;
import spangle.plan.LineKind;
import spangle.plan.event.EventLog;

/**
 * All that was read of a week folder.
 *
 * @param name name of the week folder
 * @param shop the shop
 * @param catalogue powders, paints, zinc
 * @param jobs accepted jobs by id
 * @param kits kits by id
 * @param gates gates somebody has opened
 * @param events what has happened so far, as reported
 * @param problems danger first, then what is due first
 * @param rows how many rows there were and what became of them
 * @param digests SHA-256 of every file read, in hexadecimal, by path below the folder
 * @param overlay what the week was read with, where it is a what-if
 */
public record WeekInput(
    String name,
    Shop shop,
    Catalogue catalogue,
    List<Job> jobs,
    List<KitOrder> kits,
    List<GateRecord> gates,
    EventLog events,
    List<Problem> problems,
    Rows rows,
    SortedMap<String, String> digests,
    Optional<OverlayNote> overlay) {

  /** Part rows of all job files: read = accepted + refused. */
  public record Rows(int read, int accepted, int refused) {
    /** Refuses a count that loses a row. */
    public Rows {
      if (read != accepted + refused) {
        throw new IllegalArgumentException(
            "rows were lost: " + read + " read, " + accepted + " + " + refused);
      }
    }
  }

  /** Copies the collections. */
  public WeekInput {
    jobs = List.copyOf(jobs);
    kits = List.copyOf(kits);
    gates = List.copyOf(gates);
    problems = List.copyOf(problems);
    digests = new TreeMap<>(digests);
  }

  /** What a part is coated with last; empty where it ends galvanized. */
  public Optional<Coating> lastCoating(PartLine line) {
    List<String> finishes = line.wanted().finishes();
    return line.wanted().route() == Route.ZINC || finishes.isEmpty()
        ? Optional.empty()
        : catalogue.coating(finishes.get(finishes.size() - 1));
  }

  /**
   * Coats of its last colour a piece of a part may bear. Zinc goes on bare steel only: one, where a
   * person has to strip rejected work first; not counted where the route strips it.
   */
  public int mostCoats(PartLine line) {
    return lastCoating(line)
        .map(coating -> coating.recoating().coatsAt(coating.coatUm(line)))
        .orElse(stripsZinc(line) ? Integer.MAX_VALUE : 1);
  }

  /**
   * Whether rejected zinc comes off on the way: in the shop's own acid, which steel so strong that
   * hydrogen could crack it does not see twice unasked, or at the firm that galvanizes.
   */
  private boolean stripsZinc(PartLine line) {
    boolean own = shop.lines().stream().anyMatch(l -> l.kind() == LineKind.ZINC);
    return own
        ? catalogue.zinc().flatMap(Zinc::strip).isPresent()
            && line.metal().strengthMpa().orElse(0) <= ZincStrip.STRONGEST_MPA
        : shop.lines().stream().anyMatch(l -> l.hauling().isPresent());
  }

  /** The same week in a shop that is otherwise. */
  public WeekInput withShop(Shop other) {
    return new WeekInput(
        name, other, catalogue, jobs, kits, gates, events, problems, rows, digests, overlay);
  }

  /** The same week with other events. */
  public WeekInput withEvents(EventLog others) {
    return new WeekInput(
        name, shop, catalogue, jobs, kits, gates, others, problems, rows, digests, overlay);
  }
}
