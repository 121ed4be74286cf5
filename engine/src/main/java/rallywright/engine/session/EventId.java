package rallywright.engine.session;

/**
 * Names one event for good.
 *
 * @param value a text, unique in the club; of events made by the phone, so that sending twice does
 *     no harm
 */
public record EventId(String value) {

  /** The longest id that is taken, in characters. */
  public static final int LONGEST = 64;

  /** Refuses an empty or overlong text. */
  public EventId {
    if (value.isBlank() || value.length() > LONGEST) {
      throw new IllegalArgumentException(
          "The id of a event must have 1 to "
              + LONGEST
              + " characters, not "
              + value.length()
              + ".");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
