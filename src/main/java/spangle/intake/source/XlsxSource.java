package spangle.intake.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.util.RecordFormatException;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.model.StylesTable;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;

/**
 * The sheets of an .xlsx workbook as grids. Cells come as stored, never as shown: a number keeps
 * its digits, a date becomes its ISO form, a formula gives its stored result. Merged cells down a
 * column repeat their text. Read as a stream, so that a large workbook does not fill the memory.
 */
public final class XlsxSource {
  /**
   * One sheet.
   *
   * @param name its name
   * @param grid its cells
   * @param hidden whether it is not seen when the workbook is opened
   */
  public record Sheet(String name, Grid grid, boolean hidden) {}

  private final String file;
  private final Problems problems;

  private XlsxSource(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /**
   * Reads all sheets, in the order of the workbook.
   *
   * @throws UnreadableException when it is no workbook or beyond the limits
   */
  public static List<Sheet> read(String file, byte[] bytes, Problems problems)
      throws UnreadableException {
    XlsxPackage.check(file, bytes);
    return new XlsxSource(file, problems).read(bytes);
  }

  private List<Sheet> read(byte[] bytes) throws UnreadableException {
    try (OPCPackage pack = OPCPackage.open(new ByteArrayInputStream(bytes))) {
      XSSFReader reader = new XSSFReader(pack);
      SharedTexts strings = new SharedTexts();
      try (@Nullable InputStream in = reader.getSharedStringsData()) {
        if (in != null) {
          parse(in, strings);
        }
      }
      @Nullable StylesTable styles = reader.getStylesTable();
      BookFacts facts = facts(reader);
      List<Sheet> sheets = new ArrayList<>();
      XSSFReader.SheetIterator iterator = (XSSFReader.SheetIterator) reader.getSheetsData();
      while (iterator.hasNext()) {
        try (InputStream in = iterator.next()) {
          String name = iterator.getSheetName();
          SheetHandler handler =
              new SheetHandler(
                  new SheetHandler.Book(file, name, strings, styles, facts.from1904().get()));
          parse(in, handler);
          handler.note(problems);
          sheets.add(new Sheet(name, handler.grid(), facts.hidden().contains(name)));
        }
      }
      return sheets;
    } catch (SheetHandler.LimitException beyond) {
      throw UnreadableException.tooLarge(
          Place.file(file), "a sheet has too many cells or too long ones", Limits.ROWS + " rows");
    } catch (IOException
        | SAXException
        | OpenXML4JException
        | ParserConfigurationException
        | POIXMLException
        | OpenXML4JRuntimeException
        | RecordFormatException
        | IllegalArgumentException
        | IllegalStateException
        | IndexOutOfBoundsException
        | NullPointerException
        | ClassCastException
        | UnsupportedOperationException damaged) {
      if (String.valueOf(damaged.getMessage()).startsWith("Strict OOXML")) {
        throw UnreadableException.grammar(
            Place.file(file),
            "the workbook was saved as Strict Open XML, which is not read",
            "save it as an ordinary workbook (.xlsx), or as .csv");
      }
      // The library answers broken packages with any of these; to the person it is one thing.
      throw XlsxPackage.damaged(Place.file(file));
    }
  }

  private static void parse(InputStream in, DefaultHandler handler)
      throws IOException, SAXException, ParserConfigurationException {
    XMLReader parser = XMLHelper.newXMLReader();
    parser.setContentHandler(handler);
    parser.setErrorHandler(handler);
    parser.parse(new InputSource(in));
  }

  /**
   * What the workbook says of its sheets.
   *
   * @param from1904 workbooks once made on another system count days from 1904
   * @param hidden names of the sheets nobody sees
   */
  private record BookFacts(AtomicBoolean from1904, Set<String> hidden) {}

  private static BookFacts facts(XSSFReader reader)
      throws IOException, SAXException, OpenXML4JException, ParserConfigurationException {
    BookFacts facts = new BookFacts(new AtomicBoolean(), new HashSet<>());
    try (InputStream in = reader.getWorkbookData()) {
      parse(
          in,
          new DefaultHandler() {
            @Override
            public void startElement(String uri, String local, String name, Attributes attributes) {
              String value = attributes.getValue("date1904");
              if (local.equals("workbookPr") && value != null) {
                facts.from1904().set(value.equals("1") || value.equals("true"));
              }
              String state = attributes.getValue("state");
              if (local.equals("sheet") && state != null && !state.equals("visible")) {
                facts.hidden().add(String.valueOf(attributes.getValue("name")));
              }
            }
          });
    }
    return facts;
  }

  /** What the reader says of rows that are not seen when the workbook is opened. */
  public static void noteHidden(Problems problems, Place first, String words) {
    problems.add(
        ProblemCode.HIDDEN_ROWS,
        first,
        "",
        "",
        "",
        words,
        "take them out of the file if they are not wanted");
  }

  /** What the reader says of rows with cells that are struck out. */
  static void noteStruck(Problems problems, Place first, int rows) {
    problems.add(
        ProblemCode.STRUCK_OUT,
        first,
        "",
        Integer.toString(rows),
        "",
        rows + " row(s) of the sheet have cells that are struck out; they were read like others",
        "take them out of the file if they are off, or take the line through them away");
  }

  /** What the reader says of cells that are computed. */
  static void noteFormulas(Problems problems, Place first, int count) {
    problems.add(
        ProblemCode.FORMULA_CELL,
        first,
        "",
        Integer.toString(count),
        "",
        count + " cell(s) of the sheet are formulas; their stored results were used",
        "recalculate and save before you send it, if it was changed by another program");
  }
}
