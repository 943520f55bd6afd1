package spangle.fit.vent;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spangle.fit.vent.Hollow.BoxSection;
import spangle.fit.vent.Hollow.HollowSection;
import spangle.fit.vent.Hollow.Overlap;
import spangle.fit.vent.Hollow.Vessel;
import spangle.measure.Figures;

/** Puts all rules side by side; the largest area wins for each task and is named. */
public final class Vents {
  private static final List<VentRule> RULES =
      Stream.of(SectionRules.ALL, VesselRules.ALL, PlateRules.ALL).flatMap(List::stream).toList();

  /** Trapped water turned to steam, times its volume (trade design guides). */
  public static final String DANGER =
      "Water shut in turns to steam of about 1750 times its volume and bursts the part: people in"
          + " reach of the kettle can be killed";

  private static final double LARGE_TANK_MM = 1220;

  private Vents() {}

  /** What a hollow needs. */
  public static VentAnswer of(Hollow hollow) {
    List<Need> needs =
        RULES.stream()
            .flatMap(rule -> rule.needs(hollow).stream())
            .sorted(
                Comparator.comparing(Need::task)
                    .thenComparing(need -> !need.counted())
                    .thenComparing(Comparator.comparingDouble(Need::areaMm2).reversed()))
            .toList();
    return new VentAnswer(
        hollow,
        needs,
        largest(hollow, needs, Task.VENT),
        largest(hollow, needs, Task.DRAIN),
        cautions(hollow, needs));
  }

  private static Optional<Holes> largest(Hollow hollow, List<Need> needs, Task task) {
    double least = hollow instanceof Overlap ? 10 : Math.max(10, hollow.wallMm().orElse(0));
    return needs.stream()
        .filter(need -> need.task() == task && need.counted())
        .findFirst()
        .map(need -> new Holes(need, least));
  }

  private static List<String> cautions(Hollow hollow, List<Need> needs) {
    List<String> words = new ArrayList<>();
    if (!(hollow instanceof OpenFront)) {
      words.add(DANGER);
    }
    if (hollow instanceof Overlap overlap) {
      if (needs.isEmpty()) {
        words.add(
            "Up to 100 cm2: sound only when welded all round without a pore, and signed for;"
                + " stitch welds never count as sealed");
      }
      words.add("A gap up to 2.4 mm holds acid: weld it shut or open it wider");
      if (overlap.lengthMm().isEmpty() && overlap.areaCm2() > 400) {
        words.add("Length of the overlap not given: one hole for every metre is wanted");
      }
    } else if (hollow instanceof OpenFront front) {
      words.addAll(ReturnCautions.of(front, largest(hollow, needs, Task.DRAIN)));
    } else {
      words.add(
          "One hole vents but the part floats: vent and drain stand diagonally opposite, within"
              + " 10 mm of the end or corner, never in the middle of the end plate");
      words.add("Preferred where there is room: vent 12 mm, drain 25 mm");
    }
    if (hollow instanceof HollowSection section) {
      if (section.lengthMm().isEmpty()) {
        words.add("Length not given: sections longer than 2.8 m need 30 % of the section open");
      }
      tooLarge(section, needs).ifPresent(words::add);
    }
    if (hollow instanceof Vessel vessel) {
      tooSmall(vessel, needs).ifPresent(words::add);
      words.add("Outside only: a snorkel above the zinc; ask the galvanizer");
      if (vessel.diameterMm().orElse(0) > LARGE_TANK_MM) {
        words.add("A tank over 1.22 m in diameter needs a manhole");
      }
    }
    if (hollow instanceof BoxSection) {
      words.add("Plates inside stand at least 914 mm apart");
    }
    return words;
  }

  /** The rules for vessels were made for tanks: a tin cannot be given a hole of 50 mm. */
  private static Optional<String> tooSmall(Vessel vessel, List<Need> needs) {
    double across = Math.cbrt(vessel.volumeM3()) * 1000;
    double largest = needs.stream().mapToDouble(Need::eachMm).max().orElse(0);
    return largest > 0.75 * across
        ? Optional.of(
            "A hole of "
                + Text.mm(largest)
                + " does not go into a vessel of "
                + Figures.significant(vessel.volumeM3() * 1000, 3)
                + " l, about "
                + Text.mm(across)
                + " each way: leave one end wholly open, or ask as a pipe or tube")
        : Optional.empty();
  }

  private static Optional<String> tooLarge(HollowSection section, List<Need> needs) {
    double side = Math.min(section.widthMm(), section.heightMm());
    double largest = needs.stream().mapToDouble(Need::eachMm).max().orElse(0);
    return Drills.nextMm(largest) > 0.75 * side
        ? Optional.of(
            "A hole of "
                + Text.mm(Drills.nextMm(largest))
                + " takes most of the "
                + Text.mm(side)
                + " side: share the area among more holes or leave the end open")
        : Optional.empty();
  }
}
