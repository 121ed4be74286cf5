package rallywright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rallywright.web.ServerSettings;
import rallywright.web.WebServer;

/** Starts the invented demo club. */
@Command(
    name = "demo",
    description = "Starts an invented club with a simulated history.",
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

  @Option(
      names = "--data",
      paramLabel = "DIR",
      defaultValue = ".rallywright/demo",
      description = "Folder for the demo's file. Default: ${DEFAULT-VALUE}.")
  private Path data = Path.of(".rallywright", "demo");

  @Mixin private ServerOptions options = new ServerOptions();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    ServeCommand.announce(spec, WebServer.start(options.settings(data, ServerSettings.Mode.DEMO)));
    return ServeCommand.KEEPS_RUNNING;
  }
}
