package spangle.report;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.report.Workshop.at;
import static spangle.report.Workshop.zinc;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import spangle.plan.Lot;
import spangle.report.LotNote.Drawings;
import spangle.report.LotNote.ZincNote;

/** Which drawing stands on a dip sheet, and that it says whose it is. */
class DipSheetTest {
  private static final String PLAIN = "goes in straight; hang at an angle that drains";

  private static Drawings drawn(String word) {
    String svg = "<svg viewBox=\"0 0 9 9\"><text>%s</text></svg>";
    return new Drawings(svg.formatted(word + " alone"), svg.formatted(word + " beside"));
  }

  private static LotNote note(Lot lot, boolean special, boolean hollow, Optional<Drawings> drawn) {
    return new LotNote(
        lot.id(),
        5,
        "wire",
        "",
        List.of(),
        "",
        List.of(),
        Optional.of(
            new ZincNote(
                special ? "tilted 20 to 30 degrees" : PLAIN,
                25,
                1,
                special,
                "A",
                true,
                hollow,
                List.of(new LotNote.CoatLimit("", 85, 70)),
                1,
                drawn)));
  }

  private static Element sheet(Workshop shop, LotNote... notes) {
    WeekReport report =
        new WeekReport(
            Heading.plain("week"),
            shop.brief(),
            shop.plan(),
            HarbourLists.waiting(),
            HarbourLists.stores(),
            new SheetFacts(List.of(notes), List.of(), List.of(), List.of(), List.of(), List.of()),
            HarbourLists.yardstick(),
            List.of(),
            Overtime.NONE,
            Map.of());
    String html = new String(ReportFiles.render(report).get("index.html"), StandardCharsets.UTF_8);
    return PageText.section(PageText.read(html), "load-Z01");
  }

  private static Lot lot(Workshop shop, String job, String name) {
    return shop.lot(job + "-A-1", job, name, 1, zinc("hung"), 400, 300, 12, 0, at(2, 12, 0));
  }

  private static List<String> letters(Element sheet) {
    return PageText.ofClass(sheet, "named").stream()
        .map(e -> PageText.in(e, "b").get(0).getTextContent())
        .toList();
  }

  /** The plain part stands first in the load; what the crew must not get wrong is drawn. */
  @Test
  void thePartThatGoesInSpeciallyIsDrawnAndNamed() {
    Workshop shop = new Workshop(List.of("blue"));
    Lot plain = lot(shop, "J1", "plate");
    Lot hollow = lot(shop, "J2", "post");
    Lot special = lot(shop, "J3", "cabinet");
    shop.batch("kettle", 0, at(0, 6, 0), 6, List.of(List.of(plain, hollow, special)));
    LotNote one = note(plain, false, false, Optional.of(drawn("plate")));
    LotNote two = note(hollow, false, true, Optional.of(drawn("post")));
    LotNote three = note(special, true, false, Optional.of(drawn("cabinet")));

    Element sheet = sheet(shop, one, two, three);
    assertThat(sheet.getTextContent()).contains("cabinet beside").doesNotContain("plate beside");
    assertThat(letters(sheet)).containsExactly("C");

    Element without = sheet(shop, one, two, note(special, true, false, Optional.empty()));
    assertThat(without.getTextContent()).contains("post beside");
    assertThat(letters(without)).containsExactly("B");
  }

  /** A load of one part needs no letter; its drawing stands beside the pattern even if straight. */
  @Test
  void aStraightPartIsDrawnBesideItsPattern() {
    Workshop shop = new Workshop(List.of("blue"));
    Lot plain = lot(shop, "J1", "plate");
    shop.batch("kettle", 0, at(0, 6, 0), 6, List.of(List.of(plain)));
    Element sheet = sheet(shop, note(plain, false, false, Optional.of(drawn("plate"))));
    assertThat(sheet.getTextContent()).contains("plate beside").doesNotContain("plate alone");
    assertThat(letters(sheet)).isEmpty();
    assertThat(PageText.ofClass(sheet, "draw-area")).hasSize(2);
  }

  /** Loose in the basket there is no attitude and no drawing. */
  @Test
  void whatIsNotDrawnLeavesNoRoomForADrawing() {
    Workshop shop = new Workshop(List.of("blue"));
    Lot plain = lot(shop, "J1", "plate");
    shop.batch("kettle", 0, at(0, 6, 0), 6, List.of(List.of(plain)));
    Element sheet = sheet(shop, note(plain, false, false, Optional.empty()));
    assertThat(PageText.ofClass(sheet, "draw-area")).hasSize(1);
  }
}
