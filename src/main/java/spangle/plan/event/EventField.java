package spangle.plan.event;

import java.util.Locale;

/** Values an event may carry beside when, what and who; the word in files is the small name. */
public enum EventField {
  /** Number of a load, or of an oven batch or dip for all its loads. */
  LOAD,
  /** The order. */
  JOB,
  /** The part of it. */
  PART,
  /** Pieces. */
  COUNT,
  /** Coats the rejected pieces bear; 1 where it is not said. */
  COATS,
  /** Which pieces: {@code waiting} or {@code rejected}. */
  OF,
  /** A station, oven or kettle. */
  STATION,
  /** A powder, paint or zinc. */
  MATERIAL,
  /** Kilograms, or litres of liquid paint. */
  AMOUNT,
  /** Maker's lot number. */
  LOT,
  /** From when on; without it, from when it was reported. */
  FROM,
  /** Until when, or at which new time. */
  UNTIL,
  /** How many times longer. */
  FACTOR,
  /** Silicon, per cent. */
  SI_PCT,
  /** Phosphorus, per cent. */
  P_PCT,
  /** How far a bath stands below its usual mark, mm. */
  LEVEL_DOWN_MM,
  /** 1 (usual) to 9. */
  PRIORITY,
  /** New due time. */
  DUE,
  /** Which gate. */
  GATE,
  /** Who signed. */
  OPENED_BY,
  /** Number of another event of the log. */
  EVENT,
  /** Words. */
  NOTE;

  /** The key in files. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
