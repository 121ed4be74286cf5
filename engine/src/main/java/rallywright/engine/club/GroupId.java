package rallywright.engine.club;

/**
 * Names one group for good.
 *
 * @param value a text made by the program, unique in the club
 */
public record GroupId(String value) {

  /** Refuses an empty text. */
  public GroupId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("The id of a group must not be empty.");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
