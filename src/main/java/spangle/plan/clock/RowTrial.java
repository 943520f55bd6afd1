package spangle.plan.clock;

/**
 * Times of an edited row, worked out without making it: from the first changed batch on, and only
 * until the clock agrees with the old row again. Scratch; not for two threads.
 */
final class RowTrial {
  final long[] tally = new long[Tally.SIZE];
  private final boolean moves;
  private LineFacts line;
  private MachineFacts machine;
  private Row old;
  private RowEdit edit;

  /** Starts by new place, where worked out; {@link #decodedFrom} and -To say where. */
  private int[] starts = new int[64];

  private int[] decodedFrom = new int[8];
  private int[] decodedTo = new int[8];
  private int decoded;

  // State behind the batch placed last, new and old.
  private int free;
  private int heat;
  private int setting;
  private int oldSetting;

  /** A trial that counts moved loads only where asked to; the line and row are any. */
  RowTrial(LineFacts line, Row row, boolean moves) {
    this.line = line;
    this.machine = line.machines[row.machine];
    this.old = row;
    this.edit = new RowEdit();
    this.moves = moves;
  }

  /** Works out the edited row's tally. */
  void decode(LineFacts ofLine, Row row, RowEdit change) {
    line = ofLine;
    machine = ofLine.machines[row.machine];
    old = row;
    edit = change;
    System.arraycopy(row.tally, 0, tally, 0, Tally.SIZE);
    int length = row.batches.length + change.growth();
    if (starts.length < length) {
      starts = new int[2 * length];
    }
    if (decodedFrom.length <= change.ops) {
      decodedFrom = new int[2 * change.ops];
      decodedTo = new int[2 * change.ops];
    }
    decoded = 0;
    boolean agreed = true;
    int read = 0;
    int write = 0;
    for (int k = 0; k < change.ops; k++) {
      write += change.at[k] - read;
      read = change.at[k];
      if (agreed) {
        standBehind(read);
        decodedFrom[decoded++] = write;
      }
      for (int g = 0; g < change.gone[k]; g++) {
        takeOut(read++);
      }
      for (int c = change.from[k]; c < change.from[k + 1]; c++) {
        putIn(change.come[c], write++);
      }
      int next = k + 1 < change.ops ? change.at[k + 1] : row.batches.length;
      agreed = false;
      int shift = write - read;
      while (read < next && !agreed) {
        agreed = shiftOn(read, read + shift);
        read++;
      }
      write = read + shift;
      decodedTo[decoded - 1] = write;
    }
  }

  /** State behind the batches before that place of the old row. */
  private void standBehind(int place) {
    int before = place - 1;
    while (before >= 0 && (old.starts[before] < 0 || old.batches[before].waits)) {
      before--;
    }
    if (before < 0) {
      free = 0;
      heat = 0;
      setting = machine.spec.initialSetting();
    } else {
      pass(old.batches[before], old.starts[before]);
    }
    oldSetting = setting;
  }

  private void pass(Batch batch, int start) {
    if (batch.waits) {
      return;
    }
    free = MachineClock.free(machine, start + batch.dwell);
    heat = machine.heatFree(start, batch.massKg);
    setting = batch.setting;
  }

  private void takeOut(int place) {
    count(old.batches[place], old.starts[place], oldSetting, -1);
    if (old.starts[place] >= 0) {
      oldSetting = old.batches[place].setting;
    }
  }

  private void putIn(Batch batch, int place) {
    int start = place(batch);
    starts[place] = start;
    count(batch, start, setting, 1);
    if (start >= 0) {
      pass(batch, start);
    }
  }

  private int place(Batch batch) {
    if (batch.dwell < 0) {
      return Loss.NO_TIME.asStart();
    }
    if (batch.isFrozen) {
      return batch.frozen.get().startMin();
    }
    int start = MachineClock.start(line, machine, batch, batch.ready, free, heat, setting);
    return start == Hours.NEVER ? Loss.NO_TIME.asStart() : start;
  }

  /** Times an unchanged batch anew; true when it and all behind it stand as they stood. */
  private boolean shiftOn(int oldPlace, int newPlace) {
    Batch batch = old.batches[oldPlace];
    int was = old.starts[oldPlace];
    int start = place(batch);
    starts[newPlace] = start;
    if (was >= 0 && start >= 0) {
      if (oldSetting != setting) {
        MachineClock.countSetting(line, oldSetting, batch.setting, -1, tally);
        MachineClock.countSetting(line, setting, batch.setting, 1, tally);
      }
      if (was == start) {
        return true;
      }
      batch.countLater(was + batch.dwell, start + batch.dwell, tally);
      if (moves) {
        batch.countMoved(old.machine, was, -1, tally);
        batch.countMoved(old.machine, start, 1, tally);
      }
    } else {
      count(batch, was, oldSetting, -1);
      count(batch, start, setting, 1);
    }
    if (was >= 0) {
      oldSetting = batch.setting;
    }
    if (start >= 0) {
      pass(batch, start);
    }
    return false;
  }

  private void count(Batch batch, int start, int before, int sign) {
    if (start < 0) {
      tally[Tally.LOST + Loss.ofStart(start).place()] += (long) sign * batch.weight;
      if (batch.dwell < 0) {
        tally[Tally.WRONG_COMPANY] += sign;
      }
      return;
    }
    batch.countRun(machine, sign, tally);
    if (!batch.waits) {
      MachineClock.countSetting(line, before, batch.setting, sign, tally);
    }
    batch.countLate(start + batch.dwell, sign, tally);
    if (moves) {
      batch.countMoved(old.machine, start, sign, tally);
    }
  }

  /** The edited row. */
  Row make() {
    Batch[] batches = edit.applied(old);
    int[] made = new int[batches.length];
    int read = 0;
    int write = 0;
    for (int k = 0; k < edit.ops; k++) {
      int kept = edit.at[k] - read;
      System.arraycopy(old.starts, read, made, write, kept);
      write += kept + edit.from[k + 1] - edit.from[k];
      read = edit.at[k] + edit.gone[k];
    }
    System.arraycopy(old.starts, read, made, write, old.starts.length - read);
    for (int part = 0; part < decoded; part++) {
      int from = decodedFrom[part];
      System.arraycopy(starts, from, made, from, decodedTo[part] - from);
    }
    return new Row(old.machine, old.front, batches, made, tally.clone());
  }

  /** A row timed from its beginning. */
  static Row fromScratch(LineFacts line, int machine, int front, Batch[] batches, boolean moves) {
    Row empty = new Row(machine, front, new Batch[0], new int[0], new long[Tally.SIZE]);
    RowEdit all = new RowEdit();
    all.reset(machine);
    all.put(0, 0, batches);
    RowTrial trial = new RowTrial(line, empty, moves);
    trial.decode(line, empty, all);
    return trial.make();
  }
}
