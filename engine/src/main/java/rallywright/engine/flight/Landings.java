package rallywright.engine.flight;

import java.util.List;

/**
 * Where the balls of a yardstick landed, and what they say about a player's scatter.
 *
 * <p><b>Card.</b> In: landing points of balls hit from one place at one elevation. Out: the scatter
 * that makes them most likely. Method: seen from the hitter the bearings are normal; their most
 * likely SD is the root of the mean square. Speed and elevation: {@link LandingLikelihood}, where
 * balls in the net count as such. Distance alone cannot tell speed from elevation: their proportion
 * is kept as in {@link Scatter#ofLevel} (assumption of this project). Limits: the elevation is
 * taken as known; a side wind is taken as part of the bearing, and bearings as if the net were
 * level.
 *
 * @param points two or more places on the floor
 */
public record Landings(List<BestAim.Landing> points) {

  private static final int FEWEST = 2;
  private static final double SMALL = 1e-4;
  private static final double SMALLEST_SHARE = 1e-6;

  /** A scatter in any part must stay below this; see {@link Scatter}. */
  private static final double MOST = 0.5;

  /** Checks that a spread can be told. */
  public Landings {
    points = List.copyOf(points);
    if (points.size() < FEWEST) {
      throw new IllegalArgumentException(
          "A scatter needs %d landings or more, not %d. Maybe hit 20."
              .formatted(FEWEST, points.size()));
    }
  }

  /**
   * The most likely scatter, and how sure its size is.
   *
   * @param scatter the most likely one
   * @param least times its speed and elevation: the truth is smaller once in ten
   * @param most times its speed and elevation: the truth is larger once in ten
   */
  public record Likely(Scatter scatter, double least, double most) {}

  /**
   * The most likely scatter.
   *
   * @param shot where the balls were hit, their spin and conditions; its target is not looked at
   * @param elevation of the launches in radians: flat, or lofted
   * @param inTheNet how many more balls of the same shot did not clear the net
   * @return the scatter
   * @throws IllegalArgumentException if no speed at that elevation goes as far, or the landings lie
   *     too far apart
   */
  public Likely likely(Shot shot, double elevation, int inTheNet) {
    Vector from = shot.contact();
    double[] distances = new double[points.size()];
    double[] bearings = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      BestAim.Landing point = points.get(i);
      distances[i] = Math.hypot(point.x() - from.x(), point.y() - from.y());
      bearings[i] = Math.atan2(point.y() - from.y(), point.x() - from.x());
    }
    double bearing = mean(bearings);
    double speed = speedFor(shot, elevation, bearing, mean(distances));
    Scatter unit = Scatter.ofLevel(3.0);
    double perSpeed =
        (range(shot, speed * (1 + SMALL), elevation, bearing)
                - range(shot, speed * (1 - SMALL), elevation, bearing))
            / (2 * SMALL);
    double perRadian =
        (range(shot, speed, elevation + SMALL, bearing)
                - range(shot, speed, elevation - SMALL, bearing))
            / (2 * SMALL);
    double usual = Math.hypot(perSpeed * unit.speed(), perRadian * unit.elevation());
    double side = Math.max(SMALLEST_SHARE, sd(bearings));
    double first = Math.max(SMALLEST_SHARE, sd(distances) / usual);
    check(first, unit, side);
    LandingLikelihood.Likely likely =
        new LandingLikelihood(
                shot,
                new LandingLikelihood.Start(
                    new LaunchAim(speed, elevation, bearing), unit, first, usual / perSpeed),
                distances,
                inTheNet)
            .likely();
    double share = likely.share();
    check(share, unit, side);
    return new Likely(
        new Scatter(share * unit.speed(), share * unit.elevation(), side),
        likely.least() / share,
        likely.most() / share);
  }

  private static void check(double share, Scatter unit, double side) {
    if (!(share * unit.speed() < MOST && share * unit.elevation() < MOST && side < MOST)) {
      throw new IllegalArgumentException(
          "The landings lie too far apart for one shot. Maybe leave out the balls of another one.");
    }
  }

  private static double speedFor(Shot shot, double elevation, double bearing, double distance) {
    double slow = LaunchBox.EVERY_SHOT.slowest();
    double fast = 2 * LaunchBox.EVERY_SHOT.fastest();
    if (!(range(shot, slow, elevation, bearing) < distance
        && range(shot, fast, elevation, bearing) > distance)) {
      throw new IllegalArgumentException(
          "No ball hit at %.1f° lands %.2f m away. Maybe the elevation is that of another shot."
              .formatted(Math.toDegrees(elevation), distance));
    }
    while (fast - slow > 1e-9) {
      double middle = (slow + fast) / 2;
      if (range(shot, middle, elevation, bearing) < distance) {
        slow = middle;
      } else {
        fast = middle;
      }
    }
    return (slow + fast) / 2;
  }

  private static double range(Shot shot, double speed, double elevation, double bearing) {
    ShotTrial trial = shot.trial();
    trial.fly(speed, elevation, bearing);
    return Math.hypot(trial.landX() - shot.contact().x(), trial.landY() - shot.contact().y());
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /** The most likely SD: the root of the mean square. */
  private static double sd(double[] values) {
    double mean = mean(values);
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return Math.sqrt(sum / values.length);
  }
}
