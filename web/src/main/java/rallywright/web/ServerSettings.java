package rallywright.web;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How the server is started.
 *
 * @param data the folder that holds the club's file
 * @param mode the coach's own club or the demo
 * @param reach where it listens and under which address phones reach it
 */
public record ServerSettings(Path data, Mode mode, Reach reach) {

  /** Whose club is served. */
  public enum Mode {
    /** The coach's own club. */
    CLUB,
    /** The invented club with a simulated history. */
    DEMO
  }

  /** The address to listen on. */
  public String host() {
    return reach.host();
  }

  /** The port asked for, 0 for a free one. */
  public int port() {
    return reach.port();
  }

  /** The address under which phones reach the server, or null where unknown. */
  public @Nullable String publicAddress() {
    return reach.publicAddress();
  }
}
