package spangle.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** One number with its working, for the phone call. */
@Command(
    name = "calc",
    mixinStandardHelpOptions = true,
    description = "One number with its working and its source, for the phone call.")
final class CalcCommand implements Callable<Integer> {
  /** What can be calculated, by name. */
  static final List<String> COMMANDS = List.of("area", "cure", "liquid", "powder", "vents", "zinc");

  static Class<?> command(String name) {
    return switch (name) {
      case "area" -> AreaCommand.class;
      case "cure" -> CureCommand.class;
      case "liquid" -> LiquidCommand.class;
      case "powder" -> PowderCommand.class;
      case "vents" -> VentsCommand.class;
      case "zinc" -> ZincCommand.class;
      default -> throw new IllegalArgumentException(name);
    };
  }

  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "Say what to calculate");
  }
}
