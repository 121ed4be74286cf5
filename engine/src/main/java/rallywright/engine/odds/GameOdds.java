package rallywright.engine.odds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rallywright.engine.odds.ScoreDistribution.ScoreChance;
import rallywright.engine.score.GameFormat;
import rallywright.engine.score.GameState;
import rallywright.engine.score.Score;
import rallywright.engine.score.Serve;
import rallywright.engine.score.Side;

/**
 * What the chances of a rally make of a game, exact, from its start or from any live score.
 *
 * <p><b>Card.</b> In: a {@link GameFormat} and the chances of one rally, the same in every rally.
 * Out: the chance to win, its slopes by each chance, the chances of all final scores, the number of
 * rallies. Valid: any chances from 0 to 1 that let the game end. Limits: rallies are taken to be
 * independent; form, nerves and tiredness within a game are not in it.
 *
 * <p>For the maintainer: a game is an absorbing chain of rallies ({@link GameChain}). Each score is
 * a small block of states that is solved by elimination ({@link BlockFactors}); a tie-break by two
 * is one block closed on itself, so it is never cut off. Backward sweep: {@link ChainValues};
 * forward sweep: {@link ChainVisits}. Sources: Kemeny and Snell, <em>Finite Markov Chains</em>
 * (from memory); DeFord and Ethier (2023), arXiv:2303.02942, for two servers.
 */
public final class GameOdds {

  /** Games that take more rallies than this on average get no quantiles. */
  public static final double MOST_RALLIES = 1e6;

  private final GameFormat format;
  private final RallyChances chances;
  private final ChainValues values;
  private final int start;
  private final int fold;

  private GameOdds(
      GameFormat format, RallyChances chances, ChainValues values, Score score, Serve serve) {
    this.format = format;
    this.chances = chances;
    this.values = values;
    this.start = values.chain().stateOf(score, serve);
    this.fold = values.chain().foldOf(score);
  }

  /**
   * The odds of a game from its first serve.
   *
   * @param format how the game is counted
   * @param chances the chances of a rally
   * @return the odds
   * @throws IllegalArgumentException if the game would never end, or chances of named servers are
   *     given for a format without two servers
   */
  public static GameOdds of(GameFormat format, RallyChances chances) {
    GameChain chain = GameChain.of(format, ServeOrder.of(format.scoring(), chances));
    ChainValues values = ChainValues.of(chain, chances);
    return new GameOdds(format, chances, values, format.start(), format.firstServe());
  }

  /**
   * The odds of the same game from a live score.
   *
   * @param score the points now
   * @param serve who serves the next rally
   * @return the odds of the rest
   * @throws IllegalArgumentException if the game cannot stand at that score
   */
  public GameOdds from(Score score, Serve serve) {
    return new GameOdds(format, chances, values, score, serve);
  }

  /**
   * The odds of the same game from a state of it.
   *
   * @param state a state in which the game goes on
   * @return the odds of the rest
   * @throws IllegalArgumentException if the game is over
   */
  public GameOdds from(GameState state) {
    return from(state.score(), state.serve());
  }

  /**
   * The chance to win the game.
   *
   * @param side the side asked for
   * @return from 0 to 1
   */
  public double winChance(Side side) {
    return side == Side.A ? values.winA(start) : 1 - values.winA(start);
  }

  /**
   * How A's win chance changes with each given chance: exact first derivatives, in the order of
   * {@link RallyChances#values()}.
   *
   * @return one slope for each given chance
   */
  public List<Double> winSlopes() {
    double[] slopes = ChainVisits.from(values, start).slopes(chances);
    return Arrays.stream(slopes).boxed().toList();
  }

  /**
   * Mean, standard deviation and third central moment of the number of rallies.
   *
   * @return the moments
   */
  public RallyMoments rallies() {
    double mean = values.mean(start);
    double variance = values.square(start) - mean * mean;
    double third = values.cube(start) - 3 * mean * values.square(start) + 2 * mean * mean * mean;
    return new RallyMoments(mean, Math.sqrt(Math.max(0, variance)), third);
  }

  /**
   * The chances of the numbers of rallies.
   *
   * @param coverage the share of games that must be covered, above 0 and below 1; quantiles up to
   *     it can be read off
   * @return the numbers of rallies
   * @throws IllegalArgumentException if the coverage lies outside, or a game takes more than a
   *     million rallies on average
   */
  public RallyLengths lengths(double coverage) {
    if (!(coverage > 0 && coverage < 1)) {
      throw new IllegalArgumentException(
          "The coverage (%s) must lie between 0 and 1. Maybe 0.9.".formatted(coverage));
    }
    refusalOfLength()
        .ifPresent(
            sentence -> {
              throw new IllegalArgumentException(sentence);
            });
    return RallyLengths.of(values, start, coverage);
  }

  /**
   * Why the numbers of rallies cannot be listed.
   *
   * @return a sentence, or empty if they can
   */
  public Optional<String> refusalOfLength() {
    double mean = values.mean(start);
    if (mean <= MOST_RALLIES) {
      return Optional.empty();
    }
    return Optional.of(
        "The chances make a game of %.0f rallies on average; %.0f at most are allowed."
                .formatted(mean, MOST_RALLIES)
            + " Maybe a chance near 0 should be larger.");
  }

  /**
   * The chances of all final scores.
   *
   * @return the scores and what is left over of a tie-break
   */
  public ScoreDistribution scores() {
    ChainVisits.ScoreTally tally = ChainVisits.from(values, start).tally(fold);
    List<ScoreChance> listed = new ArrayList<>();
    tally.chances().forEach((score, chance) -> listed.add(new ScoreChance(score, chance)));
    Comparator<ScoreChance> winnerFirst =
        Comparator.comparing(entry -> format.goal().winnerAt(entry.score()).orElseThrow());
    listed.sort(
        winnerFirst
            .thenComparing(entry -> entry.score().total())
            .thenComparing(entry -> entry.score().a()));
    return new ScoreDistribution(listed, tally.tail());
  }

  /**
   * How many states the chain of this game has, both ends counted.
   *
   * @return the number of states
   */
  public int states() {
    return values.chain().states() + 2;
  }
}
