package spangle.intake.read;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Workbooks as other programs write them (ECMA-376), put together by hand: texts in the cells or
 * shared, numbers as numbers, cell references there or not. A hundred times quicker than a library,
 * and its parts can be spoiled before they are packed.
 */
final class OddWorkbook {
  private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATION =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  private final SplittableRandom random;
  private final boolean shared;
  private final boolean references;
  private final Map<String, Integer> strings = new LinkedHashMap<>();

  private OddWorkbook(SplittableRandom random) {
    this.random = random;
    this.shared = random.nextBoolean();
    this.references = random.nextInt(4) > 0;
  }

  /** A sound workbook of these rows, some blank rows among them. */
  static byte[] of(List<Map<String, String>> rows, SplittableRandom random) {
    return packed(new OddWorkbook(random).parts(rows));
  }

  /** A workbook of the strict kind (ECMA-376 Part 1 without Part 4): other names for everything. */
  static byte[] strict() {
    Map<String, byte[]> parts = new OddWorkbook(new SplittableRandom(1)).parts(List.of());
    parts.replaceAll(
        (name, bytes) ->
            new String(bytes, StandardCharsets.UTF_8)
                .replace(MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main")
                .replace(RELATION, "http://purl.oclc.org/ooxml/officeDocument/relationships")
                .getBytes(StandardCharsets.UTF_8));
    return packed(parts);
  }

  /** The same with some bytes of one of its parts spoiled before it is packed. */
  static byte[] spoiledInside(List<Map<String, String>> rows, SplittableRandom random) {
    Map<String, byte[]> parts = new OddWorkbook(random).parts(rows);
    List<String> names = new ArrayList<>(parts.keySet());
    // Mostly the sheet: it is the last part.
    int at = random.nextBoolean() ? names.size() - 1 : random.nextInt(names.size());
    parts.computeIfPresent(names.get(at), (name, bytes) -> OddFiles.spoiled(bytes, random));
    return packed(parts);
  }

  private Map<String, byte[]> parts(List<Map<String, String>> rows) {
    String sheet = sheet(rows);
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put(
        "[Content_Types].xml",
        "<Types xmlns=\""
            + PACKAGE
            + "content-types\"><Default Extension=\"rels\" ContentType=\""
            + "application/vnd.openxmlformats-package.relationships+xml\"/>"
            + override("workbook", "sheet.main")
            + override("worksheets/sheet1", "worksheet")
            + (shared ? override("sharedStrings", "sharedStrings") : "")
            + "</Types>");
    parts.put("_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml")));
    parts.put(
        "xl/workbook.xml",
        "<workbook xmlns=\""
            + MAIN
            + "\" xmlns:r=\""
            + RELATION
            + "\"><sheets><sheet name=\"week\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
    parts.put(
        "xl/_rels/workbook.xml.rels",
        relations(
            relation(1, "worksheet", "worksheets/sheet1.xml")
                + (shared ? relation(2, "sharedStrings", "sharedStrings.xml") : "")));
    if (shared) {
      StringBuilder table = new StringBuilder("<sst xmlns=\"" + MAIN + "\">");
      strings.keySet().forEach(s -> table.append("<si>").append(text(s)).append("</si>"));
      parts.put("xl/sharedStrings.xml", table.append("</sst>").toString());
    }
    parts.put("xl/worksheets/sheet1.xml", sheet);
    Map<String, byte[]> bytes = new LinkedHashMap<>();
    parts.forEach((name, xml) -> bytes.put(name, (XML + xml).getBytes(StandardCharsets.UTF_8)));
    return bytes;
  }

  private static String override(String part, String type) {
    return "<Override PartName=\"/xl/" + part + ".xml\" ContentType=\"" + TYPE + type + "+xml\"/>";
  }

  private static String relations(String inner) {
    return "<Relationships xmlns=\"" + PACKAGE + "relationships\">" + inner + "</Relationships>";
  }

  private static String relation(int id, String type, String target) {
    return "<Relationship Id=\"rId"
        + id
        + "\" Type=\""
        + RELATION
        + "/"
        + type
        + "\" Target=\""
        + target
        + "\"/>";
  }

  private String sheet(List<Map<String, String>> rows) {
    StringBuilder out = new StringBuilder("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
    int at = 1 + random.nextInt(5);
    row(out, at++, OddCells.HEADINGS);
    for (Map<String, String> row : rows) {
      at += random.nextInt(6) == 0 ? 1 : 0;
      row(out, at++, row.values());
    }
    return out.append("</sheetData></worksheet>").toString();
  }

  private void row(StringBuilder out, int number, Iterable<String> texts) {
    out.append("<row r=\"").append(number).append("\">");
    int column = 0;
    for (String text : texts) {
      out.append("<c");
      if (references) {
        out.append(" r=\"").append((char) ('A' + column)).append(number).append('"');
      }
      if (text.matches("[0-9]{1,5}(\\.[0-9]{1,3})?")) {
        out.append("><v>").append(text).append("</v></c>");
      } else if (shared) {
        int index = strings.computeIfAbsent(text, t -> strings.size());
        out.append(" t=\"s\"><v>").append(index).append("</v></c>");
      } else {
        out.append(" t=\"inlineStr\"><is>").append(text(text)).append("</is></c>");
      }
      column++;
    }
    out.append("</row>");
  }

  private static String text(String text) {
    StringBuilder out = new StringBuilder("<t xml:space=\"preserve\">");
    text.codePoints()
        // XML 1.0 has no such characters.
        .filter(c -> c >= 32 || c == '\n' || c == '\t')
        .forEach(
            c -> {
              switch (c) {
                case '<' -> out.append("&lt;");
                case '&' -> out.append("&amp;");
                default -> out.appendCodePoint(c);
              }
            });
    return out.append("</t>").toString();
  }

  private static byte[] packed(Map<String, byte[]> parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setLevel(Deflater.BEST_SPEED);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException impossibleInMemory) {
      throw new UncheckedIOException(impossibleInMemory);
    }
    return out.toByteArray();
  }
}
