package spangle.intake.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import spangle.intake.week.GateRecord;
import spangle.intake.week.Overlap;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.part.Material;
import spangle.plan.Held;
import spangle.plan.PartFacts;

/**
 * Gates that stop a part before it is scheduled, shut by default where the data are silent. Only a
 * signed record opens one; some never open. Steam in a sealed hollow reaches tens of MPa in molten
 * zinc: local codes and the galvanizer's written release decide, this program only asks.
 */
final class SafetyGates {
  /** The strictest published limit for a sealed contact without relief (German trade guides). */
  private static final double SEALED_CONTACT_CM2 = 100;

  /** Least relief hole of an overlap, mm; or both thicknesses together (UK trade guides). */
  private static final double RELIEF_MM = 10;

  private final WeekInput input;

  SafetyGates(WeekInput input) {
    this.input = input;
  }

  List<Held> shut(PartLine line, PartFacts part) {
    List<Held> shut = new ArrayList<>();
    boolean zinc = line.wanted().route().zinc();
    boolean oven = !line.wanted().finishes().isEmpty();
    if (zinc) {
      material(part, shut);
      hollow(line, part, shut);
      overlaps(line, part, shut);
      moving(line, part, shut);
    }
    if (oven || zinc) {
      heat(line, part, zinc, shut);
    }
    return shut;
  }

  private static void material(PartFacts part, List<Held> shut) {
    if (part.material() != Material.STEEL && part.material() != Material.CAST_IRON) {
      shut.add(
          held(
              part,
              "material-not-for-zinc",
              part.material().word() + " must not go into acid or molten zinc",
              "nothing; plain steel and iron castings only, or another route",
              "design",
              0));
    }
  }

  private void hollow(PartLine line, PartFacts part, List<Held> shut) {
    boolean silent = line.hollows().welded().yes() && !answered(line);
    if (silent) {
      shut.add(
          held(
              part,
              "hollow-unknown",
              "welded work for zinc, and nothing says whether it has hollow spaces; a sealed hollow"
                  + " explodes in molten zinc",
              "the answer to: hollow members, with vent and drain holes",
              "design",
              0));
      return;
    }
    boolean closed = line.hollows().told().yes() && line.hollows().members().isEmpty();
    boolean holes =
        line.hollows().members().stream()
            .allMatch(m -> m.vents().isPresent() && m.drains().isPresent());
    if (closed || !holes) {
      shut.add(
          held(
              part,
              "hollow-closed",
              "a hollow without vent and drain holes on record explodes in molten zinc",
              "holes at the high and the low end, and two people who looked through them",
              "design",
              0));
      return;
    }
    boolean members = !line.hollows().members().isEmpty();
    if (members && signatures(line, part, GateRecord.Gate.VENTS) < 2) {
      shut.add(
          held(
              part,
              "vents-not-signed",
              "holes are on record, but two different people have not signed that they are open",
              "two names with the time, in vents_checked or gates.yaml",
              "kettle lead",
              0));
    }
  }

  private static boolean answered(PartLine line) {
    return line.hollows().told().yes()
        || line.hollows().told().no()
        || !line.hollows().members().isEmpty();
  }

  private int signatures(PartLine line, PartFacts part, GateRecord.Gate gate) {
    Set<String> names = new TreeSet<>();
    line.hollows().ventsChecked().forEach(s -> names.add(s.by()));
    records(part, gate).forEach(r -> names.addAll(r.openedBy()));
    return names.size();
  }

  private List<GateRecord> records(PartFacts part, GateRecord.Gate gate) {
    return input.gates().stream()
        .filter(r -> r.gate() == gate)
        .filter(r -> r.jobId().equals(part.jobId()) && r.partId().equals(part.partId()))
        .toList();
  }

  private void overlaps(PartLine line, PartFacts part, List<Held> shut) {
    boolean signed = !records(part, GateRecord.Gate.OVERLAP).isEmpty();
    for (Overlap overlap : line.hollows().overlaps()) {
      double needed = Math.max(RELIEF_MM, overlap.thicknessMm() + overlap.otherThicknessMm());
      boolean relieved = overlap.holeMm().isPresent() && overlap.holeMm().getAsDouble() >= needed;
      if (overlap.weld() == Overlap.Weld.ALL_ROUND
          && overlap.areaCm2() > SEALED_CONTACT_CM2
          && !relieved
          && !signed) {
        shut.add(
            held(
                part,
                "overlap-sealed",
                String.format(
                    Locale.ROOT,
                    "a contact of %.0f cm2 is welded all round (limit %.0f cm2) without a relief"
                        + " hole of %.0f mm",
                    overlap.areaCm2(),
                    SEALED_CONTACT_CM2,
                    needed),
                String.format(
                    Locale.ROOT,
                    "a hole of at least %.0f mm or a gap in the weld, seen and signed",
                    needed),
                "design",
                0));
      }
    }
  }

  private void moving(PartLine line, PartFacts part, List<Held> shut) {
    if (line.handling().movingParts().yes()
        && records(part, GateRecord.Gate.MOVING_PARTS).isEmpty()) {
      shut.add(
          held(
              part,
              "moving-parts",
              "moving parts freeze solid in zinc",
              "the parts taken apart, or at least 1.5 mm of radial play, signed",
              "design",
              1));
    }
  }

  private void heat(PartLine line, PartFacts part, boolean zinc, List<Held> shut) {
    if (!line.heat().sensitive().yes() || !records(part, GateRecord.Gate.HEAT).isEmpty()) {
      return;
    }
    double hottest = zinc ? 450 : hottestC(line);
    boolean bears =
        line.heat().limitC().isPresent() && line.heat().limitC().getAsDouble() >= hottest;
    if (!bears) {
      shut.add(
          held(
              part,
              "heat-sensitive",
              String.format(
                  Locale.ROOT,
                  "%s: it would be heated to %.0f C%s",
                  line.heat().what().isBlank() ? "heat-sensitive" : line.heat().what(),
                  hottest,
                  line.heat().limitC().isPresent()
                      ? String.format(
                          Locale.ROOT, ", it bears %.0f C", line.heat().limitC().getAsDouble())
                      : ""),
              "the heat-sensitive item taken off, or a liquid paint that dries below its limit",
              "assembly",
              0));
    }
  }

  /** The lowest oven setting its coats could be dried at on the line they go to. */
  private double hottestC(PartLine line) {
    return line.wanted().finishes().stream()
        .flatMap(id -> input.catalogue().coating(id).stream())
        .mapToDouble(c -> c.cure().map(cure -> cure.points().get(0).celsius()).orElse(0.0))
        .max()
        .orElse(0);
  }

  private static Held held(
      PartFacts part, String gate, String words, String opens, String who, int danger) {
    return new Held(
        part.jobId(),
        part.partId(),
        part.description(),
        part.pieces(),
        gate,
        words,
        opens,
        who,
        danger,
        part.dueMin());
  }
}
