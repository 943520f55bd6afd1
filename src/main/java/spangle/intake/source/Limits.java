package spangle.intake.source;

/**
 * What a file may grow to before it is refused politely. Far above any real week, far below what
 * fills the memory of an office computer.
 */
public final class Limits {
  /** Bytes of one text file. */
  public static final long TEXT_BYTES = 20L * 1024 * 1024;

  /** Bytes of one spreadsheet as stored. */
  public static final long SHEET_BYTES = 30L * 1024 * 1024;

  /** Bytes of all parts of a spreadsheet unpacked. */
  public static final long SHEET_UNPACKED_BYTES = 200L * 1024 * 1024;

  /** Times a part of a spreadsheet may grow when unpacked. */
  public static final double SHEET_GROWTH = 200;

  /** Parts in a spreadsheet's package. */
  public static final int SHEET_PARTS = 2_000;

  /** Groups within groups. */
  public static final int DEPTH = 40;

  /** Values in one file, aliases counted each time they are used. */
  public static final int VALUES = 3_000_000;

  /** Aliases for groups in a YAML file. */
  public static final int ALIASES = 50;

  /** Characters of one value. */
  public static final int VALUE_CHARS = 20_000;

  /** Rows of one job file. */
  public static final int ROWS = 200_000;

  /** Columns of one job file. */
  public static final int COLUMNS = 400;

  /** Job files in a week folder. */
  public static final int FILES = 2_000;

  private Limits() {}
}
