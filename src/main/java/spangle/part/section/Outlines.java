package spangle.part.section;

import java.util.Optional;

/** Draws the cross-sections from their nominal dimensions, all in mm. */
final class Outlines {
  private static final double TAPER = 0.08;

  private Outlines() {}

  static SectionProfile angle(
      String name, double longLeg, double shortLeg, double t, double root, double toe) {
    Outline outline =
        new Outline()
            .corner(0, 0)
            .corner(longLeg, 0)
            .corner(longLeg, t, toe)
            .corner(t, t, root)
            .corner(t, shortLeg, toe)
            .corner(0, shortLeg);
    return profile(name, Family.ANGLE, longLeg, shortLeg, t, outline, Optional.empty());
  }

  static SectionProfile taperChannel(
      String name,
      double height,
      double width,
      double web,
      double flange,
      double root,
      double toe) {
    // The nominal flange thickness is measured half the width from the back.
    double toeThickness = flange - TAPER * width / 2;
    double rootThickness = flange + TAPER * (width / 2 - web);
    return channel(
        name,
        Family.TAPER_CHANNEL,
        new double[] {height, width, web, toeThickness, rootThickness, root, toe},
        Math.min(web, flange));
  }

  static SectionProfile parallelChannel(
      String name, double height, double width, double web, double flange, double root) {
    return channel(
        name,
        Family.PARALLEL_CHANNEL,
        new double[] {height, width, web, flange, flange, root, 0},
        Math.min(web, flange));
  }

  private static SectionProfile channel(
      String name, Family family, double[] size, double thinnest) {
    double height = size[0];
    double width = size[1];
    double web = size[2];
    double atToe = size[3];
    double atRoot = size[4];
    Outline outline =
        new Outline()
            .corner(0, 0)
            .corner(width, 0)
            .corner(width, atToe, size[6])
            .corner(web, atRoot, size[5])
            .corner(web, height - atRoot, size[5])
            .corner(width, height - atToe, size[6])
            .corner(width, height)
            .corner(0, height);
    return profile(name, family, height, width, thinnest, outline, Optional.empty());
  }

  static SectionProfile hollow(
      String name, Family family, double height, double width, double wall) {
    double outer = family == Family.HOT_HOLLOW ? 1.5 : wall <= 6 ? 2 : wall <= 10 ? 2.5 : 3;
    double inner = family == Family.HOT_HOLLOW ? 1 : outer - 1;
    return profile(
        name,
        family,
        height,
        width,
        wall,
        Outline.rectangle(width, height, outer * wall),
        Optional.of(Outline.rectangle(width - 2 * wall, height - 2 * wall, inner * wall)));
  }

  static SectionProfile round(String name, double diameter, double wall) {
    double bore = diameter - 2 * wall;
    double boreMm2 = Math.PI * bore * bore / 4;
    return new SectionProfile(
        name,
        Family.ROUND_HOLLOW,
        diameter,
        diameter,
        wall,
        Math.PI * diameter * diameter / 4 - boreMm2,
        Math.PI * diameter,
        Math.PI * bore,
        boreMm2);
  }

  private static SectionProfile profile(
      String name,
      Family family,
      double height,
      double width,
      double thickness,
      Outline outline,
      Optional<Outline> bore) {
    double boreMm2 = bore.map(Outline::area).orElse(0.0);
    return new SectionProfile(
        name,
        family,
        height,
        width,
        thickness,
        outline.area() - boreMm2,
        outline.perimeter(),
        bore.map(Outline::perimeter).orElse(0.0),
        boreMm2);
  }
}
