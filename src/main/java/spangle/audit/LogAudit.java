package spangle.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Held;
import spangle.plan.Plan;
import spangle.plan.Scrapped;
import spangle.plan.event.Event;
import spangle.plan.event.EventLog;

/**
 * Proves a plan made in the middle of a week against what was reported: nothing that hangs has been
 * moved, no piece is lost, no gate was opened by a date, nothing is planned where something is
 * broken or in a time that has passed.
 */
public final class LogAudit {
  private static final List<LogRule> RULES =
      List.of(
          new HungUnmoved(),
          new TakenDownInTime(),
          new ReleasedWithReason(),
          new NoPieceLost(),
          new ScrapAsReported(),
          new ReworkPlanned(),
          new CoatsCounted(),
          new GatesShut(),
          new OutOfUse(),
          new NothingInThePast());

  /** What stands among the gates and is none. */
  private static final Set<String> NO_GATES = Set.of(Held.NOT_ARRIVED, Scrapped.GATE);

  private LogAudit() {}

  /**
   * What a replan is held against.
   *
   * @param keptBrief the week as the plan before knew it
   * @param kept the plan people worked by until then
   * @param keptKnows number of the last event that plan knew
   * @param log all that was reported
   * @param knows number of the last event the new plan knew
   * @param atMin the minute it was made for
   * @param brief the week as the new plan knows it
   * @param plan the new plan
   * @param parts every part of every order
   * @param sheets letters of the two plans, and the sheets called back
   */
  public record Case(
      Brief keptBrief,
      Plan kept,
      int keptKnows,
      EventLog log,
      int knows,
      int atMin,
      Brief brief,
      Plan plan,
      List<PartOrder> parts,
      Sheets sheets) {
    /** Copies the list. */
    public Case {
      parts = List.copyOf(parts);
    }

    /** Events that count: known to the plan, in time, not struck. */
    List<Event> events() {
      return new EventLog(log.events().stream().filter(e -> e.number() <= knows).toList())
          .until(atMin);
    }
  }

  /**
   * Sheets before and after.
   *
   * @param before letter of the plan people worked by
   * @param now letter of the new plan
   * @param recalled by load of the plan before: why its sheet, which was out, could not stay
   */
  public record Sheets(String before, String now, Map<String, String> recalled) {
    /** Copies the map. */
    public Sheets {
      recalled = Map.copyOf(recalled);
    }
  }

  /**
   * A part of an order.
   *
   * @param jobId the order
   * @param partId the part
   * @param ordered pieces
   * @param held pieces by shut gate
   * @param mostCoats coats of the last colour a piece may bear
   */
  public record PartOrder(
      String jobId, String partId, int ordered, Map<String, Integer> held, int mostCoats) {
    /** A part whose coats are not counted, as zinc is not. */
    public PartOrder(String jobId, String partId, int ordered, Map<String, Integer> held) {
      this(jobId, partId, ordered, held, Integer.MAX_VALUE);
    }

    /** Copies the map. */
    public PartOrder {
      held = Map.copyOf(held);
    }

    /** Pieces held, not those missing, scrapped or rework: several gates hold the same pieces. */
    int heldByGates() {
      return held.entrySet().stream()
          .filter(e -> !NO_GATES.contains(e.getKey()) && !e.getKey().startsWith("rework-"))
          .mapToInt(Map.Entry::getValue)
          .max()
          .orElse(0);
    }

    /** Rejected pieces of which no lot is made: to be stripped, or behind a shut gate. */
    int heldInCage() {
      return held.entrySet().stream()
          .filter(e -> e.getKey().startsWith("rework-") && !Scrapped.gate(e.getKey()))
          .mapToInt(Map.Entry::getValue)
          .max()
          .orElse(0);
    }

    /** Rejected pieces that wait to be stripped. */
    int heldToStrip() {
      return held.getOrDefault("rework-strip", 0);
    }

    int notArrived() {
      return held.getOrDefault(Held.NOT_ARRIVED, 0);
    }
  }

  /** Everything that breaks a rule of the log; empty when the plan keeps them all. */
  public static List<Finding> of(Case found) {
    List<Finding> all = new ArrayList<>();
    for (LogRule rule : RULES) {
      Findings findings = new Findings(rule.name());
      rule.check(found, findings);
      all.addAll(findings.found());
    }
    return List.copyOf(all);
  }

  /** Names of the rules with what they ask. */
  public static List<String> rules() {
    return RULES.stream().map(r -> r.name() + ": " + r.words()).toList();
  }
}
