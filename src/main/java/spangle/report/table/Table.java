package spangle.report.table;

import java.util.List;

/**
 * A table with a head.
 *
 * @param name of the sheet
 * @param head column names, which carry their unit
 * @param rows as long as the head
 */
record Table(String name, List<String> head, List<List<Cell>> rows) {
  Table {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Cell> row : rows) {
      if (row.size() != head.size()) {
        throw new IllegalArgumentException(
            name + ": a row of " + row.size() + " cells under " + head.size() + " columns");
      }
    }
  }

  /** As RFC 4180 text: commas, quotes where needed, lines ended by CR LF. */
  String csv() {
    StringBuilder out = new StringBuilder();
    line(out, head);
    for (List<Cell> row : rows) {
      line(out, row.stream().map(Cell::plain).toList());
    }
    return out.toString();
  }

  private static void line(StringBuilder out, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      if (i > 0) {
        out.append(',');
      }
      String cell = cells.get(i);
      boolean quoted = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
      out.append(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
    }
    out.append("\r\n");
  }
}
