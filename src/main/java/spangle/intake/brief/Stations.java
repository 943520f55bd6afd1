package spangle.intake.brief;

import java.util.Set;
import spangle.equipment.StationProfile.Kind;
import spangle.plan.FinishKind;

/** Which stations a leg of a route stops at. */
final class Stations {
  private Stations() {}

  static boolean isBooth(Kind kind) {
    return kind == Kind.POWDER_BOOTH || kind == Kind.LIQUID_BOOTH;
  }

  private static final Set<Kind> POWDER =
      Set.of(Kind.HANGING, Kind.WASH, Kind.DRYER, Kind.POWDER_BOOTH, Kind.COOLING, Kind.UNHANGING);
  private static final Set<Kind> TOP_COAT =
      Set.of(Kind.HANGING, Kind.POWDER_BOOTH, Kind.COOLING, Kind.UNHANGING);
  private static final Set<Kind> DEGAS =
      Set.of(Kind.HANGING, Kind.WASH, Kind.DRYER, Kind.COOLING, Kind.UNHANGING);
  private static final Set<Kind> LIQUID =
      Set.of(
          Kind.HANGING,
          Kind.WASH,
          Kind.DRYER,
          Kind.LIQUID_BOOTH,
          Kind.FLASH_OFF,
          Kind.COOLING,
          Kind.UNHANGING);
  private static final Set<Kind> ZINC =
      Set.of(
          Kind.HANGING,
          Kind.DEGREASE,
          Kind.RINSE,
          Kind.PICKLE,
          Kind.FLUX,
          Kind.DRYER,
          Kind.QUENCH,
          Kind.CENTRIFUGE,
          Kind.COOLING,
          Kind.UNHANGING);

  /**
   * Whether a leg stops there.
   *
   * @param finish what the leg gives
   * @param overPaint whether it goes over a coat that is already on: no washing then
   * @param paintedNext whether paint follows zinc: no quench then, it spoils adhesion
   * @param spun whether it is centrifuged
   */
  static boolean stops(
      Kind kind, FinishKind finish, boolean overPaint, boolean paintedNext, boolean spun) {
    return switch (finish) {
      case POWDER -> (overPaint ? TOP_COAT : POWDER).contains(kind);
      case DEGAS -> DEGAS.contains(kind);
      case LIQUID -> LIQUID.contains(kind) && !(overPaint && kind == Kind.WASH);
      case ZINC ->
          ZINC.contains(kind)
              && !(kind == Kind.QUENCH && paintedNext)
              && !(kind == Kind.CENTRIFUGE && !spun);
    };
  }
}
