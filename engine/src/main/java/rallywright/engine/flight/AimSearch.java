package rallywright.engine.flight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rallywright.engine.court.Net;
import rallywright.engine.quantity.Length;

/**
 * Finds the best aim of a shot for a player who scatters.
 *
 * <p>For the maintainer: a rough look over all launches that succeed as aimed, from one wide grid
 * of flights; then a climb by simplex from the best few, in units of the player's spreads, each
 * round on a fine grid around the aim reached so far. Near the top the chance is flat, so a chance
 * right to a thousandth leaves the aim itself open by some tenths of a spread.
 */
public final class AimSearch {

  private static final int LOOKS = 14;
  private static final int CLIMBS = 2;
  private static final int ROUNDS = 6;
  private static final double ROUND_WIDTH = 1.5;
  private static final double FIRST_STEP = 0.8;
  private static final double APART = 2;
  private static final double DONE = 3e-5;
  private static final double GAIN = 3e-4;
  private static final double STEEPEST = Math.toRadians(75);

  private final Shot shot;
  private final Scatter scatter;

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

  /**
   * The best aim near a bearing.
   *
   * @param bearing radians to the hitter's left: toward the middle of the target
   * @return the aim, or empty where no launch at that bearing succeeds
   */
  public Optional<BestAim> near(double bearing) {
    LaunchWindow window = LaunchWindow.of(shot, bearing, LaunchBox.EVERY_SHOT);
    if (window.isEmpty()) {
      return Optional.empty();
    }
    @Nullable LaunchAim best = null;
    double chance = -1;
    for (LaunchAim start : starts(window.bounds(), bearing)) {
      Climbed top = climb(start);
      if (top.chance() > chance) {
        best = top.aim();
        chance = top.chance();
      }
    }
    return best == null ? Optional.empty() : Optional.of(answer(best));
  }

  /** An aim and its chance. */
  private record Climbed(LaunchAim aim, double chance) {}

  /** The best of a rough look at aims that succeed as aimed, not too near to each other. */
  private List<LaunchAim> starts(LaunchBox bounds, double bearing) {
    double steep = Math.min(STEEPEST, bounds.highest());
    LaunchBox aims =
        new LaunchBox(
            bounds.slowest(),
            bounds.fastest(),
            bounds.lowest(),
            Math.max(bounds.lowest() + 1e-3, steep));
    LaunchGrid.Span span = AimChance.span(aims, bearing, bearing, scatter);
    LaunchGrid grid = new LaunchGrid(shot, span, LaunchGrid.Points.OVER_EVERYTHING);
    AimChance rough = new AimChance(grid, scatter, AimChance.Fineness.ROUGH);
    List<Climbed> looks = new ArrayList<>();
    ShotTrial trial = shot.trial();
    for (int i = 0; i <= LOOKS; i++) {
      for (int j = 0; j <= LOOKS; j++) {
        LaunchAim aim = look(aims, (double) i / LOOKS, (double) j / LOOKS, bearing);
        if (trial.margin(aim) > 0) {
          looks.add(new Climbed(aim, rough.of(aim)));
        }
      }
    }
    if (looks.isEmpty()) {
      looks.add(new Climbed(look(aims, 0.5, 0.5, bearing), 0));
    }
    looks.sort(Comparator.comparingDouble(Climbed::chance).reversed());
    List<LaunchAim> starts = new ArrayList<>();
    for (Climbed each : looks) {
      if (starts.size() < CLIMBS && starts.stream().allMatch(o -> apart(o, each.aim()) > APART)) {
        starts.add(each.aim());
      }
    }
    return starts;
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

  /** Climbs round after round, until a round gains next to nothing. */
  private Climbed climb(LaunchAim start) {
    LaunchAim centre = start;
    double chance = 0;
    for (int round = 0; round < ROUNDS; round++) {
      LaunchAim from = centre;
      double side = ROUND_WIDTH * scatter.bearing();
      LaunchGrid.Span span =
          AimChance.span(around(from), from.bearing() - side, from.bearing() + side, scatter);
      LaunchGrid grid = new LaunchGrid(shot, span, LaunchGrid.Points.OVER_A_CLIMB);
      AimChance search = new AimChance(grid, scatter, AimChance.Fineness.SEARCH);
      SimplexClimb.Corner top =
          new SimplexClimb(at -> outside(at) ? -1 : search.of(moved(from, at)), DONE)
              .from(Vector.ZERO, FIRST_STEP);
      boolean there = round > 0 && top.height() < chance + GAIN;
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

  private BestAim answer(LaunchAim aim) {
    return new BestAim(aim, chanceOf(aim), scatter, clearance(aim), landing(aim));
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
    return new AimChance(grid, scatter, AimChance.Fineness.FINE).of(aim);
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
    double top = Net.heightAt(Length.metres(trial.netY())).metres();
    return trial.netZ() - trial.radius() - top;
  }

  private BestAim.Landing landing(LaunchAim aim) {
    ShotTrial trial = shot.trial();
    trial.margin(aim);
    return new BestAim.Landing(trial.landX(), trial.landY());
  }
}
