package rallywright.engine.odds;

import java.util.HashMap;
import java.util.Map;
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
 * is taken, so that games stay long. With unequal targets, won by one, the weaker side needs at
 * most the target of the format, the stronger at least that and at most {@value #MOST_TARGETS}
 * times as many; of equally good pairs the one with the larger target for the weaker side is taken.
 */
public final class HeadStartSearch {

  /** A head start that comes this near to the wish is good enough. */
  public static final double NEAR_ENOUGH = 0.05;

  /** How many times its target the stronger side may be asked for (assumption of this project). */
  public static final int MOST_TARGETS = 2;

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
    if (near || format.goal().isUnequal()) {
      return new FairGame(best, Optional.empty());
    }
    UnequalTargets targets = search.targets();
    boolean better = search.closer(targets.winA(), best.winA());
    return new FairGame(best, better ? Optional.of(targets) : Optional.empty());
  }

  /**
   * The best head start alone, however far from the wish: for those who never play to unequal
   * targets.
   *
   * @param format how the game is counted; its own head start is left aside
   * @param chances the chances of a rally
   * @param wish the chance with which A should win
   * @return the best head start
   * @throws IllegalArgumentException if the game would never end
   */
  public static HeadStart bestHeadStart(GameFormat format, RallyChances chances, Probability wish) {
    return new HeadStartSearch(format, chances, wish, start -> format.firstServe()).headStart();
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

  /** All pairs of targets are read off one long game, entered where the points still needed fit. */
  private UnequalTargets targets() {
    double level =
        at(GameOdds.of(format.withStart(Score.LOVE_ALL), chances), Score.LOVE_ALL).winA();
    Side strong = level > wish.value() ? Side.A : Side.B;
    int target = format.goal().targets().a();
    int most = Math.min(Goal.MAX_TARGET, MOST_TARGETS * target);
    LongGame game =
        new LongGame(strong == Side.A ? Score.of(most, target) : Score.of(target, most));
    UnequalTargets best = game.at(target, target);
    for (int weaker = target; weaker >= 1; weaker--) {
      for (int stronger = target; stronger <= most; stronger++) {
        UnequalTargets next =
            strong == Side.A ? game.at(stronger, weaker) : game.at(weaker, stronger);
        best = closer(next.winA(), best.winA()) ? next : best;
      }
    }
    return best;
  }

  /**
   * A game so long that every pair of targets is the end of it. Entered after an odd number of
   * points it finds the partners of that side exchanged, so they are exchanged beforehand.
   */
  private final class LongGame {

    private final Score targets;
    private final Map<Score, GameOdds> odds = new HashMap<>();

    private LongGame(Score targets) {
      this.targets = targets;
    }

    UnequalTargets at(int a, int b) {
      Score entry = Score.of(targets.a() - a, targets.b() - b);
      Serve first = firstServe.apply(Score.LOVE_ALL);
      boolean exchanged = entry.of(first.side()) % 2 == 1;
      Serve serve =
          exchanged ? new Serve(first.side(), first.number(), first.server().other()) : first;
      double winA =
          odds.computeIfAbsent(Score.of(entry.a() % 2, entry.b() % 2), this::solve)
              .from(entry, serve)
              .winChance(Side.A);
      return new UnequalTargets(a, b, winA);
    }

    private GameOdds solve(Score oddPoints) {
      RallyChances own = chances;
      for (Side side : Side.values()) {
        own = oddPoints.of(side) == 1 ? own.withPartnersExchanged(side) : own;
      }
      Goal goal = Goal.unequal(targets.a(), targets.b());
      return GameOdds.of(format.withStart(Score.LOVE_ALL).withGoal(goal), own);
    }
  }

  private boolean closer(double next, double best) {
    return Math.abs(next - wish.value()) < Math.abs(best - wish.value()) - ROUNDING;
  }
}
