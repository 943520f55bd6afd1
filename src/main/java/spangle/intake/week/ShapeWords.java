package spangle.intake.week;

import java.util.List;
import java.util.Locale;

/**
 * A shape as people name it: a form and its outside sizes.
 *
 * @param form what it is
 * @param sizesMm outside sizes in the order of the form, mm
 * @param open whether the front of a box is left out
 * @param holes round holes, if any
 * @param file drawing of a flat pattern or solid, or name of a standard section; else empty
 * @param text as written
 */
public record ShapeWords(
    Form form,
    List<Double> sizesMm,
    boolean open,
    List<RoundHoles> holes,
    String file,
    String text) {

  /** Forms and how many sizes each takes. */
  public enum Form {
    /** Flat plate: length, width. */
    PLATE(2),
    /** Flat blank that is folded afterwards: length, width of the blank. */
    BLANK(2),
    /** Folded angle: leg, leg, length. */
    ANGLE(3),
    /** Folded channel: flange, web, flange, length. */
    CHANNEL(4),
    /** Box of sheet: length, width, height. */
    BOX(3),
    /** Rectangular tube: width, height, length. */
    TUBE(3),
    /** Round tube: diameter, length. */
    PIPE(2),
    /** Round bar: diameter, length. */
    BAR(2),
    /** A length of a standard section: length; the section's name stands in {@code file}. */
    SECTION(1),
    /** Flat pattern from a drawing. */
    FLAT(0),
    /** Solid from a drawing. */
    SOLID(0);

    private final int sizes;

    Form(int sizes) {
      this.sizes = sizes;
    }

    /** How many sizes it takes. */
    public int sizes() {
      return sizes;
    }

    /** The word in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Round holes of one diameter. */
  public record RoundHoles(int count, double diameterMm) {}

  /** Copies the lists. */
  public ShapeWords {
    sizesMm = List.copyOf(sizesMm);
    holes = List.copyOf(holes);
  }
}
