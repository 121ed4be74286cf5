package rallywright.engine.flight;

import rallywright.engine.court.Court;
import rallywright.engine.court.Net;

/**
 * One thing that a shot must do. Requirements are small values that a {@link Target} puts together.
 *
 * <p>For the maintainer: each answers with a margin that is above 0 where the flight does it, below
 * 0 where it does not, and changes without a jump from launch to launch, so that edges can be found
 * between launches. Margins are metres, or seconds where time counts.
 */
public sealed interface Requirement {

  /**
   * The plane across the court at which it looks at the ball, if it does.
   *
   * @return metres beyond the net, or NaN
   */
  default double planeX() {
    return Double.NaN;
  }

  /**
   * How clearly the flight does it.
   *
   * @param flight what is known of the flight
   * @return above 0 if it does
   */
  double margin(Track flight);

  /**
   * The ball passes over the net with some air under it.
   *
   * @param by metres between the net's top and the ball, 0 or more
   */
  record ClearsNet(double by) implements Requirement {
    /** Checks the range; the check is written so that NaN fails it. */
    public ClearsNet {
      if (!(by >= 0 && by < 20)) {
        throw new IllegalArgumentException(
            "The air over the net (%s m) must be 0 or more. Maybe 0.1.".formatted(by));
      }
    }

    @Override
    public double margin(Track flight) {
      if (Double.isNaN(flight.netZ())) {
        return NOWHERE_NEAR;
      }
      return flight.netZ() - flight.radius() - netTop(flight.netY()) - by;
    }
  }

  /**
   * The ball passes low over the net.
   *
   * @param most metres between the net's top and the ball at the most, above 0
   */
  record LowOverNet(double most) implements Requirement {
    /** Checks the range; the check is written so that NaN fails it. */
    public LowOverNet {
      if (!(most > 0 && most < 20)) {
        throw new IllegalArgumentException(
            "The most air over the net (%s m) must be above 0. Maybe 0.4.".formatted(most));
      }
    }

    @Override
    public double margin(Track flight) {
      if (Double.isNaN(flight.netZ())) {
        return NOWHERE_NEAR;
      }
      return most - (flight.netZ() - flight.radius() - netTop(flight.netY()));
    }
  }

  /**
   * The ball lands in a rectangle; the lines belong to it.
   *
   * @param nearest distance of its near edge from the net, in metres
   * @param farthest distance of its far edge from the net, in metres
   * @param right its right edge as the hitter sees it, in metres; below 0 is right of the middle
   * @param left its left edge as the hitter sees it, in metres
   */
  record LandsIn(double nearest, double farthest, double right, double left)
      implements Requirement {
    /** Checks the order; the check is written so that NaN fails it. */
    public LandsIn {
      if (!(nearest < farthest && right < left)) {
        throw new IllegalArgumentException(
            ("The area needs a near edge (%s m) before its far edge (%s m) and a right edge (%s m)"
                    + " right of its left edge (%s m).")
                .formatted(nearest, farthest, right, left));
      }
    }

    /** The opponents' whole court. */
    public static LandsIn court() {
      double half = Court.HALF_WIDTH.metres();
      return new LandsIn(0, Court.HALF_LENGTH.metres(), -half, half);
    }

    /** The opponents' kitchen. */
    public static LandsIn kitchen() {
      double half = Court.HALF_WIDTH.metres();
      return new LandsIn(0, Court.KITCHEN_DEPTH.metres(), -half, half);
    }

    @Override
    public double margin(Track flight) {
      double along = Math.min(flight.landX() - nearest, farthest - flight.landX());
      double across = Math.min(flight.landY() - right, left - flight.landY());
      return Math.min(along, across);
    }
  }

  /**
   * The ball never rises above a height.
   *
   * @param height metres above the floor
   */
  record StaysBelow(double height) implements Requirement {
    @Override
    public double margin(Track flight) {
      return height - flight.top();
    }
  }

  /**
   * An opponent who stands at the line cannot attack it: where their paddle can meet it, the ball
   * is below the net's top, or they have less time than they need; a ball that lands before their
   * reach cannot be volleyed.
   *
   * @param reachX how near to the net they can meet the ball, in metres beyond the net
   * @param needSeconds the time they need from your contact
   */
  record NotAttackable(double reachX, double needSeconds) implements Requirement {

    /** How far a player at the line reaches forward: about 2 ft. Assumption of this project. */
    public static final double ARM_M = 0.6;

    /**
     * An opponent at the line who needs a quarter of a second. Simple visual reaction 231 ms: Woods
     * et al. 2015, Front. Hum. Neurosci. 9:131; a step or a swing comes on top.
     */
    public static final NotAttackable AT_THE_LINE =
        new NotAttackable(Court.KITCHEN_DEPTH.metres() - ARM_M, 0.25);

    @Override
    public double planeX() {
      return reachX;
    }

    @Override
    public double margin(Track flight) {
      double early = reachX - flight.landX();
      if (Double.isNaN(flight.reachZ())) {
        return early;
      }
      double low = netTop(flight.reachY()) - flight.reachZ();
      return Math.max(Math.max(low, needSeconds - flight.reachSeconds()), early);
    }
  }

  /**
   * The ball is at a plane across the court before a time is over, or lands before that plane.
   *
   * @param reachX the plane, in metres beyond the net
   * @param seconds after contact
   */
  record ArrivesWithin(double reachX, double seconds) implements Requirement {
    @Override
    public double planeX() {
      return reachX;
    }

    @Override
    public double margin(Track flight) {
      return Double.isNaN(flight.reachSeconds()) ? NOWHERE_NEAR : seconds - flight.reachSeconds();
    }
  }

  /**
   * The ball passes over a plane across the court higher than somebody reaches there.
   *
   * @param reachX the plane, in metres beyond the net
   * @param height metres above the floor
   */
  record PassesOver(double reachX, double height) implements Requirement {
    @Override
    public double planeX() {
      return reachX;
    }

    @Override
    public double margin(Track flight) {
      return Double.isNaN(flight.reachZ()) ? NOWHERE_NEAR : flight.reachZ() - height;
    }
  }

  /**
   * The ball passes the net plane outside a post: it need not clear the net.
   *
   * @param side the hitter's left or right
   */
  record RoundPost(Side side) implements Requirement {

    /** The two posts, as the hitter sees them. */
    public enum Side {
      /** The post to the hitter's left. */
      LEFT(1),
      /** The post to the hitter's right. */
      RIGHT(-1);

      private final int sign;

      Side(int sign) {
        this.sign = sign;
      }
    }

    @Override
    public double margin(Track flight) {
      if (Double.isNaN(flight.netZ())) {
        return NOWHERE_NEAR;
      }
      double past = side.sign * flight.netY() - RoundThePost.outside(flight.radius());
      return Math.min(past, flight.netZ() - flight.radius());
    }
  }

  /** The margin of a ball that never gets to the net. */
  double NOWHERE_NEAR = -15;

  private static double netTop(double y) {
    return Net.heightM(y);
  }
}
