package rallywright.engine.session;

/**
 * Where a phone puts an event, without any clock: how many it made before, and how much of the
 * session it knew.
 *
 * @param number the phone's own count of its events of this session: 1, 2, …; 0 where it does not
 *     count
 * @param seen how many events of the session had come back from the server to the phone when it
 *     made this one; −1 where that is not known
 */
public record PhoneOrder(long number, long seen) {

  /** Nothing is known: the event stands where it arrived, and its maker is taken to know all. */
  public static final PhoneOrder UNKNOWN = new PhoneOrder(0, -1);

  /** Checks the ranges. */
  public PhoneOrder {
    if (number < 0 || seen < -1) {
      throw new IllegalArgumentException(
          "The order (number %d, seen %d) must count from 0.".formatted(number, seen));
    }
  }
}
