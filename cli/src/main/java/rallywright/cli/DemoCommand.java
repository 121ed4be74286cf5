package rallywright.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;
import rallywright.web.ServerSettings;
import rallywright.web.WebServer;
import rallywright.web.demo.DemoClub;

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
    ServerSettings settings = options.settings(data, ServerSettings.Mode.DEMO);
    try (ClubStore store = ClubStore.open(StoreAddress.file(data))) {
      if (DemoClub.load(store, Clock.system(ZoneId.systemDefault())) == DemoClub.Loading.LOADED) {
        spec.commandLine()
            .getOut()
            .println("Made up a club of invented people, with ten weeks of simulated sessions.");
        spec.commandLine().getOut().flush();
      }
    }
    ServeCommand.announce(spec, WebServer.start(settings));
    return ServeCommand.KEEPS_RUNNING;
  }
}
