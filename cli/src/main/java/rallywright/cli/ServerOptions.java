package rallywright.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rallywright.web.Reach;
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
              + " the pages to the network and asks for a password first (--set-password).")
  private String host = "127.0.0.1";

  @Option(
      names = "--public-address",
      paramLabel = "URL",
      description = "Address under which phones reach this server; printed in QR codes.")
  private @Nullable String publicAddress;

  @Option(
      names = "--tls-cert",
      paramLabel = "FILE",
      description = "Certificate (PEM) for an encrypted connection; needs --tls-key.")
  private @Nullable Path certificate;

  @Option(
      names = "--tls-key",
      paramLabel = "FILE",
      description = "Private key (PEM, not encrypted) of the certificate; needs --tls-cert.")
  private @Nullable Path key;

  ServerSettings settings(Path data, ServerSettings.Mode mode) {
    return new ServerSettings(data, mode, new Reach(host, port, publicAddress, tls()));
  }

  private Reach.@Nullable Tls tls() {
    if (certificate == null && key == null) {
      return null;
    }
    if (certificate == null || key == null) {
      throw new WrongInput(
          "An encrypted connection needs both files; only "
              + (key == null ? "--tls-cert" : "--tls-key")
              + " was given. Add "
              + (key == null ? "--tls-key" : "--tls-cert")
              + ".");
    }
    return new Reach.Tls(certificate, key);
  }
}
