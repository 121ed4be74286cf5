package rallywright.engine.club;

/**
 * A place to play.
 *
 * @param id the venue's id
 * @param name the name as the coach writes it; 1 to 80 characters
 * @param courts how many courts it has, 1 to 40
 * @param setting indoors or outdoors; indoors hides wind and sun
 * @param ball the ball used, in the coach's words, may be empty
 * @param surface the surface, in the coach's words, may be empty
 * @param altitudeMetres height above the sea in metres, −430 to 6000
 */
public record Venue(
    VenueId id,
    String name,
    int courts,
    Setting setting,
    String ball,
    String surface,
    double altitudeMetres) {

  /** Most courts of one venue. */
  public static final int MOST_COURTS = 40;

  /** Indoors or outdoors. */
  public enum Setting {
    /** Under a roof, no wind and no sun. */
    INDOOR,
    /** In the open. */
    OUTDOOR
  }

  /** Checks name, courts and altitude. */
  public Venue {
    if (name.isBlank() || name.length() > Player.LONGEST_NAME) {
      throw new IllegalArgumentException(
          "The venue's name \""
              + name
              + "\" must have 1 to "
              + Player.LONGEST_NAME
              + " characters.");
    }
    if (courts < 1 || courts > MOST_COURTS) {
      throw new IllegalArgumentException(
          "The number of courts (" + courts + ") must be from 1 to " + MOST_COURTS + ".");
    }
    if (!(altitudeMetres >= -430 && altitudeMetres <= 6000)) {
      throw new IllegalArgumentException(
          "The altitude ("
              + altitudeMetres
              + " m) must lie from −430 to 6000 m. Maybe it was meant"
              + " in feet.");
    }
  }
}
