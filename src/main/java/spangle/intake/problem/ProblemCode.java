package spangle.intake.problem;

import java.util.Locale;

/** Stable names of problems. The name in data is the constant in small letters with hyphens. */
public enum ProblemCode {
  /** The week folder or a file in it is not there. */
  FILE_MISSING(Severity.STOP, Meanwhile.STOPPED),
  /** A file needed cannot be read as what its name says. */
  FILE_UNREADABLE(Severity.STOP, Meanwhile.STOPPED),
  /** A job file cannot be read; the other files go on. */
  JOB_FILE_UNREADABLE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A file is larger, deeper or more nested than is sane. */
  FILE_TOO_LARGE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A file nobody reads. */
  FILE_NOT_READ(Severity.WARN, Meanwhile.IGNORED),
  /** A link or path leads out of the week folder. */
  PATH_OUTSIDE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A drawing that is named is not there. */
  DRAWING_MISSING(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** The bytes are not UTF-8; they were read as Latin-1. */
  ENCODING_GUESSED(Severity.WARN, Meanwhile.AS_WRITTEN),
  /** A spreadsheet or CSV has no row that looks like headings. */
  NO_HEADING(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** Two columns bear the same name. */
  COLUMN_TWICE(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A row has more cells than the heading. */
  CELL_WITHOUT_COLUMN(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A quoted cell never ends. */
  QUOTE_OPEN(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A key nobody reads. */
  UNKNOWN_KEY(Severity.ASK, Meanwhile.IGNORED),
  /** A column nobody reads. */
  UNKNOWN_COLUMN(Severity.ASK, Meanwhile.IGNORED),
  /** A key stands twice in one group. */
  KEY_TWICE(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A value that is needed is not there. */
  VALUE_MISSING(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A group stands where a value is wanted, or the other way round. */
  WRONG_SHAPE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** Text that is no number. */
  NOT_A_NUMBER(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A number without a unit, or with one that does not belong. */
  UNIT_MISSING(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A number outside its range. */
  OUT_OF_RANGE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A word that is not one of those known. */
  UNKNOWN_WORD(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A name that refers to nothing. */
  UNKNOWN_NAME(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A name with characters that are not allowed. */
  BAD_NAME(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** The same name twice. */
  NAME_TWICE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** Not yes and not no. */
  NOT_YES_OR_NO(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** Not a date or time. */
  NOT_A_TIME(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A date that may be read two ways. */
  DATE_TWO_WAYS(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A word such as "hot" where a date is wanted. */
  DUE_NOT_A_DATE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** Due before the week begins. */
  DUE_IN_THE_PAST(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** Due on a day the shop does not work. */
  DUE_ON_A_FREE_DAY(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** Ready after due: late at entry. */
  READY_AFTER_DUE(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A count that is zero, negative, broken or "1 lot". */
  NOT_A_COUNT(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A count so large that it is more likely a slip. */
  COUNT_HUGE(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** Arrivals do not add up to the quantity. */
  ARRIVALS_DO_NOT_ADD_UP(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A gauge number without a table. */
  GAUGE_WITHOUT_TABLE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A thickness few sheets have. */
  THICKNESS_UNUSUAL(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** Neither shape nor area and mass and size. */
  SIZE_MISSING(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A shape's words cannot be read. */
  SHAPE_NOT_READ(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** Area, mass and thickness do not agree by more than a half. */
  AREA_MASS_CLASH(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Area, mass and thickness do not quite agree. */
  AREA_MASS_DOUBT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A value that reads like another unit. */
  UNIT_DOUBT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** An area that reads like one face. */
  ONE_FACE_DOUBT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** An area or mass that reads like the whole job's. */
  PER_JOB_DOUBT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A material that must not go into zinc. */
  MATERIAL_NOT_FOR_ZINC(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** Welded work going to zinc without word of its hollow spaces. */
  HOLLOW_UNKNOWN(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** A hollow going to zinc without holes on record. */
  HOLLOW_CLOSED(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** Holes on record, nobody has signed the check. */
  VENTS_NOT_SIGNED(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** A sealed overlap without a hole. */
  OVERLAP_SEALED(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** Heat-sensitive work going into an oven or kettle. */
  HEAT_SENSITIVE(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** Does not go into any kettle, whole or in two dips. */
  DOES_NOT_FIT(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Too little is known to measure a part. */
  SIZE_UNKNOWN(Severity.ASK, Meanwhile.GATE_SHUT),
  /** The shop has no line a part's route needs. */
  NO_LINE(Severity.ASK, Meanwhile.GATE_SHUT),
  /** No carrier of the shop takes the part. */
  NO_CARRIER(Severity.ASK, Meanwhile.GATE_SHUT),
  /** The coating of a part has no cure data. */
  NO_CURE_DATA(Severity.ASK, Meanwhile.GATE_SHUT),
  /** No oven setting cures the part without overbaking it. */
  NO_CURE_SETTING(Severity.ASK, Meanwhile.GATE_SHUT),
  /** No oven is hot enough to degas the part. */
  NO_DEGAS_SETTING(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Another gate keeps the part out. */
  PART_HELD(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Welded work going to zinc of which too little is said. */
  WELDED_UNKNOWN(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** Holes smaller than the largest published rule. */
  HOLES_TOO_SMALL(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** Trapped air floats the part. */
  WOULD_FLOAT(Severity.DANGER, Meanwhile.GATE_SHUT),
  /** A pocket that traps air or zinc. */
  BLIND_POCKET(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Joints that melt in the bath. */
  SOLDERED_JOINT(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Thin and thick welded together. */
  THICKNESS_RATIO(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Thin flat sheet that buckles at bath heat. */
  THIN_FLAT_SHEET(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Moving parts going to zinc in one piece. */
  MOVING_PARTS(Severity.ASK, Meanwhile.GATE_SHUT),
  /** No steel certificate for zinc. */
  STEEL_UNKNOWN(Severity.ASK, Meanwhile.BRACKETED),
  /** Steel so strong or so tightly bent that zinc needs special advice. */
  STEEL_STRONG(Severity.ASK, Meanwhile.GATE_SHUT),
  /** A finish the coatings file does not have. */
  FINISH_UNKNOWN(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A finish named by its colour; one product has it. */
  FINISH_BY_COLOUR(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** No route is written; the finish says which. */
  ROUTE_FROM_FINISH(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A finish that does not go with the route. */
  FINISH_DOES_NOT_FIT_ROUTE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A coating without cure data. */
  CURE_MISSING(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Cure data by air temperature. */
  CURE_BY_AIR(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Stock below zero or without sense. */
  STOCK_BAD(Severity.ASK, Meanwhile.IGNORED),
  /** A lot past its shelf life. */
  LOT_OLD(Severity.WARN, Meanwhile.AS_WRITTEN),
  /** The same job and part in two rows. */
  PART_TWICE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** The same job and part in two revisions. */
  REVISION_CONFLICT(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** A kit that can never be complete, or whose bill looks odd. */
  KIT_PART_MISSING(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** One uneven number in a bill of even ones. */
  KIT_ODD(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A kit needs more pieces than are ordered or in store. */
  KIT_SHORT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** Usable size larger than inside size. */
  USABLE_LARGER_THAN_INSIDE(Severity.STOP, Meanwhile.STOPPED),
  /** A line that lacks what its kind needs. */
  LINE_INCOMPLETE(Severity.STOP, Meanwhile.STOPPED),
  /** A value in the shop or coatings files that cannot be used. */
  SETTING_BAD(Severity.STOP, Meanwhile.STOPPED),
  /** A signature that does not count. */
  GATE_RECORD_BAD(Severity.ASK, Meanwhile.IGNORED),
  /** An event that cannot be. */
  EVENT_BAD(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** An answer to nothing, or to a value that has changed. */
  ANSWER_STALE(Severity.ASK, Meanwhile.IGNORED),
  /** A drawing that cannot be read. */
  DRAWING_UNREADABLE(Severity.REFUSED, Meanwhile.ROW_REFUSED),
  /** Something in a drawing that was not understood and is not counted. */
  DRAWING_LEFT_OUT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A drawing whose unit is not sure. */
  DRAWING_UNIT(Severity.ASK, Meanwhile.GATE_SHUT),
  /** A line to be cut that does not close. */
  DRAWING_OPEN(Severity.ASK, Meanwhile.GATE_SHUT),
  /** Lines drawn twice, crossing, side by side or inside one another. */
  DRAWING_DOUBT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** Something small in a drawing that was put right or supposed. */
  DRAWING_NOTE(Severity.WARN, Meanwhile.AS_WRITTEN),
  /** A bent part whose size after bending nobody has said. */
  FOLDED_SIZE_MISSING(Severity.ASK, Meanwhile.GATE_SHUT),
  /** A body whose surface has gaps: it has no volume. */
  BODY_NOT_CLOSED(Severity.ASK, Meanwhile.GATE_SHUT),
  /** A body with inner spaces that no opening reaches. */
  BODY_HAS_VOID(Severity.DANGER, Meanwhile.AS_WRITTEN),
  /** A formula whose stored result was used. */
  FORMULA_CELL(Severity.WARN, Meanwhile.AS_WRITTEN),
  /** Rows of a spreadsheet that are hidden there. */
  HIDDEN_ROWS(Severity.WARN, Meanwhile.AS_WRITTEN),
  /** Rows of a spreadsheet with a line through them. */
  STRUCK_OUT(Severity.ASK, Meanwhile.AS_WRITTEN),
  /** A cell of a spreadsheet that stands apart, to the right of its table. */
  CELL_BESIDE_TABLE(Severity.ASK, Meanwhile.IGNORED);

  private final Severity severity;
  private final Meanwhile meanwhile;

  ProblemCode(Severity severity, Meanwhile meanwhile) {
    this.severity = severity;
    this.meanwhile = meanwhile;
  }

  /** The name in data and on sheets, such as {@code not-a-count}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The code of that key; {@link #PART_HELD} for one that is none. */
  public static ProblemCode ofKey(String key) {
    for (ProblemCode code : values()) {
      if (code.key().equals(key)) {
        return code;
      }
    }
    return PART_HELD;
  }

  /** How bad it usually is. */
  public Severity severity() {
    return severity;
  }

  /** What usually happens meanwhile. */
  public Meanwhile meanwhile() {
    return meanwhile;
  }
}
