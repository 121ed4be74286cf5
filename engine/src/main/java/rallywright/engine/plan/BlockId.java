package rallywright.engine.plan;

/**
 * Names one block of a session for good.
 *
 * @param value a text made by the program, unique in the session
 */
public record BlockId(String value) {

  /** Refuses an empty text. */
  public BlockId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("The id of a block must not be empty.");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
