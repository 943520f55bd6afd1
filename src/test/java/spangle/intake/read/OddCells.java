package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Rows as nobody would want them: for each column some cells that are right, and for any column
 * some that are wrong, hostile or strange. A seed gives the same rows again.
 */
final class OddCells {
  static final List<String> HEADINGS =
      List.of(
          "job",
          "customer",
          "part",
          "qty",
          "material",
          "thickness_mm",
          "shape",
          "area_m2",
          "mass_kg",
          "route",
          "finish",
          "ready",
          "due",
          "welded",
          "hollow",
          "overlaps",
          "certificate",
          "si_pct",
          "masking",
          "note");

  private static final Map<String, List<String>> RIGHT = right();

  private static final List<String> WRONG =
      List.of(
          "",
          " ",
          "0",
          "-1",
          "1e308",
          "NaN",
          "Infinity",
          "1 lot",
          "about 800",
          "12,5",
          "1.234,5",
          "1,234.5",
          "2.5 in",
          "80um",
          "400F",
          "-300 C",
          "=SUM(A1:A9)",
          "+1",
          "@cmd",
          "'quoted",
          "he said \"so\"",
          "a;b,c\td|e",
          "two\nlines",
          "../../etc/passwd",
          "C:\\x",
          "<script>alert(1)</script>",
          "%s%n${x}",
          "\u0000\u0007\u202e",
          "\ud83d\ude00",
          "31.02.2026",
          "04/05/2026",
          "46000",
          "46000.25",
          "hot",
          "2026-13-45",
          "9999-12-31",
          "mon",
          "sun 25:00",
          "999999999999999999999999",
          "plate 160x120",
          "plate x",
          "box 1x1x1 mm open",
          "tube 40x40x1200 mm holes 3x",
          "pipe 0x0 mm",
          "section nothing x 3 m",
          "blank 10x10 mm holes 99999x1",
          "2x 60x40x1200 mm vents 1x14 drains",
          "180 cm2 3+8 mm all-round hole",
          "y",
          "nein",
          "?",
          "x".repeat(300));

  private final SplittableRandom random;

  OddCells(long seed) {
    this.random = new SplittableRandom(seed);
  }

  SplittableRandom random() {
    return random;
  }

  /** Rows by heading; the first cell of a row is never blank, so that no row is a blank one. */
  List<Map<String, String>> rows(int count) {
    List<Map<String, String>> rows = new ArrayList<>();
    double wrong = random.nextInt(3) == 0 ? 0.3 : 0.04;
    for (int i = 0; i < count; i++) {
      Map<String, String> row = new LinkedHashMap<>();
      for (String heading : HEADINGS) {
        row.put(heading, random.nextDouble() < wrong ? one(WRONG) : one(RIGHT.get(heading)));
      }
      if (row.get("job").isBlank()) {
        row.put("job", "J-" + i);
      }
      rows.add(row);
    }
    return rows;
  }

  String one(List<String> texts) {
    return texts.get(random.nextInt(texts.size()));
  }

  private static Map<String, List<String>> right() {
    Map<String, List<String>> right = new LinkedHashMap<>();
    right.put("job", List.of("J-1", "J-2", "Q/7", "A.9"));
    right.put("customer", List.of("Pilot House", "", "Lock keeper, north"));
    right.put("part", List.of("LB-20", "LB-21", "C 4", "W#5", "P-1", "P-2", "P-3", "P-4", "P-5"));
    right.put("qty", List.of("400", "1", "25 pcs", "12.0"));
    right.put("material", List.of("steel", "Steel", "aluminium", "stainless"));
    right.put("thickness_mm", List.of("3", "1.5", "0.25 in", "2,5"));
    right.put(
        "shape",
        List.of(
            "plate 160x120 mm",
            "plate 6x4 in holes 4x0.5",
            "angle 40x40x900 mm",
            "channel 30x60x30x400 mm",
            "box 600x400x300 mm open front",
            "tube 40x20x800 mm",
            "pipe 48.3x1200 mm",
            "bar 12x300 mm"));
    right.put("area_m2", List.of("", "", "0.0384", "0.4 ft2"));
    right.put("mass_kg", List.of("", "", "0.45", "1 lb"));
    right.put("route", List.of("powder", "zinc", "duplex", "liquid", "two-coat"));
    right.put("finish", List.of("P-GREY", "P-BLACK", "L-EPOXY", "zinc", "P-GREY + P-BLACK"));
    right.put("ready", List.of("", "mon 07:00", "2026-11-03 12:30"));
    right.put("due", List.of("wed", "2026-11-06 12:00", "06.11.2026"));
    right.put("welded", List.of("no", "yes", ""));
    right.put("hollow", List.of("no", "", "2x 60x40x1200 mm vents 1x14 drains 2x12 mm"));
    right.put("overlaps", List.of("no", "", "180 cm2 3+8 mm all-round hole 12"));
    right.put("certificate", List.of("", "C-77"));
    right.put("si_pct", List.of("", "0.02"));
    right.put("masking", List.of("", "2 plugs 8 mm; tape"));
    right.put("note", List.of("", "mind the edge, please", "=1+1"));
    return right;
  }
}
