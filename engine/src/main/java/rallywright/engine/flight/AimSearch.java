package rallywright.engine.flight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rallywright.engine.court.Net;

/**
 * Finds the best aim of a shot for a player who scatters.
 *
 * <p>For the maintainer: a rough look over all launches that succeed as aimed, and rough climbs
 * from the best six that lie apart, all on one wide grid of flights; then a climb by simplex from
 * the best two tops, in units of the player's spreads, each round on a fine grid around the aim
 * reached so far. With two climbs and no rough ones, two shots in thirty ended on the wrong hill.
 * Near the top the chance is flat, so a chance right to a thousandth leaves the aim itself open by
 * some tenths of a spread.
 */
public final class AimSearch {

  private static final int CLIMBS = 2;
  private static final int ROUNDS = 6;
  private static final double ROUND_WIDTH = 1.5;
  private static final double FIRST_STEP = 0.8;
  private static final double NEAR = 1.2;
  private static final double APART = 1;
  private static final double ROUGHLY_DONE = 1e-3;
  private static final double DONE = 1e-4;
  private static final int ROUNDS_TO_LIKE = 2;

  /** A like ball needs no second round where the first one ended so many spreads away. */
  private static final double STAYED = 0.6;

  /** Windows as wide as this many spreads of speed need no finer look. */
  private static final double WIDE_SPREADS = 1.5;

  private static final int FINEST = 4;
  private static final double GAIN = 3e-4;
  private static final int HALVINGS = 30;
  private static final double STEEPEST = Math.toRadians(75);

  private final Shot shot;
  private final Scatter scatter;
  private int climbs = CLIMBS;

  /** How closely all that a shot allows is looked through before the climb. */
  private enum Care {
    GLANCE(6, 2),
    SEARCH(12, 6);

    private final int looks;
    private final int climbs;

    Care(int looks, int climbs) {
      this.looks = looks;
      this.climbs = climbs;
    }
  }

  private AimSearch(Shot shot, Scatter scatter) {
    this.shot = shot;
    this.scatter = scatter;
  }

  /**
   * A search.
   *
   * @param shot from where, with which spin, to what end, in which conditions
   * @param scatter the player's scatter
   * @return the search
   */
  public static AimSearch of(Shot shot, Scatter scatter) {
    return new AimSearch(shot, scatter);
  }

  /** The same with another number of climbs, to see what the usual number misses. */
  AimSearch withClimbs(int number) {
    climbs = number;
    return this;
  }

  /**
   * The best aim near a bearing.
   *
   * @param bearing radians to the hitter's left: toward the middle of the target
   * @return the aim, or empty where no launch at that bearing succeeds
   */
  public Optional<BestAim> near(double bearing) {
    return near(LaunchWindow.of(shot, bearing, LaunchBox.EVERY_SHOT));
  }

  /**
   * The best aim near the bearing of a window.
   *
   * @param window the shot's window at the bearing toward the middle of the target
   * @return the aim, or empty where the window is
   */
  public Optional<BestAim> near(LaunchWindow window) {
    if (window.isEmpty()) {
      return Optional.empty();
    }
    int finer = finer(window);
    return starts(window, Care.SEARCH, climbs).stream()
        .map(start -> climb(start.aim(), new Climb(ROUNDS, 0, DONE, finer)))
        .max(Comparator.comparingDouble(Climbed::chance))
        .map(top -> answer(top.aim(), chanceOf(top.aim())));
  }

  /**
   * About the best aim, quickly: rough climbs only, for a picture that is dragged. The chance is
   * right to some hundredths.
   *
   * @param window the shot's window at the bearing toward the middle of the target
   * @return the aim, or empty where the window is
   */
  public Optional<BestAim> glance(LaunchWindow window) {
    return window.isEmpty()
        ? Optional.empty()
        : starts(window, Care.GLANCE, 1).stream()
            .findFirst()
            .map(top -> answer(top.aim(), top.chance()));
  }

  /**
   * The best aim of a player who keeps the picture of another one: for a ball that flies a little
   * differently, climbed to from the same elevation and bearing, with the speed that lands there.
   *
   * @param other the best aim of the ball that the player is used to
   * @param window this ball's
   * @return the aim and its chance with this ball
   */
  public BestAim like(BestAim other, LaunchWindow window) {
    double slow = other.aim().speed() / 2;
    double fast = other.aim().speed() * 2;
    ShotTrial trial = shot.trial();
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (slow + fast) / 2;
      trial.fly(middle, other.aim().elevation(), other.aim().bearing());
      if (trial.landX() < other.landing().x()) {
        slow = middle;
      } else {
        fast = middle;
      }
    }
    LaunchAim same = new LaunchAim(slow, other.aim().elevation(), other.aim().bearing());
    Climb again = new Climb(ROUNDS_TO_LIKE, STAYED, ROUGHLY_DONE, finer(window));
    LaunchAim top = climb(same, again).aim();
    return answer(top, chanceOf(top));
  }

  /** An aim and its chance. */
  private record Climbed(LaunchAim aim, double chance) {}

  /** The tops that rough climbs come to from the best of a rough look, not too near together. */
  private List<Climbed> starts(LaunchWindow window, Care care, int most) {
    LaunchBox bounds = window.bounds();
    double bearing = window.bearing();
    double steep = Math.min(STEEPEST, bounds.highest());
    LaunchBox aims =
        new LaunchBox(
            bounds.slowest(),
            bounds.fastest(),
            bounds.lowest(),
            Math.max(bounds.lowest() + 1e-3, steep));
    double side = ROUND_WIDTH * scatter.bearing();
    LaunchGrid.Span span = AimChance.span(aims, bearing - side, bearing + side, scatter);
    LaunchGrid grid = new LaunchGrid(shot, span, LaunchGrid.Points.OVER_EVERYTHING);
    int finer = finer(window);
    AimChance rough = new AimChance(grid, scatter, AimChance.Fineness.ROUGH, finer);
    AimChance better = new AimChance(grid, scatter, AimChance.Fineness.SEARCH, finer);
    List<Climbed> tops = new ArrayList<>();
    for (Climbed foot : apart(looks(rough, aims, window, care), care.climbs, NEAR)) {
      SimplexClimb.Corner top =
          new SimplexClimb(
                  at -> Math.abs(at.z()) > ROUND_WIDTH ? -1 : rough.of(moved(foot.aim(), at)),
                  ROUGHLY_DONE)
              .from(Vector.ZERO, FIRST_STEP);
      LaunchAim aim = moved(foot.aim(), top.at());
      tops.add(new Climbed(aim, better.of(aim)));
    }
    return apart(tops, most, APART);
  }

  /** A rough look at aims that succeed as aimed. */
  private List<Climbed> looks(AimChance rough, LaunchBox aims, LaunchWindow window, Care care) {
    double bearing = window.bearing();
    List<Climbed> looks = new ArrayList<>();
    ShotTrial trial = shot.trial();
    for (int i = 0; i <= care.looks; i++) {
      for (int j = 0; j <= care.looks; j++) {
        LaunchAim aim = look(aims, (double) i / care.looks, (double) j / care.looks, bearing);
        if (trial.margin(aim) > 0) {
          looks.add(new Climbed(aim, rough.of(aim)));
        }
      }
    }
    if (looks.isEmpty()) {
      looks.add(new Climbed(look(aims, 0.5, 0.5, bearing), 0));
    }
    return looks;
  }

  /** The best of some aims, each so many spreads away from the others. */
  private List<Climbed> apart(List<Climbed> aims, int most, double spreads) {
    List<Climbed> best = new ArrayList<>();
    aims.stream()
        .sorted(Comparator.comparingDouble(Climbed::chance).reversed())
        .filter(each -> best.stream().allMatch(other -> apart(other.aim(), each.aim()) > spreads))
        .limit(most)
        .forEach(best::add);
    return best;
  }

  private static LaunchAim look(LaunchBox aims, double fast, double high, double bearing) {
    return new LaunchAim(
        aims.slowest() + fast * (aims.fastest() - aims.slowest()),
        aims.lowest() + high * (aims.highest() - aims.lowest()),
        bearing);
  }

  /** How many spreads lie between two aims. */
  private double apart(LaunchAim a, LaunchAim b) {
    return Math.hypot(
        (a.speed() / b.speed() - 1) / scatter.speed(),
        (a.elevation() - b.elevation()) / scatter.elevation());
  }

  /**
   * How to climb.
   *
   * @param rounds at most
   * @param stayed a round that ends no further from its start, in spreads, is the last
   * @param done the difference in chance at which a round ends
   * @param finer how many times finer to look along the speed
   */
  private record Climb(int rounds, double stayed, double done, int finer) {}

  /** Speeds must stand so near that a few fall into a narrow window. */
  private int finer(LaunchWindow window) {
    double spreads = 2 * Forgiven.by(window).perSpeed() / scatter.speed();
    return (int) Math.max(1, Math.min(FINEST, Math.ceil(WIDE_SPREADS / spreads)));
  }

  /** Climbs round after round, until a round gains next to nothing. */
  private Climbed climb(LaunchAim start, Climb how) {
    LaunchAim centre = start;
    double chance = 0;
    for (int round = 0; round < how.rounds(); round++) {
      LaunchAim from = centre;
      double side = ROUND_WIDTH * scatter.bearing();
      LaunchGrid.Span span =
          AimChance.span(around(from), from.bearing() - side, from.bearing() + side, scatter);
      LaunchGrid grid = new LaunchGrid(shot, span, LaunchGrid.Points.OVER_A_CLIMB);
      AimChance search = new AimChance(grid, scatter, AimChance.Fineness.SEARCH, how.finer());
      SimplexClimb.Corner top =
          new SimplexClimb(at -> outside(at) ? -1 : search.of(moved(from, at)), how.done())
              .from(Vector.ZERO, FIRST_STEP);
      boolean there =
          (round > 0 && top.height() < chance + GAIN) || top.at().length() < how.stayed();
      centre = moved(from, top.at());
      chance = top.height();
      if (there) {
        break;
      }
    }
    return new Climbed(centre, chance);
  }

  private static boolean outside(Vector spreads) {
    return !(Math.abs(spreads.x()) <= ROUND_WIDTH
        && Math.abs(spreads.y()) <= ROUND_WIDTH
        && Math.abs(spreads.z()) <= ROUND_WIDTH);
  }

  /** An aim some spreads away. */
  private LaunchAim moved(LaunchAim from, Vector spreads) {
    double limit = Math.toRadians(85);
    double elevation = from.elevation() + spreads.y() * scatter.elevation();
    return new LaunchAim(
        from.speed() * (1 + spreads.x() * scatter.speed()),
        Math.min(limit, Math.max(-limit, elevation)),
        from.bearing() + spreads.z() * scatter.bearing());
  }

  private LaunchBox around(LaunchAim aim) {
    double speed = ROUND_WIDTH * scatter.speed();
    double up = ROUND_WIDTH * scatter.elevation();
    double limit = Math.toRadians(88);
    return new LaunchBox(
        aim.speed() * Math.max(0.05, 1 - speed),
        aim.speed() * (1 + speed),
        Math.max(-limit, aim.elevation() - up),
        Math.min(limit, aim.elevation() + up));
  }

  private BestAim answer(LaunchAim aim, double chance) {
    return new BestAim(aim, chance, scatter, clearance(aim), landing(aim));
  }

  /**
   * The chance of success with an aim.
   *
   * @param aim speed and angles
   * @return from 0 to 1
   */
  public double chanceOf(LaunchAim aim) {
    LaunchBox only =
        new LaunchBox(
            aim.speed() * 0.999,
            aim.speed() * 1.001,
            aim.elevation() - 1e-3,
            aim.elevation() + 1e-3);
    LaunchGrid.Span span = AimChance.span(only, aim.bearing(), aim.bearing(), scatter);
    LaunchGrid grid = new LaunchGrid(shot, span, LaunchGrid.Points.AROUND_AN_AIM);
    return new AimChance(grid, scatter, AimChance.Fineness.FINE, 1).of(aim);
  }

  /**
   * How much a steadier hand would help: the chance with the same aim where one part of the scatter
   * is smaller.
   *
   * @param aim speed and angles
   * @param factor what remains of the scatter, above 0: 0.75 for a quarter less
   * @return chances of success
   */
  public Steadier steadier(LaunchAim aim, double factor) {
    double speed = scatter.speed();
    double up = scatter.elevation();
    double side = scatter.bearing();
    return new Steadier(
        chanceOf(aim),
        of(shot, new Scatter(factor * speed, up, side)).chanceOf(aim),
        of(shot, new Scatter(speed, factor * up, side)).chanceOf(aim),
        of(shot, new Scatter(speed, up, factor * side)).chanceOf(aim),
        of(shot, scatter.times(factor)).chanceOf(aim));
  }

  /**
   * Chances of success with less scatter.
   *
   * @param usual with the scatter as it is
   * @param inSpeed with less in speed only
   * @param inElevation with less up and down only
   * @param inBearing with less sideways only
   * @param inAll with less in everything
   */
  public record Steadier(
      double usual, double inSpeed, double inElevation, double inBearing, double inAll) {}

  private double clearance(LaunchAim aim) {
    ShotTrial trial = shot.trial();
    trial.margin(aim);
    double top = Net.heightM(trial.netY());
    return trial.netZ() - trial.radius() - top;
  }

  private BestAim.Landing landing(LaunchAim aim) {
    ShotTrial trial = shot.trial();
    trial.margin(aim);
    return new BestAim.Landing(trial.landX(), trial.landY());
  }
}
