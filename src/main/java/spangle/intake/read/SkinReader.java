package spangle.intake.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.measure.Figures;
import spangle.measure.MeasureException;
import spangle.measure.Quantities;
import spangle.measure.QuantityKind;
import spangle.part.WallArea;

/** Reads the surface of a piece by thickness: {@code 3mm:2.4m2; 8mm:0.6m2}. */
final class SkinReader {
  static final String KEY = "skins";
  private static final String LIKE = "3mm:2.4m2; 8mm:0.6m2";
  private static final double SAME_MM = 1e-6;

  /** Area and skins are rounded by people; more than this is a slip. */
  private static final double SAME_AREA = 0.02;

  private final Fields fields;

  SkinReader(Fields fields) {
    this.fields = fields;
  }

  /**
   * The skins, thinnest first; empty where none are given or they are refused.
   *
   * @param thickness thinnest wall as the row gives it
   * @param thickest thickest wall as the row gives it
   */
  List<WallArea> read(OptionalDouble thickness, OptionalDouble thickest) {
    List<WallArea> skins = new ArrayList<>();
    for (Datum.Scalar text : fields.texts(KEY, ";")) {
      String[] halves = text.text().split(":", -1);
      if (halves.length != 2) {
        refuse(text.place(), text.text(), LIKE, "a skin is a thickness and its area");
        return List.of();
      }
      try {
        double mm = Quantities.read(QuantityKind.LENGTH, halves[0], "mm");
        double m2 = Quantities.read(QuantityKind.AREA, halves[1], "m2");
        if (!MetalReader.THICKNESS_MM.holds(mm) || !BodyReader.AREA_M2.holds(m2)) {
          refuse(text.place(), text.text(), LIKE, "no skin of a part is like that");
          return List.of();
        }
        skins.add(new WallArea(mm, m2));
      } catch (MeasureException broken) {
        refuse(text.place(), text.text(), LIKE, String.valueOf(broken.getMessage()));
        return List.of();
      }
    }
    if (skins.isEmpty()) {
      return skins;
    }
    skins.sort(Comparator.comparingDouble(WallArea::thicknessMm));
    agrees("thickness", "thinnest", thickness, skins.get(0));
    agrees("thickest", "thickest", thickest, skins.get(skins.size() - 1));
    return skins;
  }

  /** Whether the skins come to the area of the piece. */
  void checkArea(double skinsM2, OptionalDouble area) {
    if (area.isPresent()
        && Math.abs(skinsM2 - area.getAsDouble()) > SAME_AREA * area.getAsDouble()) {
      refuse(
          fields.valuePlace(KEY),
          fields.text(KEY),
          "their sum is the area of one piece",
          "the skins come to "
              + Figures.upTo(skinsM2, 3)
              + " m2, the area is "
              + Figures.upTo(area.getAsDouble(), 3)
              + " m2");
    }
  }

  private void agrees(String key, String which, OptionalDouble wall, WallArea skin) {
    if (wall.isPresent() && Math.abs(wall.getAsDouble() - skin.thicknessMm()) > SAME_MM) {
      refuse(
          fields.valuePlace(KEY),
          fields.text(KEY),
          "every thickness has its skin",
          "the "
              + which
              + " skin is "
              + Figures.upTo(skin.thicknessMm(), 2)
              + " mm, '"
              + key
              + "' says "
              + Figures.upTo(wall.getAsDouble(), 2)
              + " mm");
    }
  }

  private void refuse(Place place, String value, String limit, String why) {
    fields
        .notes()
        .add(
            ProblemCode.OUT_OF_RANGE,
            place,
            KEY,
            value,
            limit,
            why,
            "give every thickness with all its surface on one piece, like " + LIKE);
  }
}
