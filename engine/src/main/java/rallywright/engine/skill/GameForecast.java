package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rallywright.engine.quantity.Probability;
import rallywright.engine.score.Goal;
import rallywright.engine.score.Score;
import rallywright.engine.score.Side;

/**
 * A game between players whose skills are not known exactly: what the chances of its rallies may
 * be, and what to expect of anything that follows from them.
 *
 * <p>Method: the two edges (A serves, B serves) are jointly normal after the evidence; expectations
 * are sums over a grid of normal points (Gauss and Hermite), along one axis where one edge decides
 * the other, else along two. Nothing is drawn at random.
 */
public final class GameForecast {
  private static final NormalGrid ALONG_ONE = NormalGrid.of(17);
  private static final NormalGrid ALONG_TWO = NormalGrid.of(9);

  /** A variance below this is round-off: one edge decides the other. */
  private static final double DECIDED = 1e-10;

  /** How likely a pair of rally chances is. */
  private record Weighted(double serveA, double serveB, double weight) {}

  private final Estimate whenA;
  private final Estimate whenB;
  private final List<Weighted> grid = new ArrayList<>();

  private GameForecast(Estimate whenA, Estimate whenB, double covariance) {
    this.whenA = whenA;
    this.whenB = whenB;
    double slope = whenA.sd() > 0 ? covariance / whenA.sd() : 0;
    double rest = whenB.sd() * whenB.sd() - slope * slope;
    boolean decided = rest < DECIDED;
    NormalGrid first = decided ? ALONG_ONE : ALONG_TWO;
    for (int i = 0; i < first.count(); i++) {
      double etaA = whenA.mean() + whenA.sd() * first.point(i);
      double etaB = whenB.mean() + slope * first.point(i);
      if (decided) {
        add(etaA, etaB, first.weight(i));
      } else {
        for (int j = 0; j < ALONG_TWO.count(); j++) {
          double away = Math.sqrt(rest) * ALONG_TWO.point(j);
          add(etaA, etaB + away, first.weight(i) * ALONG_TWO.weight(j));
        }
      }
    }
  }

  private void add(double etaA, double etaB, double weight) {
    grid.add(new Weighted(Logistic.chance(etaA), Logistic.chance(etaB), weight));
  }

  /**
   * A game of a drill in a week.
   *
   * @param posterior what is known
   * @param contest the drill
   * @param sides who would play
   * @param week when; a week that was fitted, or any later one
   * @return the forecast
   */
  public static GameForecast of(Posterior posterior, Contest contest, Sides sides, int week) {
    SkillSum whenA = contest.serverEdge(sides, week, Side.A);
    SkillSum whenB = contest.serverEdge(sides, week, Side.B);
    return new GameForecast(
        posterior.of(whenA), posterior.of(whenB), posterior.covariance(whenA, whenB));
  }

  /**
   * The edge of the serving side in a rally.
   *
   * @param server who serves
   * @return logit of the chance that the server's side wins
   */
  public Estimate serverEdge(Side server) {
    return server == Side.A ? whenA : whenB;
  }

  /**
   * What to expect of a number that follows from the chances of a rally.
   *
   * @param outcome the number, for known chances
   * @return its mean over what the chances may be
   */
  public double expect(RallyOutcome outcome) {
    double sum = 0;
    for (Weighted point : grid) {
      sum += point.weight * outcome.given(point.serveA, point.serveB);
    }
    return sum;
  }

  /**
   * The scores to expect.
   *
   * @param outcome the scores, for known chances
   * @return their chances over what the chances of a rally may be
   */
  public ScoreForecast scores(ScoreOutcome outcome) {
    Map<Score, Double> chances = new HashMap<>();
    for (Weighted point : grid) {
      outcome
          .given(point.serveA, point.serveB)
          .forEach((score, chance) -> chances.merge(score, chance * point.weight, Double::sum));
    }
    return new ScoreForecast(chances);
  }

  /**
   * A game with a head start.
   *
   * @param start the points given
   * @param winA the chance of A to win from there, as far as is known
   */
  public record HeadStart(Score start, double winA) {}

  /** The win chance of A from a start. */
  @FunctionalInterface
  public interface WinChanceFrom {
    /**
     * The win chance for known chances of a rally.
     *
     * @param start the points given
     * @return how it follows from the chances of a rally
     */
    RallyOutcome of(Score start);
  }

  /**
   * The head start that brings A's chance to win closest to a wish: one side starts at 0, the other
   * below its target; of equally good ones the smaller, so that games stay long.
   *
   * @param goal when the game is won
   * @param wish the chance wished for A, usually one half
   * @param winChance how the win chance follows from a start and the chances of a rally
   * @return the best head start
   */
  public HeadStart fairHeadStart(Goal goal, Probability wish, WinChanceFrom winChance) {
    HeadStart best = new HeadStart(Score.LOVE_ALL, expect(winChance.of(Score.LOVE_ALL)));
    for (Side ahead : Side.values()) {
      for (int points = 1; points < goal.targets().of(ahead); points++) {
        Score start = ahead == Side.A ? Score.of(points, 0) : Score.of(0, points);
        HeadStart candidate = new HeadStart(start, expect(winChance.of(start)));
        if (isBetter(candidate, best, wish.value())) {
          best = candidate;
        }
      }
    }
    return best;
  }

  private static boolean isBetter(HeadStart candidate, HeadStart best, double wish) {
    double gain = Math.abs(best.winA - wish) - Math.abs(candidate.winA - wish);
    return gain > DECIDED || (gain > -DECIDED && candidate.start.total() < best.start.total());
  }
}
