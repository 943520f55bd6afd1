package spangle.cli;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
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
  static final Map<String, Supplier<Class<?>>> COMMANDS = commands();

  private static Map<String, Supplier<Class<?>>> commands() {
    Map<String, Supplier<Class<?>>> commands = new LinkedHashMap<>();
    commands.put("area", () -> AreaCommand.class);
    commands.put("cure", () -> CureCommand.class);
    commands.put("liquid", () -> LiquidCommand.class);
    commands.put("powder", () -> PowderCommand.class);
    commands.put("vents", () -> VentsCommand.class);
    commands.put("zinc", () -> ZincCommand.class);
    return Collections.unmodifiableMap(commands);
  }

  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "Say what to calculate");
  }
}
