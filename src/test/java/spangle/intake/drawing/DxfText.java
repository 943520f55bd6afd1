package spangle.intake.drawing;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Writes DXF files by hand, in the manner of several programs. */
public final class DxfText {
  private final StringBuilder header = new StringBuilder();
  private final StringBuilder tables = new StringBuilder();
  private final StringBuilder blocks = new StringBuilder();
  private final StringBuilder entities = new StringBuilder();
  private String layer = "0";

  public static DxfText mm() {
    return new DxfText().unit(4);
  }

  public static DxfText withoutUnit() {
    return new DxfText();
  }

  public DxfText unit(int code) {
    header.append(tags(9, "$INSUNITS", 70, code));
    return this;
  }

  public DxfText header(Object... codes) {
    header.append(tags(codes));
    return this;
  }

  public DxfText layer(String name, int flags, int colour, String lineKind) {
    tables.append(tags(0, "LAYER", 2, name, 70, flags, 62, colour, 6, lineKind));
    return this;
  }

  public DxfText lineKind(String name, int dashes) {
    tables.append(tags(0, "LTYPE", 2, name, 70, 0, 3, "", 72, 65, 73, dashes, 40, 1.0));
    return this;
  }

  public DxfText on(String name) {
    layer = name;
    return this;
  }

  /** A block with the entities of another text. */
  public DxfText block(String name, double x, double y, DxfText inside) {
    blocks.append(tags(0, "BLOCK", 8, "0", 2, name, 70, 0, 10, x, 20, y));
    blocks.append(inside.entities);
    blocks.append(tags(0, "ENDBLK", 8, "0"));
    return this;
  }

  public DxfText insert(String name, double x, double y, Object... more) {
    return entity("INSERT", 2, name, 10, x, 20, y).more(more);
  }

  public DxfText entity(String type, Object... codes) {
    entities.append(tags(0, type, 8, layer)).append(tags(codes));
    return this;
  }

  private DxfText more(Object... codes) {
    entities.append(tags(codes));
    return this;
  }

  public DxfText line(double x1, double y1, double x2, double y2) {
    return entity("LINE", 10, x1, 20, y1, 30, 0.0, 11, x2, 21, y2, 31, 0.0);
  }

  public DxfText circle(double x, double y, double r) {
    return entity("CIRCLE", 10, x, 20, y, 40, r);
  }

  public DxfText rectangle(double x, double y, double w, double h) {
    return line(x, y, x + w, y)
        .line(x + w, y, x + w, y + h)
        .line(x + w, y + h, x, y + h)
        .line(x, y + h, x, y);
  }

  public DxfText text(double x, double y, String words) {
    return entity("TEXT", 10, x, 20, y, 40, 3.0, 1, words);
  }

  public String text() {
    StringBuilder file = new StringBuilder();
    section(file, "HEADER", header);
    section(file, "TABLES", tables);
    section(file, "BLOCKS", blocks);
    section(file, "ENTITIES", entities);
    return file.append(tags(0, "EOF")).toString();
  }

  private static void section(StringBuilder file, String name, StringBuilder body) {
    if (!body.isEmpty() || name.equals("ENTITIES")) {
      file.append(tags(0, "SECTION", 2, name)).append(body).append(tags(0, "ENDSEC"));
    }
  }

  public byte[] bytes() {
    return text().getBytes(StandardCharsets.UTF_8);
  }

  /** Codes and values by turns, one to a line. */
  static String tags(Object... codes) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < codes.length; i += 2) {
      out.append(String.format(Locale.ROOT, "%3s", codes[i])).append('\n');
      Object value = codes[i + 1];
      out.append(value instanceof Double ? String.format(Locale.ROOT, "%.12f", value) : value)
          .append('\n');
    }
    return out.toString();
  }
}
