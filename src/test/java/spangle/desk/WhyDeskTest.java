package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.cli.Spangle;
import spangle.plan.Brief;
import spangle.plan.Kit;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.Supply;
import spangle.plan.json.Gate;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanJson;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * What holds a lot of the yard shop, found by taking one thing away. A grey lot alone is hung at
 * 360, in the booth at 370, in the oven at 375 and done at 400; at 200 C, 10 minutes sooner.
 */
class WhyDeskTest {
  private static PlanFile planned(Brief brief, Gate... gates) {
    return file(
        brief,
        new Solver().solve(brief, new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY),
        gates);
  }

  private static PlanFile file(Brief brief, Plan plan, Gate... gates) {
    return new PlanFile(
        PlanFile.FORMAT,
        "A",
        "..",
        List.of(),
        Optional.empty(),
        List.of(gates),
        brief,
        plan,
        List.of(),
        Optional.empty());
  }

  private static Why why(PlanFile file, String job) {
    List<Why> whys = WhyDesk.why(file, job);
    assertThat(whys).hasSize(1);
    return whys.get(0);
  }

  private static List<String> held(Why why) {
    return why.holds().stream().map(Why.Hold::what).toList();
  }

  @Test
  void aLotThatComesLateIsHeldByItsReadyTime() {
    Why why = why(planned(yard().lots(powderLot("a").ready(1900)).build()), "job-a");

    assertThat(held(why)).contains("ready").doesNotContain("material", "station", "carrier");
    Why.Hold ready =
        why.holds().stream().filter(h -> h.what().equals("ready")).findFirst().orElseThrow();
    assertThat(ready.words())
        .contains("ready only Tuesday 07:40", "with the parts here when the week begins");
    assertThat(ready.endMin().orElseThrow()).isLessThanOrEqualTo(400);
  }

  @Test
  void aLotWhosePowderComesLaterIsHeldByItAndTheStockIsSaid() {
    Brief brief =
        yard()
            .lots(powderLot("a"))
            .supply(
                "powder-grey",
                new Supply.Arrival(0, 0.06, "G-0"),
                new Supply.Arrival(0, 0.04, "G-1"),
                new Supply.Arrival(1900, 8, "G-2"))
            .build();

    Why why = why(planned(brief), "job-a");

    // the booth at 1900, the oven to 1925, done 1930
    assertThat(why.endMin()).hasValue(1930);
    Why.Hold material =
        why.holds().stream().filter(h -> h.what().equals("material")).findFirst().orElseThrow();
    assertThat(material.words())
        .contains("0.1 kg in the store", "8.0 kg come Tuesday 07:40", "done Monday 06:");
    assertThat(held(why)).doesNotContain("ready", "carrier", "station");
  }

  @Test
  void whereOneRackHasToDoForTwoLoadsItHoldsTheSecond() {
    Brief brief =
        yard()
            .lots(powderLot("a").alone(), powderLot("b").alone().due(380))
            .carrier("rack", c -> c.owning(1))
            .build();
    PlanFile file = planned(brief);

    Why first = why(file, "job-b");
    Why second = why(file, "job-a");

    assertThat(first.endMin().orElseThrow()).isLessThan(second.endMin().orElseThrow());
    assertThat(held(second)).contains("carrier");
    assertThat(held(first)).doesNotContain("carrier");
  }

  @Test
  void ofSeveralLotsLeftOutAllPiecesAreCountedAndTheLastIsSpokenOf() {
    Brief brief = yard().lots(powderLot("a").of("j", "p"), powderLot("b").of("j", "p")).build();
    Plan none =
        plan(
            List.of(),
            List.of(
                new LeftOut("a", "no-time", "no room", OptionalInt.of(7 * 1440 + 600)),
                new LeftOut("b", "no-time", "no room", OptionalInt.of(7 * 1440 + 540))));

    Why why = why(file(brief, none), "j");

    int pieces = brief.lots().stream().mapToInt(Lot::pieces).sum();
    assertThat(why.place())
        .startsWith(pieces + " pieces not in this week: no room")
        .contains("10:00")
        .doesNotContain("09:00");
  }

  @Test
  void behindAShutGateNothingElseIsSaid() {
    Gate gate = Gate.shut("job-g", "part-g", "hollow-closed", 4, "no holes on record", "design");

    Why why = why(planned(yard().lots(powderLot("a")).build(), gate), "job-g");

    assertThat(held(why)).containsExactly("gate");
    assertThat(why.late()).isTrue();
    assertThat(why.holds().get(0).words())
        .isEqualTo("gate hollow-closed: no holes on record (design must answer)");
  }

  @Test
  void theLegBeforeHoldsADuplexLotAndTheKitThatWaitsIsNamed() {
    Brief brief =
        yard()
            .lots(
                zincLot("n.1").job("n").earlierLeg(),
                powderLot("n.2").job("n").after("n.1", 60, 900).kits("K"))
            .kit(new Kit("K", "gate set", 4, 700, 1, List.of()))
            .build();

    Why why = why(planned(brief), "n");

    assertThat(held(why)).contains("leg-before");
    assertThat(why.notes()).contains("the kit gate set waits for it; due Monday 11:40");
  }

  @Test
  void theCommandSaysItInWordsAndAsOneObject(@TempDir Path folder) throws Exception {
    PlanFile file = planned(yard().lots(powderLot("a").ready(1900).due(500)).build());
    Path plan = folder.resolve("plan.json");
    Files.write(plan, PlanJson.write(file));
    StringWriter words = new StringWriter();
    StringWriter data = new StringWriter();
    StringWriter err = new StringWriter();

    assertThat(run(words, err, "why", plan.toString(), "job-a")).isEqualTo(1);
    assertThat(run(data, err, "why", plan.toString(), "job-a", "--json")).isEqualTo(1);
    assertThat(run(new StringWriter(), err, "why", plan.toString(), "job-x")).isEqualTo(2);

    assertThat(words.toString()).contains("job-a lot a: load P01", "late by 1 day", "held by");
    assertThat(data.toString()).contains("\"what\" : \"ready\"", "\"late\" : true");
    assertThat(err.toString()).contains("it has job-a");
  }

  private static int run(StringWriter out, StringWriter err, String... args) {
    return Spangle.run(new PrintWriter(out), new PrintWriter(err), args);
  }
}
