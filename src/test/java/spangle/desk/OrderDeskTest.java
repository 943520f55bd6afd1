package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.WeekCopy;
import spangle.cli.Spangle;
import spangle.estimate.Purchase;
import spangle.plan.json.PlanFileException;

/** The order counts with what happened since the plan was made, and with what the plan supposes. */
class OrderDeskTest {
  private static final String YELLOW = "P-BUOY-YELLOW";
  @TempDir Path folder;

  private Path week;

  @BeforeEach
  void aWeek() {
    week = folder.resolve("week");
    WeekCopy.unplanned(Path.of("samples/harbour-week"), week);
  }

  private int run(String... words) {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return Spangle.run(nowhere, nowhere, words);
  }

  private void plan(String... more) {
    String[] words = {"plan", week.toString(), "--steps", "1", "--threads", "1"};
    String[] all = Arrays.copyOf(words, words.length + more.length);
    System.arraycopy(more, 0, all, words.length, more.length);
    assertThat(run(all)).isIn(0, 1);
  }

  private Purchase yellow(Optional<Path> plan) throws IOException, PlanFileException {
    return OrderDesk.order(week, plan).purchases().stream()
        .filter(p -> p.item().id().equals(YELLOW))
        .findFirst()
        .orElseThrow();
  }

  private static double inStore(Purchase purchase) {
    return purchase.item().lots().stream().mapToDouble(l -> l.amount()).sum();
  }

  @Test
  void whatWasDeliveredSinceIsInTheStore() throws IOException, PlanFileException {
    plan();
    Purchase before = yellow(Optional.empty());
    assertThat(before.packs()).isPositive();
    assertThat(before.item().deliveries()).noneMatch(d -> d.came());

    assertThat(
            run(
                "event",
                week.toString(),
                "delivered",
                "--when",
                "mon 09:00",
                "material=" + YELLOW,
                "amount=20"))
        .isZero();

    Purchase after = yellow(Optional.empty());
    int nineOnMonday = 9 * 60;
    assertThat(after.item().deliveries())
        .anySatisfy(
            d -> {
              assertThat(d.amount()).isEqualTo(20);
              assertThat(d.atMin()).isEqualTo(nineOnMonday);
            });
    // It is here by the report itself: counted with the stock, not with what is on order.
    assertThat(after.item().inStore()).isEqualTo(before.item().inStore() + 20);
    assertThat(after.item().onOrder())
        .isEqualTo(
            after.item().deliveries().stream()
                .filter(d -> d.atMin() > nineOnMonday)
                .mapToDouble(d -> d.amount())
                .sum());
    assertThat(said("order", week.toString())).contains("20.0 kg came Mon 09:00");
    assertThat(after.packs()).isZero();
    assertThat(yellow(Optional.of(week.resolve("plan")))).isEqualTo(after);
  }

  @Test
  void whatWasOnOrderBeforeTheMinuteOfAReplanHasCome() throws IOException, PlanFileException {
    plan();
    assertThat(come()).isZero();
    String[] replan = {
      "replan", week.toString(), "--at", "fri 12:00", "--steps", "1", "--threads", "1"
    };
    assertThat(run(replan)).isIn(0, 1);
    assertThat(bought(Optional.empty())).startsWith("for plan B in ");
    assertThat(come()).isPositive();
    assertThat(Files.readString(week.resolve("plan").resolve("index.html")))
        .contains("8.0 kg came Wednesday 10:00");
  }

  private long come() throws IOException, PlanFileException {
    return OrderDesk.order(week, Optional.empty()).purchases().stream()
        .flatMap(p -> p.item().deliveries().stream())
        .filter(d -> d.came())
        .count();
  }

  private String bought(Optional<Path> plan) throws IOException, PlanFileException {
    return OrderDesk.order(week, plan).boughtFor();
  }

  private String said(String... words) {
    StringWriter out = new StringWriter();
    Spangle.run(new PrintWriter(out), new PrintWriter(new StringWriter()), words);
    return out.toString();
  }

  /** Nobody has to guess which plan the powder is bought for. */
  @Test
  void theOrderSaysWhichPlanItIsFor() throws IOException, PlanFileException {
    Path usual = week.resolve("plan");
    String quick = "for a quick plan of the week: ";
    assertThat(bought(Optional.empty())).isEqualTo(quick + "there is no plan");

    plan();
    assertThat(bought(Optional.empty())).isEqualTo("for plan A in " + usual);
    assertThat(bought(Optional.of(usual))).isEqualTo("for plan A in " + usual);
    assertThat(said("order", week.toString())).contains("for plan A in " + usual);
    assertThat(said("order", week.toString(), "--json"))
        .contains("\"bought_for\" : \"for plan A in " + usual + "\"");

    Path jobs = week.resolve("jobs");
    Files.writeString(jobs.resolve("small-parts.csv"), "\n", StandardOpenOption.APPEND);
    assertThat(bought(Optional.empty()))
        .isEqualTo(quick + "the files have changed since plan A (jobs/small-parts.csv)");
    assertThat(bought(Optional.of(usual))).isEqualTo("for plan A in " + usual);

    Files.writeString(usual.resolve("plan.json"), "{");
    assertThat(bought(Optional.empty()))
        .startsWith(quick + "the plan cannot be read (")
        .endsWith(")");
    assertThatThrownBy(() -> bought(Optional.of(usual))).isInstanceOf(PlanFileException.class);
  }

  @Test
  void aPlanWithAnOverlayIsWorkedByAsLongAsTheOverlayIsTheSame()
      throws IOException, PlanFileException {
    Path overlay = folder.resolve("little.yaml");
    String little =
        "title: little yellow\ncoatings: {powders: [{id: P-BUOY-YELLOW, stock: [{lot: BY-044, kg:"
            + " 5}]}]}\n";
    Files.writeString(overlay, little);
    Path usual = week.resolve("plan");
    plan("--with", overlay.toString(), "--out", usual.toString());

    assertThat(bought(Optional.empty())).isEqualTo("for plan A in " + usual);
    assertThat(inStore(yellow(Optional.empty()))).isCloseTo(5, within(1e-9));

    Files.writeString(overlay, little.replace("kg: 5", "kg: 6"));
    assertThat(bought(Optional.empty()))
        .startsWith("for a quick plan of the week: the files have changed since plan A (")
        .contains("little.yaml");
  }

  /** A plan that does not know a job of the week says nothing of what that job needs. */
  @Test
  void aPlanOfOtherFilesIsNotTheOneToBuyFor() throws IOException, PlanFileException {
    plan();
    double before = yellow(Optional.empty()).need().likely();
    Path jobs = week.resolve("jobs").resolve("small-parts.csv");
    String text = Files.readString(jobs);
    Files.writeString(jobs, text.replace("rung end,A,500,", "rung end,A,1500,"));

    assertThat(yellow(Optional.empty()).need().likely()).isGreaterThan(before * 1.3);
    assertThat(yellow(Optional.of(week.resolve("plan"))).need().likely())
        .isCloseTo(before, within(before / 10));
  }

  @Test
  void aPlanThatSupposesAnotherStoreIsBoughtForFromThatStore()
      throws IOException, PlanFileException {
    Path overlay = folder.resolve("little.yaml");
    Files.writeString(
        overlay,
        "title: little yellow\ncoatings: {powders: [{id: P-BUOY-YELLOW, stock: [{lot: BY-044, kg:"
            + " 5}]}]}\n",
        StandardOpenOption.CREATE);
    Path out = folder.resolve("out");
    plan("--with", overlay.toString(), "--out", out.toString());

    assertThat(inStore(yellow(Optional.of(out)))).isCloseTo(5, within(1e-9));

    Files.delete(overlay);
    assertThatThrownBy(() -> yellow(Optional.of(out)))
        .isInstanceOf(PlanFileException.class)
        .hasMessageContaining("little.yaml")
        .hasMessageContaining("not there any more");
  }
}
