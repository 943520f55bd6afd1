package spangle.plan.clock;

import java.util.Arrays;

/** One batch on its way through a line that is walked whole. Never changes. */
public final class Passage {
  /** The batch. */
  public final Batch batch;

  /** Place of its machine on the line. */
  public final int machine;

  /** Start in the machine; below zero where the clock found no time. */
  public final int start;

  /** Start of the set-up before it. */
  public final int setupStart;

  /** Of each load: start of its first visit, or of the batch. */
  final int[] loadFirst;

  /** Of each load: end of its last visit, or of the batch. */
  final int[] loadEnd;

  /** Of each load: number of its carrier from 1; 0 where carriers are not counted. */
  final int[] carrierNumber;

  /** Of each load and station: place from 1 (0 = passed by), set-up start, start. */
  final int[] visits;

  /** Of each load: earliest and latest start that legs before allow. */
  final int[] chainFrom;

  final int[] chainTo;

  /** State of the line behind it; shared, never written. */
  final int[] state;

  /** What was drawn of each supply up to and with it; shared, never written. */
  final double[] drawn;

  /** What the line comes to up to and with it. */
  final long[] tally;

  Passage(Batch batch, int machine, BatchWalk walk, int[] state, double[] drawn, long[] tally) {
    this.batch = batch;
    this.machine = machine;
    this.start = walk.start;
    this.setupStart = walk.setupStart;
    int n = batch.loads.length;
    this.loadFirst = Arrays.copyOf(walk.loadFirst, n);
    this.loadEnd = Arrays.copyOf(walk.loadEnd, n);
    this.carrierNumber = Arrays.copyOf(walk.carrierNumber, n);
    this.visits = Arrays.copyOf(walk.visits, n * walk.stations * 3);
    this.chainFrom = batch.chained ? Arrays.copyOf(walk.chains.from, n) : NONE;
    this.chainTo = batch.chained ? Arrays.copyOf(walk.chains.to, n) : NONE;
    this.state = state;
    this.drawn = drawn;
    this.tally = tally;
  }

  private Passage(
      Batch batch,
      int machine,
      Loss loss,
      BatchWalk walk,
      int[] state,
      double[] drawn,
      long[] tally) {
    this.batch = batch;
    this.machine = machine;
    this.start = loss.asStart();
    this.setupStart = start;
    int n = batch.loads.length;
    this.loadFirst = n <= NEVERS.length ? NEVERS : minusOnes(n);
    this.loadEnd = loadFirst;
    int places = Math.max(1, walk.stations * 3) * n;
    this.carrierNumber = places <= ZEROS.length ? ZEROS : new int[places];
    this.visits = carrierNumber;
    this.chainFrom = batch.chained ? Arrays.copyOf(walk.chains.from, n) : NONE;
    this.chainTo = batch.chained ? Arrays.copyOf(walk.chains.to, n) : NONE;
    this.state = state;
    this.drawn = drawn;
    this.tally = tally;
  }

  /** A batch that finds no time and leaves the line as it was; the chains have been read. */
  static Passage lost(
      Batch batch,
      int machine,
      Loss loss,
      BatchWalk walk,
      int[] state,
      double[] drawn,
      long[] tally) {
    return new Passage(batch, machine, loss, walk, state, drawn, tally);
  }

  private static int[] minusOnes(int count) {
    int[] all = new int[count];
    Arrays.fill(all, -1);
    return all;
  }

  private static final int[] NONE = {};
  private static final int[] ZEROS = new int[64];
  private static final int[] NEVERS = minusOnes(8);

  /** Whether the clock found time for it. */
  public boolean runs() {
    return start >= 0;
  }

  /** End in the machine; it must run. */
  public int end() {
    return start + batch.dwell;
  }

  /** Start of a load's first visit. */
  public int loadFirst(int load) {
    return loadFirst[load];
  }

  /** End of a load's last visit. */
  public int loadEnd(int load) {
    return loadEnd[load];
  }

  /** Number of a load's carrier; 0 where its kind is not counted. */
  public int carrierNumber(int load) {
    return carrierNumber[load];
  }

  /** Place a load takes at a station, from 1; 0 where it passes it by. */
  public int place(int load, int station) {
    return visits[at(load, station)];
  }

  /** Start of the change before a load's visit. */
  public int visitSetupStart(int load, int station) {
    return visits[at(load, station) + 1];
  }

  /** Start of a load's visit. */
  public int visitStart(int load, int station) {
    return visits[at(load, station) + 2];
  }

  /** End of a load's visit. */
  public int visitEnd(int load, int station) {
    return visitStart(load, station) + batch.loads[load].minutes[station];
  }

  private int at(int load, int station) {
    return (load * batch.loads[load].minutes.length + station) * 3;
  }
}
