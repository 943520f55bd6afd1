package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.OrderDesk;
import spangle.estimate.Purchase;
import spangle.plan.json.PlanFileException;

/** Powder, paint and zinc to buy. */
@Command(
    name = "order",
    mixinStandardHelpOptions = true,
    description = "What a week needs, what is there, what is short, and by when to order it.",
    footer = {"", "Example:", "  spangle order samples/harbour-week"})
final class OrderCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "WEEK", description = "The week folder.")
  @SuppressWarnings("NullAway.Init")
  private Path week;

  @Option(
      names = "--plan",
      paramLabel = "PLAN",
      description = "A plan of the week; without it a quick one is made.")
  private @Nullable Path plan;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    OrderDesk.Order order = order();
    if (!order.refused().isEmpty()) {
      throw ExitException.refused(
          "The week cannot be read: "
              + order.refused().get(0).place().words()
              + ": "
              + order.refused().get(0).why()
              + "; run check for all problems");
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      List<JsonOut> items = order.purchases().stream().map(OrderCommand::item).toList();
      new JsonOut().put("items", items).print(out);
    } else {
      order.purchases().forEach(p -> words(p, out));
      out.flush();
    }
    boolean buys = order.purchases().stream().anyMatch(p -> p.packs() > 0);
    return buys ? ExitCode.WAITS : ExitCode.DONE;
  }

  private OrderDesk.Order order() {
    try {
      return OrderDesk.order(week, Optional.ofNullable(plan));
    } catch (PlanFileException notAPlan) {
      throw ExitException.refused(plan + ": " + notAPlan.getMessage());
    } catch (IOException unreadable) {
      throw ExitException.refused("cannot be read: " + unreadable.getMessage());
    }
  }

  private static void words(Purchase p, PrintWriter out) {
    String buy =
        p.packs() == 0
            ? "enough"
            : String.format(
                Locale.ROOT,
                "short %.1f: order %d x %.0f %s by %s%s",
                p.shortBy(),
                p.packs(),
                p.item().pack(),
                p.item().unit(),
                p.latestOrder().map(LocalDate::toString).orElse("now"),
                p.tooLate() ? ", which is past: work waits" : "");
    out.printf(
        Locale.ROOT,
        "%-32s need %.1f (%.1f to %.1f) %s, stock %.1f, on order %.1f: %s%n",
        p.item().name(),
        p.need().likely(),
        p.need().low(),
        p.need().high(),
        p.item().unit(),
        p.item().inStore(),
        p.item().onOrder(),
        buy);
  }

  private static JsonOut item(Purchase p) {
    return new JsonOut()
        .put("item", p.item().id())
        .put("name", p.item().name())
        .put("unit", p.item().unit())
        .put("need", p.need())
        .put("stock", p.item().inStore())
        .put("on_order", p.item().onOrder())
        .put("short", p.shortBy())
        .put("packs", p.packs())
        .put("pack", p.item().pack())
        .put("latest_order", p.latestOrder().map(LocalDate::toString).orElse(null))
        .put("too_late", p.tooLate())
        .put("used_by", new ArrayList<>(p.jobs()))
        .put("balance", p.balance());
  }
}
