package rallywright.engine.aim;

import java.util.List;
import rallywright.engine.flight.AimSearch;
import rallywright.engine.flight.BestAim;
import rallywright.engine.flight.Landings;
import rallywright.engine.flight.Scatter;

/**
 * A player's own scatter, from where the balls of one shot landed.
 *
 * <p><b>Card.</b> In: landings of one shot. Out: the most likely scatter and how sure it is.
 * Method: {@link Landings}, at the elevation that is best for a player of the level (assumption of
 * this project: it is how the shot is hit). Sureness: n times the mean square over the true
 * variance is chi-squared with n - 1 degrees of freedom (normal theory), its quantiles by Wilson
 * and Hilferty 1931. Limits: balls in the net leave no landing, so the scatter comes out too small.
 *
 * @param scatter the most likely one
 * @param balls how many landings it comes from
 */
public record MeasuredScatter(Scatter scatter, int balls) {

  /** The fewest balls that say anything: assumption of this project. */
  public static final int FEWEST = 5;

  /** The most balls that are taken: assumption of this project. */
  public static final int MOST = 200;

  /** Below this everything lies on one spot, in metres: assumption of this project. */
  private static final double ONE_SPOT_M = 0.01;

  /** A tenth of a normal spread lies above this. */
  private static final double A_TENTH_ABOVE = 1.2815515655446004;

  /** Checks the number of balls. */
  public MeasuredScatter {
    if (balls < FEWEST || balls > MOST) {
      throw new IllegalArgumentException(
          "A scatter needs %d to %d landings, not %d. Maybe hit 20."
              .formatted(FEWEST, MOST, balls));
    }
  }

  /**
   * The scatter of a player.
   *
   * @param setting the shot that was hit, with the player's level
   * @param places where its balls landed, also those that were out
   * @return the scatter
   * @throws IllegalArgumentException with a sentence if the landings cannot be of that shot
   */
  public static MeasuredScatter of(ShotSetting setting, List<ShotSetting.Place> places) {
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
    return of(usual, places, aim.aim().elevation());
  }

  /** The same at an elevation that is known. */
  static MeasuredScatter of(ShotSetting setting, List<ShotSetting.Place> places, double elevation) {
    List<BestAim.Landing> points =
        places.stream().map(place -> new BestAim.Landing(place.along(), -place.across())).toList();
    Scatter scatter = new Landings(points).scatter(setting.asShot(), elevation);
    return new MeasuredScatter(scatter, places.size());
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
   * How small the true scatter may be.
   *
   * @return times the most likely one; the true one is smaller once in ten
   */
  public double least() {
    return Math.sqrt(balls / chiSquared(balls - 1, A_TENTH_ABOVE));
  }

  /**
   * How large the true scatter may be.
   *
   * @return times the most likely one; the true one is larger once in ten
   */
  public double most() {
    return Math.sqrt(balls / chiSquared(balls - 1, -A_TENTH_ABOVE));
  }

  /** A quantile of chi-squared by that of the normal distribution. */
  static double chiSquared(int degrees, double z) {
    double spread = 2.0 / (9 * degrees);
    return degrees * Math.pow(1 - spread + z * Math.sqrt(spread), 3);
  }
}
