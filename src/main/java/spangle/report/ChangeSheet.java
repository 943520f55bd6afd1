package spangle.report;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spangle.report.page.Page;

/** The change list as a sheet for the morning meeting. */
public final class ChangeSheet {
  private ChangeSheet() {}

  /**
   * What stands on it.
   *
   * @param shop the shop
   * @param version letter of the new plan
   * @param before letter of the plan so far
   * @param at from when it is valid, in words
   * @param loadsMoved loads moved
   * @param loadsDropped loads whose pieces, all or some, are on no load any more
   * @param minutesMoved minutes moved
   * @param coloursReordered colours in another order
   * @param held what must be looked at first
   * @param rows one for each change
   */
  public record Content(
      String shop,
      String version,
      String before,
      String at,
      int loadsMoved,
      int loadsDropped,
      long minutesMoved,
      int coloursReordered,
      List<String> held,
      List<Row> rows) {
    /** Copies the lists. */
    public Content {
      held = List.copyOf(held);
      rows = List.copyOf(rows);
    }
  }

  /**
   * One change, in words.
   *
   * @param kind moved, split, new, dropped, later
   * @param load number on the sheet
   * @param what pieces
   * @param was old place and time
   * @param is new place and time, or why there is none
   * @param reason why
   * @param tell who must be told
   * @param sheet letter of the valid sheet; empty where the old one stays
   */
  public record Row(
      String kind,
      String load,
      String what,
      String was,
      String is,
      String reason,
      String tell,
      String sheet) {}

  /** The sheet as a page that needs nothing else, UTF-8. */
  public static byte[] of(Content content) {
    Map<String, Object> model = new HashMap<>();
    model.put("c", content);
    return Page.of("changes.ftlh", model).getBytes(StandardCharsets.UTF_8);
  }
}
