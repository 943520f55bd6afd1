package spangle.cli;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * Commands are made only when they are asked for: to read the options of all of them takes longer
 * than to answer a question of the phone call.
 */
final class Subcommands {
  private Subcommands() {}

  /**
   * Adds the command that is named, or all of them where none is, so that help lists them and a
   * slip of the finger finds its neighbour. The class of a command that is not named is not loaded.
   *
   * @param line where they are added
   * @param commands classes with their {@link Command}, by name
   * @param args the command line
   * @param at which of its words names the command
   */
  static void add(
      CommandLine line, Map<String, Supplier<Class<?>>> commands, String[] args, int at) {
    Supplier<Class<?>> named = at < args.length ? commands.get(args[at]) : null;
    for (Supplier<Class<?>> maker : named == null ? commands.values() : List.of(named)) {
      Class<?> command = maker.get();
      CommandLine sub = new CommandLine(command);
      if (command == CalcCommand.class) {
        add(sub, CalcCommand.COMMANDS, args, at + 1);
      }
      line.addSubcommand(name(command), sub);
    }
  }

  private static String name(Class<?> command) {
    return command.getAnnotation(Command.class).name();
  }
}
