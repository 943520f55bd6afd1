package spangle.fit.vent;

import java.util.OptionalDouble;
import spangle.measure.Figures;

/** A space that zinc must fill and leave again. */
public sealed interface Hollow
    permits Hollow.HollowSection,
        Hollow.Vessel,
        Hollow.BoxSection,
        Hollow.Overlap,
        Hollow.Returns,
        OpenFront {
  /** Where its openings are counted: at each end, in all, at each plate. */
  String scope();

  /** Thickness of the metal the holes go through, in mm; empty when it is not known. */
  OptionalDouble wallMm();

  /** In words, with sizes. */
  String words();

  /**
   * A hollow section: tube or pipe with closed ends.
   *
   * @param widthMm inside width, or the bore of a pipe
   * @param heightMm inside height, or the bore of a pipe
   * @param round whether it is a pipe
   * @param lengthMm its length; empty when it is not known
   * @param wallMm wall thickness
   * @param use what it is part of
   */
  record HollowSection(
      double widthMm,
      double heightMm,
      boolean round,
      OptionalDouble lengthMm,
      OptionalDouble wallMm,
      Use use)
      implements Hollow {
    /** What a hollow section is part of; some trades have rules of their own. */
    public enum Use {
      /** Nothing in particular. */
      PLAIN,
      /** A member of a truss or frame welded at both ends. */
      TRUSS,
      /** A tapered pole. */
      POLE,
      /** A rail of a handrail assembly of five rails or more. */
      RAIL,
      /** Opens into another hollow by a hole nobody sees from outside. */
      HIDDEN
    }

    /** Checks the bore. */
    public HollowSection {
      positive(widthMm, "inside width");
      positive(heightMm, "inside height");
    }

    /** A square or rectangular bore of unknown length in no particular use. */
    public static HollowSection bore(double widthMm, double heightMm) {
      return new HollowSection(
          widthMm, heightMm, false, OptionalDouble.empty(), OptionalDouble.empty(), Use.PLAIN);
    }

    /** Diagonal of the bore, or the bore of a pipe, in mm. */
    public double diagonalMm() {
      return round ? widthMm : Math.hypot(widthMm, heightMm);
    }

    /** Inside cross-section in mm2. */
    public double sectionMm2() {
      return round ? Math.PI * widthMm * widthMm / 4 : widthMm * heightMm;
    }

    @Override
    public String scope() {
      return "at each end";
    }

    @Override
    public String words() {
      return round
          ? "pipe of bore " + Text.mm(widthMm)
          : "hollow section of bore " + Text.mm(widthMm) + " x " + Text.mm(heightMm);
    }
  }

  /**
   * A closed vessel or box.
   *
   * @param volumeM3 inside volume
   * @param diameterMm of a round tank
   * @param wallMm wall thickness
   */
  record Vessel(double volumeM3, OptionalDouble diameterMm, OptionalDouble wallMm)
      implements Hollow {
    /** Checks the volume. */
    public Vessel {
      positive(volumeM3, "volume");
    }

    @Override
    public String scope() {
      return "in all";
    }

    @Override
    public String words() {
      return volumeM3 < 0.01
          ? "closed vessel of " + Figures.significant(volumeM3 * 1000, 3) + " l"
          : "closed vessel of " + Text.number(volumeM3) + " m3";
    }
  }

  /**
   * A box section welded of plates, with end plates or plates inside.
   *
   * @param heightMm inside height
   * @param widthMm inside width
   * @param wallMm thickness of the end plate
   */
  record BoxSection(double heightMm, double widthMm, OptionalDouble wallMm) implements Hollow {
    /** Checks the sizes. */
    public BoxSection {
      positive(heightMm, "inside height");
      positive(widthMm, "inside width");
    }

    @Override
    public String scope() {
      return "at each end plate and each plate inside";
    }

    @Override
    public String words() {
      return "box section " + Text.mm(heightMm) + " x " + Text.mm(widthMm) + " with plates across";
    }
  }

  /**
   * Two plates on one another, welded round.
   *
   * @param areaCm2 contact area
   * @param firstMm thickness of one
   * @param secondMm thickness of the other
   * @param lengthMm longest side of the contact; empty when it is not known
   */
  record Overlap(double areaCm2, double firstMm, double secondMm, OptionalDouble lengthMm)
      implements Hollow {
    /** Checks the sizes. */
    public Overlap {
      positive(areaCm2, "contact area");
      positive(firstMm, "thickness");
      positive(secondMm, "thickness");
    }

    @Override
    public OptionalDouble wallMm() {
      return OptionalDouble.of(Math.min(firstMm, secondMm));
    }

    @Override
    public String scope() {
      return "in all";
    }

    @Override
    public String words() {
      return "overlap of "
          + Text.number(areaCm2)
          + " cm2, "
          + Text.number(firstMm)
          + " + "
          + Text.number(secondMm)
          + " mm";
    }
  }

  /**
   * An open-front enclosure or tray whose folded returns, gutters or stiffeners make pockets.
   *
   * @param pockets corners or closed gutter ends that hold air or zinc
   * @param wallMm sheet thickness
   */
  record Returns(int pockets, OptionalDouble wallMm) implements Hollow {
    /** Checks the count. */
    public Returns {
      if (pockets < 1) {
        throw new IllegalArgumentException("number of pockets must be 1 or more, not " + pockets);
      }
    }

    @Override
    public String scope() {
      return "at each pocket";
    }

    @Override
    public String words() {
      return pockets + " pockets in folded returns or behind stiffeners";
    }
  }

  /** Refuses what is not above zero. */
  static void positive(double value, String what) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " must be above zero, not " + value);
    }
  }
}
