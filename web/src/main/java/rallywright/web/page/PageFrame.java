package rallywright.web.page;

/**
 * What the layout of a signed-in page needs beside its content.
 *
 * @param title the page's title
 * @param part the part of the navigation that is lit
 * @param csrfName the name of the hidden field against forged requests
 * @param csrfToken its value
 * @param mode whether the demo is shown, so that every page says so
 */
public record PageFrame(String title, Part part, String csrfName, String csrfToken, Show mode) {

  /** The parts of the product in the order of a coach's week. */
  public enum Part {
    /** The start page. */
    TODAY("Today", "/"),
    /** Who they are. */
    PLAYERS("Players", "/players"),
    /** The catalogue. */
    DRILLS("Drills", "/drills"),
    /** Plan, print, run, look back. */
    SESSIONS("Sessions", "/sessions"),
    /** What the scores say. */
    PROGRESS("Progress", "/progress");

    private final String words;
    private final String address;

    Part(String words, String address) {
      this.words = words;
      this.address = address;
    }

    /** The word in the navigation. */
    public String words() {
      return words;
    }

    /** Where it leads. */
    public String address() {
      return address;
    }
  }

  /** Whose club is shown. */
  public enum Show {
    /** The coach's own. */
    CLUB,
    /** The invented one. */
    DEMO
  }
}
