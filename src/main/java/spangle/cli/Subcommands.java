package spangle.cli;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Commands are made only when they are asked for: to read the options of all of them takes longer
 * than to answer a question of the phone call.
 */
final class Subcommands {
  private Subcommands() {}

  /**
   * The program itself, as far as it is wanted: where a command is named nobody asks for the
   * program's own options and help, and to read those by reflection costs a quick answer.
   */
  static CommandLine root(List<String> commands, String[] args, Supplier<Object> program) {
    return args.length > 0 && commands.contains(args[0])
        ? new CommandLine(CommandSpec.create().name(Spangle.NAME))
        : new CommandLine(program.get());
  }

  /**
   * Adds the command that is named, or all of them where none is, so that help lists them and a
   * slip of the finger finds its neighbour. The class of a command that is not named is not loaded.
   *
   * @param line where they are added
   * @param commands names of all of them
   * @param classes the class with its {@link Command}, by name
   * @param args the command line
   * @param at which of its words names the command
   */
  static void add(
      CommandLine line,
      List<String> commands,
      Function<String, Class<?>> classes,
      String[] args,
      int at) {
    boolean named = at < args.length && commands.contains(args[at]);
    for (String name : named ? List.of(args[at]) : commands) {
      Class<?> command = classes.apply(name);
      CommandLine sub = new CommandLine(command);
      if (command == CalcCommand.class) {
        add(sub, CalcCommand.COMMANDS, CalcCommand::command, args, at + 1);
      }
      line.addSubcommand(name, sub);
    }
  }
}
