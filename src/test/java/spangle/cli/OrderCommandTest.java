package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OrderCommandTest {
  private static final String WEEK = "samples/first-steps";

  private static Calc order(String... more) {
    String[] args = new String[more.length + 2];
    args[0] = "order";
    args[1] = WEEK;
    System.arraycopy(more, 0, args, 2, more.length);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Spangle.run(new PrintWriter(out), new PrintWriter(err), args);
    return new Calc(code, out.toString(), err.toString());
  }

  /** The plan is of first-steps, the week asked about is another. */
  @Test
  void aPlanOfAnotherWeekIsRefused(@TempDir Path temp) {
    Path plan = temp.resolve("plan");
    PrintWriter nobody = new PrintWriter(new StringWriter());
    int planned = Spangle.run(nobody, nobody, "plan", WEEK, "--steps", "20", "--out", "" + plan);
    assertThat(planned).isNotEqualTo(ExitCode.REFUSED);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Spangle.run(
            new PrintWriter(out),
            new PrintWriter(err),
            "order",
            "samples/dirty-week",
            "--json",
            "--plan",
            plan.toString());
    assertThat(code).isEqualTo(ExitCode.REFUSED);
    assertThat(out.toString()).contains("\"exit_code\" : 3").doesNotContain("\"items\"");
    assertThat(err.toString()).contains("F-", "give a plan of this week");
  }

  @Test
  void everyItemAddsUp() throws IOException {
    Calc said = order("--json");
    JsonNode order = new ObjectMapper().readTree(said.out());

    assertThat(order.at("/items").size()).isPositive();
    boolean buys = false;
    for (JsonNode item : order.at("/items")) {
      double likely = item.at("/need/likely").asDouble();
      double there = item.at("/stock").asDouble() + item.at("/on_order").asDouble();
      double missing = Math.max(0, likely - there);
      assertThat(item.at("/short").asDouble()).isCloseTo(missing, within(0.002));
      assertThat(item.at("/packs").asInt() * item.at("/pack").asDouble())
          .isGreaterThanOrEqualTo(item.at("/short").asDouble());
      assertThat(item.at("/need/low").asDouble()).isLessThanOrEqualTo(likely);
      assertThat(item.at("/need/high").asDouble()).isGreaterThanOrEqualTo(likely);
      double shared = 0;
      for (JsonNode share : item.at("/shares")) {
        shared += share.at("/need").asDouble();
      }
      assertThat(shared).isCloseTo(likely, within(1e-6 * likely));
      int days = item.at("/balance").size();
      assertThat(item.at("/balance").get(days - 1).asDouble())
          .isCloseTo(there - likely, within(1e-6 * (there + likely)));
      buys |= item.at("/packs").asInt() > 0;
    }
    assertThat(said.code()).isEqualTo(buys ? ExitCode.WAITS : ExitCode.DONE);
    for (JsonNode bath : order.at("/baths")) {
      assertThat(bath.at("/level_drop_mm").asDouble()).isPositive();
      assertThat(bath.at("/top_ups").size()).isPositive();
    }
  }

  @Test
  void theSheetNamesLotsDaysAndAdvice() {
    String said = order("--labour", "38").out();

    assertThat(said)
        .contains("need", "stock", "on order", "lots", "left at the end of the day: Mon");
    assertThat(said).contains("advice", "price_kg");
  }

  @Test
  void wrongUseAndMissingWeeks(@TempDir Path nowhere) {
    assertThat(order("--labour", "-1").code()).isEqualTo(ExitCode.USAGE);
    assertThat(order("--labour", "38", "--reclaim", "9").code()).isEqualTo(ExitCode.USAGE);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Spangle.run(new PrintWriter(out), new PrintWriter(err), "order", nowhere.toString());
    assertThat(code).isEqualTo(ExitCode.REFUSED);
    assertThat(out.toString()).isEmpty();
  }
}
