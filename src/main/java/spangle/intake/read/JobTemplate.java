package spangle.intake.read;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import spangle.intake.week.Route;
import spangle.measure.SafeCell;
import spangle.part.Material;

/**
 * The empty job workbook: a sheet with the program's headings and choices to pick from, and one
 * that says what stands in each column.
 */
public final class JobTemplate {
  static final String JOBS = "jobs";
  static final String CHOICES = "choices";
  static final String HELP = "columns";

  /** Sheets of the template that hold no parts. */
  static final Set<String> OWN_SHEETS = Set.of(CHOICES, HELP);

  private static final int LAST_ROW = 5_000;

  private record Column(String heading, String needed, String words, List<String> choices) {}

  private final List<Column> columns;

  private JobTemplate(List<String> finishes, List<String> carriers) {
    this.columns = columns(finishes, carriers);
  }

  /**
   * The workbook as bytes.
   *
   * @param finishes ids to choose from; empty = written freely
   * @param carriers ids to choose from; empty = written freely
   */
  public static byte[] workbook(List<String> finishes, List<String> carriers) {
    JobTemplate template = new JobTemplate(finishes, carriers);
    try (XSSFWorkbook book = new XSSFWorkbook();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      book.getProperties().getCoreProperties().setCreator("spangle");
      template.fill(book);
      book.write(bytes);
      return bytes.toByteArray();
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    }
  }

  private void fill(XSSFWorkbook book) {
    Sheet jobs = book.createSheet(JOBS);
    Sheet help = book.createSheet(HELP);
    Sheet choices = book.createSheet(CHOICES);
    CellStyle bold = heading(book);
    Row top = jobs.createRow(0);
    DataValidationHelper validations = jobs.getDataValidationHelper();
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      top.createCell(i).setCellValue(column.heading());
      top.getCell(i).setCellStyle(bold);
      jobs.setColumnWidth(i, Math.max(10, column.heading().length() + 3) * 256);
      Row row = help.createRow(i + 1);
      row.createCell(0).setCellValue(column.heading());
      row.createCell(1).setCellValue(column.needed());
      row.createCell(2).setCellValue(column.words());
      if (!column.choices().isEmpty()) {
        choose(choices, validations, jobs, i, column);
      }
    }
    Row helpTop = help.createRow(0);
    List<String> heads = List.of("column", "needed", "what stands in it");
    for (int i = 0; i < heads.size(); i++) {
      helpTop.createCell(i).setCellValue(heads.get(i));
      helpTop.getCell(i).setCellStyle(bold);
    }
    help.setColumnWidth(0, 20 * 256);
    help.setColumnWidth(2, 90 * 256);
    jobs.createFreezePane(2, 1);
    book.setSheetHidden(book.getSheetIndex(choices), true);
  }

  private static CellStyle heading(XSSFWorkbook book) {
    CellStyle style = book.createCellStyle();
    Font font = book.createFont();
    font.setBold(true);
    style.setFont(font);
    style.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    return style;
  }

  private static void choose(
      Sheet choices, DataValidationHelper validations, Sheet jobs, int index, Column column) {
    for (int r = 0; r < column.choices().size(); r++) {
      Row row = choices.getRow(r);
      Row there = row == null ? choices.createRow(r) : row;
      there.createCell(index).setCellValue(SafeCell.text(column.choices().get(r)));
    }
    String letter = CellReference.convertNumToColString(index);
    String range =
        WorkbookUtil.createSafeSheetName(choices.getSheetName())
            + "!$"
            + letter
            + "$1:$"
            + letter
            + "$"
            + column.choices().size();
    DataValidation validation =
        validations.createValidation(
            validations.createFormulaListConstraint(range),
            new CellRangeAddressList(1, LAST_ROW, index, index));
    validation.setShowErrorBox(true);
    validation.setErrorStyle(DataValidation.ErrorStyle.WARNING);
    validation.createErrorBox("spangle", "This is not one of the choices.");
    validation.setEmptyCellAllowed(true);
    jobs.addValidationData(validation);
  }

  private static List<Column> columns(List<String> finishes, List<String> carriers) {
    List<String> yesNo = List.of("yes", "no", "unknown");
    List<String> materials = Arrays.stream(Material.values()).map(Material::word).toList();
    List<String> routes = Arrays.stream(Route.values()).map(Route::word).toList();
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("job", "yes", "order number", List.of()));
    columns.add(new Column("customer", "", "who wants it", List.of()));
    columns.add(new Column("part", "yes", "part number, once in a job", List.of()));
    columns.add(new Column("description", "", "words for the sheet", List.of()));
    columns.add(new Column("revision", "", "revision of the drawing", List.of()));
    columns.add(new Column("qty", "yes", "pieces, digits only", List.of()));
    columns.add(new Column("material", "yes", "metal", materials));
    columns.add(new Column("thickness_mm", "yes", "thinnest wall, mm", List.of()));
    columns.add(new Column("thickest_mm", "", "thickest wall where they differ, mm", List.of()));
    columns.add(
        new Column("skins", "", "surface by thickness, for zinc: 3mm:2.4m2; 8mm:0.6m2", List.of()));
    columns.add(
        new Column(
            "shape",
            "shape, or area/mass and size",
            "plate 160x120 mm; box 900x600x300 mm open front; tube 60x40x1200 mm; pipe; bar;"
                + " angle; channel; section SHS50x50x3 x 1200 mm; flat FILE.dxf; holes 4x11",
            List.of()));
    columns.add(new Column("length_mm", "", "outside size as it hangs, folded, mm", List.of()));
    columns.add(new Column("width_mm", "", "outside size, mm", List.of()));
    columns.add(new Column("height_mm", "", "outside size, mm", List.of()));
    columns.add(new Column("area_m2", "", "all surface of one piece, both faces, m2", List.of()));
    columns.add(new Column("mass_kg", "", "mass of one piece, kg", List.of()));
    columns.add(new Column("route", "yes", "way through the shop", routes));
    columns.add(
        new Column("finish", "for paint", "powder or paint; two coats with + between", finishes));
    columns.add(new Column("ready", "", "date and time the pieces are here", List.of()));
    columns.add(new Column("due", "yes", "date, or date and time", List.of()));
    columns.add(new Column("arrivals", "", "pieces@time; pieces@time", List.of()));
    columns.add(
        new Column("priority", "", "1 usual .. 9, or rush", List.of("1", "2", "3", "4", "rush")));
    columns.add(new Column("welded", "for zinc", "is it welded together", yesNo));
    columns.add(
        new Column(
            "hollow",
            "for zinc",
            "no; open; unknown; or 2x 60x40x1200 mm vents 1x16 drains 1x16",
            List.of()));
    columns.add(
        new Column("overlaps", "for zinc", "no; or 180 cm2 3+8 mm all-round hole 12", List.of()));
    columns.add(
        new Column(
            "pockets", "welded for zinc", "do returns or stiffeners make blind pockets", yesNo));
    columns.add(new Column("soldered", "welded for zinc", "are joints soldered or brazed", yesNo));
    columns.add(
        new Column(
            "vents_checked", "for zinc", "who looked through the holes; two people", List.of()));
    columns.add(new Column("certificate", "for zinc", "mill certificate, or none", List.of()));
    columns.add(new Column("si_pct", "for zinc", "silicon, per cent", List.of()));
    columns.add(new Column("p_pct", "for zinc", "phosphorus, per cent", List.of()));
    columns.add(new Column("heat_sensitive", "", "no, or what must stay cool", List.of()));
    columns.add(new Column("moving_parts", "", "does it move in itself", yesNo));
    columns.add(new Column("hooks", "", "hooks for one piece", List.of()));
    columns.add(new Column("show_face", "", "face towards the sprayer", List.of()));
    columns.add(new Column("masking", "", "plugs and tape; with ; between", List.of()));
    columns.add(new Column("spin", "", "spin basket", yesNo));
    columns.add(new Column("carriers", "", "carriers allowed", carriers));
    columns.add(new Column("drawing", "", "DXF or STL file beside this one", List.of()));
    columns.add(
        new Column("drawing_unit", "", "its unit, if the file does not say", List.of("mm", "in")));
    columns.add(new Column("note", "", "words", List.of()));
    return columns;
  }
}
