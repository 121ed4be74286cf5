package rallywright.web.sessions;

import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.stereotype.Component;
import rallywright.web.ServerSettings;

/** Under which address phones reach this server, or why they cannot. */
@Component
final class PhoneAddress {

  private final ServerSettings settings;
  private final ServletWebServerApplicationContext context;

  PhoneAddress(ServerSettings settings, ServletWebServerApplicationContext context) {
    this.settings = settings;
    this.context = context;
  }

  /** The address without a path. */
  String base() {
    String open = settings.publicAddress();
    var server = context.getWebServer();
    int port = server == null ? settings.port() : server.getPort();
    return open == null ? settings.reach().localAddress(port) : open;
  }

  /** Why other phones cannot reach it; empty where they can. */
  String reason() {
    if (settings.publicAddress() != null) {
      return "";
    }
    if (!settings.reach().opensToNetwork()) {
      return "Rallywright was started for this computer only, so no phone can reach it. Start it"
          + " with --host to open it to phones, or type the scores in from paper.";
    }
    if (settings.reach().listensEverywhere()) {
      return "Rallywright does not know under which address phones reach this computer. Start it"
          + " with --public-address, for example --public-address http://192.168.1.20:8817.";
    }
    return "";
  }
}
