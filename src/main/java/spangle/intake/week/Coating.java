package spangle.intake.week;

import java.util.Optional;

/** What can be on the gun of a booth. */
public sealed interface Coating permits Powder, Paint {
  /** Name in job files. */
  String id();

  /** Words for the sheet. */
  String name();

  /** Colour in words. */
  String colour();

  /** Colour for the screen, {@code #rrggbb}. */
  String swatch();

  /** Colour family of the change-over table. */
  String family();

  /** Chemistry in one word. */
  String chemistry();

  /** Film it is sprayed to. */
  Film film();

  /** How rejected pieces are coated over. */
  Recoating recoating();

  /** Cure at metal temperature; empty where there are no usable data. */
  Optional<Cure> cure();

  /** What there is and how it is bought. */
  Stock stock();

  /** Film of one coat on a part, um: what the order asks for, else the product's own aim. */
  default double coatUm(PartLine line) {
    return line.wanted().filmUm().orElse(film().aimUm());
  }
}
