package rallywright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rallywright.web.RunningServer;
import rallywright.web.ServerSettings;
import rallywright.web.WebServer;

/** Starts the pages for the coach's own club. */
@Command(
    name = "serve",
    description = "Starts Rallywright for your club.",
    mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {

  /** The answer of a command whose server goes on after the command has returned. */
  static final int KEEPS_RUNNING = -1;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      defaultValue = "${sys:user.home}/rallywright",
      description = "Folder that holds the club's one file. Default: ${DEFAULT-VALUE}.")
  private Path data = Path.of("rallywright");

  @Mixin private ServerOptions options = new ServerOptions();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--set-password",
      description =
          "Asks for the coach's password (or reads one line of standard input), stores its hash"
              + " and ends without starting.")
  private boolean setPassword;

  @Override
  public Integer call() {
    ServerSettings settings = options.settings(data, ServerSettings.Mode.CLUB);
    if (setPassword) {
      WebServer.setPassword(settings, PasswordPrompt.ask());
      spec.commandLine().getOut().println("The password is set. Start without --set-password now.");
      return 0;
    }
    announce(spec, WebServer.start(settings));
    return KEEPS_RUNNING;
  }

  static void announce(CommandSpec spec, RunningServer server) {
    var out = spec.commandLine().getOut();
    out.println("Rallywright is ready. Open this address (the key works once):");
    out.println("  " + server.signInAddress());
    out.println("Stop with Ctrl-C; everything is already saved.");
    out.flush();
  }
}
