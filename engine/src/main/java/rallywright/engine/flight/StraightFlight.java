package rallywright.engine.flight;

/**
 * A hard, flat ball between players: drag along a straight line, gravity left out.
 *
 * <p><b>Card.</b> In: conditions without wind, distance. Out: how long it takes, how fast it
 * arrives, what pace leaves a time. Valid: volleys and drives over some metres, where the fall does
 * not lengthen the way much. With k = ½ρAC_D/m: v = v₀e^(-kd), t = (e^(kd) - 1)/(kv₀). Source: the
 * standard solution of quadratic drag.
 *
 * @param dragPerMetre k, per metre, 0 (vacuum) or more
 */
public record StraightFlight(double dragPerMetre) {

  /** Checks the range; the check is written so that NaN fails it. */
  public StraightFlight {
    if (!(dragPerMetre >= 0 && dragPerMetre < 10)) {
      throw new IllegalArgumentException(
          "The drag (%s per metre) must be 0 or more. Maybe 0.0355.".formatted(dragPerMetre));
    }
  }

  /**
   * The straight flight of a ball.
   *
   * @param conditions ball and air; the wind is left out
   * @return the flight
   */
  public static StraightFlight in(Conditions conditions) {
    return new StraightFlight(conditions.dragPerMetre());
  }

  /**
   * How fast it arrives.
   *
   * @param pace off the paddle, in metres per second
   * @param distance metres
   * @return metres per second
   */
  public double arrival(double pace, double distance) {
    return pace * Math.exp(-dragPerMetre * distance);
  }

  /**
   * How long it takes.
   *
   * @param pace off the paddle, in metres per second, above 0
   * @param distance metres
   * @return seconds
   */
  public double seconds(double pace, double distance) {
    return stretched(distance) / pace;
  }

  /**
   * The pace that leaves a time.
   *
   * @param seconds the time, above 0
   * @param distance metres
   * @return metres per second off the paddle
   */
  public double paceFor(double seconds, double distance) {
    return stretched(distance) / seconds;
  }

  /** The way that a ball without drag would go in the same time. */
  private double stretched(double distance) {
    double exponent = dragPerMetre * distance;
    return exponent == 0 ? distance : distance * Math.expm1(exponent) / exponent;
  }

  /**
   * The drag coefficient that slows a ball from one pace to another: the way back.
   *
   * @param conditions ball and air
   * @param pace off the paddle, in metres per second
   * @param arrival at the other end, in metres per second
   * @param distance metres
   * @return C_D
   */
  public static double drag(Conditions conditions, double pace, double arrival, double distance) {
    double perMetre = Math.log(pace / arrival) / distance;
    Ball ball = conditions.ball();
    return 2 * ball.massKg() * perMetre / (conditions.air().density() * ball.crossSection());
  }
}
