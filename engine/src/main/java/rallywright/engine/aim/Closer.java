package rallywright.engine.aim;

import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.Ranged;
import rallywright.engine.flight.TimeLeft;

/**
 * What a full answer adds.
 *
 * @param chance of success with the best aim of each ball, over the spread of drag and lift
 * @param clearance air over the net with the best aim of each ball, in metres
 * @param pace off the paddle with the best aim of each ball, in metres per second
 * @param steadier how much a quarter less scatter would help
 * @param forgivenPace what the window forgives in pace around its best place, as a share
 * @param forgivenElevation what it forgives in elevation there, in radians
 * @param opponent what time the opponent has
 */
public record Closer(
    Ranged chance,
    Ranged clearance,
    Ranged pace,
    AimSearch.Steadier steadier,
    double forgivenPace,
    double forgivenElevation,
    TimeLeft opponent) {

  /** What remains of the scatter when it is a quarter less. */
  public static final double A_QUARTER_LESS = 0.75;
}
