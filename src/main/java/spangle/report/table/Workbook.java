package spangle.report.table;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Tables as a spreadsheet (.xlsx); the same tables give the same bytes. */
final class Workbook {
  /**
   * The oldest day a zip archive can name; a spreadsheet made twice must not differ by its clock.
   */
  private static final String STILL = "1980-01-01";

  private static final int WIDEST = 60;
  private static final int CHARACTER = 256;

  private Workbook() {}

  static byte[] of(List<Table> tables) {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.getProperties().getCoreProperties().setCreated(STILL + "T00:00:00Z");
      book.getProperties().getCoreProperties().setCreator("Spangle");
      Styles styles = new Styles(book);
      for (Table table : tables) {
        sheet(book, table, styles);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      book.write(out);
      return settled(out.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InvalidFormatException e) {
      throw new IllegalStateException("not a date for a spreadsheet: " + STILL, e);
    }
  }

  private static final class Styles {
    final CellStyle head;
    final CellStyle moment;
    final CellStyle day;
    final CellStyle literal;

    Styles(XSSFWorkbook book) {
      head = book.createCellStyle();
      Font bold = book.createFont();
      bold.setBold(true);
      head.setFont(bold);
      moment = book.createCellStyle();
      moment.setDataFormat(book.createDataFormat().getFormat("ddd yyyy-mm-dd hh:mm"));
      day = book.createCellStyle();
      day.setDataFormat(book.createDataFormat().getFormat("ddd yyyy-mm-dd"));
      literal = book.createCellStyle();
      literal.setQuotePrefixed(true);
    }
  }

  private static void sheet(XSSFWorkbook book, Table table, Styles styles) {
    XSSFSheet sheet = book.createSheet(table.name());
    sheet.createFreezePane(0, 1);
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    XSSFRow head = sheet.createRow(0);
    for (int c = 0; c < table.head().size(); c++) {
      XSSFCell cell = head.createCell(c);
      cell.setCellValue(table.head().get(c));
      cell.setCellStyle(styles.head);
    }
    for (int r = 0; r < table.rows().size(); r++) {
      XSSFRow row = sheet.createRow(r + 1);
      for (int c = 0; c < table.head().size(); c++) {
        fill(row, c, table.rows().get(r).get(c), styles);
      }
    }
    for (int c = 0; c < table.head().size(); c++) {
      sheet.setColumnWidth(c, width(table, c) * CHARACTER);
    }
    if (!table.rows().isEmpty()) {
      sheet.setAutoFilter(new CellRangeAddress(0, table.rows().size(), 0, table.head().size() - 1));
    }
  }

  private static void fill(XSSFRow row, int column, Cell content, Styles styles) {
    if (content instanceof Cell.Text text) {
      if (!text.words().isEmpty()) {
        XSSFCell cell = row.createCell(column);
        cell.setCellValue(text.words());
        if (text.runs()) {
          cell.setCellStyle(styles.literal);
        }
      }
    } else if (content instanceof Cell.Figure number) {
      row.createCell(column).setCellValue(number.value());
    } else if (content instanceof Cell.Moment moment) {
      XSSFCell cell = row.createCell(column);
      cell.setCellValue(moment.at());
      cell.setCellStyle(styles.moment);
    } else if (content instanceof Cell.Day day) {
      XSSFCell cell = row.createCell(column);
      cell.setCellValue(day.date());
      cell.setCellStyle(styles.day);
    }
  }

  private static int width(Table table, int column) {
    int longest = table.head().get(column).length();
    for (List<Cell> row : table.rows()) {
      longest = Math.max(longest, row.get(column).plain().length());
    }
    return Math.min(WIDEST, longest + 4);
  }

  /** The same archive with its entries in order and their clocks stopped. */
  private static byte[] settled(byte[] archive) throws IOException {
    Map<String, byte[]> entries = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        entries.put(entry.getName(), in.readAllBytes());
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        ZipEntry still = new ZipEntry(entry.getKey());
        still.setTimeLocal(LocalDateTime.parse(STILL + "T00:00:00"));
        zip.putNextEntry(still);
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }
}
