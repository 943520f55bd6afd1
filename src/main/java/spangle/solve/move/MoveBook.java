package spangle.solve.move;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.WeekEdit;
import spangle.plan.clock.WeekPlan;

/** All moves with how often each is drawn. One per searching thread. */
public final class MoveBook {
  private final Desk desk;
  private final Move[] byChance;

  /** The moves that make sense on that floor. */
  public MoveBook(Floor floor, WeekPlan plan, long seed) {
    desk = new Desk(floor, new Dice(seed), plan);
    List<Move> moves = new ArrayList<>();
    Ruin ruin = new Ruin();
    Repack repack = new Repack();
    Peel peel = new Peel();
    Disband disband = new Disband();
    Rescue rescue = new Rescue();
    Regroup regroup = new Regroup();
    add(moves, 40, LoadMoves::intoAnother);
    add(moves, 8, LoadMoves::intoNew);
    add(moves, 15, LoadMoves::swap);
    add(moves, 15, BatchMoves::elsewhere);
    add(moves, 7, BatchMoves::swap);
    add(moves, 7, BatchMoves::merge);
    add(moves, 4, BatchMoves::split);
    add(moves, 4, BatchMoves::run);
    add(moves, 2, ruin::make);
    add(moves, 8, repack::make);
    add(moves, 2, peel::make);
    add(moves, 2, disband::make);
    add(moves, 2, rescue::open);
    add(moves, 2, rescue::join);
    add(moves, 4, regroup::make);
    boolean mixes = Arrays.stream(floor.lots).anyMatch(lot -> !lot.lot.alone());
    if (mixes) {
      add(moves, 25, LotMoves::intoAnother);
      add(moves, 12, LotMoves::intoNew);
      add(moves, 10, LotMoves::swap);
    }
    if (Arrays.stream(floor.lots).anyMatch(lot -> lot.carriers.length > 1)) {
      add(moves, 4, LoadMoves::otherCarrier);
    }
    if (Arrays.stream(floor.lots).anyMatch(MoveBook::severalSettings)) {
      add(moves, 4, BatchMoves::otherSetting);
    }
    boolean walked = IntStream.range(0, floor.lines.length).anyMatch(floor::isCoupled);
    if (walked) {
      add(moves, 8, LoadMoves::reorder);
      // It costs as much as four others where rows are timed alone (measured: more than it brings),
      // and next to nothing beside walking a line.
      add(moves, 16, new Resettle()::make);
    }
    byChance = moves.toArray(Move[]::new);
  }

  private static boolean severalSettings(LotFacts lot) {
    return Arrays.stream(lot.dwellMin).filter(min -> min >= 0).count() > 1;
  }

  private static void add(List<Move> moves, int share, Move move) {
    for (int k = 0; k < share; k++) {
      moves.add(move);
    }
  }

  /** Draws a move of that plan into the edit; false when it found nothing to do. */
  public boolean draw(WeekPlan plan, WeekEdit edit) {
    if (!desk.begin(plan, edit)) {
      return false;
    }
    return byChance[desk.dice.below(byChance.length)].make(desk) && !edit.isEmpty();
  }
}
