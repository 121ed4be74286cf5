package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;

/**
 * What is believed after the evidence: for every skill of every player in every week, and for every
 * shared effect, a mean and a spread in logits, and how they hang together.
 *
 * <p>Means are the mode corrected by the skewness of the evidence to second order; spreads are
 * those of the Gaussian at the mode. A single skill is looked up; any other sum costs half a solve
 * with the factor. Weeks after the last one fitted have the last mean and a spread that grows.
 */
public final class Posterior {
  private final Club club;
  private final SkillPrior prior;
  private final Layout layout;
  private final LaplaceFit fit;
  private final Moments moments;
  private final double[] mode;

  Posterior(Club club, SkillPrior prior, Layout layout, LaplaceFit fit) {
    this.club = club;
    this.prior = prior;
    this.layout = layout;
    this.fit = fit;
    this.moments = Moments.of(fit);
    this.mode = fit.mode();
  }

  /**
   * One skill of one player in one week.
   *
   * @param key which; a week that was fitted, or any later one
   * @return mean and SD in logits
   */
  public Estimate skill(SkillSum.Key key) {
    int latent = layout.graph().start(layout.nodeAt(key)) + key.skill();
    double variance = moments.variance(latent) + wander(key, key);
    return new Estimate(moments.mean()[latent], Math.sqrt(variance));
  }

  /**
   * One shared effect.
   *
   * @param effect its number
   * @return mean and SD in logits; SD 0 where it is known
   */
  public Estimate effect(int effect) {
    int latent = layout.effectLatent(effect);
    return latent < 0
        ? new Estimate(club.effects().get(effect).mean(), 0)
        : new Estimate(moments.mean()[latent], Math.sqrt(moments.variance(latent)));
  }

  /**
   * The most likely value of a skill (the posterior mode), with the spread of the Gaussian there.
   *
   * @param key which; a week that was fitted, or any later one
   * @return mode and SD in logits
   */
  public Estimate skillMode(SkillSum.Key key) {
    int latent = layout.graph().start(layout.nodeAt(key)) + key.skill();
    return new Estimate(mode[latent], skill(key).sd());
  }

  /**
   * The most likely value of a shared effect.
   *
   * @param effect its number
   * @return mode and SD in logits; SD 0 where it is known
   */
  public Estimate effectMode(int effect) {
    int latent = layout.effectLatent(effect);
    return latent < 0
        ? effect(effect)
        : new Estimate(mode[latent], Math.sqrt(moments.variance(latent)));
  }

  /**
   * The most likely value of a sum (the posterior mode), with the spread of the Gaussian there.
   *
   * @param sum which
   * @return mode and SD in logits
   */
  public Estimate mode(SkillSum sum) {
    return new Estimate(layout.row(sum).dot(mode), Math.sqrt(variance(sum)));
  }

  /**
   * Any weighted sum of skills and effects.
   *
   * @param sum which
   * @return mean and SD in logits
   */
  public Estimate of(SkillSum sum) {
    return new Estimate(layout.row(sum).dot(moments.mean()), Math.sqrt(variance(sum)));
  }

  /**
   * How two sums vary together.
   *
   * @param sum one
   * @param other another, of the same or of another week
   * @return covariance in logits squared
   */
  public double covariance(SkillSum sum, SkillSum other) {
    return dot(half(sum), half(other)) + wander(sum, other);
  }

  private double variance(SkillSum sum) {
    double[] half = half(sum);
    return dot(half, half) + wander(sum, sum);
  }

  private double[] half(SkillSum sum) {
    return fit.factor().half(layout.row(sum).dense(layout.graph().latents()));
  }

  private static double dot(double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * y[i];
    }
    return sum;
  }

  /**
   * The chance that a skill is higher than it was.
   *
   * @param key the skill in the later week
   * @param since the earlier week
   * @return from 0 to 1
   */
  public double chanceOfRise(SkillSum.Key key, int since) {
    return of(SkillSum.rise(key, since)).chanceAbove(0);
  }

  /**
   * By how much rallies would narrow what is known about a sum, before they are played: the
   * variance that they are expected to take away, all of them together. Divide by the minutes that
   * they take to find what tells most for the time. Method: Gaussian conditioning on one kind of
   * rally after the other, each rally with information p(1 − p).
   *
   * @param target what one wants to know
   * @param planned the rallies of one game or of several, by kind
   * @return expected drop of the variance of the target, in logits squared, from 0 to that variance
   */
  public double expectedVarianceDrop(SkillSum target, List<PlannedRallies> planned) {
    int count = planned.size();
    double[] shared = new double[count];
    double[][] among = new double[count][count];
    double[] halfOfTarget = half(target);
    List<double[]> halves = planned.stream().map(rallies -> half(rallies.edge())).toList();
    for (int i = 0; i < count; i++) {
      SkillSum edge = planned.get(i).edge();
      shared[i] = dot(halves.get(i), halfOfTarget) + wander(edge, target);
      for (int j = 0; j <= i; j++) {
        SkillSum other = planned.get(j).edge();
        among[i][j] = dot(halves.get(i), halves.get(j)) + wander(edge, other);
        among[j][i] = among[i][j];
      }
    }
    double drop = 0;
    for (int i = 0; i < count; i++) {
      double edge = layout.row(planned.get(i).edge()).dot(moments.mean());
      double information =
          planned.get(i).rallies() * Logistic.chance(edge) * Logistic.chance(-edge);
      double gain = information / (1 + information * among[i][i]);
      drop += gain * shared[i] * shared[i];
      condition(among, shared, i, gain);
    }
    return drop;
  }

  /** Takes what row i tells out of the later rows and of what they share with the target. */
  private static void condition(double[][] among, double[] shared, int i, double gain) {
    for (int j = i + 1; j < shared.length; j++) {
      shared[j] -= gain * among[j][i] * shared[i];
      for (int k = i + 1; k < shared.length; k++) {
        among[j][k] -= gain * among[j][i] * among[i][k];
      }
    }
  }

  /**
   * Log marginal likelihood of the evidence by Laplace, without binomial coefficients.
   *
   * @return natural logarithm
   */
  public double logEvidence() {
    return fit.logEvidence();
  }

  private record Weighted(SkillSum.Key key, double weight) {}

  /** What the random walk adds to a covariance after the last fitted week. */
  private double wander(SkillSum sum, SkillSum other) {
    List<Weighted> later = later(sum);
    if (later.isEmpty()) {
      return 0;
    }
    double added = 0;
    for (Weighted one : later) {
      for (Weighted two : later(other)) {
        added += one.weight * two.weight * wander(one.key, two.key);
      }
    }
    return added;
  }

  private List<Weighted> later(SkillSum sum) {
    List<Weighted> later = new ArrayList<>();
    sum.forEachSkill(
        (key, weight) -> {
          if (key.week() > layout.chain(key.player()).lastKey()) {
            later.add(new Weighted(key, weight));
          }
        });
    return later;
  }

  private double wander(SkillSum.Key one, SkillSum.Key two) {
    if (one.player() != two.player() || one.skill() != two.skill()) {
      return 0;
    }
    int weeks = Math.min(one.week(), two.week()) - layout.chain(one.player()).lastKey();
    return Math.max(0, weeks) * prior.weeklySd() * prior.weeklySd();
  }
}
