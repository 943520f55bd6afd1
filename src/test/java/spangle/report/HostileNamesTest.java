package spangle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import spangle.plan.Lot;

/** Names come from files of strangers: none of them is obeyed by a browser, sheet or terminal. */
class HostileNamesTest {
  private static final String SCRIPT = "<script>alert('x')</script>\"&'";
  private static final String FORMULA = "=HYPERLINK(\"x\";\"y\")";
  private static final String PATH = "../../plan";
  private static final String ESCAPE = "\u001b[31mred\u001b[0m\u202eturned\u0000";

  private static final Map<String, byte[]> FILES = ReportFiles.render(week());

  private static WeekReport week() {
    Workshop shop = new Workshop(List.of(SCRIPT, FORMULA));
    List<List<Lot>> loads = new ArrayList<>();
    int n = 0;
    for (String name : List.of(SCRIPT, FORMULA, PATH, ESCAPE, "+1", "@now", "-2")) {
      loads.add(
          List.of(
              shop.lot(
                  "L" + n, name, name, 4, shop.powder(n % 2), 100, 100, 1, 0, Workshop.DAY, name)));
      n++;
    }
    shop.batch("oven-1", 0, 360, 30, loads.subList(0, 4));
    shop.batch("oven-2", 0, 360, 30, loads.subList(4, 7));
    HeldPart held =
        new HeldPart(
            SCRIPT, "p", FORMULA, 1, "gate", ESCAPE, SCRIPT, Danger.PEOPLE, OptionalInt.empty());
    Question question =
        new Question(FORMULA, "code", SCRIPT, FORMULA, Danger.FACT, OptionalInt.empty());
    PurchaseLine purchase =
        new PurchaseLine(
            "p", FORMULA, "kg", 1, 2, 3, 0, 0, 0, 2, 1, 20, Optional.empty(), List.of(SCRIPT), "");
    FitNote fit =
        new FitNote("J", "p", SCRIPT, "tilted", SCRIPT, "<svg onload=\"x\"></svg>", List.of());
    return new WeekReport(
        new Heading(SCRIPT, "A", OptionalInt.empty(), 0, false),
        shop.brief(),
        shop.plan(),
        new Waiting(List.of(held), List.of(question), List.of(), List.of()),
        new Stores(
            List.of(purchase),
            List.of(),
            List.of(),
            List.of(new Swatch("powder-0", SCRIPT, SCRIPT, "12436b"))),
        new SheetFacts(List.of(), List.of(), List.of(), List.of(fit), List.of(), List.of(SCRIPT)),
        Yardstick.EMPTY,
        List.of(),
        Overtime.NONE,
        Map.of());
  }

  private static String text(String file) {
    return new String(FILES.get(file), StandardCharsets.UTF_8);
  }

  @Test
  void theBrowserSeesTextOnly() {
    String html = text("index.html");
    Document page = PageText.read(html);

    assertThat(PageText.all(page, "script")).isEmpty();
    assertThat(PageText.all(page, "*"))
        .allSatisfy(
            e -> {
              for (int i = 0; i < e.getAttributes().getLength(); i++) {
                assertThat(e.getAttributes().item(i).getNodeName()).doesNotStartWith("on");
              }
            });
    assertThat(PageText.all(page, "body").get(0).getTextContent()).contains(SCRIPT);
    assertThat(html).doesNotContain("\u001b", "\u202e", "\u0000");
  }

  @Test
  void aTableRunsNothing() throws IOException {
    for (String line : text("schedule.csv").split("\r\n")) {
      assertThat(line).doesNotContain("\u001b", "\n");
    }
    assertThat(text("schedule.csv")).contains("'" + "=HYPERLINK").doesNotContain(",=", ",+", ",@");
    assertThat(text("purchases.csv"))
        .startsWith("item,")
        .contains("'=HYPERLINK")
        .doesNotContain("\n=");
    try (XSSFWorkbook book =
        new XSSFWorkbook(new ByteArrayInputStream(FILES.get("schedule.xlsx")))) {
      int cells = 0;
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA);
            cells++;
          }
        }
      }
      assertThat(cells).isGreaterThan(100);
    }
  }

  @Test
  void noNameBecomesAFile() {
    assertThat(FILES.keySet())
        .containsExactly(
            "index.html", "purchases.csv", "schedule.csv", "schedule.xlsx", "week.ics");
    Document page = PageText.read(text("index.html"));
    assertThat(PageText.all(page, "a"))
        .isNotEmpty()
        .extracting((Element a) -> a.getAttribute("href"))
        .allSatisfy(h -> assertThat(h).startsWith("#"));
  }

  @Test
  void theTerminalObeysNothing() {
    assertThat(TerminalSummary.of(week())).doesNotContain("\u001b", "\u202e", "\u0000");
  }
}
