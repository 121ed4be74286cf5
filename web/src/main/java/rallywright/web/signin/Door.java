package rallywright.web.signin;

/**
 * Addresses that others than the coach may open. A feature adds one as a bean; without a door an
 * address is the coach's alone.
 *
 * @param pattern the addresses, for example {@code /court/**}
 * @param who who may open them
 */
public record Door(String pattern, Who who) {

  /** Who may open a door. */
  public enum Who {
    /** Everybody, signed in or not: nothing of the club may be shown. */
    EVERYBODY,
    /** The coach and those with an on-court key; the page checks that it is the key's session. */
    COURT
  }
}
