package spangle.coating.zinc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a certificate means for the zinc.
 *
 * @param steelClass the class that decides the growth factor
 * @param research class of the eight-class research table (ILZRO, Cardiff): 1, 2, 3, 4a, 4b, 5a,
 *     5b, 6; empty without Si and P
 * @param insideA385 whether Si and Si + 2.5 P lie in the windows of ASTM A385 (under 0.04, or 0.15
 *     to 0.22 %) with P under 0.04; empty without Si and P
 * @param warnings what the shop should say to its customer
 * @param questions what a person must find out
 */
public record SteelReactivity(
    SteelClass steelClass,
    Optional<String> research,
    Optional<Boolean> insideA385,
    List<String> warnings,
    List<String> questions) {
  /** Said of every laser- or flame-cut part (from memory; trade guidance agrees). */
  public static final String CUT_EDGES =
      "Laser- and flame-cut edges coat thin unless they are ground first.";

  private static final double SLACK = 1e-9;

  /** Copies the lists. */
  public SteelReactivity {
    warnings = List.copyOf(warnings);
    questions = List.copyOf(questions);
  }

  /** Judges a certificate. */
  public static SteelReactivity of(SteelChemistry steel) {
    SteelClass steelClass = classify(steel);
    return new SteelReactivity(
        steelClass,
        research(steel),
        insideA385(steel),
        warnings(steel, steelClass),
        questions(steel, steelClass));
  }

  private static SteelClass classify(SteelChemistry steel) {
    if (steel.siPct().isEmpty()) {
      return SteelClass.UNKNOWN;
    }
    double si = steel.siPct().getAsDouble();
    if (si > 0.25 + SLACK) {
      return SteelClass.D;
    }
    if (si > 0.04 + SLACK && si <= 0.14 + SLACK) {
      return SteelClass.C;
    }
    if (steel.pPct().isEmpty()) {
      return SteelClass.UNKNOWN;
    }
    if (isUltraLow(steel)) {
      return SteelClass.ULTRA_LOW;
    }
    double p = steel.pPct().getAsDouble();
    if (si <= 0.04 + SLACK) {
      return p < 0.02 - SLACK ? SteelClass.A : SteelClass.C;
    }
    return p < 0.035 - SLACK ? SteelClass.B : SteelClass.C;
  }

  /** ISO 1461:2022: Si up to 0.01 % and Al over 0.035 %; with P in the row of class A. */
  private static boolean isUltraLow(SteelChemistry steel) {
    return steel.siPct().orElse(1) <= 0.01 + SLACK
        && steel.alPct().orElse(0) > 0.035 + SLACK
        && steel.pPct().orElse(0) < 0.02 - SLACK;
  }

  private static Optional<String> research(SteelChemistry steel) {
    if (steel.siPct().isEmpty() || steel.pPct().isEmpty()) {
      return Optional.empty();
    }
    double si = steel.siPct().getAsDouble();
    double p = steel.pPct().getAsDouble();
    if (si > 0.35 + SLACK) {
      return Optional.of("6");
    }
    if (si > 0.135 + SLACK) {
      return Optional.of(p > 0.03 + SLACK ? "5b" : "5a");
    }
    if (si > 0.04 + SLACK) {
      return Optional.of(p > 0.01 + SLACK ? "4b" : "4a");
    }
    if (p > 0.035 + SLACK) {
      return Optional.of("3");
    }
    return Optional.of(si <= 0.035 + SLACK && p <= 0.025 + SLACK ? "1" : "2");
  }

  private static Optional<Boolean> insideA385(SteelChemistry steel) {
    if (steel.equivalentPct().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        inA385Window(steel.siPct().orElseThrow())
            && inA385Window(steel.equivalentPct().getAsDouble())
            && steel.pPct().orElseThrow() < 0.04 - SLACK);
  }

  private static boolean inA385Window(double pct) {
    return pct < 0.04 - SLACK || (pct >= 0.15 - SLACK && pct <= 0.22 + SLACK);
  }

  private static List<String> warnings(SteelChemistry steel, SteelClass steelClass) {
    List<String> warnings = new ArrayList<>();
    boolean littleSilicon =
        steel.siPct().isPresent() && steel.siPct().getAsDouble() <= 0.01 + SLACK;
    if (steelClass == SteelClass.ULTRA_LOW) {
      warnings.add(
          "Ultra-low-silicon steel may miss the standard's minimum whatever the dip; agree a"
              + " thinner row beforehand (ISO 1461:2022 lets it be declared).");
    } else if (littleSilicon) {
      warnings.add(
          "Silicon this low, usual in laser-grade sheet, may miss the standard's minimum when"
              + " aluminium is over 0.035 %.");
    }
    if (steelClass.brittle()) {
      warnings.add(
          "Expect a "
              + (steelClass == SteelClass.C ? "very thick, rough, darker" : "thick, grey")
              + " coating that chips when knocked: pack it softly and tell the customer.");
    }
    return warnings;
  }

  private static List<String> questions(SteelChemistry steel, SteelClass steelClass) {
    List<String> questions = new ArrayList<>();
    if (steelClass == SteelClass.UNKNOWN) {
      String missing =
          steel.siPct().isPresent() ? "phosphorus" : steel.pPct().isPresent() ? "silicon" : "";
      questions.add(
          missing.isEmpty()
              ? "What do the mill certificates say of silicon and phosphorus?"
              : "What does the mill certificate say of " + missing + "?");
    }
    if (steelClass == SteelClass.A
        && steel.alPct().isEmpty()
        && steel.siPct().orElseThrow() <= 0.01 + SLACK) {
      questions.add("Is aluminium over 0.035 %? Then the coating may come out too thin.");
    }
    return questions;
  }
}
