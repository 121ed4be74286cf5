package rallywright.web;

/** The server cannot start as asked; the message says what was seen and what to try. */
public final class StartRefused extends RuntimeException {

  /**
   * A refused start.
   *
   * @param message what was seen and what to try
   */
  public StartRefused(String message) {
    super(message);
  }

  /**
   * A refused start with its cause.
   *
   * @param message what was seen and what to try
   * @param cause what the system said
   */
  public StartRefused(String message, Throwable cause) {
    super(message, cause);
  }
}
