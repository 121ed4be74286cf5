package rallywright.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rallywright.web.ServerSettings;

/** The options that starting the server takes, for the club and for the demo alike. */
final class ServerOptions {

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8817",
      description = "Port to listen on; 0 takes a free one. Default: ${DEFAULT-VALUE}.")
  private int port;

  @Option(
      names = "--host",
      paramLabel = "ADDRESS",
      defaultValue = "127.0.0.1",
      description =
          "Address to listen on. Default: ${DEFAULT-VALUE}, this computer only. Any other opens"
              + " the pages to the network and asks for a password first.")
  private String host = "127.0.0.1";

  ServerSettings settings(Path data, ServerSettings.Mode mode) {
    return new ServerSettings(data, host, port, mode, publicAddress);
  }

  @Option(
      names = "--public-address",
      paramLabel = "URL",
      description = "Address under which phones reach this server; printed in QR codes.")
  private @Nullable String publicAddress;
}
