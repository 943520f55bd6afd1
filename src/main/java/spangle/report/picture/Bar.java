package spangle.report.picture;

import java.util.List;

/**
 * One tag on a lane of a line chart.
 *
 * @param startMin start
 * @param endMin end
 * @param label words that stand on it when there is room
 * @param brief words that stand on it when there is little room
 * @param title all of it, shown when pointed at
 * @param place where a click leads on the page
 * @param fills colour and hatch of each part of its strip; empty for set-ups
 */
record Bar(
    int startMin,
    int endMin,
    String label,
    String brief,
    String title,
    String place,
    List<Fill> fills) {
  Bar {
    fills = List.copyOf(fills);
  }

  /** A colour and its hatch. */
  record Fill(String rgb, int hatch) {}

  boolean setup() {
    return fills.isEmpty();
  }
}
