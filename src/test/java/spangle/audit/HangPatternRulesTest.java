package spangle.audit;

import static spangle.audit.Audited.breaks;
import static spangle.audit.Audited.keeps;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.dip;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.BriefBuilder;
import spangle.plan.CarrierSpec;
import spangle.plan.LoadBuilder;
import spangle.plan.PlannedBatch;

/** A face of 1000 x 800 mm, hooks of 60, gaps 50 across and 40 down; pieces of 200 x 300 mm. */
class HangPatternRulesTest {
  private static HungPiece at(double xMm, double yMm) {
    return new HungPiece("A", 0, xMm, yMm, 200, 300, false);
  }

  private static PlannedBatch hung(String carrier, HungPiece... pieces) {
    LoadBuilder load =
        load("P01", carrier, "A")
            .visit("hang", 360, 370)
            .visit("booth", 370, 375)
            .visit("unload", 395, 400);
    for (HungPiece piece : pieces) {
      load.piece(piece);
    }
    return bake("oven-1 #1", "oven-1", 0, 375, 395, load);
  }

  /** One lot of so many pieces of 200 x 300 x 50 mm and 2 kg. */
  private static BriefBuilder pieces(int count) {
    return item(new HangItem("A", count, 200, 300, 50, 2, 1, false));
  }

  private static BriefBuilder item(HangItem item) {
    return yard().lots(powderLot("A").carriers("rack", "frame").item(item));
  }

  private static CarrierSpec with(CarrierSpec carrier, CarrierFace face) {
    return new CarrierSpec(
        carrier.id(),
        carrier.name(),
        carrier.lineId(),
        face,
        carrier.owned(),
        carrier.floorUnits(),
        carrier.ownMassKg(),
        carrier.stripAfterCycles(),
        carrier.stripMin());
  }

  @Test
  void everyPieceHangs() {
    keeps(pieces(2), hung("rack", at(0, 60), at(250, 60)));
    breaks(
        "all-pieces-hung",
        "shows 1 piece of A; its lots bring 2",
        pieces(2),
        hung("rack", at(0, 60)));
  }

  @Test
  void noPieceHangsTwice() {
    breaks(
        "all-pieces-hung",
        "shows 2 pieces of A; its lots bring 1",
        pieces(1),
        hung("rack", at(0, 60), at(250, 60)));
  }

  @Test
  void aRackNeedsItsPatternAndALonePieceNot() {
    breaks("all-pieces-hung", "has no hang pattern", pieces(1), hung("rack"));
    keeps(yard().lots(powderLot("A").alone()), hung("rack"));
  }

  @Test
  void piecesHaveTheirOwnSize() {
    breaks(
        "piece-as-described",
        "is drawn 190 x 300 mm; the part is 200 x 300",
        pieces(1),
        hung("rack", new HungPiece("A", 0, 0, 60, 190, 300, false)));
  }

  @Test
  void aPieceTurnsOnlyWhereItMay() {
    HungPiece turned = new HungPiece("A", 0, 0, 60, 300, 200, true);
    keeps(item(new HangItem("A", 1, 200, 300, 50, 2, 1, true)), hung("rack", turned));
    breaks(
        "piece-as-described",
        "hangs turned and may not be",
        item(new HangItem("A", 1, 200, 300, 50, 2, 1, false)),
        hung("rack", turned));
  }

  @Test
  void aPieceStandsNoFurtherOffThanThereIsRoom() {
    keeps(item(new HangItem("A", 1, 200, 300, 300, 2, 1, false)), hung("rack", at(0, 60)));
    breaks(
        "piece-as-described",
        "stands 300.5 mm off; rack has room for 300",
        item(new HangItem("A", 1, 200, 300, 300.5, 2, 1, false)),
        hung("rack", at(0, 60)));
  }

  @Test
  void theRightEdgeMayTouchTheFrame() {
    keeps(pieces(1), hung("frame", at(800, 60)));
    breaks(
        "inside-the-face",
        "leaves the face of 1000 x 800",
        pieces(1),
        hung("frame", at(800.01, 60)));
  }

  @Test
  void theHookNeedsItsRoomAbove() {
    keeps(pieces(1), hung("frame", at(0, 60)));
    breaks("inside-the-face", "below a hook of 60", pieces(1), hung("frame", at(0, 59.9)));
  }

  @Test
  void theLowerEdgeMayTouchTheFrame() {
    keeps(pieces(1), hung("frame", at(0, 500)));
    breaks("inside-the-face", "leaves the face", pieces(1), hung("frame", at(0, 500.1)));
  }

  @Test
  void theCarrierHasTheFace() {
    breaks(
        "inside-the-face",
        "rack has 1 face",
        pieces(1),
        hung("rack", new HungPiece("A", 1, 0, 60, 200, 300, false)));
  }

  @Test
  void neighboursKeepTheirGapAcross() {
    keeps(pieces(2), hung("frame", at(0, 60), at(250, 60)));
    breaks(
        "pieces-clear",
        "closer than 50 mm across",
        pieces(2),
        hung("frame", at(0, 60), at(249.9, 60)));
  }

  @Test
  void aPieceKeepsItsGapToTheHookBelow() {
    // 60 + 300 + 40 of gap + 60 of hook = 460.
    keeps(pieces(2), hung("frame", at(0, 60), at(0, 460)));
    breaks("pieces-clear", "40 mm down", pieces(2), hung("frame", at(0, 60), at(0, 459.9)));
  }

  @Test
  void twoPiecesInOnePlaceOverlap() {
    breaks("pieces-clear", "closer than", pieces(2), hung("frame", at(100, 60), at(100, 60)));
  }

  @Test
  void aFrameMayBeHungInSteps() {
    keeps(pieces(2), hung("frame", at(0, 60), at(250, 80)));
  }

  @Test
  void aRackIsHungInLevelRows() {
    keeps(pieces(3), hung("rack", at(0, 60), at(250, 60), at(0, 460)));
    breaks(
        "rows-under-bars",
        "begins above the end of the row over it",
        pieces(2),
        hung("rack", at(0, 60), at(250, 80)));
  }

  @Test
  void aRowBeginsBelowTheLongestPieceAbove() {
    HangItem tall = new HangItem("A", 1, 200, 300, 50, 2, 1, false);
    HangItem small = new HangItem("B", 2, 200, 100, 50, 2, 1, false);
    BriefBuilder brief = yard().lots(powderLot("A").item(tall), powderLot("B").item(small));
    HungPiece beside = new HungPiece("B", 0, 250, 60, 200, 100, false);
    // Clear of the small piece above it, but a bar cannot pass through the tall one.
    HungPiece high = new HungPiece("B", 0, 250, 300, 200, 100, false);
    HungPiece low = new HungPiece("B", 0, 250, 460, 200, 100, false);
    keeps(brief, shared(at(0, 60), beside, low));
    breaks("rows-under-bars", "the row at 300 mm", brief, shared(at(0, 60), beside, high));
  }

  private static PlannedBatch shared(HungPiece... pieces) {
    LoadBuilder load =
        load("P01", "rack", "A", "B")
            .visit("hang", 360, 370)
            .visit("booth", 370, 380)
            .visit("unload", 400, 405);
    List.of(pieces).forEach(load::piece);
    return bake("oven-1 #1", "oven-1", 0, 380, 400, load);
  }

  @Test
  void piecesHangAtHookPlaces() {
    keeps(pieces(1), hung("rack", at(150, 60)));
    breaks(
        "hooks-on-pitch", "hangs 10 mm beside a hook place", pieces(1), hung("rack", at(160, 60)));
  }

  @Test
  void hooksSuffice() {
    HangItem four = new HangItem("A", 2, 200, 300, 50, 2, 10, false);
    HangItem more = new HangItem("A", 2, 200, 300, 50, 2, 11, false);
    keeps(item(four), hung("rack", at(0, 60), at(250, 60)));
    breaks(
        "hooks-enough",
        "takes 22 hooks; rack has 20",
        item(more),
        hung("rack", at(0, 60), at(250, 60)));
  }

  @Test
  void theCarrierBearsTheLoad() {
    HangItem fifty = new HangItem("A", 2, 200, 300, 50, 50, 1, false);
    HangItem more = new HangItem("A", 2, 200, 300, 50, 50.1, 1, false);
    keeps(item(fifty), hung("rack", at(0, 60), at(250, 60)));
    breaks(
        "carrier-mass",
        "weighs 100.2 kg; rack bears 100",
        item(more),
        hung("rack", at(0, 60), at(250, 60)));
  }

  @Test
  void aBasketIsFilledByMassAlone() {
    HangItem clips = new HangItem("Z", 600, 30, 40, 5, 0.1, 1, true);
    HangItem more = new HangItem("Z", 601, 30, 40, 5, 0.1, 1, true);
    PlannedBatch spun =
        dip(
            "kettle #1",
            392,
            396,
            load("Z01", "basket", "Z")
                .visit("pickle", 360, 390)
                .visit("flux", 390, 392)
                .visit("cool", 396, 406));
    keeps(yard().lots(zincLot("Z").carriers("basket").item(clips)), spun);
    breaks(
        "carrier-mass",
        "weighs 60.1 kg; basket bears 60",
        yard().lots(zincLot("Z").carriers("basket").item(more)),
        spun);
  }

  @Test
  void twoFacesAreApart() {
    BriefBuilder two =
        pieces(2)
            .carrier(
                "rack",
                c ->
                    with(
                        c,
                        new CarrierFace(
                            1000, 800, 300, 2, 50, 40, 60, 50, 100, 20, CarrierFace.Style.ROWS)));
    keeps(two, hung("rack", at(0, 60), new HungPiece("A", 1, 0, 60, 200, 300, false)));
  }
}
