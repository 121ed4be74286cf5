package rallywright.engine.aim;

import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.Ranged;
import rallywright.engine.flight.TimeLeft;

/**
 * What a full answer adds.
 *
 * @param aim the best aim of each ball
 * @param forgives what each ball's window forgives
 * @param steadier how much a quarter less scatter would help
 * @param opponent what time the opponent has
 */
public record Closer(
    AimRange aim, Forgives forgives, AimSearch.Steadier steadier, TimeRange opponent) {

  /** What remains of the scatter when it is a quarter less. */
  public static final double A_QUARTER_LESS = 0.75;

  /**
   * What time the opponent has.
   *
   * @param left with the central ball
   * @param seconds after contact until they meet it
   * @param step how far they can step in the time to spare, in metres
   */
  public record TimeRange(TimeLeft left, Ranged seconds, Ranged step) {}
}
