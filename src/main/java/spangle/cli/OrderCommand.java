package spangle.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.coating.powder.Reclaim;
import spangle.desk.OrderDesk;

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
      description =
          "A plan of the week; without it WEEK/plan where no file but the events has changed since,"
              + " else a quick one.")
  private @Nullable Path plan;

  @Option(
      names = "--labour",
      paramLabel = "MONEY",
      description = "An hour of one person: advice to spray each colour to waste or reclaim it.")
  private @Nullable Double labour;

  @Option(
      names = "--reclaim",
      paramLabel = "CAPTURE",
      description = "Share of overspray that is sprayed again, for the advice. Default: 0.9.")
  private double capture = Reclaim.CYCLONE;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    OrderDesk.Order order = order();
    if (!order.refused().isEmpty()) {
      return ProblemOut.refuse(
          "The week cannot be read", order.refused(), json, spec.commandLine());
    }
    OrderWords words =
        new OrderWords(
            order,
            Ask.number("--reclaim", capture, 0, 1),
            labour == null ? 0 : Ask.number("--labour", labour, 0.01, 10_000));
    if (json) {
      words.json().print(spec.commandLine().getOut());
    } else {
      words.print(spec.commandLine().getOut());
    }
    boolean waits =
        order.purchases().stream().anyMatch(p -> p.packs() > 0)
            || order.baths().stream().anyMatch(b -> b.level().uncovered().isPresent());
    return waits ? ExitCode.WAITS : ExitCode.DONE;
  }

  private OrderDesk.Order order() {
    return PlanReading.of(
        plan == null ? week : plan, () -> OrderDesk.order(week, Optional.ofNullable(plan)));
  }
}
