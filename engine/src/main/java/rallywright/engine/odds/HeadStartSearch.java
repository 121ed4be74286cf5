package rallywright.engine.odds;

import java.util.Optional;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.odds.FairGame.UnequalTargets;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/**
 * What brings the chance to win a game closest to a wish: a head start or, if none comes within
 * five points of a hundred, targets that differ.
 *
 * <p>One side starts at 0, the other below the target; of two equally good head starts the smaller
 * is taken, so that games stay long. Unequal targets leave the weaker side the target of the format
 * and raise the other one's, up to {@value #MOST_TARGETS} times.
 */
public final class HeadStartSearch {

  /** A head start that comes this near to the wish is good enough. */
  public static final double NEAR_ENOUGH = 0.05;

  /** How many times its target the stronger side may be asked for (assumption of this project). */
  public static final int MOST_TARGETS = 4;

  /** Two head starts are equally good if their distances differ by no more than rounding. */
  private static final double ROUNDING = 1e-12;

  private HeadStartSearch() {}

  /**
   * The fairest way to play a format.
   *
   * @param format how the game is counted; its own head start is left aside
   * @param chances the chances of a rally
   * @param wish the chance with which A should win
   * @return the best head start and, if needed, the best unequal targets
   * @throws IllegalArgumentException if the game would never end
   */
  public static FairGame fairest(GameFormat format, RallyChances chances, Probability wish) {
    HeadStart best = headStart(format, chances, wish);
    boolean near = Math.abs(best.winA() - wish.value()) <= NEAR_ENOUGH + ROUNDING;
    Optional<UnequalTargets> targets =
        near || format.goal().isUnequal()
            ? Optional.empty()
            : Optional.of(targets(format, chances, wish));
    return new FairGame(best, targets);
  }

  private static HeadStart headStart(GameFormat format, RallyChances chances, Probability wish) {
    GameOdds odds = GameOdds.of(format.withStart(Score.LOVE_ALL), chances);
    HeadStart best = at(odds, format, Score.LOVE_ALL);
    int most = Math.max(format.goal().targets().a(), format.goal().targets().b());
    for (int points = 1; points < most; points++) {
      for (Side side : Side.values()) {
        if (points < format.goal().targets().of(side)) {
          Score start = side == Side.A ? Score.of(points, 0) : Score.of(0, points);
          HeadStart next = at(odds, format, start);
          best = closer(next.winA(), best.winA(), wish) ? next : best;
        }
      }
    }
    return best;
  }

  private static HeadStart at(GameOdds odds, GameFormat format, Score start) {
    double winA = odds.from(start, format.firstServe()).winChance(Side.A);
    return new HeadStart(start.a(), start.b(), winA);
  }

  private static UnequalTargets targets(GameFormat format, RallyChances chances, Probability wish) {
    int target = format.goal().targets().a();
    int most = Math.min(Goal.MAX_TARGET, MOST_TARGETS * target);
    UnequalTargets best = at(format, chances, target, target);
    boolean aTooStrong = best.winA() > wish.value();
    for (int raised = target + 1; raised <= most; raised++) {
      UnequalTargets next =
          aTooStrong ? at(format, chances, raised, target) : at(format, chances, target, raised);
      best = closer(next.winA(), best.winA(), wish) ? next : best;
      if (aTooStrong == (next.winA() <= wish.value())) {
        break;
      }
    }
    return best;
  }

  private static UnequalTargets at(GameFormat format, RallyChances chances, int a, int b) {
    GameFormat unequal = format.withStart(Score.LOVE_ALL).withGoal(Goal.unequal(a, b));
    return new UnequalTargets(a, b, GameOdds.of(unequal, chances).winChance(Side.A));
  }

  private static boolean closer(double next, double best, Probability wish) {
    return Math.abs(next - wish.value()) < Math.abs(best - wish.value()) - ROUNDING;
  }
}
