package spangle.report;

import static spangle.report.Workshop.at;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.plan.Finish;
import spangle.plan.Kit;
import spangle.plan.Kit.KitLine;
import spangle.plan.LeftOut;
import spangle.plan.Lot;

/** A full week: some eighty loads, long names, one rack with very many parts. */
final class BusyWeek {
  static final String LONG =
      "Größenverstellbarer Laufstegbügel mit Übergangsstück und Schweißnahtvorbereitung links";

  private static final List<String> PARTS =
      List.of(
          "ladder bracket",
          "mooring plate",
          "walkway clip",
          "service pedestal",
          "pump cabinet",
          LONG);

  private BusyWeek() {}

  static WeekReport report() {
    Workshop shop =
        new Workshop(
            List.of(
                "deep sea blue, satin",
                "buoy yellow, gloss",
                "slip grey, fine texture",
                "sail white, gloss",
                "rust-red primer, matt",
                "tar black, leather texture",
                "weed green, satin",
                "sand, matt",
                "foam, gloss",
                "signal orange for life-saving equipment, gloss",
                "anthracite with mica, coarse texture",
                "copper, satin",
                "night, matt"));
    int job = 200;
    for (int day = 0; day < 5; day++) {
      for (int i = 0; i < 6; i++) {
        List<List<Lot>> loads = new ArrayList<>();
        for (int k = 0; k < 1 + (i + day) % 3; k++) {
          loads.add(
              group(
                  shop,
                  job++,
                  shop.powder((day * 5 + i) % 13),
                  i == 4 && k == 0 ? 18 : 1 + i % 3,
                  day));
        }
        shop.batch(i % 2 == 0 ? "oven-1" : "oven-2", i % 2, at(day, 6 + i, 0), 28 + i, loads);
      }
      for (int i = 0; i < 5; i++) {
        shop.batch(
            "kettle",
            0,
            at(day, 6 + i, 30),
            5,
            List.of(group(shop, job++, Workshop.zinc(i == 3 ? "spun" : "hung"), 1 + i % 2, day)));
      }
    }
    for (int i = 0; i < 5; i++) {
      shop.leftOut.add(
          new LeftOut(
              group(shop, job++, shop.powder(i), 1, 4).get(0).id(),
              "no-time",
              "the booth is full until the shift ends",
              OptionalInt.of(at(7 + i, 11, 0))));
    }
    for (int i = 0; i < 6; i++) {
      String jobId = "J" + (200 + 3 * i);
      String part =
          shop.lots.stream()
              .filter(l -> l.jobId().equals(jobId))
              .findFirst()
              .orElseThrow()
              .partId();
      shop.kits.add(
          new Kit(
              "K" + i,
              "quay set " + (i + 1),
              4,
              at(i % 5, 14, 0),
              1,
              List.of(new KitLine(part, jobId, 2, 0))));
    }
    return new WeekReport(
        new Heading("Möwenhafen Fitting and Slipway Works", "C", OptionalInt.empty(), 0, true),
        shop.brief(),
        shop.plan(),
        waiting(),
        stores(shop),
        SheetFacts.EMPTY,
        Yardstick.EMPTY,
        List.of(),
        Overtime.NONE,
        Map.of());
  }

  private static List<Lot> group(Workshop shop, int job, Finish finish, int kinds, int day) {
    List<Lot> lots = new ArrayList<>();
    for (int n = 0; n < kinds; n++) {
      String part = PARTS.get((job + n) % PARTS.size());
      lots.add(
          shop.lot(
              "J" + job + "-" + (char) ('A' + n) + "-1",
              "J" + job,
              kinds > 6 ? part + " " + (n + 1) : part,
              kinds > 6 ? 3 : 8 + (job * 7) % 20,
              finish,
              120 + (job * 13 + n * 40) % 160,
              150 + (job * 31) % 120,
              1.5,
              at(day, 5, 0),
              at(Math.min(4, day + 1), 15, 0)));
    }
    return lots;
  }

  private static Waiting waiting() {
    List<HeldPart> held = new ArrayList<>();
    List<Question> questions = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      held.add(
          new HeldPart(
              "H" + i,
              "h" + i,
              PARTS.get(i % PARTS.size()),
              10 + i,
              "gate-" + i,
              "a closed hollow goes to zinc without a record of its holes; each end needs a vent and a drain",
              "customer",
              Danger.values()[i % 4],
              OptionalInt.of(at(i % 5, 12, 0))));
      questions.add(
          new Question(
              "J" + (210 + i),
              "doubt-" + i,
              "mass and area disagree by 18 per cent: the area was used",
              "design",
              Danger.FACT,
              OptionalInt.empty()));
    }
    return new Waiting(held, questions, List.of(), List.of());
  }

  private static Stores stores(Workshop shop) {
    List<PurchaseLine> lines = new ArrayList<>();
    List<Swatch> swatches = new ArrayList<>();
    List<String> rgb =
        List.of(
            "12436b", "f2b90f", "8d9498", "f7f6f0", "7a2f22", "1b1b1b", "3f6b3a", "d8c79a",
            "eef3f3", "f06a1c", "3d4246", "b06a3c", "0c1024");
    for (int i = 0; i < shop.colours.size(); i++) {
      lines.add(
          new PurchaseLine(
              "powder-" + i,
              shop.colours.get(i) + " powder",
              "kg",
              3.2 + i,
              4.5 + i,
              6.25 + i,
              0,
              i,
              0,
              i % 3 == 0 ? 2.5 : 0,
              i % 3 == 0 ? 1 : 0,
              20,
              i % 3 == 0 ? Optional.of(LocalDate.of(2026, 11, 5 + i)) : Optional.empty(),
              List.of("J" + (200 + i), "J" + (213 + i)),
              ""));
      swatches.add(new Swatch("powder-" + i, shop.colours.get(i), "C" + i, rgb.get(i)));
    }
    return new Stores(lines, List.of(), List.of(), swatches);
  }
}
