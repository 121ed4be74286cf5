package rallywright.engine.plan;

/**
 * Names one game of a session for good.
 *
 * @param value a text made by the program, unique in the session
 */
public record GameId(String value) {

  /** Refuses an empty text. */
  public GameId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("The id of a game must not be empty.");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
