package spangle.fit.gate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.fit.vent.Hollow.HollowSection;
import spangle.fit.vent.Hollow.Overlap;
import spangle.measure.Box;
import spangle.part.Material;

/**
 * What the gates need to know of one part.
 *
 * @param zinc whether it goes into zinc
 * @param steel what it is made of
 * @param build how it is put together
 * @param heat what it bears
 * @param records what people have signed, by the word of the record
 */
public record GateCase(
    boolean zinc, Steel steel, Build build, Heat heat, Map<String, List<GateOpening>> records) {

  /**
   * What a part is made of.
   *
   * @param material the metal
   * @param thinMm thinnest wall
   * @param thickMm thickest wall
   * @param strengthMpa tensile strength
   * @param bendRadiusMm tightest inside bend
   */
  public record Steel(
      Material material,
      double thinMm,
      double thickMm,
      OptionalDouble strengthMpa,
      OptionalDouble bendRadiusMm) {}

  /**
   * How a part is put together.
   *
   * @param welded whether it is welded together
   * @param onePiece whether its form alone says that it is one piece
   * @param hollow whether it has hollow spaces that are or can be closed
   * @param members its hollow members
   * @param overlaps whether plates lie on one another
   * @param contacts where they do
   * @param pockets whether returns, gutters or stiffeners make pockets
   * @param openFront whether the open face of a box can stand upright in the kettle
   * @param movingParts whether it moves in itself
   * @param soldered whether joints are soldered or brazed
   * @param envelope outside size
   * @param massKg steel
   * @param flatMm shorter side of its widest flat face, 0 where it has none; empty where only the
   *     outside size tells
   */
  public record Build(
      Known welded,
      boolean onePiece,
      Known hollow,
      List<Member> members,
      Known overlaps,
      List<Contact> contacts,
      Known pockets,
      Optional<OpenFront> openFront,
      Known movingParts,
      Known soldered,
      Box envelope,
      double massKg,
      OptionalDouble flatMm) {
    /** Copies the lists. */
    public Build {
      members = List.copyOf(members);
      contacts = List.copyOf(contacts);
    }
  }

  /**
   * Hollow members of one kind.
   *
   * @param count how many alike
   * @param bore the space in one
   * @param lengthMm its length
   * @param vents holes at the high end
   * @param drains holes at the low end
   */
  public record Member(
      int count,
      HollowSection bore,
      double lengthMm,
      Optional<HoleSet> vents,
      Optional<HoleSet> drains) {
    private static final double STEEL_KG_MM3 = 7850 / 1e9;

    /** Longer outside side of its section, mm. */
    double outsideMm() {
      return Math.max(bore.widthMm(), bore.heightMm()) + 2 * wall();
    }

    /** Steel of all of them, kg, holes not taken off. */
    double steelKg() {
      double width = bore.widthMm();
      double height = bore.heightMm();
      double outside = (width + 2 * wall()) * (height + 2 * wall());
      double share = bore.round() ? Math.PI / 4 : 1;
      return count * share * (outside - width * height) * lengthMm * STEEL_KG_MM3;
    }

    private double wall() {
      return bore.wallMm().orElse(0);
    }

    /** Air inside all of them, litres. */
    public double airL() {
      return count * bore.sectionMm2() * lengthMm / 1e6;
    }
  }

  /** So many holes of one diameter. */
  public record HoleSet(int count, double diameterMm) {
    /** Open area in mm2. */
    public double areaMm2() {
      return count * Math.PI * diameterMm * diameterMm / 4;
    }
  }

  /**
   * Two plates on one another.
   *
   * @param overlap area and thicknesses
   * @param sealed whether it is welded all round
   * @param holeMm relief hole on record
   */
  public record Contact(Overlap overlap, boolean sealed, OptionalDouble holeMm) {}

  /**
   * The open face of a box.
   *
   * @param sideways whether it can stand upright, facing a long wall, in an attitude that goes in
   * @param acrossMm the side that lies across then
   */
  public record OpenFront(boolean sideways, double acrossMm) {}

  /**
   * What a part bears.
   *
   * @param sensitive whether something in it may not become hot
   * @param what what that is; may be empty
   * @param limitC warmest it may become
   * @param hottestC what it would meet
   */
  public record Heat(Known sensitive, String what, OptionalDouble limitC, double hottestC) {}

  /** Copies the map. */
  public GateCase {
    records = Map.copyOf(records);
  }

  /** The first complete record of a word. */
  Optional<GateOpening> record(String word) {
    return records.getOrDefault(word, List.of()).stream().filter(GateOpening::complete).findFirst();
  }
}
