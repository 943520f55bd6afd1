package spangle.audit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every rule a plan is held to, in the order in which findings are told. */
public final class RuleBook {
  /** Asked before all others. */
  static final Rule SOUND = new BriefSound();

  /** Names and quantities first, then what hangs together, then times, then the sums. */
  static final List<Rule> RULES =
      List.of(
          new NamesKnown(),
          new EveryLotOnce(),
          new FrozenUntouched(),
          new LotOnItsLine(),
          new LotMayUseMachine(),
          new LotMayUseCarrier(),
          new OneFinishPerLoad(),
          new AloneMeansAlone(),
          new AllPiecesHung(),
          new PieceAsDescribed(),
          new InsideTheFace(),
          new PiecesClear(),
          new RowsUnderBars(),
          new HooksOnPitch(),
          new HooksEnough(),
          new CarrierMass(),
          new OneKindOfWork(),
          new SettingSuitsEveryLot(),
          new DwellInsideEveryWindow(),
          new MachinePlaces(),
          new MachineMass(),
          new OneBatchAtATime(),
          new SettingChangeMade(),
          new MachineHours(),
          new HeatPerHour(),
          new ZincCovers(),
          new StationMinutes(),
          new StationSequence(),
          new PlaceFree(),
          new ColourChangeMade(),
          new StationHours(),
          new NoOvertaking(),
          new LongestWait(),
          new NotBeforeReady(),
          new LegAfterLeg(),
          new NothingHalfDone(),
          new CarrierInOnePlace(),
          new CarriersEnough(),
          new SuppliesThere(),
          new OnePowderLot(),
          new InsideTheWeek(),
          new PlanInOrder(),
          new FiguresAddUp());

  private RuleBook() {}

  /**
   * A rule as it is told.
   *
   * @param name stable name, as in findings
   * @param words what it asks
   * @param solverConstraint name of the search's constraint of the same meaning, where there is one
   */
  public record Entry(String name, String words, Optional<String> solverConstraint) {}

  /** All rules. */
  public static List<Entry> entries() {
    return Stream.concat(Stream.of(SOUND), RULES.stream())
        .map(rule -> new Entry(rule.name(), rule.words(), rule.solverConstraint()))
        .toList();
  }
}
