package rallywright.paper;

import java.net.URI;

/** How a phone reaches the on-court page of a printed session. */
public sealed interface PhoneAccess {

  /**
   * A phone can open the page.
   *
   * @param address the whole address; its fragment is the key, so that the key is never sent with
   *     the first request
   */
  record Open(URI address) implements PhoneAccess {

    /** Checks that a phone can open the address and that the key stands in the fragment. */
    public Open {
      String scheme = address.getScheme();
      boolean web = "http".equals(scheme) || "https".equals(scheme);
      if (!web || address.getHost() == null) {
        throw new IllegalArgumentException(
            "The on-court address must start with http:// or https:// and a host, but its scheme"
                + " is "
                + scheme
                + ". Maybe the public address is not set.");
      }
      if (address.getRawFragment() == null || address.getRawFragment().isBlank()) {
        throw new IllegalArgumentException(
            "The on-court address must carry its key after a #, but has none. Maybe the key was put"
                + " into the query.");
      }
    }

    /** The address without its key, so that no log holds it. */
    @Override
    public String toString() {
      return "Open[" + address.getScheme() + "://" + address.getRawAuthority() + " …]";
    }
  }

  /**
   * No phone can open the page.
   *
   * @param reason why, as one sentence for the coach
   */
  record Closed(String reason) implements PhoneAccess {

    /** The usual reason: the program listens on this computer only. */
    public static final Closed ON_THIS_COMPUTER_ONLY =
        new Closed(
            "No code for phones: started for this computer only. Start with --host, or type the"
                + " scores in later.");

    /** Refuses an empty sentence. */
    public Closed {
      if (reason.isBlank()) {
        throw new IllegalArgumentException("The reason why there is no code must not be empty.");
      }
    }
  }
}
