package rallywright.engine.club;

/**
 * Names one player for good.
 *
 * @param value a text made by the program, unique in the club
 */
public record PlayerId(String value) {

  /** Refuses an empty text. */
  public PlayerId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("The id of a player must not be empty.");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
