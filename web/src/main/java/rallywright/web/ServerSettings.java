package rallywright.web;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How the server is started.
 *
 * @param data the folder that holds the club's file
 * @param host the address to listen on
 * @param port the port, 0 for a free one
 * @param mode the coach's own club or the demo
 * @param publicAddress the address under which phones reach the server, or null where unknown
 */
public record ServerSettings(
    Path data, String host, int port, Mode mode, @Nullable String publicAddress) {

  /** Whose club is served. */
  public enum Mode {
    /** The coach's own club. */
    CLUB,
    /** The invented club with a simulated history. */
    DEMO
  }

  /** The address that only this computer reaches. */
  public static final String THIS_COMPUTER = "127.0.0.1";

  /** Checks the port. */
  public ServerSettings {
    if (port < 0 || port > 65535) {
      throw new IllegalArgumentException(
          "The port (" + port + ") must be from 0 to 65535. Maybe 8817.");
    }
  }

  /** Whether other computers can reach the server. */
  boolean opensToNetwork() {
    return !host.equals(THIS_COMPUTER) && !host.equals("localhost") && !host.equals("::1");
  }
}
