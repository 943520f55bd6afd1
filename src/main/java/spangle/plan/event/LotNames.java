package spangle.plan.event;

import spangle.plan.Lot;

/** How lots are named: {@code job/part#number} and, with several legs, {@code .leg}. */
public final class LotNames {
  private static final String REWORK = "#r";

  private LotNames() {}

  /** The name all legs of the same pieces share. */
  public static String chain(Lot lot) {
    int mark = lot.id().lastIndexOf('#');
    int dot = lot.id().indexOf('.', Math.max(0, mark));
    return dot < 0 ? lot.id() : lot.id().substring(0, dot);
  }

  /** Whether the lot is a second run of rejected pieces. */
  public static boolean rework(Lot lot) {
    return lot.id().startsWith(lot.jobId() + "/" + lot.partId() + REWORK);
  }

  /** Name of the rework after that event. */
  public static String reworkOf(String jobId, String partId, int event) {
    return jobId + "/" + partId + REWORK + event;
  }

  /** Number of the event a rework came from; 0 for what is no rework. */
  public static int eventOf(Lot lot) {
    if (!rework(lot)) {
      return 0;
    }
    String chain = chain(lot);
    String after = chain.substring(chain.lastIndexOf(REWORK) + REWORK.length());
    int dash = after.indexOf('-');
    String digits = dash < 0 ? after : after.substring(0, dash);
    return digits.matches("[0-9]{1,8}") ? Integer.parseInt(digits) : 0;
  }

  /**
   * What two lots must share to be pieces of the same part at the same step: job and part, the
   * event where they are a second run, and the leg. It is read from the id, so also of a lot that
   * is gone.
   */
  public static String work(String lotId) {
    int mark = lotId.lastIndexOf('#');
    if (mark < 0) {
      return lotId;
    }
    int dot = lotId.indexOf('.', mark);
    String chain = dot < 0 ? lotId : lotId.substring(0, dot);
    int dash = chain.indexOf('-', mark);
    String event = dash < 0 ? chain : chain.substring(0, dash);
    return (lotId.startsWith(REWORK, mark) ? event : lotId.substring(0, mark + 1))
        + (dot < 0 ? "" : lotId.substring(dot));
  }

  /** Number of a chain made from an order; 0 for rework and for names of another kind. */
  public static int number(Lot lot) {
    String chain = chain(lot);
    String digits = chain.substring(chain.lastIndexOf('#') + 1);
    return digits.matches("[0-9]{1,8}") ? Integer.parseInt(digits) : 0;
  }
}
