package rallywright.web.signin;

/**
 * Addresses that others than the coach may open. A feature adds one as a bean; without a door an
 * address is the coach's alone.
 *
 * @param pattern the addresses, for example {@code /court/**}
 * @param who who may open them
 * @param posts what guards them against forged requests
 */
public record Door(String pattern, Who who, Posts posts) {

  /** A door whose forms carry a token against forged requests, as forms do. */
  public Door(String pattern, Who who) {
    this(pattern, who, Posts.WITH_TOKEN);
  }

  /** What guards an address against requests that a foreign page forges. */
  public enum Posts {
    /** A token of the visit stands in every form. */
    WITH_TOKEN,
    /**
     * Only JSON is taken, which a foreign page cannot post; the visit, and its token, may have been
     * lost by a restart while a phone still holds scores. Strangers are answered 401, not led to
     * the sign-in page.
     */
    JSON_ONLY
  }

  /** Who may open a door. */
  public enum Who {
    /** Everybody, signed in or not: nothing of the club may be shown. */
    EVERYBODY,
    /** The coach and those with an on-court key; the page checks that it is the key's session. */
    COURT
  }
}
