package spangle.intake.week;

import java.util.Locale;

/** The way a part takes through the shop. */
public enum Route {
  /** One coat of powder. */
  POWDER,
  /** Two coats of powder. */
  TWO_COAT,
  /** Liquid paint. */
  LIQUID,
  /** Hot-dip zinc. */
  ZINC,
  /** Hot-dip zinc, degassing bake, powder. */
  DUPLEX;

  /** The word in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether it goes into the kettle. */
  public boolean zinc() {
    return this == ZINC || this == DUPLEX;
  }

  /** Whether it takes powder. */
  public boolean powder() {
    return this == POWDER || this == TWO_COAT || this == DUPLEX;
  }
}
