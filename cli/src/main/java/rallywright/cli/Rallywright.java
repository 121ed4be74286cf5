package rallywright.cli;

import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program: chooses the command and turns failures into one line and an exit code. */
@Command(
    name = "rallywright",
    description = "Plans, runs, scores and reads competitive drill sessions.",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      BackupCommand.class,
      DemoCommand.class,
      ExportCommand.class,
      FlightCommand.class,
      HeatCommand.class,
      ImportCommand.class,
      ServeCommand.class,
      SkillCommand.class,
      OddsCommand.class,
      PlanCommand.class,
      PointCommand.class,
      RotateCommand.class,
      VersionCommand.class,
      GenerateCompletion.class
    })
public final class Rallywright {

  private Rallywright() {}

  /**
   * Runs one command and ends the process with its exit code: 0 done, 2 wrong input, 1 failed.
   *
   * @param arguments the command and its options
   */
  public static void main(String[] arguments) {
    int code = commandLine().execute(arguments);
    if (code != ServeCommand.KEEPS_RUNNING) {
      System.exit(code);
    }
  }

  /** The commands with the way in which they answer errors. */
  static CommandLine commandLine() {
    return new CommandLine(new Rallywright())
        .setParameterExceptionHandler(OneLineErrors::wrongArguments)
        .setExecutionExceptionHandler(OneLineErrors::failed)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUsageHelpAutoWidth(true);
  }
}
