package spangle.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry point: reads the command line, calls the desk, prints. */
@Command(
    name = "spangle",
    mixinStandardHelpOptions = true,
    version = "spangle 0.1.0",
    description = "Plans a metal shop's finishing week: paint racks, oven batches, kettle loads.",
    subcommands = {})
public final class Spangle {
  private Spangle() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Spangle()).execute(args));
  }
}
