package spangle.intake.week;

import java.util.List;
import java.util.OptionalDouble;
import spangle.part.Material;
import spangle.part.WallArea;

/**
 * What a piece is made of.
 *
 * @param material material
 * @param materialWord the word as written
 * @param grade grade as written; may be empty
 * @param thicknessMm thinnest wall that counts, mm
 * @param thickestMm thickest wall, mm; equal to the thickness for pieces of one sheet
 * @param skins surface of one piece by thickness, thinnest first; empty where the file does not say
 * @param strengthMpa tensile strength where given, MPa
 * @param bendRadiusMm tightest inside bend where given, mm
 * @param certificate certificate number; empty where there is none
 * @param siPct silicon, per cent by mass
 * @param pPct phosphorus, per cent by mass
 * @param alPct aluminium in the steel, per cent by mass
 */
public record Metal(
    Material material,
    String materialWord,
    String grade,
    double thicknessMm,
    double thickestMm,
    List<WallArea> skins,
    OptionalDouble strengthMpa,
    OptionalDouble bendRadiusMm,
    String certificate,
    OptionalDouble siPct,
    OptionalDouble pPct,
    OptionalDouble alPct) {
  /** Copies the list. */
  public Metal {
    skins = List.copyOf(skins);
  }

  /** Surface of one piece as its skins add up, m2; 0 where the file gives none. */
  public double skinAreaM2() {
    double sum = 0;
    for (WallArea skin : skins) {
      sum += skin.areaM2();
    }
    return sum;
  }

  /**
   * Thickness of the wall behind its surface in the mean, mm; its thickness where it has no skins.
   */
  public double meanWallMm() {
    if (skins.isEmpty()) {
      return thicknessMm;
    }
    return skins.stream().mapToDouble(s -> s.areaM2() * s.thicknessMm()).sum() / skinAreaM2();
  }
}
