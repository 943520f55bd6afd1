package spangle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import spangle.plan.LeftOut;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** The page of a week: it needs nothing else, and everything that must be on it is on it. */
class WeekPageTest {
  private static final WeekReport HARBOUR = HarbourWeek.report();
  private static final String HTML = html(HARBOUR);
  private static final Document PAGE = PageText.read(HTML);
  private static final WeekReport BUSY = BusyWeek.report();
  private static final Document BUSY_PAGE = PageText.read(html(BUSY));

  static String html(WeekReport report) {
    return new String(ReportFiles.render(report).get("index.html"), StandardCharsets.UTF_8);
  }

  private static List<PlannedLoad> loads(WeekReport report) {
    return report.plan().batches().stream().flatMap(b -> b.loads().stream()).toList();
  }

  @Test
  void itNeedsNothingFromOutside() {
    assertThat(HTML).doesNotContain("://", "url(", "@import", "<script", "<link", "src=");
    assertThat(PageText.all(PAGE, "a"))
        .isNotEmpty()
        .allSatisfy(a -> assertThat(a.getAttribute("href")).startsWith("#"));
  }

  @Test
  void everyLinkLeadsToAPlaceOnItAndNoPlaceIsThereTwice() {
    for (Document page : List.of(PAGE, BUSY_PAGE)) {
      Set<String> places = new HashSet<>();
      for (Element e : PageText.all(page, "*")) {
        if (e.hasAttribute("id")) {
          assertThat(places.add(e.getAttribute("id"))).as(e.getAttribute("id")).isTrue();
        }
      }
      for (Element a : PageText.all(page, "a")) {
        assertThat(places).contains(a.getAttribute("href").substring(1));
      }
    }
  }

  @Test
  void theSameWeekGivesTheSameBytes() {
    Map<String, byte[]> once = ReportFiles.render(HARBOUR);
    Map<String, byte[]> again = ReportFiles.render(HarbourWeek.report());

    assertThat(again.keySet()).isEqualTo(once.keySet());
    assertThat(again)
        .allSatisfy((name, bytes) -> assertThat(bytes).as(name).isEqualTo(once.get(name)));
  }

  @Test
  void everyLoadHasOneSheetWithItsNumberInWordsAndAsACode() {
    for (PlannedLoad load : loads(HARBOUR)) {
      Element sheet = PageText.section(PAGE, "load-" + load.id());
      assertThat(PageText.ofClass(sheet, "number"))
          .singleElement()
          .satisfies(n -> assertThat(n.getTextContent()).isEqualTo(load.id()));
      Element code = PageText.ofClass(sheet, "code").get(0);
      assertThat(code.getTextContent()).endsWith(load.id());
      assertThat(PageText.ofClass(code, "qr")).hasSize(1);
      assertThat(PageText.ofClass(sheet, "box")).isNotEmpty();
    }
    long sheets =
        PageText.all(PAGE, "section").stream()
            .filter(s -> s.getAttribute("id").startsWith("load-"))
            .count();
    assertThat(sheets).isEqualTo(loads(HARBOUR).size());
  }

  /** Eighteen parts on one rack go over one sheet; every other load of the busy week has one. */
  @Test
  void onlyARackWithVeryManyPartsNeedsASecondSheet() {
    List<String> second =
        PageText.all(BUSY_PAGE, "section").stream()
            .map(s -> s.getAttribute("id"))
            .filter(id -> id.matches("load-.*-2"))
            .toList();
    List<String> full =
        loads(BUSY).stream()
            .filter(l -> l.lotIds().size() > 14)
            .map(l -> "load-" + l.id() + "-2")
            .toList();

    assertThat(second).containsExactlyInAnyOrderElementsOf(full).isNotEmpty();
  }

  @Test
  void theHangPatternIsDrawnPieceByPiece() {
    for (PlannedLoad load : loads(HARBOUR)) {
      int hung = load.pattern().map(p -> p.pieces().size()).orElse(0);
      Element sheet = PageText.section(PAGE, "load-" + load.id());
      if (hung > 0) {
        Element drawing = PageText.ofClass(sheet, "hang").get(0);
        assertThat(drawing.getAttribute("aria-label")).contains(hung + " piece");
        assertThat(PageText.in(drawing, "rect")).hasSizeGreaterThan(hung);
      } else {
        assertThat(PageText.ofClass(sheet, "hang")).as(load.id()).isEmpty();
      }
    }
  }

  /** A bar for each visit and each batch, a chart for each day a line works. */
  @Test
  void everyLineIsDrawnAsAChart() {
    List<Element> charts =
        PageText.all(PAGE, "section").stream()
            .filter(s -> s.getAttribute("class").contains("wall"))
            .toList();
    assertThat(charts)
        .extracting(c -> PageText.in(c, "h1").get(0).getTextContent())
        .anySatisfy(t -> assertThat(t).startsWith("Paint line"))
        .anySatisfy(t -> assertThat(t).startsWith("Kettle line"));
    int bars = charts.stream().mapToInt(c -> PageText.ofClass(c, "edge").size()).sum();
    int visits = loads(HARBOUR).stream().mapToInt(l -> l.visits().size()).sum();
    assertThat(bars).isEqualTo(visits + HARBOUR.plan().batches().size());
  }

  @Test
  void everythingThatWaitsIsListedWithWhoMustAnswer() {
    for (WeekReport report : List.of(HARBOUR, BUSY)) {
      Document page = report == HARBOUR ? PAGE : BUSY_PAGE;
      List<String> rows =
          PageText.in(PageText.section(page, "waiting"), "tr").stream()
              .skip(1)
              .map(Element::getTextContent)
              .toList();
      Set<String> jobs = new TreeSet<>();
      for (HeldPart held : report.waiting().held()) {
        jobs.add(held.jobId());
        assertThat(rows)
            .as(held.jobId())
            .anySatisfy(r -> assertThat(r).contains(held.jobId(), held.gate(), held.whoAnswers()));
      }
      for (Question q : report.waiting().questions()) {
        assertThat(rows)
            .as(q.subject())
            .anySatisfy(r -> assertThat(r).contains(q.subject(), q.code(), q.whoAnswers()));
      }
      for (LeftOut left : report.plan().leftOut()) {
        String job = left.lotId().substring(0, left.lotId().indexOf('-'));
        assertThat(rows)
            .as(left.lotId())
            .anySatisfy(r -> assertThat(r).contains(job, left.reason(), "supervisor"));
      }
      assertThat(jobs).isNotEmpty();
    }
  }

  @Test
  void theDipSheetOfHollowWorkIsVoidWithoutTwoSignaturesAndBorderedWhereItIsTilted() {
    Element tilted = PageText.section(PAGE, "load-Z02");
    assertThat(tilted.getAttribute("class")).contains("special");
    assertThat(PageText.ofClass(tilted, "sig")).hasSize(2);
    assertThat(tilted.getTextContent()).contains("VOID WITHOUT TWO SIGNATURES", "NO");

    Element straight = PageText.section(PAGE, "load-Z01");
    assertThat(straight.getAttribute("class")).doesNotContain("special");
    assertThat(PageText.ofClass(straight, "sig")).isEmpty();
    assertThat(straight.getTextContent()).contains("YES");
  }

  @Test
  void whatIsNotKnownOfADipIsTakenAsTheDangerousCase() {
    Element unknown = PageText.section(BUSY_PAGE, "load-Z01");
    assertThat(unknown.getTextContent()).contains("VOID WITHOUT TWO SIGNATURES", "not known: ask");
    assertThat(PageText.ofClass(unknown, "quench").get(0).getTextContent()).contains("NO");
  }

  @Test
  void gatesTravelWithTheSheet() {
    assertThat(PageText.section(PAGE, "load-Z02").getTextContent())
        .contains("hollows: opened by hanger 1, kettle lead, 2026-11-06 14:20: light seen through");
    assertThat(PageText.section(PAGE, "load-P01").getTextContent()).contains("clear: heat");
  }

  @Test
  void theOvenSheetNeverAsksForAnOutBeforeItsEnd() {
    for (PlannedBatch batch : HARBOUR.plan().batches()) {
      HARBOUR.facts().batches().stream()
          .filter(n -> n.batchId().equals(batch.id()))
          .forEach(
              n ->
                  assertThat(batch.startMin() + n.longestMin())
                      .isGreaterThanOrEqualTo(batch.endMin()));
    }
    assertThat(PageText.section(PAGE, "load-P01").getTextContent()).contains("never after");
  }

  /** Read from an arm's length: 14 pt for what is worked from, 48 pt for the number of the load. */
  @Test
  void theTypeIsLargeEnough() {
    assertThat(points("body\\{font:([0-9.]+)pt")).isGreaterThanOrEqualTo(14);
    assertThat(points("\\.parts\\{font-size:([0-9.]+)pt")).isGreaterThanOrEqualTo(14);
    assertThat(points("\\.loadtag \\.number\\{font-size:([0-9.]+)pt")).isGreaterThanOrEqualTo(48);
    assertThat(points("\\.loadtag \\.number\\.long\\{font-size:([0-9.]+)pt"))
        .isGreaterThanOrEqualTo(48);
    assertThat(HTML).contains("@page{size:A4 portrait");
  }

  private static double points(String rule) {
    Matcher found = Pattern.compile(rule).matcher(HTML);
    assertThat(found.find()).as(rule).isTrue();
    return Double.parseDouble(found.group(1));
  }

  /** Nothing on paper is told by colour alone. */
  @Test
  void coloursAreAlsoWordsAndHatches() {
    for (PlannedLoad load : loads(HARBOUR)) {
      if (load.id().startsWith("P")) {
        Element sheet = PageText.section(PAGE, "load-" + load.id());
        assertThat(PageText.ofClass(sheet, "colour").get(0).getTextContent()).isNotBlank();
        assertThat(PageText.ofClass(sheet, "patch")).isNotEmpty();
      }
    }
  }
}
