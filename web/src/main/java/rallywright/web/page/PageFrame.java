package rallywright.web.page;

import org.jspecify.annotations.Nullable;

/**
 * What the layout of a signed-in page needs beside its content.
 *
 * @param title the page's title
 * @param part the part of the navigation that is marked, or null for pages outside the parts
 * @param csrf what goes with every form against forged requests
 * @param done what was just done, in a sentence, or an empty text
 * @param club whose club is shown and in which units
 */
public record PageFrame(String title, @Nullable Part part, Csrf csrf, String done, Club club) {

  /**
   * What goes with every form against forged requests.
   *
   * @param field the name of the hidden field
   * @param header the name of the header for requests by script
   * @param token the value of both
   */
  public record Csrf(String field, String header, String token) {}

  /**
   * Whose club is shown and in which units.
   *
   * @param mode whether the demo is shown, so that every page says so
   * @param units the units that the coach chose
   */
  public record Club(Show mode, Units units) {}

  /** Whether the invented club is shown. */
  public boolean isDemo() {
    return club.mode() == Show.DEMO;
  }

  /** The units that this page is written in. */
  public Units units() {
    return club.units();
  }

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
    PROGRESS("Progress", "/progress"),
    /** What a shot allows. */
    SHOTS("Shots", "/shots");

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
