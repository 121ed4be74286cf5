package rallywright.web.drills;

import rallywright.engine.drill.DrillForm;
import rallywright.engine.odds.GameOdds;
import rallywright.engine.odds.RallyChances;
import rallywright.engine.odds.RallyMoments;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.Scoring;

/**
 * How long a game between equals takes: the exact number of rallies times the assumed time of one.
 *
 * @param minutes the mean, in minutes
 * @param nineInTen the length that nine games in ten do not exceed, in minutes: mean + 1.2816 SD of
 *     a normal distribution, which is near enough for a whole minute
 */
record UsualLength(double minutes, double nineInTen) {

  private static final double NINE_IN_TEN = 1.2816;

  static UsualLength of(DrillForm.Scored game) {
    Probability first = Probability.of(game.advantage().chanceBetweenEquals());
    RallyChances chances =
        game.format().scoring() == Scoring.EVERY_RALLY
            ? RallyChances.ofRally(first)
            : RallyChances.ofServe(first, first);
    RallyMoments rallies = GameOdds.of(game.format(), chances).rallies();
    double seconds = rallies.mean() * game.seconds().mean();
    double variance =
        rallies.mean() * game.seconds().sd() * game.seconds().sd()
            + Math.pow(rallies.sd() * game.seconds().mean(), 2);
    return new UsualLength(seconds / 60, (seconds + NINE_IN_TEN * Math.sqrt(variance)) / 60);
  }

  /** For a page, to half a minute. */
  String words() {
    return "about %s min a game between equals; nine in ten are over within %s"
        .formatted(halves(minutes), halves(nineInTen));
  }

  private static String halves(double minutes) {
    long halves = Math.max(1, Math.round(minutes * 2));
    String whole = halves / 2 == 0 ? "" : String.valueOf(halves / 2);
    return whole + (halves % 2 == 0 ? "" : "½");
  }
}
