package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;

class SpreadsheetTest {
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
      row(
          sheet,
          0,
          "job",
          "part",
          "qty",
          "material",
          "thickness_mm",
          "shape",
          "route",
          "finish",
          "due");
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
      row(
          sheet,
          0,
          "job",
          "part",
          "qty",
          "material",
          "thickness_mm",
          "shape",
          "route",
          "finish",
          "due");
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
        assertThat(JobColumns.key(name, java.util.Map.of())).as(name).contains(name);
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
    try (java.util.zip.ZipInputStream in =
            new java.util.zip.ZipInputStream(new ByteArrayInputStream(sound));
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
}
