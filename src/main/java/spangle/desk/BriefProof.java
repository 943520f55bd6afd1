package spangle.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.plan.Brief;
import spangle.plan.Caged;
import spangle.plan.CarrierSpec;
import spangle.plan.Finding;
import spangle.plan.Kit;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.LotChange;
import spangle.plan.Scrapped;
import spangle.plan.Supply;
import spangle.plan.json.Gate;
import spangle.plan.json.PlanFile;

/**
 * Proves that the brief a plan was audited against is the one its week folder gives: a plan could
 * otherwise keep every rule of a brief that leaves work out, or show a gate open that is shut.
 */
final class BriefProof {
  private static final String RULE = "brief-of-the-week";
  private static final int MOST_NAMED = 5;

  private BriefProof() {}

  static List<Finding> of(PlanFile file, Path week, Optional<Path> overlay) {
    Brief told = file.brief();
    if (!told.frozen().isEmpty() || !told.announced().isEmpty()) {
      return List.of();
    }
    Optional<PreparedWeek> given =
        WeekReader.read(week, Besides.overlay(overlay)).input().map(BriefMaker::prepare);
    if (given.isEmpty()) {
      return List.of(new Finding(RULE, week.toString(), "gives no brief any more"));
    }
    Brief now = given.get().brief();
    List<Finding> findings = new ArrayList<>();
    compare("lots", told.lots(), now.lots(), Lot::id, findings);
    compare("lines", told.lines(), now.lines(), LineSpec::id, findings);
    compare("carriers", told.carriers(), now.carriers(), CarrierSpec::id, findings);
    compare("kits", told.kits(), now.kits(), Kit::id, findings);
    compare("supplies", told.supplies(), now.supplies(), Supply::materialId, findings);
    if (findings.isEmpty() && !told.equals(now)) {
      findings.add(
          new Finding(
              RULE, told.name(), "name, week, horizon or goals differ from the week folder's"));
    }
    gates(file, given.get(), findings);
    if (findings.isEmpty()
        && file.yardstick().isPresent()
        && !file.yardstick().get().equals(YardstickDesk.of(given.get(), file.plan()))) {
      findings.add(
          new Finding(
              RULE,
              "yardstick",
              "bounds, or the plan by hand, are not those of this week and plan"));
    }
    return findings;
  }

  /**
   * A plan made in the middle of the week, against the week after the events it knew. When lots are
   * ready depends on how much was frozen and is not compared.
   */
  static List<Finding> later(PlanFile file, PreparedWeek given) {
    List<Finding> findings = new ArrayList<>();
    Brief told = file.brief();
    Brief now = given.brief();
    compare("lots", anyTime(told.lots()), anyTime(now.lots()), Lot::id, findings);
    compare("lines", told.lines(), now.lines(), LineSpec::id, findings);
    compare("carriers", told.carriers(), now.carriers(), CarrierSpec::id, findings);
    compare("kits", told.kits(), now.kits(), Kit::id, findings);
    compare("supplies", told.supplies(), now.supplies(), Supply::materialId, findings);
    compare("scrapped", told.scrapped(), now.scrapped(), BriefProof::report, findings);
    compare("rejected pieces", told.caged(), now.caged(), BriefProof::part, findings);
    compare("loads taken down", told.retired(), now.retired(), Function.identity(), findings);
    gates(file, given, findings);
    return findings;
  }

  private static String part(Caged caged) {
    return caged.jobId() + "/" + caged.partId();
  }

  private static String report(Scrapped scrapped) {
    return "event " + scrapped.event();
  }

  private static List<Lot> anyTime(List<Lot> lots) {
    return lots.stream().map(l -> LotChange.of(l).ready(0).made()).toList();
  }

  private static void gates(PlanFile file, PreparedWeek given, List<Finding> findings) {
    compare(
        "gates of parts",
        byPart(file.gates()),
        byPart(GateList.of(given)),
        gates -> part(gates.get(0)),
        findings);
  }

  /** A part may be asked the same gate more than once, so that only all its gates have a name. */
  private static List<List<Gate>> byPart(List<Gate> gates) {
    return List.copyOf(
        gates.stream()
            .collect(
                Collectors.groupingBy(BriefProof::part, LinkedHashMap::new, Collectors.toList()))
            .values());
  }

  private static String part(Gate gate) {
    return gate.jobId() + "/" + gate.partId();
  }

  private static <T> void compare(
      String what, List<T> told, List<T> now, Function<T, String> id, List<Finding> findings) {
    Map<String, T> before = byId(told, id);
    Map<String, T> after = byId(now, id);
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(after.keySet());
    names.removeIf(name -> Objects.equals(before.get(name), after.get(name)));
    if (!names.isEmpty()) {
      findings.add(
          new Finding(
              RULE,
              what,
              names.size()
                  + " differ from what the same files give now, unless another version of the"
                  + " program made the plan: "
                  + String.join(", ", names.stream().limit(MOST_NAMED).toList())));
    }
  }

  private static <T> Map<String, T> byId(List<T> things, Function<T, String> id) {
    Map<String, T> byId = new LinkedHashMap<>();
    things.forEach(thing -> byId.put(id.apply(thing), thing));
    return byId;
  }
}
