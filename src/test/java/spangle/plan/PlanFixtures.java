package spangle.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;

/**
 * Small weeks made by hand, with numbers that can be checked in the head.
 *
 * <p>The yard shop: a powder line (hang, booth, two ovens, unload) and a zinc line (pickle, flux,
 * kettle, cool), all open Monday 06:00 to 14:00 and Tuesday 06:00 to 14:00, minutes 360 to 840 and
 * 1800 to 2280. The booth stands at grey when the week begins; grey to yellow takes 10 minutes and
 * costs 1, yellow to grey takes 20 and costs 2. The ovens stand at 180 C; 180 to 200 C takes 15
 * minutes and costs 3, back 30 minutes and costs 4.
 */
public final class PlanFixtures {
  /** Monday 06:00. */
  public static final int OPEN = 360;

  /** Monday 14:00. */
  public static final int CLOSE = 840;

  /** No figures: for plans whose figures do not matter or are counted later. */
  public static final PlanFigures NO_FIGURES =
      new PlanFigures(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

  private PlanFixtures() {}

  /** The yard shop without work. */
  public static BriefBuilder yard() {
    return new BriefBuilder();
  }

  /**
   * A grey powder lot of four pieces, 200 mm wide, 300 mm high, 2 kg each: 10 minutes of hanging, 5
   * in the booth, 5 of unloading; 20 to 40 minutes at 180 C or 10 to 30 at 200 C.
   */
  public static LotBuilder powderLot(String id) {
    return new LotBuilder(id);
  }

  /**
   * A zinc lot of four pieces of 10 kg that hang on a beam: 30 minutes of pickling, 2 in flux, 4 to
   * 8 in zinc, 10 of cooling.
   */
  public static LotBuilder zincLot(String id) {
    return new LotBuilder(id).zinc();
  }

  /** A load on carrier number 1 of the kind. */
  public static LoadBuilder load(String id, String carrierId, String... lotIds) {
    return new LoadBuilder(id, carrierId, lotIds);
  }

  /** A batch of the powder line without set-up. */
  public static PlannedBatch bake(
      String id, String ovenId, int setting, int startMin, int endMin, LoadBuilder... loads) {
    return batch(id, "paint", ovenId, setting, startMin, startMin, endMin, loads);
  }

  /** A dip of the zinc line. */
  public static PlannedBatch dip(String id, int startMin, int endMin, LoadBuilder... loads) {
    return batch(id, "zinc", "kettle", 0, startMin, startMin, endMin, loads);
  }

  /** Any batch. */
  public static PlannedBatch batch(
      String id,
      String lineId,
      String machineId,
      int setting,
      int setupStartMin,
      int startMin,
      int endMin,
      LoadBuilder... loads) {
    List<PlannedLoad> built = new ArrayList<>();
    for (LoadBuilder load : loads) {
      built.add(load.build());
    }
    return new PlannedBatch(id, lineId, machineId, setting, setupStartMin, startMin, endMin, built);
  }

  /**
   * Hang 10, booth 5, oven 20 at 180 C, unload 5 from that minute on: 40 minutes for a grey lot.
   */
  public static PlannedBatch simpleBake(String id, String loadId, int startMin, String lotId) {
    return bake(id, "oven-1", 0, startMin + 15, startMin + 35, simpleLoad(loadId, startMin, lotId));
  }

  /** The load of {@link #simpleBake}. */
  public static LoadBuilder simpleLoad(String loadId, int startMin, String lotId) {
    return load(loadId, "rack", lotId)
        .visit("hang", startMin, startMin + 10)
        .visit("booth", startMin + 10, startMin + 15)
        .visit("unload", startMin + 35, startMin + 40)
        .row(lotId, 4, 60);
  }

  /** Pickle 30, flux 2, kettle 4, cool 10 from that minute on: 46 minutes for a zinc lot. */
  public static PlannedBatch simpleDip(String id, String loadId, int startMin, String lotId) {
    return dip(
        id,
        startMin + 32,
        startMin + 36,
        load(loadId, "beam", lotId)
            .visit("pickle", startMin, startMin + 30)
            .visit("flux", startMin + 30, startMin + 32)
            .visit("cool", startMin + 36, startMin + 46)
            .row(lotId, 4, 60));
  }

  /** A plan of these batches without figures. */
  public static Plan plan(PlannedBatch... batches) {
    return plan(List.of(batches), List.of());
  }

  /** A plan of these batches and lots left out, without figures. */
  public static Plan plan(List<PlannedBatch> batches, List<LeftOut> leftOut) {
    return new Plan(batches, leftOut, NO_FIGURES, new SolveNote(1, 0, "by hand"));
  }

  /** The same plan with other figures. */
  public static Plan withFigures(Plan plan, PlanFigures figures) {
    return new Plan(plan.batches(), plan.leftOut(), figures, plan.solve());
  }

  /** A lot left out for want of room. */
  public static LeftOut leftOut(String lotId) {
    return new LeftOut(lotId, "no-room", "no room this week", OptionalInt.empty());
  }

  /** Pieces side by side from the left edge, 50 mm apart. */
  public static List<HungPiece> rowOf(
      String key, int pieces, double yMm, double widthMm, double heightMm) {
    List<HungPiece> row = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      row.add(new HungPiece(key, 0, i * (widthMm + 50), yMm, widthMm, heightMm, false));
    }
    return row;
  }

  /** A pattern of these pieces. */
  public static HangPattern pattern(HungPiece... pieces) {
    return new HangPattern(List.of(pieces));
  }
}
