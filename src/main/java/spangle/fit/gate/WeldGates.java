package spangle.fit.gate;

import java.util.ArrayList;
import java.util.List;
import spangle.fit.gate.GateCase.Build;
import spangle.fit.gate.GateCase.Contact;
import spangle.measure.Figures;

/** What welding, folding and joining may have closed. */
final class WeldGates {
  /** The strictest published limit for a sealed contact without relief (German trade guides). */
  private static final double SEALED_CONTACT_CM2 = 100;

  /** Least relief hole of an overlap, mm; or both thicknesses together (UK trade guides). */
  private static final double RELIEF_MM = 10;

  private WeldGates() {}

  /** Welded work of which the papers say too little. */
  static GateState unknown(GateCase part) {
    Build build = part.build();
    if (build.welded() == Known.NO || (build.welded() == Known.SILENT && build.onePiece())) {
      return GateState.clear(Gate.UNKNOWN, "not welded");
    }
    List<String> missing = new ArrayList<>();
    if (build.welded() == Known.SILENT) {
      missing.add("welded");
    }
    ask(missing, build.overlaps(), "overlaps");
    ask(missing, build.pockets(), "pockets");
    ask(missing, build.movingParts(), "moving_parts");
    ask(missing, build.soldered(), "soldered");
    if (missing.isEmpty()) {
      return GateState.clear(Gate.UNKNOWN, "all questions answered");
    }
    return GateState.shut(
        Gate.UNKNOWN,
        "welded-unknown",
        (build.welded() == Known.YES ? "welded work for zinc" : "work for zinc that may be welded")
            + ", and nothing is said of: "
            + String.join(", ", missing)
            + "; sealed places burst in molten zinc",
        "an answer in each of these columns: " + String.join(", ", missing));
  }

  private static void ask(List<String> missing, Known known, String column) {
    if (known == Known.SILENT) {
      missing.add(column);
    }
  }

  static GateState overlaps(GateCase part) {
    for (Contact contact : part.build().contacts()) {
      double needed =
          Math.max(RELIEF_MM, contact.overlap().firstMm() + contact.overlap().secondMm());
      boolean relieved =
          contact.holeMm().isPresent() && contact.holeMm().getAsDouble() >= needed - 1e-9;
      if (contact.sealed() && contact.overlap().areaCm2() > SEALED_CONTACT_CM2 && !relieved) {
        return GateState.shutUnless(
            part.record("overlap"),
            Gate.OVERLAP,
            "overlap-sealed",
            "a contact of "
                + Figures.fixed(contact.overlap().areaCm2(), 0)
                + " cm2 is welded all round (limit "
                + Figures.fixed(SEALED_CONTACT_CM2, 0)
                + " cm2) without a relief hole of "
                + Figures.fixed(needed, 0)
                + " mm",
            "a hole of at least "
                + Figures.fixed(needed, 0)
                + " mm or a gap in the weld, seen and signed");
      }
    }
    return GateState.clear(
        Gate.OVERLAP,
        part.build().contacts().isEmpty() ? "none told" : "relieved, open or up to 100 cm2");
  }

  static GateState pockets(GateCase part) {
    Build build = part.build();
    if (build.pockets() == Known.YES) {
      return GateState.shutUnless(
          part.record("pockets"),
          Gate.POCKETS,
          "blind-pocket",
          "returns, gutters or stiffeners make pockets that keep air out of the zinc or carry zinc"
              + " out",
          "corners cropped by 19 mm or holes of 13 mm at the high and low corners, seen and"
              + " signed");
    }
    if (build.openFront().isPresent() && !build.openFront().get().sideways()) {
      return GateState.shutUnless(
          part.record("pockets"),
          Gate.POCKETS,
          "blind-pocket",
          "it goes in only with its open face up or down: a trough that traps air or lifts zinc",
          "vents and drains in the closed face, seen and signed");
    }
    return GateState.clear(
        Gate.POCKETS,
        build
            .openFront()
            .map(
                front ->
                    "hang with the open face to the side, "
                        + Figures.upTo(front.acrossMm(), 1)
                        + " mm across")
            .orElse(build.pockets() == Known.NO ? "none told" : "not asked"));
  }

  static GateState movingParts(GateCase part) {
    if (part.build().movingParts() != Known.YES) {
      return GateState.clear(Gate.MOVING_PARTS, "none told");
    }
    return GateState.shutUnless(
        part.record("moving-parts"),
        Gate.MOVING_PARTS,
        "moving-parts",
        "moving parts freeze solid in zinc",
        "the parts taken apart, or at least 1.5 mm of radial play, signed");
  }

  static GateState soldered(GateCase part) {
    if (part.build().soldered() != Known.YES) {
      return GateState.clear(Gate.SOLDER, "none told");
    }
    return GateState.shut(
        Gate.SOLDER,
        "soldered-joint",
        "soldered joints melt in the bath and brazed ones are attacked",
        "nothing; join it after zinc, or weld it");
  }
}
