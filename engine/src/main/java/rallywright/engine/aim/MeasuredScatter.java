package rallywright.engine.aim;

import java.util.List;
import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.BestAim;
import rallywright.engine.flight.Landings;
import rallywright.engine.flight.Scatter;

/**
 * A player's own scatter, from where the balls of one shot landed.
 *
 * <p><b>Card.</b> In: landings of one shot, and how many more balls went into the net. Out: the
 * most likely scatter and how sure it is. Method: {@link Landings}, at the elevation that is best
 * for a player of the level (assumption of this project: it is how the shot is hit). Sureness of
 * the direction: n times the mean square over the true variance is chi-squared with n - 1 degrees
 * of freedom (normal theory), its quantiles by Wilson and Hilferty 1931. Limits: a player who aims
 * lower or higher than is best looks as if the scatter were another.
 *
 * @param scatter the most likely one
 * @param balls how many landings it comes from
 * @param inTheNet how many more balls of the same shot did not clear the net
 * @param least how small the true scatter of pace and height may be, times the most likely one; it
 *     is smaller once in ten
 * @param most how large it may be; it is larger once in ten
 */
public record MeasuredScatter(Scatter scatter, int balls, int inTheNet, double least, double most) {

  /** The fewest balls that say anything: assumption of this project. */
  public static final int FEWEST = 5;

  /** The most balls that are taken: assumption of this project. */
  public static final int MOST = 200;

  /** Below this everything lies on one spot, in metres: assumption of this project. */
  private static final double ONE_SPOT_M = 0.01;

  /** A tenth of a normal spread lies above this. */
  private static final double A_TENTH_ABOVE = 1.2815515655446004;

  /** Checks the numbers; the check is written so that NaN fails it. */
  public MeasuredScatter {
    if (balls < FEWEST || balls > MOST) {
      throw new IllegalArgumentException(
          "A scatter needs %d to %d landings, not %d. Maybe hit 20."
              .formatted(FEWEST, MOST, balls));
    }
    if (inTheNet < 0 || inTheNet > MOST || !(least > 0 && least <= most && most < 1000)) {
      throw new IllegalArgumentException(
          ("Up to %d balls in the net are taken, not %d, and a range must rise from above 0, not"
                  + " from %s to %s.")
              .formatted(MOST, inTheNet, least, most));
    }
  }

  /**
   * The scatter of a player.
   *
   * @param setting the shot that was hit, with the player's level
   * @param hit where its balls landed, also those that were out, and how many went into the net
   * @return the scatter
   * @throws IllegalArgumentException with a sentence if the landings cannot be of that shot
   */
  public static MeasuredScatter of(ShotSetting setting, LandingLines hit) {
    List<ShotSetting.Place> places = hit.places();
    if (places.size() < FEWEST) {
      throw new IllegalArgumentException(
          "A scatter needs %d landings or more, not %d. Maybe hit 20."
              .formatted(FEWEST, places.size()));
    }
    if (isOneSpot(places)) {
      throw new IllegalArgumentException(
          "All landings lie on one spot. Maybe write down where each ball landed, to half a foot.");
    }
    ShotSetting usual = setting.at(setting.level());
    BestAim aim =
        AimSearch.of(usual.asShot(), usual.scatter())
            .near(usual.bearing())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "Nothing that can be hit from there does all that is asked, so the landings"
                            + " cannot be read. Maybe set the shot as it was hit."));
    return of(usual, hit, aim.aim().elevation());
  }

  /** The same at an elevation that is known. */
  static MeasuredScatter of(ShotSetting setting, LandingLines hit, double elevation) {
    List<BestAim.Landing> points =
        hit.places().stream()
            .map(place -> new BestAim.Landing(place.along(), -place.across()))
            .toList();
    Landings.Likely likely =
        new Landings(points).likely(setting.asShot(), elevation, hit.inTheNet());
    return new MeasuredScatter(
        likely.scatter(), points.size(), hit.inTheNet(), likely.least(), likely.most());
  }

  private static boolean isOneSpot(List<ShotSetting.Place> places) {
    ShotSetting.Place first = places.get(0);
    return places.stream()
        .allMatch(
            each ->
                Math.hypot(each.along() - first.along(), each.across() - first.across())
                    < ONE_SPOT_M);
  }

  /**
   * How small the true scatter of the direction may be.
   *
   * @return times the most likely one; the true one is smaller once in ten
   */
  public double leastAside() {
    return Math.sqrt(balls / chiSquared(balls - 1, A_TENTH_ABOVE));
  }

  /**
   * How large the true scatter of the direction may be.
   *
   * @return times the most likely one; the true one is larger once in ten
   */
  public double mostAside() {
    return Math.sqrt(balls / chiSquared(balls - 1, -A_TENTH_ABOVE));
  }

  /** A quantile of chi-squared by that of the normal distribution. */
  static double chiSquared(int degrees, double z) {
    double spread = 2.0 / (9 * degrees);
    return degrees * Math.pow(1 - spread + z * Math.sqrt(spread), 3);
  }
}
