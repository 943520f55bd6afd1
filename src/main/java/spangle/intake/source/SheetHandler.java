package spangle.intake.source;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problems;

/** Takes the cells of one sheet as they stream by (ECMA-376 Part 1, 18.3.1). */
final class SheetHandler extends DefaultHandler {
  /** What the cells refer to. */
  record Book(
      String file,
      String sheet,
      SharedTexts strings,
      @Nullable StylesTable styles,
      boolean from1904) {}

  /** Thrown through the parser when a sheet passes the limits. */
  static final class LimitException extends SAXException {
    private static final long serialVersionUID = 1L;

    LimitException() {
      super("limit");
    }
  }

  private static final int LAST_COLUMN = Limits.COLUMNS;
  private static final long MERGED_MOST = 100_000;

  private final Book book;
  private final TreeMap<Integer, TreeMap<Integer, String>> rows = new TreeMap<>();
  private final List<CellRangeAddress> merged = new ArrayList<>();

  /** True column of the first cell of a row that lies beyond the last column, by row. */
  private final Map<Integer, Integer> farColumns = new HashMap<>();

  private final Set<Integer> hidden = new TreeSet<>();
  private final Map<Integer, Map<Integer, CellRangeAddress>> repeated = new HashMap<>();
  private final Set<Integer> struck = new TreeSet<>();
  private final Set<Integer> hiddenColumns = new TreeSet<>();
  private final Map<Integer, Boolean> struckStyles = new HashMap<>();
  private final Map<Integer, NumberForm> forms = new HashMap<>();
  private final RunText text = new RunText();
  private final StringBuilder formula = new StringBuilder();
  private String type = "";
  private int style = -1;
  private int row = -1;
  private int column = -1;
  private boolean inFormula;
  private boolean hasResult;
  private int values;
  private int formulas;
  private @Nullable Place firstFormula;

  SheetHandler(Book book) {
    this.book = book;
  }

  @Override
  public void startElement(String uri, String local, String name, Attributes attributes)
      throws SAXException {
    switch (local) {
      case "row" -> {
        String number = attributes.getValue("r");
        row = number == null ? row + 1 : whole(number) - 1;
        column = -1;
        if (isHidden(attributes)) {
          hidden.add(row);
        }
      }
      case "col" -> {
        if (isHidden(attributes)) {
          int last = Math.min(LAST_COLUMN, whole(attributes.getValue("max")));
          for (int c = whole(attributes.getValue("min")); c <= last; c++) {
            hiddenColumns.add(c - 1);
          }
        }
      }
      case "c" -> startCell(attributes);
      case "v", "t" -> {
        text.start(local, attributes);
        hasResult = true;
      }
      case "f" -> {
        formulas++;
        inFormula = true;
        formula.append('=');
        if (firstFormula == null) {
          firstFormula = place(row, Math.max(0, column));
        }
      }
      case "mergeCell" -> {
        String range = attributes.getValue("ref");
        if (range != null && merged.size() < MERGED_MOST) {
          merged.add(CellRangeAddress.valueOf(range));
        }
      }
      default -> text.start(local, attributes);
    }
  }

  private static boolean isHidden(Attributes attributes) {
    String hides = attributes.getValue("hidden");
    return hides != null && (hides.equals("1") || hides.equals("true"));
  }

  private void startCell(Attributes attributes) throws SAXException {
    String reference = attributes.getValue("r");
    if (reference == null) {
      column++;
    } else {
      CellReference cell = new CellReference(reference);
      row = cell.getRow();
      column = cell.getCol();
    }
    String kind = attributes.getValue("t");
    type = kind == null ? "n" : kind;
    String styled = attributes.getValue("s");
    style = styled == null ? -1 : whole(styled);
    text.clear();
    formula.setLength(0);
    hasResult = false;
    if (row < 0 || row > 2 * Limits.ROWS || ++values > Limits.VALUES) {
      throw new LimitException();
    }
  }

  private static int whole(@Nullable String digits) throws SAXException {
    try {
      if (digits == null) {
        throw new SAXException("a number is missing");
      }
      return Integer.parseInt(digits.strip());
    } catch (NumberFormatException broken) {
      throw new SAXException("a number is expected", broken);
    }
  }

  @Override
  public void characters(char[] chars, int start, int length) throws SAXException {
    if (inFormula) {
      RunText.append(formula, chars, start, length);
    } else {
      text.add(chars, start, length);
    }
  }

  @Override
  public void endElement(String uri, String local, String name) throws SAXException {
    switch (local) {
      case "f" -> inFormula = false;
      case "c" -> {
        // A formula nobody has calculated yet says nothing; the formula itself is no value, so
        // that the cell is refused where one is wanted.
        String value = hasResult ? value(text.toString()) : formula.toString();
        if (!value.isBlank() && column >= 0) {
          if (column >= LAST_COLUMN) {
            farColumns.putIfAbsent(row, column);
          }
          rows.computeIfAbsent(row, r -> new TreeMap<>())
              .putIfAbsent(Math.min(column, LAST_COLUMN), value.strip());
          if (isStruck()) {
            struck.add(row);
          }
          if (rows.size() > Limits.ROWS) {
            throw new LimitException();
          }
        }
      }
      default -> text.end(local);
    }
  }

  private boolean isStruck() {
    return struckStyles.computeIfAbsent(
        style, s -> format().map(f -> f.getFont().getStrikeout()).orElse(false));
  }

  private String value(String stored) throws SAXException {
    return switch (type) {
      case "s" -> shared(stored);
      case "b" -> stored.strip().equals("1") ? "yes" : "no";
      case "n", "" -> number(stored.strip());
      default -> stored;
    };
  }

  private String shared(String index) throws SAXException {
    if (index.isBlank()) {
      return "";
    }
    return book.strings().get(whole(index));
  }

  private String number(String stored) {
    double number;
    try {
      number = Double.parseDouble(stored);
    } catch (NumberFormatException text) {
      return stored;
    }
    if (!Double.isFinite(number)) {
      return stored;
    }
    if (isDate(number)) {
      return date(number);
    }
    NumberForm form =
        forms.computeIfAbsent(
            style,
            s ->
                format().map(f -> NumberForm.of(f.getDataFormatString())).orElse(NumberForm.PLAIN));
    // 0.02 % is stored as 0.0002 and a format.
    return form.percent() ? plain(number * 100, "") + " %" : form.words(plain(number, stored));
  }

  private Optional<XSSFCellStyle> format() {
    StylesTable styles = book.styles();
    return styles == null || style < 0 || style >= styles.getNumCellStyles()
        ? Optional.empty()
        : Optional.ofNullable(styles.getStyleAt(style));
  }

  private boolean isDate(double number) {
    return DateUtil.isValidExcelDate(number)
        && format()
            .map(f -> DateUtil.isADateFormat(f.getDataFormat(), f.getDataFormatString()))
            .orElse(false);
  }

  private String date(double number) {
    if (number < 1) {
      int minute = (int) Math.round(number * 24 * 60);
      return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
    }
    LocalDateTime time = DateUtil.getLocalDateTime(number, book.from1904(), true);
    if (time == null) {
      return plain(number, Double.toString(number));
    }
    boolean dateOnly = time.getHour() == 0 && time.getMinute() == 0;
    String pattern = dateOnly ? "uuuu-MM-dd" : "uuuu-MM-dd HH:mm";
    return time.format(DateTimeFormatter.ofPattern(pattern, Locale.ROOT));
  }

  /** Stored numbers carry binary dust (0.1 + 0.2); 15 figures are what a sheet means. */
  private static String plain(double number, String stored) {
    boolean digits = stored.matches("-?[0-9]{1,15}(\\.[0-9]{0,7}[1-9])?");
    if (digits) {
      return stored;
    }
    BigDecimal rounded = new BigDecimal(number).round(new MathContext(15));
    if (rounded.signum() == 0) {
      return "0";
    }
    return Math.abs(rounded.scale()) > 100 ? stored : rounded.stripTrailingZeros().toPlainString();
  }

  /** Says what a reader of the sheet would not see. */
  void note(Problems problems) {
    if (firstFormula != null) {
      XlsxSource.noteFormulas(problems, firstFormula, formulas);
    }
    hidden.retainAll(rows.keySet());
    if (!hidden.isEmpty()) {
      int first = hidden.iterator().next();
      String words = hidden.size() + " row(s) of the sheet are hidden; they were read like others";
      XlsxSource.noteHidden(problems, place(first, 0), words);
    }
    hiddenColumns.removeIf(c -> rows.values().stream().noneMatch(cells -> cells.containsKey(c)));
    if (!hiddenColumns.isEmpty()) {
      int first = hiddenColumns.iterator().next();
      String words =
          hiddenColumns.size() + " column(s) of the sheet are hidden; they were read like others";
      XlsxSource.noteHidden(problems, place(rows.firstKey(), first), words);
    }
    if (!struck.isEmpty()) {
      XlsxSource.noteStruck(problems, place(struck.iterator().next(), 0), struck.size());
    }
  }

  /** The sheet, once parsed; blank rows left out, places kept. */
  Grid grid() {
    repeatMerged();
    List<Grid.Row> grid = new ArrayList<>();
    for (Map.Entry<Integer, TreeMap<Integer, String>> entry : rows.entrySet()) {
      int at = entry.getKey();
      List<Datum.Scalar> cells = new ArrayList<>();
      int last = entry.getValue().lastKey();
      for (int c = 0; c <= last; c++) {
        cells.add(new Datum.Scalar(place(at, c), entry.getValue().getOrDefault(c, "")));
      }
      grid.add(
          new Grid.Row(
              new Place(book.file(), at + 1, 1, book.sheet() + "!" + cellName(at, 0)), cells));
    }
    return new Grid(new Place(book.file(), 0, 0, book.sheet() + "!"), grid);
  }

  /** Cells merged down a column say the same for every row; across a row they are headlines. */
  private void repeatMerged() {
    for (CellRangeAddress range : merged) {
      TreeMap<Integer, String> top = rows.get(range.getFirstRow());
      String value = top == null ? "" : top.getOrDefault(range.getFirstColumn(), "");
      boolean down = range.getFirstColumn() == range.getLastColumn();
      if (!down || value.isEmpty() || range.getLastRow() - range.getFirstRow() > Limits.ROWS) {
        continue;
      }
      for (int r = range.getFirstRow(); r <= range.getLastRow(); r++) {
        TreeMap<Integer, String> cells = rows.get(r);
        if (cells != null) {
          cells.putIfAbsent(range.getFirstColumn(), value);
          repeated.computeIfAbsent(r, x -> new HashMap<>()).put(range.getFirstColumn(), range);
        }
      }
    }
  }

  private static String cellName(int atRow, int atColumn) {
    return CellReference.convertNumToColString(atColumn) + (atRow + 1);
  }

  /** The cell, or the cells it is merged from. */
  private Place place(int atRow, int column) {
    int atColumn = column < LAST_COLUMN ? column : farColumns.getOrDefault(atRow, column);
    CellRangeAddress range = repeated.getOrDefault(atRow, Map.of()).get(atColumn);
    String cell = range == null ? cellName(atRow, atColumn) : range.formatAsString();
    return new Place(book.file(), atRow + 1, atColumn + 1, book.sheet() + "!" + cell);
  }
}
