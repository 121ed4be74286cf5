package rallywright.engine.club;

/**
 * Names one venue for good.
 *
 * @param value a text made by the program, unique in the club
 */
public record VenueId(String value) {

  /** Refuses an empty text. */
  public VenueId {
    if (value.isBlank()) {
      throw new IllegalArgumentException("The id of a venue must not be empty.");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
