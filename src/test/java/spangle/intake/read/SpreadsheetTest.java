package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;

class SpreadsheetTest {
  private static final String[] USUAL = {
    "job", "part", "qty", "material", "thickness_mm", "shape", "route", "finish", "due"
  };

  private static final int DAY = 1440;

  @TempDir Path folder;

  private static byte[] bytes(XSSFWorkbook book) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    book.write(out);
    return out.toByteArray();
  }

  private static void row(Sheet sheet, int at, Object... cells) {
    Row row = sheet.createRow(at);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] instanceof Number number) {
        row.createCell(i).setCellValue(number.doubleValue());
      } else {
        row.createCell(i).setCellValue(cells[i].toString());
      }
    }
  }

  private List<PartLine> parts() {
    return WeekFilesReader.parts(folder);
  }

  private record WeekFilesReader() {
    static List<PartLine> parts(Path folder) {
      return WeekReader.read(folder).input().orElseThrow().jobs().stream()
          .map(Job::parts)
          .flatMap(List::stream)
          .toList();
    }
  }

  @Test
  void aWorkbookAsPeopleWriteItIsReadWhole() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("Week 45");
      row(sheet, 0, "Breakwater Yard - order list");
      sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 6));
      row(
          sheet,
          3,
          "Due date",
          "Order no.",
          "Item",
          "Menge",
          "Werkstoff",
          "Dicke (mm)",
          "Shape",
          "Process",
          "Colour");
      row(sheet, 4, "", "J-7", "CL-1", 250, "S235JR", 2.5, "plate 90x40 mm", "powder", "P-GREY");
      row(sheet, 5, "", "", "CL-2", 40, "S235JR", "2,5", "plate 120x40 mm", "powder", "P-BLACK");
      sheet.addMergedRegion(new CellRangeAddress(4, 5, 1, 1));
      CellStyle date = book.createCellStyle();
      date.setDataFormat(book.getCreationHelper().createDataFormat().getFormat("dd.mm.yyyy hh:mm"));
      sheet.getRow(4).getCell(0).setCellValue(LocalDateTime.of(2026, 11, 6, 12, 0));
      sheet.getRow(4).getCell(0).setCellStyle(date);
      sheet.getRow(5).getCell(0).setCellValue(46332);
      WeekFiles.sound(folder).put("jobs/b.xlsx", bytes(book));
    }

    WeekReader.Reading reading = WeekReader.read(folder);

    assertThat(reading.problems()).isEmpty();
    PartLine clip = parts().get(1);
    assertThat(clip.id()).isEqualTo("CL-1");
    assertThat(clip.qty()).isEqualTo(250);
    assertThat(clip.metal().thicknessMm()).isEqualTo(2.5);
    assertThat(clip.wanted().dueMin()).isEqualTo(4 * DAY + 720);
    assertThat(clip.place().words()).isEqualTo("jobs/b.xlsx Week 45!A5");
    PartLine second = parts().get(2);
    assertThat(reading.input().orElseThrow().jobs().get(1).id()).isEqualTo("J-7");
    assertThat(second.metal().thicknessMm()).isEqualTo(2.5);
    // Serial 46332 is 2026-11-06 (1900 date system).
    assertThat(second.wanted().dueMin()).isEqualTo(5 * DAY);
  }

  @Test
  void aProblemNamesSheetAndCell() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("list");
      row(sheet, 0, (Object[]) USUAL);
      row(sheet, 1, "J-8", "A", "1 lot", "steel", 3, "plate 90x40 mm", "powder", "P-GREY", "hot");
      WeekFiles.sound(folder).put("jobs/b.xlsx", bytes(book));
    }

    assertThat(WeekReader.read(folder).problems())
        .extracting(p -> p.code().key() + " " + p.place().words())
        .containsExactlyInAnyOrder(
            "not-a-count jobs/b.xlsx list!C2", "due-not-a-date jobs/b.xlsx list!I2");
  }

  @Test
  void aFormulaGivesItsStoredResultAndIsSaid() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("list");
      row(sheet, 0, (Object[]) USUAL);
      row(sheet, 1, "J-8", "A", 1, "steel", 3, "plate 90x40 mm", "powder", "P-GREY", "fri");
      sheet.getRow(1).getCell(2).setCellFormula("6*7");
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      WeekFiles.sound(folder).put("jobs/b.xlsx", bytes(book));
    }

    assertThat(WeekReader.read(folder).problems())
        .extracting(p -> p.code().key())
        .containsExactly("formula-cell");
    assertThat(parts().get(1).qty()).isEqualTo(42);
  }

  @Test
  void theTemplateIsReadBackWithoutComplaintAndOffersChoices() throws IOException {
    byte[] template = JobTemplate.workbook(List.of("P-GREY", "P-BLACK"), List.of("flat-rack"));
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(template))) {
      assertThat(book.getSheet("jobs").getDataValidations()).hasSizeGreaterThanOrEqualTo(8);
      Row heading = book.getSheet("jobs").getRow(0);
      Row row = book.getSheet("jobs").createRow(1);
      List<String> given =
          List.of(
              "job",
              "J-9",
              "part",
              "X-1",
              "qty",
              "12",
              "material",
              "steel",
              "thickness_mm",
              "4",
              "shape",
              "plate 100x50 mm",
              "route",
              "powder",
              "finish",
              "P-BLACK",
              "due",
              "fri");
      for (int c = 0; c < heading.getLastCellNum(); c++) {
        int at = given.indexOf(heading.getCell(c).getStringCellValue());
        if (at >= 0) {
          row.createCell(c).setCellValue(given.get(at + 1));
        }
      }
      WeekFiles.sound(folder).put("jobs/b.xlsx", bytes(book));
    }

    assertThat(WeekReader.read(folder).problems()).isEmpty();
    assertThat(parts()).extracting(PartLine::id).containsExactly("LB-20", "X-1");
  }

  @Test
  void everyColumnOfTheTemplateIsKnown() throws IOException {
    try (XSSFWorkbook book =
        new XSSFWorkbook(new ByteArrayInputStream(JobTemplate.workbook(List.of(), List.of())))) {
      Row heading = book.getSheet("jobs").getRow(0);
      for (int c = 0; c < heading.getLastCellNum(); c++) {
        String name = heading.getCell(c).getStringCellValue();
        assertThat(JobColumns.key(name, Map.of())).as(name).contains(name);
      }
    }
  }

  @Test
  void aWorkbookThatUnpacksToFarMoreThanItHoldsIsRefused() throws IOException {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bomb)) {
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] blanks = new byte[1 << 20];
      for (int i = 0; i < 60; i++) {
        zip.write(blanks);
      }
      zip.closeEntry();
    }
    WeekFiles.sound(folder).put("jobs/bomb.xlsx", bomb.toByteArray());

    assertThat(WeekReader.read(folder).problems())
        .extracting(p -> p.code().key() + " " + p.place().file())
        .containsExactly("file-too-large jobs/bomb.xlsx");
  }

  @Test
  void whatIsNoWorkbookIsSaidAndTheRestGoesOn() {
    WeekFiles.sound(folder).put("jobs/old.xlsx", "not a workbook".getBytes(StandardCharsets.UTF_8));

    WeekReader.Reading reading = WeekReader.read(folder);

    assertThat(reading.problems())
        .extracting(p -> p.code().key())
        .containsExactly("job-file-unreadable");
    assertThat(reading.rows().accepted()).isEqualTo(1);
  }

  @Test
  void xmlEntitiesAreNotExpanded() throws IOException {
    byte[] sound;
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      row(book.createSheet("list"), 0, "job", "part", "qty", "material", "due");
      sound = bytes(book);
    }
    ByteArrayOutputStream evil = new ByteArrayOutputStream();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(sound));
        ZipOutputStream out = new ZipOutputStream(evil)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        if (entry.getName().equals("xl/worksheets/sheet1.xml")) {
          text =
              "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>"
                  + text.substring(text.indexOf("?>") + 2);
        }
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
    WeekFiles.sound(folder).put("jobs/evil.xlsx", evil.toByteArray());

    assertThat(WeekReader.read(folder).problems())
        .extracting(p -> p.code().key())
        .containsExactly("job-file-unreadable");
  }

  private static final String[] HEADINGS = {
    "job",
    "part",
    "qty",
    "material",
    "thickness_mm",
    "shape",
    "area_m2",
    "route",
    "finish",
    "due",
    "Si %"
  };

  private interface Change {
    void to(XSSFWorkbook book, Sheet sheet);
  }

  /** Two sound rows, J-8/A and J-8/B, and what a change makes of them. */
  private List<String> afterwards(Change change) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("list");
      row(sheet, 0, (Object[]) HEADINGS);
      for (String part : List.of("A", "B")) {
        int at = part.equals("A") ? 1 : 2;
        row(sheet, at, "J-8", part, 4, "steel", 3, "plate 90x40 mm", "", "powder", "P-GREY", "fri");
      }
      change.to(book, sheet);
      WeekFiles.sound(folder).put("jobs/b.xlsx", bytes(book));
    }
    return WeekReader.read(folder).problems().stream()
        .map(p -> p.code().key() + " " + p.place().words() + " " + p.value())
        .toList();
  }

  @Test
  void aFormulaNobodyCalculatedIsRefusedNotBlank() throws IOException {
    assertThat(afterwards((book, sheet) -> sheet.getRow(1).createCell(6).setCellFormula("3*2")))
        .containsExactlyInAnyOrder(
            "not-a-number jobs/b.xlsx list!G2 =3*2", "formula-cell jobs/b.xlsx list!G2 1");
  }

  @Test
  void aFormulaThatGivesAnEmptyTextIsBlank() throws IOException {
    assertThat(
            afterwards(
                (book, sheet) -> {
                  sheet.getRow(1).createCell(6).setCellFormula("IF(C2>0,\"\",1)");
                  book.getCreationHelper().createFormulaEvaluator().evaluateAll();
                }))
        .containsExactly("formula-cell jobs/b.xlsx list!G2 1");
  }

  /** One number beside two parts counts each or all: nobody can say. A job may stand so. */
  @Test
  void aCountMergedOverRowsIsRefusedAJobIsNot() throws IOException {
    assertThat(
            afterwards(
                (book, sheet) -> {
                  for (int column : new int[] {0, 2}) {
                    sheet.getRow(2).getCell(column).setBlank();
                    sheet.addMergedRegion(new CellRangeAddress(1, 2, column, column));
                  }
                }))
        .hasSize(2)
        .allMatch(said -> said.startsWith("not-a-count jobs/b.xlsx list!C2:C3 4"));
  }

  /** 0.02 % is stored as 0.0002 with a format, or as 0.02 with a sign beside it. */
  @Test
  void perCentIsReadAsItIsShown() throws IOException {
    List<String> said =
        afterwards(
            (book, sheet) -> {
              String[] formats = {"0.00%", "0.00\"%\""};
              for (int i = 0; i < formats.length; i++) {
                CellStyle style = book.createCellStyle();
                style.setDataFormat(book.createDataFormat().getFormat(formats[i]));
                sheet.getRow(i + 1).createCell(10).setCellValue(i == 0 ? 0.0002 : 0.02);
                sheet.getRow(i + 1).getCell(10).setCellStyle(style);
              }
            });
    assertThat(said).isEmpty();
    assertThat(parts().subList(1, 3)).allMatch(p -> p.metal().siPct().getAsDouble() == 0.02);
  }

  @Test
  void aCellFarToTheRightIsNotLost() throws IOException {
    assertThat(afterwards((book, sheet) -> sheet.getRow(1).createCell(500).setCellValue("and 2")))
        .containsExactly("cell-beside-table jobs/b.xlsx list!SG2 and 2");
  }

  @Test
  void whatIsHiddenIsReadAndSaid() throws IOException {
    assertThat(afterwards((book, sheet) -> sheet.getRow(2).setZeroHeight(true)))
        .containsExactly("hidden-rows jobs/b.xlsx list!A3 ");
    assertThat(
            afterwards(
                (book, sheet) -> {
                  row(book.createSheet("old"), 0, (Object[]) HEADINGS);
                  book.setSheetHidden(1, true);
                }))
        .containsExactly("hidden-rows jobs/b.xlsx old! ");
  }

  @Test
  void errorsAndYesesAreNoNumbers() throws IOException {
    assertThat(
            afterwards(
                (book, sheet) -> {
                  sheet.getRow(1).getCell(2).setCellErrorValue(FormulaError.DIV0.getCode());
                  sheet.getRow(2).getCell(2).setCellValue(true);
                }))
        .containsExactly(
            "not-a-count jobs/b.xlsx list!C2 #DIV/0!", "not-a-count jobs/b.xlsx list!C3 yes");
  }
}
