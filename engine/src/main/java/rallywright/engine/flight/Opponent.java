package rallywright.engine.flight;

import org.jspecify.annotations.Nullable;
import rallywright.engine.court.Court;
import rallywright.engine.quantity.Source;

/**
 * How quickly an opponent answers a ball.
 *
 * @param reactionSeconds from seeing the ball leave the paddle to beginning to move
 * @param swingSeconds to bring the paddle to the ball
 * @param stepMps how fast they get to a ball that is not at their side, in metres per second
 * @param source where the numbers come from
 */
public record Opponent(double reactionSeconds, double swingSeconds, double stepMps, Source source) {

  private static final String SOURCES =
      "; the first 21 cm of a paddle's way take 55 ms or more: sound recordings of J. Gardner"
          + " (2011), not peer-reviewed; a step of 2 m/s: assumption of this project";

  /** One who expects the ball: simple reaction, 231 ms. */
  public static final Opponent READY =
      new Opponent(
          0.231,
          0.055,
          2,
          new Source(
              "simple visual reaction 231 ms: Woods et al. 2015, Front. Hum. Neurosci. 9:131"
                  + SOURCES));

  /** One who must choose between strokes: 300 ms, the middle of what summaries say. */
  public static final Opponent CHOOSING =
      new Opponent(
          0.300,
          0.055,
          2,
          new Source("choice reaction 250 to 350 ms: popular summaries only" + SOURCES));

  /** Checks the ranges; the check is written so that NaN fails it. */
  public Opponent {
    if (!(reactionSeconds >= 0 && swingSeconds >= 0 && stepMps >= 0)
        || !Double.isFinite(reactionSeconds + swingSeconds + stepMps)
        || !(reactionSeconds + swingSeconds > 0)) {
      throw new IllegalArgumentException(
          ("Reaction (%s s), swing (%s s) and step (%s m/s) must be 0 or more."
                  + " Maybe 0.231, 0.055 and 2.")
              .formatted(reactionSeconds, swingSeconds, stepMps));
    }
  }

  /**
   * What time is left when a ball comes.
   *
   * @param shot the ball as it is hit
   * @param conditions ball, air and wind
   * @param reachX where they meet it, in metres beyond the net
   * @return the times; where it lands first, those to the landing
   */
  public TimeLeft against(Launch shot, Conditions conditions, double reachX) {
    Flight flight = FlightSolver.of(conditions).reachAt(reachX).fly(shot);
    @Nullable Passage reach = flight.reach();
    Passage met = reach == null ? flight.landing() : reach;
    double spare = met.seconds() - reactionSeconds - swingSeconds;
    return new TimeLeft(
        reach == null ? TimeLeft.Met.AFTER_THE_BOUNCE : TimeLeft.Met.IN_THE_AIR,
        met,
        spare,
        Math.max(0, spare) * stepMps);
  }

  /**
   * The pace beyond which an opponent at the line has no time, for a flat ball hit from a distance.
   *
   * @param fromNet how far behind the net it is hit, in metres
   * @param conditions ball and air
   * @return metres per second off the paddle
   */
  public double fastestToCounter(double fromNet, Conditions conditions) {
    double distance = fromNet + Court.KITCHEN_DEPTH.metres() - Requirement.NotAttackable.ARM_M;
    return StraightFlight.in(conditions).paceFor(reactionSeconds + swingSeconds, distance);
  }
}
