package spangle.report;

import static spangle.report.Workshop.at;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What waits, what is bought and what is measured in the hand-made week. */
final class HarbourLists {
  private HarbourLists() {}

  static Waiting waiting() {
    return new Waiting(
        List.of(
            new HeldPart(
                "J110",
                "tread",
                "walkway tread, aluminium",
                24,
                "zinc-metal",
                "aluminium is asked to be galvanized; molten zinc and acid attack it. Change the metal or the finish.",
                "design",
                Danger.WORK,
                OptionalInt.of(at(3, 12, 0))),
            new HeldPart(
                "J111",
                "gate-frame",
                "quay gate frame, square tube 60x60x3",
                2,
                "closed-hollow",
                "four closed tubes have no hole record. Each end needs a vent and a drain of at least 20 mm, seen open.",
                "customer, then bending",
                Danger.PEOPLE,
                OptionalInt.of(at(2, 12, 0)))),
        List.of(
            new Question(
                "J106",
                "steel-unknown",
                "no certificate for the 12 mm plate: planned with an unknown steel, zinc 1.0 to 3.0 times the minimum",
                "purchasing",
                Danger.FACT,
                OptionalInt.of(at(0, 12, 0)))),
        List.of(
            new JobReason(
                "J103",
                "It arrived on time; the booth runs blue first because the ladder set is due earlier.")),
        List.of());
  }

  static Stores stores() {
    return new Stores(
        List.of(
            new PurchaseLine(
                "powder-1",
                "buoy yellow powder",
                "kg",
                5.1,
                6.4,
                8.2,
                0,
                4,
                0,
                4.2,
                1,
                20,
                Optional.of(LocalDate.of(2026, 11, 6)),
                List.of("J103", "J104"),
                "oldest lot first: Y-0412"),
            new PurchaseLine(
                "zinc",
                "zinc, ingots",
                "kg",
                38,
                52,
                81,
                0,
                250,
                0,
                0,
                0,
                25,
                Optional.empty(),
                List.of("J106", "J107", "J108"),
                ""),
            new PurchaseLine(
                "powder-0",
                "deep sea blue powder",
                "kg",
                1.9,
                2.4,
                3.1,
                0,
                22,
                0,
                0,
                0,
                20,
                Optional.empty(),
                List.of("J101", "J102"),
                "")),
        List.of(
            new BathLevel(
                "kettle",
                317,
                15.2,
                4.8,
                1.4,
                "no top-up this week; ingots dry and warm by Friday")),
        List.of(new Allowance("J103", "P-7", "cleat", 200, 3, 6, 2)),
        List.of(
            new Swatch("powder-0", "deep sea blue, satin", "DSB-4", "12436b"),
            new Swatch("powder-1", "buoy yellow, gloss", "BYE-1", "f2b90f"),
            new Swatch("powder-2", "slip grey, fine texture", "SGR-2", "8d9498"),
            new Swatch("zinc", "zinc", "", "c9ced3")));
  }

  static Yardstick yardstick() {
    return new Yardstick(
        List.of(new Bound("oven hours", 1.9, 1.6), new Bound("late jobs", 1, 0)),
        List.of(
            new Comparison("oven batches", 5, 3),
            new Comparison("colour changes", 6, 3),
            new Comparison("late jobs", 3, 1)),
        List.of(new Change("moved", "P05", "Mon 10:00, oven 1", "Tue 07:00, oven 1", "bending")));
  }
}
