package rallywright.engine.odds;

import java.util.Optional;
import java.util.function.Function;
import rallywright.engine.odds.FairGame.HeadStart;
import rallywright.engine.odds.FairGame.UnequalTargets;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.BySide;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Serve;
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

  private final GameFormat format;
  private final RallyChances chances;
  private final Probability wish;
  private final Function<Score, Serve> firstServe;

  private HeadStartSearch(
      GameFormat format,
      RallyChances chances,
      Probability wish,
      Function<Score, Serve> firstServe) {
    this.format = format;
    this.chances = chances;
    this.wish = wish;
    this.firstServe = firstServe;
  }

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
    return fairest(format, chances, wish, start -> format.firstServe());
  }

  /**
   * The fairest way to play a format that is begun by another serve than its usual one.
   *
   * @param format how the game is counted; its own head start is left aside
   * @param chances the chances of a rally
   * @param wish the chance with which A should win
   * @param firstServe who serves first, from each head start
   * @return the best head start and, if needed, the best unequal targets
   * @throws IllegalArgumentException if the game would never end
   */
  public static FairGame fairest(
      GameFormat format,
      RallyChances chances,
      Probability wish,
      Function<Score, Serve> firstServe) {
    HeadStartSearch search = new HeadStartSearch(format, chances, wish, firstServe);
    HeadStart best = search.headStart();
    boolean near = Math.abs(best.winA() - wish.value()) <= NEAR_ENOUGH + ROUNDING;
    Optional<UnequalTargets> targets =
        near || format.goal().isUnequal() ? Optional.empty() : Optional.of(search.targets());
    return new FairGame(best, targets);
  }

  private HeadStart headStart() {
    GameOdds odds = GameOdds.of(format.withStart(Score.LOVE_ALL), chances);
    HeadStart best = at(odds, Score.LOVE_ALL);
    BySide<Integer> targets = format.goal().targets();
    for (int points = 1; points < Math.max(targets.a(), targets.b()); points++) {
      for (Side side : Side.values()) {
        if (points < targets.of(side)) {
          Score start = side == Side.A ? Score.of(points, 0) : Score.of(0, points);
          HeadStart next = at(odds, start);
          best = closer(next.winA(), best.winA()) ? next : best;
        }
      }
    }
    return best;
  }

  private HeadStart at(GameOdds odds, Score start) {
    double winA = odds.from(start, firstServe.apply(start)).winChance(Side.A);
    return new HeadStart(start.a(), start.b(), winA);
  }

  private UnequalTargets targets() {
    int target = format.goal().targets().a();
    int most = Math.min(Goal.MAX_TARGET, MOST_TARGETS * target);
    UnequalTargets best = at(target, target);
    boolean strongA = best.winA() > wish.value();
    for (int raised = target + 1; raised <= most; raised++) {
      UnequalTargets next = strongA ? at(raised, target) : at(target, raised);
      best = closer(next.winA(), best.winA()) ? next : best;
      boolean passed = strongA ? next.winA() <= wish.value() : next.winA() >= wish.value();
      if (passed) {
        break;
      }
    }
    return best;
  }

  private UnequalTargets at(int a, int b) {
    GameFormat unequal = format.withStart(Score.LOVE_ALL).withGoal(Goal.unequal(a, b));
    GameOdds odds = GameOdds.of(unequal, chances);
    Serve first = firstServe.apply(Score.LOVE_ALL);
    return new UnequalTargets(a, b, odds.from(Score.LOVE_ALL, first).winChance(Side.A));
  }

  private boolean closer(double next, double best) {
    return Math.abs(next - wish.value()) < Math.abs(best - wish.value()) - ROUNDING;
  }
}
