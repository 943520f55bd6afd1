package spangle.report;

import static spangle.report.Workshop.at;
import static spangle.report.Workshop.zinc;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.plan.Kit;
import spangle.plan.Kit.KitLine;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.report.LotNote.ZincNote;

/** A hand-made week of nine loads with something of everything. */
final class HarbourWeek {
  private static final int BLUE = 0;
  private static final int YELLOW = 1;
  private static final int GREY = 2;

  private HarbourWeek() {}

  static WeekReport report() {
    Workshop shop =
        new Workshop(
            List.of(
                "deep sea blue, satin",
                "buoy yellow, gloss",
                "slip grey, fine texture",
                "sail white, gloss"));
    lots(shop);
    return new WeekReport(
        new Heading(
            "Möwenhafen Fitting Works", "B", OptionalInt.of(at(0, 9, 10)), at(0, 12, 30), false),
        shop.brief(),
        shop.plan(),
        HarbourLists.waiting(),
        HarbourLists.stores(),
        facts(shop),
        HarbourLists.yardstick(),
        List.of(),
        Overtime.NONE,
        Map.of());
  }

  private static void lots(Workshop shop) {
    Lot brackets =
        shop.lot(
            "J101-A-1",
            "J101",
            "ladder bracket",
            36,
            shop.powder(BLUE),
            220,
            180,
            1.4,
            0,
            at(1, 12, 0),
            "K1");
    Lot clips =
        shop.lot(
            "J102-A-1",
            "J102",
            "walkway clip",
            48,
            shop.powder(BLUE),
            90,
            110,
            0.3,
            0,
            at(2, 12, 0),
            "K2");
    Lot more =
        shop.lot(
            "J102-A-2",
            "J102",
            "walkway clip",
            24,
            shop.powder(BLUE),
            90,
            110,
            0.3,
            at(0, 8, 0),
            at(2, 12, 0),
            "K2");
    Lot pedestals =
        shop.lot(
            "J103-A-1",
            "J103",
            "service pedestal, door side",
            4,
            shop.powder(YELLOW),
            500,
            1200,
            18,
            0,
            at(0, 10, 0),
            "K3");
    Lot covers =
        shop.lot(
            "J104-A-1",
            "J104",
            "pedestal cover",
            6,
            shop.powder(YELLOW),
            420,
            420,
            3.2,
            at(0, 9, 0),
            at(1, 16, 0),
            "K3");
    Lot cabinets =
        shop.lot(
            "J105-A-1",
            "J105",
            "pump cabinet",
            2,
            shop.powder(GREY),
            900,
            1300,
            46,
            at(1, 7, 0),
            at(3, 12, 0));
    Lot plates =
        shop.lot(
            "J106-A-1",
            "J106",
            "mooring plate 12 mm",
            10,
            zinc("hung"),
            400,
            400,
            15,
            0,
            at(1, 12, 0),
            "K1");
    Lot frames =
        shop.lot(
            "J107-A-1",
            "J107",
            "pump cabinet frame",
            1,
            zinc("hung"),
            2600,
            1100,
            140,
            0,
            at(2, 12, 0));
    Lot bolts =
        shop.lot(
            "J108-A-1",
            "J108",
            "walkway clip M12",
            180,
            zinc("spun"),
            60,
            60,
            0.15,
            at(0, 12, 0),
            at(2, 16, 0),
            "K2");
    Lot left =
        shop.lot(
            "J109-A-1",
            "J109",
            "mooring plate 20 mm",
            8,
            zinc("hung"),
            600,
            600,
            56,
            at(4, 10, 0),
            at(4, 16, 0));
    shop.batch("oven-1", 0, at(0, 6, 0), 32, List.of(List.of(brackets), List.of(clips, more)));
    shop.batch("oven-2", 1, at(0, 7, 30), 38, List.of(List.of(pedestals), List.of(covers)));
    shop.batch("oven-1", 0, at(1, 7, 0), 42, List.of(List.of(cabinets)));
    shop.batch("kettle", 0, at(0, 6, 0), 6, List.of(List.of(plates)));
    shop.batch("kettle", 0, at(0, 8, 0), 5, List.of(List.of(frames)));
    shop.batch("kettle", 0, at(0, 13, 0), 4, List.of(List.of(bolts)));
    shop.leftOut.add(
        new LeftOut(
            left.id(),
            "no-time",
            "the pickle is full until the shift ends",
            OptionalInt.of(at(7, 11, 0))));
    shop.kits.add(
        new Kit(
            "K1",
            "ladder set",
            6,
            at(1, 16, 0),
            1,
            List.of(
                new KitLine("ladder-bracket", "J101", 6, 0),
                new KitLine("mooring-plate-12-mm", "J106", 1, 4))));
    shop.kits.add(
        new Kit(
            "K2",
            "walkway set",
            12,
            at(3, 12, 0),
            1,
            List.of(
                new KitLine("walkway-clip", "J102", 6, 0),
                new KitLine("walkway-clip-M12", "J108", 12, 0),
                new KitLine("tread", "J110", 2, 0))));
    shop.kits.add(
        new Kit(
            "K3",
            "pedestal set",
            2,
            at(0, 10, 0),
            1,
            List.of(new KitLine("service-pedestal,-door-side", "J103", 2, 0))));
  }

  private static final String FRAME =
      "<svg viewBox=\"0 0 40 10\"><rect x=\"1\" y=\"1\" width=\"38\" height=\"8\" fill=\"none\" stroke=\"#000\"/></svg>";

  private static SheetFacts facts(Workshop shop) {
    List<LotNote> lots = new ArrayList<>();
    for (Lot lot : shop.lots) {
      boolean zinc = lot.lineId().equals("kettle");
      boolean frame = lot.jobId().equals("J107");
      lots.add(
          new LotNote(
              lot.id(),
              zinc ? 12 : 3,
              zinc ? "wire 3 mm" : "V hook 100",
              zinc ? "" : "label side",
              lot.jobId().equals("J103")
                  ? List.of("8 x M8 stud caps", "4 x earth point, 20 mm disc")
                  : List.of(),
              "60 to 90 um",
              frame
                  ? List.of(
                      "hollows: opened by hanger 1, kettle lead, 2026-11-06 14:20: light seen through",
                      "clear: material")
                  : List.of(zinc ? "clear: material, hollows" : "clear: heat"),
              zinc
                  ? Optional.of(
                      new ZincNote(
                          frame ? "tilted, 24 to 36 degrees" : "straight",
                          frame ? 30 : 0,
                          1,
                          frame,
                          frame ? "class A, ordinary" : "not known: sample first",
                          !frame,
                          frame,
                          List.of(new LotNote.CoatLimit("", 85, 70)),
                          frame ? 1 : 3,
                          frame
                              ? Optional.of(new LotNote.Drawings(FRAME, FRAME))
                              : Optional.empty()))
                  : Optional.empty()));
    }
    List<LoadNote> loads = new ArrayList<>();
    List<BatchNote> batches = new ArrayList<>();
    for (PlannedBatch batch : shop.batches) {
      for (PlannedLoad load : batch.loads()) {
        loads.add(
            new LoadNote(
                load.id(),
                load.id().startsWith("P") ? 1.45 : 0,
                "kg",
                load.id().startsWith("P") ? "open lot 0412 first" : "",
                load.id().equals("Z02")
                    ? "at least 1.97 m of zinc over the floor of the kettle"
                    : "",
                load.id().equals("Z02")
                    ? List.of(
                        "Hollow: a plugged vent can throw zinc. Nobody within four metres of the rim.",
                        "Inside of the tilt range only: the far corner holds air otherwise.")
                    : List.of()));
      }
      if (!batch.machineId().equals("kettle")) {
        String probe = batch.loads().get(0).lotIds().get(0);
        batches.add(new BatchNote(batch.id(), probe, probe, 14, 12, 44, 180, false, ""));
      }
    }
    return new SheetFacts(
        lots,
        loads,
        batches,
        List.of(
            new FitNote(
                "J107",
                "frame",
                "pump cabinet frame",
                "tilted",
                "goes in at 24 to 36 degrees; 140 mm to spare in length, 60 mm in depth at 30 degrees",
                FRAME,
                List.of("Hang two-point, never from the corners alone.")),
            new FitNote(
                "J112",
                "mast",
                "signal mast base",
                "no",
                "1 900 mm wide, the kettle takes 1 300 mm: 600 mm too wide whichever way",
                "",
                List.of())),
        List.of(),
        List.of());
  }
}
