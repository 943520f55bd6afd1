package spangle.plan.clock;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import spangle.plan.Brief;
import spangle.plan.Goals;

/** A brief in arrays: what clock and search read many thousand times a second. Never changes. */
public final class Floor {
  /** The brief itself. */
  public final Brief brief;

  /** Weights. */
  public final Goals goals;

  /** Lots in the brief's order. */
  public final LotFacts[] lots;

  /** Lines in the brief's order. */
  public final LineFacts[] lines;

  /** Carriers in the brief's order. */
  public final CarrierFacts[] carriers;

  /** Lines in the order in which they are walked: a leg's line after the line of the leg before. */
  public final int[] lineOrder;

  final SupplyFacts[] supplies;
  final Announced announced;

  /** Whether a line must be walked whole, by line. */
  final boolean[] coupled;

  /** Counted carrier numbers of each line. */
  final int[] numbers;

  /** Frozen batches by line and machine, in time order. */
  final Batch[][][] frozen;

  private final Load[][] singles;

  private Floor(FloorPlanner planner) {
    this.brief = planner.brief;
    this.goals = brief.goals();
    this.lines = planner.lines;
    this.lots = planner.lots;
    this.carriers = planner.carriers;
    this.lineOrder = planner.lineOrder();
    this.supplies = planner.supplies;
    this.announced = planner.announced();
    this.coupled = planner.coupled();
    this.numbers = planner.numbers;
    this.singles = new Load[lots.length][];
    for (LotFacts lot : lots) {
      singles[lot.index] =
          Arrays.stream(lot.carriers)
              .mapToObj(c -> load(c, new int[] {lot.index}))
              .toArray(Load[]::new);
    }
    this.frozen = planner.frozen(this);
  }

  /** The brief in arrays. Names the brief uses without saying what they are, are refused. */
  public static Floor of(Brief brief) {
    return new Floor(new FloorPlanner(brief));
  }

  /** Whether anything but its machines ties the line's batches together. */
  public boolean isCoupled(int line) {
    return coupled[line];
  }

  /** Whether any line is walked whole. */
  public boolean isCoupled() {
    for (boolean tied : coupled) {
      if (tied) {
        return true;
      }
    }
    return false;
  }

  /** A load of these lots; that they may hang together is the caller's to know. */
  public Load load(int carrier, int[] lotIndices) {
    return new Load(new LoadSum(this, carriers[carrier], lotIndices, Optional.empty()));
  }

  /** A load of one lot on the carrier it likes best, second best and so on. */
  public Load single(int lot, int choice) {
    return singles[lot][choice];
  }

  /** Frozen batches at the front of that machine's row. */
  public int front(int line, int machine) {
    return frozen[line][machine].length;
  }

  /** Frozen batches of that machine, first first. */
  public Batch[] frozen(int line, int machine) {
    return frozen[line][machine].clone();
  }

  /** Whether the lot stands in a frozen batch. */
  public boolean[] frozenLots() {
    boolean[] in = new boolean[lots.length];
    for (Batch[][] line : frozen) {
      for (Batch[] row : line) {
        for (Batch batch : row) {
          for (Load load : batch.loads) {
            for (int lot : load.lots) {
              in[lot] = true;
            }
          }
        }
      }
    }
    return in;
  }

  static Comparator<Batch> byFrozenStart() {
    return Comparator.comparingInt(b -> b.frozen.orElseThrow().startMin());
  }
}
