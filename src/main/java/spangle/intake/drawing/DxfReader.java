package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spangle.intake.drawing.RawEntity.BadNumber;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.Bytes;
import spangle.intake.source.UnreadableException;
import spangle.part.flat.Point;

/**
 * Reads ASCII DXF from R12 on: header, tables, blocks, entities. The format is the published list
 * of group codes; nothing else in a file is looked at.
 */
final class DxfReader {
  private static final int LOOKED_AT = 256;

  private final Tags tags;
  private final Faults faults;
  private final EntityReader entities;
  private final LayerTable layers = new LayerTable();
  private final Blocks blocks = new Blocks();
  private final List<Drawn> drawn = new ArrayList<>();
  private Optional<DrawingUnit> unit = Optional.empty();
  private Optional<Boolean> metricHint = Optional.empty();
  private int count;
  private boolean ended;
  private boolean anySection;

  private DxfReader(String file, String text, Problems problems) {
    this.tags = new Tags(file, text);
    this.faults = new Faults(file, problems);
    this.entities = new EntityReader(faults);
  }

  /**
   * Reads a file.
   *
   * @throws UnreadableException when it is no ASCII DXF, is damaged or is beyond a limit
   */
  static Drawing read(String file, byte[] bytes, Problems problems) throws UnreadableException {
    if (bytes.length > DrawingLimits.BYTES) {
      throw tooLarge(file, 0, "the drawing is too large", DrawingLimits.BYTES + " bytes");
    }
    boolean marked = bytes.length >= 2 && ((bytes[0] & 0xFE) == 0xFE || (bytes[1] & 0xFE) == 0xFE);
    for (int i = 0; i < Math.min(bytes.length, LOOKED_AT) && !marked; i++) {
      if (bytes[i] == 0) {
        throw UnreadableException.grammar(
            Place.file(file),
            "the file is binary; only the ASCII form of DXF can be read",
            "save the drawing as ASCII DXF");
      }
    }
    return new DxfReader(file, Bytes.decode(bytes).text(), problems).drawing();
  }

  private static UnreadableException tooLarge(String file, int line, String why, String limit) {
    return UnreadableException.tooLarge(Place.at(file, line, 0), why, limit);
  }

  private Drawing drawing() throws UnreadableException {
    for (Tag tag = tags.next(); tag != null && !ended; tag = tags.next()) {
      if (tag.code() == 0 && tag.value().equals("SECTION")) {
        section();
      } else if (tag.code() == 0 && tag.value().equals("EOF")) {
        ended = true;
      }
    }
    if (!anySection) {
      throw UnreadableException.grammar(
          Place.file(faults.file()),
          "there are no sections in the file: it is no DXF",
          "export the drawing as ASCII DXF");
    }
    if (!ended) {
      faults.note(
          ProblemCode.DRAWING_LEFT_OUT,
          0,
          "",
          "the file has no end mark"
              + (tags.cutOff() ? " and stops in the middle of a value" : "")
              + ": it may be cut off, and lines may be missing",
          "export the drawing again and compare the picture");
    }
    Blocks.Placed placed = blocks.place(drawn, layers, faults);
    faults.say();
    return new Drawing(placed.strokes(), placed.words(), unit, metricHint);
  }

  private void section() throws UnreadableException {
    Tag name = tags.next();
    if (name == null) {
      return;
    }
    anySection = true;
    switch (name.value().toUpperCase(Locale.ROOT)) {
      case "HEADER" -> header();
      case "TABLES" -> tables();
      case "BLOCKS" -> blocks();
      case "ENTITIES" -> entities(drawn, false);
      default -> skip();
    }
  }

  /** Passes over a section; stops before whatever ends it. */
  private void skip() throws UnreadableException {
    for (Tag tag = tags.next(); tag != null; tag = tags.next()) {
      if (tag.code() == 0 && ends(tag)) {
        return;
      }
    }
  }

  private boolean ends(Tag tag) {
    if (tag.value().equals("SECTION") || tag.value().equals("EOF")) {
      tags.push(tag);
      return true;
    }
    return tag.value().equals("ENDSEC");
  }

  private void header() throws UnreadableException {
    String variable = "";
    for (Tag tag = tags.next(); tag != null; tag = tags.next()) {
      if (tag.code() == 0 && ends(tag)) {
        return;
      }
      if (tag.code() == 9) {
        variable = tag.value().toUpperCase(Locale.ROOT);
      } else if (tag.code() == 70 && variable.equals("$INSUNITS")) {
        headerUnit(tag);
      } else if (tag.code() == 70 && variable.equals("$MEASUREMENT")) {
        metricHint = Optional.of(!tag.value().equals("0"));
      }
    }
  }

  private void headerUnit(Tag tag) {
    try {
      int code = (int) RawEntity.number(tag);
      unit = DrawingUnit.ofCode(code);
      if (unit.isEmpty() && code != 0) {
        faults.note(
            ProblemCode.DRAWING_NOTE,
            tag.line(),
            tag.value(),
            "the header's unit, code " + code + ", is none a part is drawn in; it is not used",
            "say the unit yourself");
      }
    } catch (BadNumber none) {
      unit = Optional.empty();
    }
  }

  private void tables() throws UnreadableException {
    for (Tag tag = tags.next(); tag != null; tag = tags.next()) {
      if (tag.code() != 0) {
        continue;
      }
      if (ends(tag)) {
        return;
      }
      if (tag.value().equals("LAYER") || tag.value().equals("LTYPE")) {
        table(entity(tag));
      }
    }
  }

  private void table(RawEntity entry) {
    try {
      if (entry.type().equals("LTYPE")) {
        layers.lineKind(entry.text(2, ""), entry.whole(73, 0) > 0);
      } else {
        boolean frozen = (entry.whole(70, 0) & 1) != 0;
        boolean off = entry.number(62, 7) < 0;
        layers.layer(entry.text(2, ""), !frozen && !off, entry.text(6, ""));
      }
    } catch (BadNumber bad) {
      faults.broken(
          entry.type() + " whose numbers cannot be read; it counts as shown", bad.tag().line());
    }
  }

  private void blocks() throws UnreadableException {
    for (Tag tag = tags.next(); tag != null; tag = tags.next()) {
      if (tag.code() != 0) {
        continue;
      }
      if (ends(tag)) {
        return;
      }
      if (tag.value().equals("BLOCK")) {
        RawEntity head = entity(tag);
        List<Drawn> inside = new ArrayList<>();
        Point base = new Point(0, 0);
        try {
          base = head.point(10);
        } catch (BadNumber bad) {
          faults.broken("BLOCK without a base point; 0,0 is taken", head.line());
        }
        entities(inside, true);
        blocks.add(head.text(2, ""), base, inside);
      }
    }
  }

  /** Reads entities until the section or the block ends. */
  private void entities(List<Drawn> into, boolean inBlock) throws UnreadableException {
    for (Tag tag = tags.next(); tag != null; tag = tags.next()) {
      if (tag.code() != 0) {
        continue;
      }
      if (inBlock && (tag.value().equals("ENDBLK") || tag.value().equals("BLOCK"))) {
        if (tag.value().equals("BLOCK")) {
          tags.push(tag);
        }
        return;
      }
      if (tag.value().equals("ENDSEC")
          || tag.value().equals("SECTION")
          || tag.value().equals("EOF")) {
        if (inBlock || !tag.value().equals("ENDSEC")) {
          tags.push(tag);
        }
        return;
      }
      RawEntity entity = entity(tag);
      if (entity.type().equals("POLYLINE")) {
        entities.oldPolyline(entity, vertices()).ifPresent(into::add);
      } else {
        entities.read(entity).ifPresent(into::add);
      }
    }
  }

  private List<RawEntity> vertices() throws UnreadableException {
    List<RawEntity> vertices = new ArrayList<>();
    for (Tag tag = tags.next(); tag != null; tag = tags.next()) {
      if (tag.code() != 0) {
        continue;
      }
      if (tag.value().equals("SEQEND")) {
        return vertices;
      }
      if (!tag.value().equals("VERTEX")) {
        tags.push(tag);
        return vertices;
      }
      vertices.add(entity(tag));
    }
    return vertices;
  }

  private RawEntity entity(Tag head) throws UnreadableException {
    if (++count > DrawingLimits.ENTITIES) {
      throw tooLarge(
          faults.file(),
          head.line(),
          "the drawing has too many entities",
          DrawingLimits.ENTITIES + " entities");
    }
    List<Tag> codes = new ArrayList<>();
    for (Tag tag = tags.next(); tag != null; tag = tags.next()) {
      if (tag.code() == 0) {
        tags.push(tag);
        break;
      }
      codes.add(tag);
      if (codes.size() > DrawingLimits.TAGS) {
        throw tooLarge(
            faults.file(),
            head.line(),
            "an entity has too many values",
            DrawingLimits.TAGS + " values in one entity");
      }
    }
    return new RawEntity(head.value().toUpperCase(Locale.ROOT), codes, head.line());
  }
}
