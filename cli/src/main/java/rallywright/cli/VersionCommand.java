package rallywright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the version. */
@Command(name = "version", description = "Prints the version.", mixinStandardHelpOptions = true)
final class VersionCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  VersionCommand() {
    spec = CommandSpec.create();
  }

  @Override
  public Integer call() {
    spec.commandLine().getOut().println("rallywright " + ProgramVersion.VERSION);
    return 0;
  }
}
