package spangle.part;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * What a part is made of, as far as mass and the gates need to know. Densities are nominal; a
 * density from a data sheet may be used in their place wherever one is asked for.
 */
public enum Material {
  /** Plain carbon steel, 7850 kg/m3 (EN 1993-1-1, 3.2.6). */
  STEEL(
      7850,
      "steel",
      "(?:s235|s275|s355|s420|s460|dc0[1-7]|dd1[1-4]|st ?37|st ?44|st ?52|a500)(?![0-9])"
          + "(?!.*(?:galv|zinc|\\+ ?(?:z|as)|stainless|inox|alu)).*|a36"
          + "|(?:mild|carbon|black|structural|sheet)[ -]?steel|m\\.?s\\.?|stahl|baustahl"
          + "|(?:cold|hot)[ -]?rolled(?:[ -](?:steel|sheet|plate))?|[ch]rs|[ch]r4|[ch]r|hrpo|crca"
          + "|steel[ -](?:sheet|plate|tube|bar|angle|section)"),
  /** Austenitic stainless steel, 7900 kg/m3 (EN 10088-1 for 1.4301). */
  STAINLESS(
      7900,
      "stainless",
      "stainless ?steel|inox|edelstahl|s\\.?/?s\\.?|st\\.? ?st\\.?|1\\.4[0-9]{3}.*|304l?|316l?"),
  /** Aluminium and its wrought alloys, 2700 kg/m3 (EN 1999-1-1, 3.2.5). */
  ALUMINIUM(
      2700,
      "aluminium",
      "alumini?um|al|alum?\\.?|en ?aw.*|(?:5052|5083|5251|5754|6060|6061|6063|6082)(?:[ -].*)?"),
  /** Grey and ductile iron castings, 7200 kg/m3 (from memory: EN 1561 gives 7.10 to 7.30). */
  CAST_IRON(7200, "cast-iron", "cast[ _]iron|iron[ _-]casting|en-?gj[ls].*"),
  /** Sheet that came in with a zinc coat; the coat is left out of the mass, 7850 kg/m3. */
  GALVANIZED_STEEL(
      7850,
      "galvanized-steel",
      "galvani[sz]ed([ _-]steel)?|dx5[1-7]d.*|pre-?galv.*|(?:dc0[1-7]|s[2-5][0-9]0gd) ?\\+ ?z.*"),
  /** Brass, 8470 kg/m3 (from memory: CuZn39Pb3). */
  BRASS(8470, "brass", "cuzn.*|ms ?58"),
  /** Copper, 8930 kg/m3 (from memory: Cu-ETP). */
  COPPER(8930, "copper", "cu-?etp|cu"),
  /** Zinc die casting, 6600 kg/m3 (from memory: ZP0410 gives 6.6 to 6.7). */
  ZINC_CASTING(6600, "zinc-casting", "zinc|zamak.*|zinc[ _]die.*"),
  /** Anything else; its density has to be given. */
  OTHER(0, "other", "unknown");

  private final double densityKgM3;
  private final String word;
  private final Pattern otherNames;

  Material(double densityKgM3, String word, String otherNames) {
    this.densityKgM3 = densityKgM3;
    this.word = word;
    this.otherNames = Pattern.compile(otherNames);
  }

  /** Nominal density in kg/m3; empty for {@link #OTHER}, whose density must be given. */
  public OptionalDouble densityKgM3() {
    return this == OTHER ? OptionalDouble.empty() : OptionalDouble.of(densityKgM3);
  }

  /** The word for it in files and on sheets. */
  public String word() {
    return word;
  }

  /**
   * Reads the word people write, case and outer blanks ignored: {@code Steel}, {@code S235JR},
   * {@code aluminum}, {@code 1.4301}.
   *
   * @return empty when the word is not known; nothing is guessed
   */
  public static Optional<Material> parse(String text) {
    String name = text.strip().toLowerCase(Locale.ROOT);
    // "MS" is mild steel; "Ms" on many drawings is brass, which must not get into a kettle.
    if (name.isEmpty() || name.length() > 60 || text.strip().equals("Ms")) {
      return Optional.empty();
    }
    for (Material material : values()) {
      if (material.word.equals(name) || material.otherNames.matcher(name).matches()) {
        return Optional.of(material);
      }
    }
    return Optional.empty();
  }
}
