package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import rallywright.engine.score.Side;

/**
 * The model of a club: what is believed before the first score, and how scores speak of it.
 *
 * <p>What: θ of a player, skill and week, in logits; a random walk over weeks; a rally is won with
 * chance 1/(1+e^−η), η = effects + weights·θ of one side − weights·θ of the other, a pair counting
 * as the mean of two. In: a {@link Club}, {@link Evidence}, a {@link SkillPrior}. Out: a {@link
 * Posterior}, with means and spreads in logits. Limits: rallies of one game are taken as
 * independent given the skills; only differences between players show in games, so that progress
 * which all make alike shows in yardsticks alone; spreads are those of a Gaussian at the mode.
 *
 * <p>For the maintainer: the core ({@link LaplaceFit}) knows nothing of players. It takes a
 * Gaussian prior with a sparse precision and sparse rows, so that published examples run through
 * the same code. The trade made: exact elimination in the order of weeks ({@link BlockCholesky}). A
 * club of some tens of players costs parts of a second; hundreds of players who all meet each other
 * would need another way to solve, which can replace the factor inside without touching this class.
 */
public final class SkillModel {
  private final Club club;
  private final SkillPrior prior;

  private SkillModel(Club club, SkillPrior prior) {
    this.club = club;
    this.prior = prior;
  }

  /**
   * The model of a club.
   *
   * @param club players, skills and effects
   * @param prior what is believed before the first score
   * @return the model
   */
  public static SkillModel of(Club club, SkillPrior prior) {
    return new SkillModel(club, prior);
  }

  /**
   * What the evidence says.
   *
   * @param evidence games and yardsticks, in any order
   * @param weeks weeks for which estimates of all players are wanted, whether or not they played
   * @return estimates for these weeks, for all weeks with evidence of the player, and for any later
   *     week
   * @throws IllegalArgumentException if evidence names a player, skill or effect that the club does
   *     not have, or a week before the first of a player
   */
  public Posterior fit(List<? extends Evidence> evidence, Set<Integer> weeks) {
    EvidenceCheck.check(club, evidence);
    Layout layout = Layout.of(club, evidence, weeks);
    List<Term> terms = new ArrayList<>();
    for (Evidence piece : evidence) {
      if (!(piece instanceof Practice)) {
        terms.add(term(layout, piece));
      }
    }
    LaplaceFit fit = LaplaceFit.of(priorOver(layout), terms);
    return new Posterior(club, prior, layout, fit);
  }

  private static Term term(Layout layout, Evidence evidence) {
    if (evidence instanceof YardstickResult result) {
      return new Term(
          new BinomialLikelihood(result.hits(), result.balls() - result.hits()),
          layout.row(result.predictor()));
    }
    return gameTerm(layout, (Game) evidence);
  }

  private static Term gameTerm(Layout layout, Game game) {
    SparseRow whenA = layout.row(game.serverEdge(Side.A));
    Result result = game.result();
    if (result instanceof RalliesWon won) {
      return new Term(new BinomialLikelihood(won.a(), won.b()), whenA);
    }
    SparseRow whenB = layout.row(game.serverEdge(Side.B));
    Likelihood likelihood =
        result instanceof ScorePath path
            ? new ChainLikelihood(path)
            : ServeLikelihood.of((RalliesByServer) result);
    return new Term(likelihood, whenA, whenB);
  }

  /** The prior of the model over the latents of a layout. */
  GaussianPrior priorOver(Layout layout) {
    BlockGraph graph = layout.graph();
    BlockMatrix precision = new BlockMatrix(graph);
    double[] mean = new double[graph.latents()];
    double logDet = 0;
    for (int player = 0; player < club.entrants().size(); player++) {
      logDet += addPlayer(layout, player, precision, mean);
    }
    for (int effect = 0; effect < club.effects().size(); effect++) {
      logDet += addShared(layout.effectLatent(effect), club.effects().get(effect), precision, mean);
    }
    for (int gain = 0; gain < club.gains().size(); gain++) {
      logDet += addShared(layout.gainLatent(gain), club.gains().get(gain), precision, mean);
    }
    return new GaussianPrior(mean, precision, logDet);
  }

  /** Adds what is believed of a shared effect; returns its log det. */
  private static double addShared(
      int latent, SharedEffect shared, BlockMatrix precision, double[] mean) {
    if (latent < 0) {
      return 0;
    }
    mean[latent] = shared.mean();
    precision.add(latent, latent, 1 / (shared.sd() * shared.sd()));
    return -2 * Math.log(shared.sd());
  }

  /** Adds the chain of a player; returns its log det. */
  private double addPlayer(Layout layout, int player, BlockMatrix precision, double[] mean) {
    Entrant entrant = club.entrants().get(player);
    int skills = club.skills().skills();
    double[] believed = new double[skills];
    Arrays.fill(believed, prior.mean(entrant));
    double logDet = 0;
    int before = -1;
    int weekBefore = entrant.firstWeek();
    for (Map.Entry<Integer, Integer> entry : layout.chain(player).entrySet()) {
      int start = layout.graph().start(entry.getValue());
      int weeks = entry.getKey() - weekBefore;
      NavigableMap<Integer, double[]> practised =
          layout.drift().between(player, weekBefore, entry.getKey());
      addMean(practised, believed);
      System.arraycopy(believed, 0, mean, start, skills);
      Step step = new Step(layout, before, start, practised);
      if (before < 0) {
        Dense covariance = Dense.of(prior.covariance(entrant, club.skills(), weeks));
        step.addTo(precision, covariance.inverse());
        logDet -= covariance.logDet();
      } else {
        double walk = 1 / (prior.weeklySd() * prior.weeklySd() * weeks);
        step.addTo(precision, Dense.diagonal(skills, walk));
        logDet += skills * Math.log(walk);
      }
      before = start;
      weekBefore = entry.getKey();
    }
    return logDet;
  }

  private void addMean(NavigableMap<Integer, double[]> practised, double[] mean) {
    practised.forEach(
        (gain, minutes) -> {
          for (int skill = 0; skill < mean.length; skill++) {
            mean[skill] += club.gains().get(gain).mean() * minutes[skill];
          }
        });
  }
}
