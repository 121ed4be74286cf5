package rallywright.engine.reading;

import java.util.Locale;
import rallywright.engine.club.PlayerId;
import rallywright.engine.point.Team.CourtSides;

/**
 * How two players would do together against two average players of the club.
 *
 * @param partner the partner
 * @param name the partner's name
 * @param outlook the chance to win a game to 11, with its interval
 * @param gain games in 100 beyond what the mean of their strengths would win
 * @param bestSides where they had better stand; the player of the page counts as right at even
 * @param sidesGain games in 100 that those places bring
 */
public record PartnerLine(
    PlayerId partner,
    String name,
    DoublesOutlook outlook,
    double gain,
    CourtSides bestSides,
    double sidesGain) {

  /** Less than this many games in 100 is nothing to speak of: an assumption. */
  private static final double WORTH_SAYING = 1;

  /**
   * The line in words.
   *
   * @return one sentence
   */
  public String sentence() {
    String chance =
        String.format(
            Locale.ROOT,
            "With %s: about %d games in 10 against two average players of the club (%d to %d)",
            name,
            Math.round(10 * outlook.chance()),
            Math.round(10 * outlook.low()),
            Math.round(10 * outlook.high()));
    if (Math.abs(gain) < WORTH_SAYING) {
      return chance + "; what the two bring adds up, no more and no less.";
    }
    return chance
        + String.format(
            Locale.ROOT,
            "; their strengths %s: %s %s in 100 than their mean.",
            gain > 0 ? "fill each other's gaps" : "overlap",
            Math.round(Math.abs(gain)) == 1 ? "1 game" : Math.round(Math.abs(gain)) + " games",
            gain > 0 ? "more" : "fewer");
  }
}
