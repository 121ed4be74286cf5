package rallywright.engine.flight;

import java.util.Optional;
import rallywright.engine.court.Net;
import rallywright.engine.quantity.Length;

/**
 * Finds the best aim of a shot for a player who scatters.
 *
 * <p>For the maintainer: one grid of flights covers all aims within the window's bounds and their
 * scatter; steps along each axis in turn, halved when none helps, climb from several starts.
 */
public final class AimSearch {

  private static final int HALVINGS = 4;
  private static final int REFINEMENTS = 2;
  private static final double[] STARTS = {0.1, 0.3, 0.5, 0.8};
  private static final double NEARBY = Math.toRadians(1);

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
    LaunchBox aims = usable(window.bounds());
    AimChance search = chances(aims, bearing, AimChance.Fineness.SEARCH);
    LaunchAim best = start(window, aims, STARTS[0], bearing);
    for (double share : STARTS) {
      LaunchAim next = start(window, aims, share, bearing);
      best = search.of(next) > search.of(best) ? next : best;
    }
    best = climb(search, best, aims);
    for (int round = 0; round < REFINEMENTS; round++) {
      LaunchBox around = around(best);
      best = climb(chances(around, best.bearing(), AimChance.Fineness.SEARCH), best, around);
    }
    return Optional.of(answer(best));
  }

  private AimChance chances(LaunchBox aims, double bearing, AimChance.Fineness fineness) {
    double side = scatter.bearing();
    LaunchGrid.Span span = AimChance.span(aims, bearing - side, bearing + side, scatter);
    return new AimChance(new LaunchGrid(shot, span), scatter, fineness);
  }

  /** The aims within one spread of another. */
  private LaunchBox around(LaunchAim aim) {
    return new LaunchBox(
        aim.speed() * (1 - scatter.speed()),
        aim.speed() * (1 + scatter.speed()),
        aim.elevation() - scatter.elevation(),
        aim.elevation() + scatter.elevation());
  }

  private static LaunchAim start(
      LaunchWindow window, LaunchBox aims, double share, double bearing) {
    double elevation = aims.lowest() + share * (aims.highest() - aims.lowest());
    return new LaunchAim(middleSpeed(window, aims, elevation), elevation, bearing);
  }

  /** Lobs reach to 70° and beyond; a grid over all of it would be too coarse. */
  private static LaunchBox usable(LaunchBox bounds) {
    double highest = Math.min(bounds.highest(), Math.max(bounds.lowest() + 0.02, 0.75));
    return new LaunchBox(bounds.slowest(), bounds.fastest(), bounds.lowest(), highest);
  }

  /** The middle of the window's edge at an elevation, so that the climb begins on a slope. */
  private static double middleSpeed(LaunchWindow window, LaunchBox aims, double elevation) {
    return window.edges().stream()
        .map(LaunchWindow.Edge::from)
        .filter(corner -> Math.abs(corner.elevation() - elevation) < NEARBY)
        .mapToDouble(LaunchWindow.Corner::speed)
        .average()
        .orElse((aims.slowest() + aims.fastest()) / 2);
  }

  private LaunchAim climb(AimChance search, LaunchAim from, LaunchBox aims) {
    LaunchAim best = from;
    double chance = search.of(from);
    double step = 1;
    for (int halving = 0; halving < HALVINGS; halving++) {
      boolean better = true;
      while (better) {
        better = false;
        for (int move = 0; move < 8; move++) {
          LaunchAim next = moved(best, move, step, aims);
          double then = search.of(next);
          if (then > chance + 1e-6) {
            best = next;
            chance = then;
            better = true;
          }
        }
      }
      step /= 2;
    }
    return best;
  }

  /** Six moves along the axes and two that keep the length of the shot. */
  private LaunchAim moved(LaunchAim aim, int move, double step, LaunchBox aims) {
    double sign = move % 2 == 0 ? step : -step;
    double speed = aim.speed();
    double elevation = aim.elevation();
    double bearing = aim.bearing();
    switch (move / 2) {
      case 0 -> speed *= 1 + sign * scatter.speed();
      case 1 -> elevation += sign * scatter.elevation();
      case 2 -> bearing += sign * scatter.bearing();
      default -> {
        speed *= 1 - sign * scatter.speed();
        elevation += sign * scatter.elevation();
      }
    }
    return new LaunchAim(
        Math.min(aims.fastest(), Math.max(aims.slowest(), speed)),
        Math.min(aims.highest(), Math.max(aims.lowest(), elevation)),
        bearing);
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
    LaunchGrid grid = new LaunchGrid(shot, span);
    return new AimChance(grid, scatter, AimChance.Fineness.FINE).of(aim);
  }

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
