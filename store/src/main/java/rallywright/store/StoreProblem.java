package rallywright.store;

/** The club's data could not be opened, read or written; the message says why and what to try. */
public final class StoreProblem extends RuntimeException {

  /**
   * A problem with the store.
   *
   * @param message what was seen and what to try
   */
  public StoreProblem(String message) {
    super(message);
  }

  /**
   * A problem with the store, with its cause.
   *
   * @param message what was seen and what to try
   * @param cause what the database said
   */
  public StoreProblem(String message, Throwable cause) {
    super(message, cause);
  }
}
