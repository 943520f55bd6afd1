package spangle.intake.copy;

import java.util.Locale;
import java.util.stream.Collectors;
import spangle.intake.week.Hollow;
import spangle.intake.week.Hollows;
import spangle.intake.week.Overlap;

/** Hollow members and overlaps in the program's own words. */
final class HollowWords {
  private HollowWords() {}

  static String members(Hollows hollows) {
    return hollows.members().isEmpty()
        ? CleanRow.word(hollows.told())
        : hollows.members().stream().map(HollowWords::member).collect(Collectors.joining("; "));
  }

  private static String member(Hollow hollow) {
    String section =
        hollow.round()
            ? Plain.number(hollow.widthMm())
            : Plain.number(hollow.widthMm()) + "x" + Plain.number(hollow.heightMm());
    String size = hollow.count() + "x " + section + "x" + Plain.number(hollow.lengthMm()) + " mm";
    return size
        + hollow.vents().map(set -> " vents " + holes(set)).orElse("")
        + hollow.drains().map(set -> " drains " + holes(set)).orElse("");
  }

  private static String holes(Hollow.HoleSet set) {
    return set.count() + "x" + Plain.number(set.diameterMm()) + " mm";
  }

  static String overlaps(Hollows hollows) {
    return hollows.overlaps().isEmpty()
        ? CleanRow.word(hollows.overlapsTold())
        : hollows.overlaps().stream().map(HollowWords::overlap).collect(Collectors.joining("; "));
  }

  private static String overlap(Overlap overlap) {
    String weld = overlap.weld().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return Plain.number(overlap.areaCm2())
        + " cm2 "
        + Plain.number(overlap.thicknessMm())
        + "+"
        + Plain.number(overlap.otherThicknessMm())
        + " mm "
        + weld
        + (overlap.holeMm().isPresent()
            ? " hole " + Plain.number(overlap.holeMm().getAsDouble())
            : "");
  }
}
