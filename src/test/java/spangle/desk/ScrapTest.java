package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.Scrapped;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFileException;
import spangle.plan.json.PlanJson;
import spangle.report.week.KitStatus;

/** 200 brackets of F-1, ten of them in each of 20 sets: scrapped pieces are not there any more. */
class ScrapTest {
  private static final String BRACKETS = "job: F-1, part: LB-20";
  @TempDir Path folder;
  private LivingWeek week;

  @BeforeEach
  void aWeekWithAKit() throws IOException {
    Path copy = folder.resolve("week");
    week = new LivingWeek(Path.of("samples/first-steps"), copy, 200);
    Files.writeString(
        copy.resolve("kits.yaml"),
        "kits:\n  - {id: K-1, name: ladder, sets: 20, due: thu 12:00,"
            + " lines: [{part: LB-20, job: F-1, per_set: 10}]}\n");
  }

  private List<Held> gone() {
    return week.sound().start().week().held().stream()
        .filter(h -> Scrapped.gate(h.gate()))
        .toList();
  }

  private KitStatus kit() {
    return Balance.kits(week.plan()).get(0);
  }

  private static List<String> refused(ReplanDesk.Rest rest) {
    return rest.start().state().refused().stream().map(WeekState.Refusal::why).toList();
  }

  @Test
  void whatIsScrappedBeforeItHangsLeavesThePlanAndTheKitSaysSo() throws PlanFileException {
    week.event("when: mon 06:10, what: scrapped, " + BRACKETS + ", count: 6, of: waiting");
    ReplanDesk.Rest rest = week.heard("mon 06:15");

    assertThat(week.sums().get("F-1/LB-20"))
        .isEqualTo(new LivingWeek.Sum(194, 0, 0, 6, 200, false));
    assertThat(gone())
        .extracting(Held::gate, Held::pieces, Held::words, Held::whoAnswers)
        .containsExactly(tuple("scrapped", 6, "6 of 200 pieces are scrapped", "cutting"));
    assertThat(gone().get(0).opens()).startsWith("cut 6 more").contains("count 206");
    assertThat(rest.changes().lines())
        .filteredOn(l -> l.after().contains("scrapped: 6 of 200 pieces are scrapped"))
        .singleElement()
        .satisfies(l -> assertThat(l.tell()).contains("cutting", "sales (Breakwater Yard)"));
    assertThat(kit().setsPlanned()).isEqualTo(19);
    assertThat(kit().blocker()).isEqualTo("6 x ladder bracket scrapped, cut 6 more");

    // It stays so, and is told once; the file holds it.
    ReplanDesk.Rest again = week.heard("mon 06:20");
    assertThat(week.sums().get("F-1/LB-20").inLots()).isEqualTo(194);
    assertThat(again.changes().lines()).noneMatch(l -> l.after().contains("scrapped"));
    assertThat(PlanJson.read(PlanJson.write(week.plan())).brief().scrapped())
        .containsExactly(new Scrapped("F-1", "LB-20", 1, 370, 6, false));

    // Six more are cut and ordered: the sets are whole again.
    week.jobs(
        "late.csv",
        "job,customer,part,description,qty,material,thickness_mm,shape,length_mm,width_mm,"
            + "height_mm,route,finish,ready,due,welded,hollow,overlaps,moving_parts,hooks,show_face\n"
            + "F-9,Breakwater Yard,LB-20,ladder bracket,6,steel,3,blank 160x120 mm,120,60,60,"
            + "powder,P-LIGHT-GREY,tue 06:00,tue 14:00,no,no,no,no,1,outside\n");
    week.heard("mon 06:30");
    assertThat(week.sums().get("F-9/LB-20").inLots()).isEqualTo(6);
  }

  @Test
  void noMoreThanThereAreAndNothingThatHangs() {
    week.event("when: mon 06:10, what: scrapped, " + BRACKETS + ", count: 201, of: waiting");
    week.event("when: mon 06:11, what: scrapped, " + BRACKETS + ", count: 1, of: rejected");
    assertThat(refused(week.sound("mon 06:15")))
        .containsExactly(
            "201 waiting pieces scrapped, 200 of the plan's loads and lots do not hang yet: what is"
                + " finished is rejected first, what a gate holds or has not come is in no lot",
            "1 rejected pieces scrapped, 0 rejected ones wait: those that hang again or are good"
                + " again are not among them");
    assertThat(gone()).isEmpty();
    week.event("when: tue 14:30, what: as-planned");
    week.event("when: tue 14:31, what: scrapped, " + BRACKETS + ", count: 1, of: waiting");
    assertThat(refused(week.sound("tue 14:32")))
        .anyMatch(why -> why.startsWith("1 waiting pieces scrapped, 0 of the plan's loads"));
  }

  @Test
  void whatIsScrappedOfRejectedPiecesDoesNotGoRoundAgainAndIsNotGood() {
    week.event("when: tue 14:30, what: as-planned");
    week.event("when: tue 14:31, what: rejected, " + BRACKETS + ", count: 6");
    week.event("when: tue 14:40, what: scrapped, " + BRACKETS + ", count: 4, of: rejected");
    week.heard("tue 14:41");

    assertThat(week.again()).extracting(Lot::pieces).containsExactly(2);
    assertThat(gone())
        .extracting(Held::gate, Held::words)
        .containsExactly(
            tuple("rework-scrapped", "4 of 200 pieces are scrapped after they were rejected"));
    // 194 passed and 2 come again: 19 sets, and four pieces short of the twentieth.
    assertThat(kit().setsPlanned()).isEqualTo(19);
    assertThat(kit().blocker()).isEqualTo("4 x ladder bracket scrapped, cut 4 more");
    assertThat(week.audit()).isEmpty();

    week.event("when: tue 14:45, what: scrapped, " + BRACKETS + ", count: 3, of: rejected");
    assertThat(refused(week.sound("tue 14:46")))
        .singleElement()
        .asString()
        .startsWith("3 rejected pieces scrapped, 2 rejected ones wait");
    week.event("when: tue 14:47, what: scrapped, " + BRACKETS + ", count: 2, of: rejected");
    week.sound("tue 14:48");
    assertThat(week.again()).isEmpty();
    assertThat(gone()).extracting(Held::pieces).containsExactly(6);
  }

  @Test
  void aReportThatIsStruckGivesThePiecesBack() {
    week.event("when: mon 06:10, what: scrapped, " + BRACKETS + ", count: 6, of: waiting");
    week.heard("mon 06:15");
    week.event("when: mon 06:20, what: struck, event: 1");
    ReplanDesk.Rest back = week.heard("mon 06:21");
    // They come from none, and the word for what they were is the same as when they went.
    assertThat(back.changes().lines())
        .anyMatch(l -> (l.before() + l.after()).contains("scrapped: 6 of 200 pieces are scrapped"))
        .noneMatch(l -> (l.before() + l.after()).contains("held: 6 of 200"));
    assertThat(week.sums().get("F-1/LB-20").inLots()).isEqualTo(200);
    assertThat(gone()).isEmpty();
    assertThat(kit().setsPlanned()).isEqualTo(20);
  }

  /** The sheet of the load is out with all its pieces: it is drawn anew before it hangs. */
  @Test
  void whatIsScrappedIsNotReportedHungByTheOldSheet() throws IOException {
    Path plan = folder.resolve("plan");
    Files.createDirectories(plan);
    Files.write(plan.resolve("plan.json"), PlanJson.write(week.plan()));
    Map<String, String> scrapped = new LinkedHashMap<>();
    scrapped.put("when", "mon 06:10");
    scrapped.put("what", "scrapped");
    scrapped.put("job", "F-1");
    scrapped.put("part", "LB-20");
    scrapped.put("count", "200");
    scrapped.put("of", "waiting");
    Path copy = folder.resolve("week");
    assertThat(EventBook.add(copy, scrapped, Optional.of(plan)).words())
        .isEqualTo("scrapped F-1 LB-20, 200 pieces of those waiting");
    String load = week.loadsOf("F-1").get(0).load().id();
    Map<String, String> hung = new LinkedHashMap<>();
    hung.put("when", "mon 06:30");
    hung.put("what", "hung");
    hung.put("load", load);
    assertThat(EventBook.add(copy, hung, Optional.of(plan)).refused())
        .singleElement()
        .asString()
        .startsWith("it does not go together with event 1, scrapped F-1 LB-20, 200 pieces")
        .contains("200 waiting pieces scrapped")
        .endsWith("replan first, or strike that one where it is wrong");
    hung.put("what", "released");
    assertThat(EventBook.add(copy, hung, Optional.of(plan)).number()).isEqualTo(2);
  }
}
