package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.week.PartLine;

/** Workbooks as other shops write them: what stands in them is read as it is seen, or asked. */
class StrangersWorkbooksTest {
  private static final Object[] HEADINGS = {
    "Job", "Part", "Qty", "Material", "Thk mm", "Size", "Weight", "Route", "Finish", "Due"
  };

  @TempDir private Path folder;

  private static Object[] part(String id) {
    return new Object[] {
      "J-9", id, 4, "steel", 3, "plate 160x120 mm", "", "powder", "P-GREY", "fri"
    };
  }

  private static void row(Sheet sheet, int at, Object... cells) {
    Row row = sheet.createRow(at);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] instanceof Number number) {
        row.createCell(i).setCellValue(number.doubleValue());
      } else if (!cells[i].equals("")) {
        row.createCell(i).setCellValue(cells[i].toString());
      }
    }
  }

  private static byte[] book(Consumer<XSSFWorkbook> make) {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      make.accept(book);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      book.write(out);
      return out.toByteArray();
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    }
  }

  private WeekReader.Reading read(Consumer<XSSFWorkbook> make) {
    return WeekFiles.sound(folder).put("jobs/b.xlsx", book(make)).read();
  }

  /** The list with something done to it. */
  private WeekReader.Reading list(Consumer<Sheet> change) {
    return read(
        book -> {
          Sheet sheet = book.createSheet("list");
          row(sheet, 0, HEADINGS);
          row(sheet, 1, part("A"));
          row(sheet, 2, part("B"));
          change.accept(sheet);
        });
  }

  private static List<PartLine> parts(WeekReader.Reading reading) {
    return reading.input().orElseThrow().jobs().stream()
        .filter(job -> job.id().equals("J-9"))
        .flatMap(job -> job.parts().stream())
        .toList();
  }

  private static List<String> said(WeekReader.Reading reading) {
    return reading.problems().stream()
        .map(p -> p.code().key() + " " + p.place().words() + " " + p.value())
        .toList();
  }

  /** 10 struck out before 12 must never become 1012 pieces. */
  @Test
  void whatIsStruckOutInACellIsNotReadIntoIt() {
    WeekReader.Reading reading =
        list(
            sheet -> {
              XSSFWorkbook book = (XSSFWorkbook) sheet.getWorkbook();
              XSSFFont line = book.createFont();
              line.setStrikeout(true);
              XSSFRichTextString text = new XSSFRichTextString("1012");
              text.applyFont(0, 2, line);
              sheet.getRow(1).getCell(2).setCellValue(text);
              XSSFRichTextString bold = new XSSFRichTextString("1012");
              XSSFFont thick = book.createFont();
              thick.setBold(true);
              bold.applyFont(0, 2, thick);
              sheet.getRow(2).getCell(2).setCellValue(bold);
            });
    assertThat(said(reading)).containsExactly("not-a-count jobs/b.xlsx list!C2 ~10~12");
    assertThat(parts(reading)).extracting(PartLine::qty).containsExactly(1012);
  }

  @Test
  void aLineThroughARowIsAskedAbout() {
    WeekReader.Reading reading =
        list(
            sheet -> {
              XSSFFont line = (XSSFFont) sheet.getWorkbook().createFont();
              line.setStrikeout(true);
              CellStyle style = sheet.getWorkbook().createCellStyle();
              style.setFont(line);
              sheet.getRow(2).forEach(cell -> cell.setCellStyle(style));
            });
    assertThat(said(reading)).containsExactly("struck-out jobs/b.xlsx list!A3 1");
    assertThat(parts(reading)).hasSize(2);
  }

  @Test
  void aHiddenColumnIsReadAndSaid() {
    assertThat(said(list(sheet -> sheet.setColumnHidden(2, true))))
        .containsExactly("hidden-rows jobs/b.xlsx list!C1 ");
    assertThat(said(list(sheet -> sheet.setColumnHidden(30, true)))).isEmpty();
  }

  /** A column of mm may hold a cell that is shown in inches, its unit in the format alone. */
  @Test
  void aUnitInTheNumberFormatCounts() {
    WeekReader.Reading reading =
        list(
            sheet -> {
              form(sheet, 1, 4, 0.25, "0.00\" in\"");
              form(sheet, 2, 6, 0.45, "0.00\" kg\"");
              form(sheet, 2, 1, 42, "00000");
            });
    assertThat(said(reading)).isEmpty();
    assertThat(parts(reading)).extracting(p -> p.metal().thicknessMm()).containsExactly(6.35, 3.0);
    assertThat(parts(reading).get(1).body().massKg()).hasValue(0.45);
    assertThat(parts(reading).get(1).id()).isEqualTo("00042");
  }

  private static void form(Sheet sheet, int row, int column, double value, String format) {
    CellStyle style = sheet.getWorkbook().createCellStyle();
    style.setDataFormat(sheet.getWorkbook().createDataFormat().getFormat(format));
    sheet.getRow(row).createCell(column).setCellValue(value);
    sheet.getRow(row).getCell(column).setCellStyle(style);
  }

  @Test
  void aFractionInAColumnOfMillimetresIsRefused() {
    assertThat(
            said(
                list(
                    sheet -> {
                      sheet.getRow(1).getCell(4).setCellValue("1 1/2");
                      sheet.getRow(2).getCell(4).setCellValue("1/4 in");
                    })))
        .containsExactly("unit-missing jobs/b.xlsx list!E2 1 1/2");
  }

  @Test
  void headingsMayStandInTwoRows() {
    WeekReader.Reading reading =
        read(
            book -> {
              Sheet sheet = book.createSheet("list");
              row(sheet, 0, "Pilot House, quay 4");
              for (int at : List.of(6, 12)) {
                row(
                    sheet,
                    at,
                    "Job",
                    "Part",
                    "Qty",
                    "Material",
                    "Dimensions",
                    "",
                    "",
                    "Weight",
                    "Route",
                    "Finish",
                    "Due");
                row(sheet, at + 1, "", "", "pcs", "", "T (mm)", "L (mm)", "W (mm)", "[kg]");
                String id = "A" + at;
                row(
                    sheet, at + 2, "J-9", id, 4, "steel", 3, 160, 120, 0.45, "powder", "P-GREY",
                    "fri");
                sheet.getRow(at + 2).createCell(10).setCellValue("fri");
              }
            });
    // A flat part of a length and a width still lacks how high it hangs.
    assertThat(said(reading))
        .allMatch(s -> s.startsWith("size-missing jobs/b.xlsx list!A"))
        .hasSize(2);
    assertThat(reading.rows().read()).isEqualTo(3);
  }

  @Test
  void aRowOfUnitsBelowTheHeadingsBelongsToThem() {
    WeekReader.Reading reading =
        read(
            book -> {
              Sheet sheet = book.createSheet("list");
              Object[] bare = HEADINGS.clone();
              bare[4] = "Thk";
              row(sheet, 0, bare);
              row(sheet, 1, "", "", "pcs", "", "in", "", "lb");
              Object[] cells = part("A");
              cells[4] = "1/8";
              cells[6] = 1;
              row(sheet, 2, cells);
            });
    assertThat(said(reading)).isEmpty();
    assertThat(parts(reading).get(0).metal().thicknessMm()).isEqualTo(3.175);
    assertThat(parts(reading).get(0).body().massKg()).hasValue(0.45359237);
  }

  /** A row of the table is never taken for headings, whatever words stand in it. */
  @Test
  void aRowOfWordsBelowTheHeadingsIsARow() {
    WeekReader.Reading reading = list(sheet -> sheet.getRow(1).getCell(0).setCellValue("Material"));
    assertThat(reading.rows().read()).isEqualTo(3);
  }

  /** Lists in sections have the customer in a line above his parts. */
  @Test
  void aLineThatNamesTheCustomerHoldsForTheRowsBelowIt() {
    WeekReader.Reading reading =
        read(
            book -> {
              Sheet sheet = book.createSheet("list");
              row(sheet, 0, HEADINGS);
              row(sheet, 1, part("A"));
              row(sheet, 2, "Customer: Lock Keeper");
              Object[] second = part("B");
              second[0] = "J-10";
              row(sheet, 3, second);
            });
    assertThat(said(reading)).isEmpty();
    assertThat(reading.rows().read()).isEqualTo(3);
    assertThat(reading.input().orElseThrow().jobs())
        .extracting(job -> job.id() + " " + job.customer())
        .containsExactlyInAnyOrder("J-1 Pilot House", "J-9 ", "J-10 Lock Keeper");
  }

  @Test
  void aNoteApartFromTheTableIsAskedAboutAndTheRowIsRead() {
    WeekReader.Reading reading =
        list(
            sheet -> {
              sheet.getRow(1).createCell(12).setCellValue("call first");
              sheet.getRow(2).createCell(10).setCellValue("shifted?");
            });
    assertThat(said(reading))
        .containsExactlyInAnyOrder(
            "cell-beside-table jobs/b.xlsx list!M2 call first",
            "cell-without-column jobs/b.xlsx list!K3 shifted?");
    assertThat(parts(reading)).extracting(PartLine::id).containsExactly("A");
  }

  private static byte[] container(String stream) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int b : new int[] {0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1}) {
      out.write(b);
    }
    out.writeBytes(new byte[1016]);
    out.writeBytes(stream.getBytes(StandardCharsets.UTF_16LE));
    return out.toByteArray();
  }

  private String why(String file, byte[] bytes) {
    List<String> why = new ArrayList<>();
    WeekFiles.sound(folder).put("jobs/" + file, bytes).problems().stream()
        .filter(p -> p.code().key().equals("job-file-unreadable"))
        .forEach(p -> why.add(p.why()));
    assertThat(why).hasSize(1);
    return why.get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "b.xlsx, EncryptedPackage, the workbook has a password and cannot be read",
    "b.xlsx, Workbook, this is a workbook of the old .xls kind under the name of a new one",
    "b.xls, Workbook, nothing reads this kind of file",
    "b.ods, Workbook, nothing reads this kind of file"
  })
  void whatIsNoWorkbookIsCalledByItsName(String file, String stream, String why) {
    assertThat(why(file, container(stream))).isEqualTo(why);
  }

  @Test
  void aWrongNameIsSaid() {
    byte[] text = "job;part\n1;2\n".getBytes(StandardCharsets.UTF_8);
    assertThat(why("b.xlsx", text)).startsWith("this is text, not a workbook");
    assertThat(why("b.xlsx", new byte[] {1, 2, 3, 4, 5}))
        .isEqualTo("this is not an .xlsx workbook");
    assertThat(why("b.xlsx", "  ".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo("this is not an .xlsx workbook");
    WeekFiles.sound(folder.resolve("other"));
    assertThat(why("b.xlsx", OddWorkbook.strict())).contains("Strict Open XML");
    byte[] sound = book(b -> b.createSheet("list"));
    WeekReader.Reading reading =
        WeekFiles.sound(folder.resolve("third")).put("jobs/c.csv", sound).read();
    assertThat(reading.problems())
        .filteredOn(p -> p.code().key().equals("job-file-unreadable"))
        .extracting(p -> p.why())
        .containsExactly("this is a workbook or another packed file under the name of a text file");
  }
}
