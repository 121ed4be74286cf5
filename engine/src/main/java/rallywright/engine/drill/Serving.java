package rallywright.engine.drill;

import rallywright.engine.court.CourtHalf;
import rallywright.engine.court.End;
import rallywright.engine.court.Lane;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Places;
import rallywright.engine.score.ServiceCourt;

/** Where two players stand for serve and receive in a game on half a court. */
public enum Serving {
  /** The rally starts with a feed, so the question does not arise. */
  FEED("starts with a feed"),
  /** Serve and receive stay in the lane. Common practice, no source. */
  FIXED_LANE("serve and receive stay in the lane"),
  /** Server right on an even own score, receiver diagonal. Common practice, no source. */
  BY_SCORE("server right on an even own score, receiver diagonal");

  private final String words;

  Serving(String words) {
    this.words = words;
  }

  /**
   * The reading in words.
   *
   * @return for example "serve and receive stay in the lane"
   */
  public String words() {
    return words;
  }

  /**
   * A format with the places of this reading.
   *
   * @param format the format of the drill
   * @param lane the lane on which it is played
   * @return the format for that lane
   */
  GameFormat on(GameFormat format, Lane lane) {
    if (this == BY_SCORE) {
      return format.withPlaces(Places.HALF_COURT_BY_SCORE);
    }
    return format.withPlaces(
        Places.fixedLane(court(lane.half(End.NEAR)), court(lane.half(End.FAR))));
  }

  private static ServiceCourt court(CourtHalf half) {
    return half == CourtHalf.EVEN ? ServiceCourt.EVEN : ServiceCourt.ODD;
  }
}
