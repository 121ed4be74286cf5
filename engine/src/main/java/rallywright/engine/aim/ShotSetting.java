package rallywright.engine.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rallywright.engine.court.Court;
import rallywright.engine.flight.Air;
import rallywright.engine.flight.BestAim;
import rallywright.engine.flight.Conditions;
import rallywright.engine.flight.Requirement;
import rallywright.engine.flight.Scatter;
import rallywright.engine.flight.Shot;
import rallywright.engine.flight.Target;
import rallywright.engine.flight.Vector;
import rallywright.engine.flight.Wind;

/**
 * A shot as a coach sets it up, before anybody hits it.
 *
 * @param shot which usual shot it is
 * @param hitter where and how it is hit
 * @param target where it should land
 * @param opponent where the one who gets it stands
 * @param day ball, wind and air
 * @param player whose scatter counts
 */
public record ShotSetting(
    UsualShot shot, Hitter hitter, Area target, Place opponent, Day day, Player player) {

  private static final double HUMIDITY_PERCENT = 50;

  /**
   * A place on the court as its reader sees it, in metres.
   *
   * @param across to the right of the centre line; below 0 to the left
   * @param along beyond the net; below 0 on the hitter's side
   */
  public record Place(double across, double along) {

    /** A place in feet. */
    static Place feet(double across, double along) {
      return new Place(across * FOOT, along * FOOT);
    }
  }

  /**
   * Who hits.
   *
   * @param place where, on the near side
   * @param height of the ball's centre at contact, in metres
   * @param spin what spin the ball gets
   */
  public record Hitter(Place place, double height, HitSpin spin) {}

  /**
   * A rectangle beyond the net, in metres.
   *
   * @param middle its middle
   * @param width across the court
   * @param depth along the court
   */
  public record Area(Place middle, double width, double depth) {

    /** Checks the size; the check is written so that NaN fails it. */
    public Area {
      if (!(width > 0 && depth > 0 && middle.along() + depth / 2 > 0)) {
        throw new IllegalArgumentException(
            "The target must have a width and a depth and reach beyond the net. Maybe 3 m by 2 m.");
      }
    }

    /** Left edge, to the right of the centre line; never outside the side line. */
    public double left() {
      return Math.max(-Court.HALF_WIDTH.metres(), middle.across() - width / 2);
    }

    /** Right edge, to the right of the centre line; never outside the side line. */
    public double right() {
      return Math.min(Court.HALF_WIDTH.metres(), middle.across() + width / 2);
    }

    /** Near edge, beyond the net; never before it. */
    public double near() {
      return Math.max(0, middle.along() - depth / 2);
    }

    /** Far edge, beyond the net; never behind the baseline. */
    public double far() {
      return Math.min(Court.HALF_LENGTH.metres(), middle.along() + depth / 2);
    }

    /** Whether anything of it lies inside the lines. */
    public boolean isOnCourt() {
      return left() < right() && near() < far();
    }
  }

  /**
   * The day.
   *
   * @param ball which ball
   * @param wind its speed at the court in metres per second, the same at every height
   * @param windFrom where it comes from in degrees: 0 into the hitter's face, 90 from the right
   * @param altitude metres above the sea
   * @param celsius the air's temperature
   */
  public record Day(BallKind ball, double wind, double windFrom, double altitude, double celsius) {

    /** Still air at 20 °C at the sea, outdoor ball. */
    public static final Day CALM = new Day(BallKind.OUTDOOR, 0, 0, 0, 20);

    /** The same day with another wind. */
    public Day withWind(double metresPerSecond, double fromDegrees) {
      return new Day(ball, metresPerSecond, fromDegrees, altitude, celsius);
    }

    /** Ball, air and wind as the flight sees them. */
    public Conditions conditions() {
      double from = Math.toRadians(windFrom);
      return new Conditions(
          ball.ball(),
          Air.of(celsius, HUMIDITY_PERCENT, Air.pressureAt(altitude)),
          Wind.constant(-wind * Math.cos(from), wind * Math.sin(from)));
    }
  }

  /**
   * Who hits, as far as scatter goes.
   *
   * @param level 1 to 7
   * @param measured the scatter from the player's own landings; empty where the level must do
   */
  public record Player(double level, Optional<MeasuredScatter> measured) {

    /** Checks the level; the check is written so that NaN fails it. */
    public Player {
      if (!(level >= 1 && level <= 7)) {
        throw new IllegalArgumentException(
            "The level (%s) must lie from 1.0 to 7.0. Maybe 3.5.".formatted(level));
      }
    }

    /** A player of whom only the level is known. */
    public static Player ofLevel(double level) {
      return new Player(level, Optional.empty());
    }

    /** The scatter. */
    Scatter scatter() {
      return measured.map(MeasuredScatter::scatter).orElseGet(() -> Scatter.ofLevel(level));
    }
  }

  private static final double FOOT = 0.3048;

  /** Checks what the parts cannot see for themselves. */
  public ShotSetting {
    if (!(hitter.place().along() < 0)) {
      throw new IllegalArgumentException(
          "The hitter must stand before the net, not at %s m. Maybe -6.9, behind the baseline."
              .formatted(hitter.place().along()));
    }
    if (!target.isOnCourt()) {
      throw new IllegalArgumentException(
          "The target lies outside the lines. Maybe drag it back into the court.");
    }
  }

  /**
   * The same shot on another day.
   *
   * @param other ball, wind and air
   * @return the setting
   */
  public ShotSetting on(Day other) {
    return new ShotSetting(shot, hitter, target, opponent, other, player);
  }

  /**
   * The same shot by a player of another level, of whom nothing is measured.
   *
   * @param other 1 to 7
   * @return the setting
   */
  public ShotSetting at(double other) {
    return by(Player.ofLevel(other));
  }

  /**
   * The same shot by another player.
   *
   * @param other the player
   * @return the setting
   */
  public ShotSetting by(Player other) {
    return new ShotSetting(shot, hitter, target, opponent, day, other);
  }

  /** The player's level, 1 to 7. */
  public double level() {
    return player.level();
  }

  /** The player's scatter: from landings, or an assumption by level. */
  public Scatter scatter() {
    return player.scatter();
  }

  /** The shot as the flight sees it. */
  public Shot asShot() {
    return asShot(day.conditions(), target);
  }

  Shot asShot(Conditions conditions, Area area) {
    List<Requirement> requirements = new ArrayList<>();
    requirements.add(new Requirement.ClearsNet(0));
    requirements.add(new Requirement.LandsIn(area.near(), area.far(), -area.right(), -area.left()));
    requirements.addAll(shot.style().requirements(opponent.along()));
    return new Shot(
        contact(), hitter.spin().radiansPerSecond(), new Target(requirements), conditions);
  }

  Vector contact() {
    return new Vector(hitter.place().along(), -hitter.place().across(), hitter.height());
  }

  /** Toward the middle of the target, in radians to the hitter's left. */
  double bearing() {
    double across = (target.left() + target.right()) / 2;
    double along = (target.near() + target.far()) / 2;
    return Math.atan2(hitter.place().across() - across, along - hitter.place().along());
  }

  /** The middle of the target as the flight sees it. */
  BestAim.Landing middle() {
    return new BestAim.Landing(
        (target.near() + target.far()) / 2, -(target.left() + target.right()) / 2);
  }
}
