package spangle.fit.gate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spangle.fit.gate.GateCase.Build;
import spangle.fit.gate.GateCase.HoleSet;
import spangle.fit.gate.GateCase.Member;
import spangle.fit.vent.Holes;
import spangle.fit.vent.Vents;
import spangle.measure.Figures;

/** Closed hollows, holes too small, holes nobody looked through, and air that floats the part. */
final class HollowGates {
  private static final int LOOKERS = 2;
  private static final double STEEL_KG_L = 7.85;

  /**
   * Air beyond this share of the steel's volume floats it: 7.85 / 6.56 - 1, steel against molten
   * zinc at bath heat.
   */
  static final double FLOATING_SHARE = 0.197;

  private static final double SAME_MM2 = 1e-6;

  private HollowGates() {}

  static GateState hollow(GateCase part) {
    Build build = part.build();
    if (build.members().isEmpty() && build.hollow() != Known.YES) {
      return build.hollow() == Known.NO || build.welded() != Known.YES
          ? GateState.clear(Gate.HOLLOW, "none told")
          : GateState.shut(
              Gate.HOLLOW,
              "hollow-unknown",
              "welded work for zinc, and nothing says whether it has hollow spaces; a sealed hollow"
                  + " explodes in molten zinc",
              "the answer to: hollow members, with vent and drain holes");
    }
    List<String> closed =
        build.members().stream().filter(HollowGates::closed).map(HollowGates::wanted).toList();
    if (build.members().isEmpty() || !closed.isEmpty()) {
      return GateState.shut(
          Gate.HOLLOW,
          "hollow-closed",
          "a hollow without vent and drain holes on record explodes in molten zinc"
              + (closed.isEmpty() ? "" : ": " + String.join("; ", closed)),
          "holes at the high and the low end, and two people who looked through them");
    }
    List<String> small =
        build.members().stream().filter(HollowGates::tooSmall).map(HollowGates::wanted).toList();
    if (!small.isEmpty() && part.record("holes").isEmpty()) {
      return GateState.shut(
          Gate.HOLLOW,
          "holes-too-small",
          "holes on record are smaller than the largest published rule asks: "
              + String.join("; ", small),
          "larger holes, or the galvanizer's written release for these, signed");
    }
    Optional<GateOpening> looked = looked(part);
    return GateState.shutUnless(
        looked,
        Gate.HOLLOW,
        looked.isPresent() ? Gate.HOLLOW.word() : GateState.NOT_LOOKED,
        looked.isPresent()
            ? "holes on record"
            : "holes are on record, but two different people have not signed that they are open",
        "two names with the time, in vents_checked or gates.yaml");
  }

  private static boolean closed(Member member) {
    return member.vents().isEmpty() || member.drains().isEmpty();
  }

  private static boolean tooSmall(Member member) {
    var answer = Vents.of(member.bore());
    return !enough(member.vents(), answer.vent()) || !enough(member.drains(), answer.drain());
  }

  private static boolean enough(Optional<HoleSet> made, Optional<Holes> wanted) {
    return wanted.isEmpty()
        || (made.isPresent()
            && made.get().areaMm2() >= wanted.get().winner().areaMm2() - SAME_MM2
            && made.get().diameterMm() >= wanted.get().leastMm() - SAME_MM2);
  }

  private static String wanted(Member member) {
    var answer = Vents.of(member.bore());
    return member.bore().words()
        + ", "
        + Figures.upTo(member.lengthMm(), 0)
        + " mm long: "
        + answer
            .vent()
            .map(
                holes ->
                    "vent and drain "
                        + holes.asRuled().words()
                        + " at opposite ends ("
                        + holes.winner().rule()
                        + ")")
            .orElse("vent and drain at opposite ends");
  }

  /** Two different people who looked, by one record or several. */
  private static Optional<GateOpening> looked(GateCase part) {
    Set<String> names = new LinkedHashSet<>();
    Set<String> different = new LinkedHashSet<>();
    List<String> times = new ArrayList<>();
    List<String> seen = new ArrayList<>();
    for (GateOpening opening : part.records().getOrDefault("vents", List.of())) {
      if (opening.complete()) {
        for (String name : opening.by()) {
          if (different.add(name.strip().toLowerCase(Locale.ROOT))) {
            names.add(name.strip());
          }
        }
        add(times, opening.at());
        add(seen, opening.seen());
      }
    }
    return names.size() < LOOKERS
        ? Optional.empty()
        : Optional.of(
            new GateOpening(
                List.copyOf(names), String.join(" and ", times), String.join("; ", seen)));
  }

  private static void add(List<String> words, String word) {
    if (!words.contains(word)) {
      words.add(word);
    }
  }

  /** Air that cannot leave, against the steel that would have to hold it down. */
  static GateState floating(GateCase part) {
    double airL =
        part.build().members().stream()
            .filter(m -> closed(m) || (tooSmall(m) && part.record("holes").isEmpty()))
            .mapToDouble(Member::airL)
            .sum();
    double steelL = part.build().massKg() / STEEL_KG_L;
    String words =
        Figures.upTo(airL, 1)
            + " l of air that cannot leave, "
            + Figures.upTo(steelL, 1)
            + " l of steel (floats above "
            + Figures.upTo(FLOATING_SHARE * steelL, 1)
            + " l)";
    if (airL == 0) {
      return GateState.clear(Gate.FLOATING, "no trapped air known");
    }
    return airL <= FLOATING_SHARE * steelL
        ? GateState.clear(Gate.FLOATING, words)
        : GateState.shutUnless(
            part.record("floating"),
            Gate.FLOATING,
            "would-float",
            words + ": it floats up, is pushed under by hand and throws zinc",
            "holes that let the air out, seen and signed");
  }
}
