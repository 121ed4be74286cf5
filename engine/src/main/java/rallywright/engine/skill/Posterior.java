package rallywright.engine.skill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

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
  private final ClubSystem system;
  private final LaplaceFit fit;
  private final Moments moments;

  Posterior(SkillPrior prior, ClubSystem system, LaplaceFit fit, Moments moments) {
    this.club = system.club();
    this.prior = prior;
    this.system = system;
    this.fit = fit;
    this.moments = moments;
  }

  /** Whether a club is this one, perhaps with more players, under the same prior. */
  boolean canGrowInto(Club grown, SkillPrior samePrior) {
    return prior.equals(samePrior)
        && club.skills().equals(grown.skills())
        && club.effects().equals(grown.effects())
        && club.gains().equals(grown.gains())
        && club.entrants().size() <= grown.entrants().size();
  }

  ClubSystem system() {
    return system;
  }

  LaplaceFit fit() {
    return fit;
  }

  Moments moments() {
    return moments;
  }

  private int groupOf(SkillSum.Key key) {
    return system.partition().of(key.player());
  }

  private Place place(SkillSum.Key key) {
    return system.group(groupOf(key)).layout().place(key);
  }

  /**
   * One skill of one player in one week.
   *
   * @param key which; a week that was fitted, or any later one
   * @return mean and SD in logits
   */
  public Estimate skill(SkillSum.Key key) {
    int group = groupOf(key);
    Layout layout = system.group(group).layout();
    Place place = layout.place(key);
    if (place.isBetween() || practisedSince(place, key, layout)) {
      return of(SkillSum.skill(key));
    }
    int latent = layout.graph().start(place.before()) + key.skill();
    double variance = moments.spread(group).variance(latent) + wander(key, key);
    return new Estimate(moments.mean(group)[latent], Math.sqrt(variance));
  }

  /** Whether a gain moves the skill on after the last node. */
  private static boolean practisedSince(Place place, SkillSum.Key key, Layout layout) {
    return !layout.drift().between(key.player(), place.weekBefore(), key.week()).isEmpty();
  }

  /**
   * One shared effect.
   *
   * @param effect its number
   * @return mean and SD in logits; SD 0 where it is known
   */
  public Estimate effect(int effect) {
    return shared(system.border().effect(effect), club.effects().get(effect));
  }

  /**
   * What an effective minute of a drill brings: how much faster the skills of those rose who did
   * more of it. An observation; it does not show the cause.
   *
   * @param gain number of the drill's gain
   * @return mean and SD in logits a minute; SD 0 where it is known
   */
  public Estimate gain(int gain) {
    return shared(system.border().gain(gain), club.gains().get(gain));
  }

  /**
   * What was believed of a gain before any score.
   *
   * @param gain number of the drill's gain
   * @return prior mean and SD in logits a minute
   */
  public Estimate gainBefore(int gain) {
    SharedEffect believed = club.gains().get(gain);
    return new Estimate(believed.mean(), believed.sd());
  }

  private Estimate shared(int number, SharedEffect believed) {
    return number < 0
        ? new Estimate(believed.mean(), 0)
        : new Estimate(moments.borderMean(number), Math.sqrt(moments.borderVariance(number)));
  }

  /**
   * The most likely value of a skill (the posterior mode), with the spread of the Gaussian there.
   *
   * @param key which; a week that was fitted, or any later one
   * @return mode and SD in logits
   */
  public Estimate skillMode(SkillSum.Key key) {
    return mode(SkillSum.skill(key));
  }

  /**
   * The most likely value of a sum alone, where its spread is not asked for.
   *
   * @param sum which
   * @return logits
   */
  public double mostLikely(SkillSum sum) {
    return dot(sum, fit::settled);
  }

  /**
   * The most likely value of a shared effect.
   *
   * @param effect its number
   * @return mode and SD in logits; SD 0 where it is known
   */
  public Estimate effectMode(int effect) {
    int number = system.border().effect(effect);
    return number < 0
        ? effect(effect)
        : new Estimate(fit.point().border()[number], Math.sqrt(moments.borderVariance(number)));
  }

  /**
   * The most likely value of a sum (the posterior mode), with the spread of the Gaussian there.
   *
   * @param sum which
   * @return mode and SD in logits
   */
  public Estimate mode(SkillSum sum) {
    return new Estimate(dot(sum, fit::settled), Math.sqrt(variance(sum)));
  }

  /**
   * Any weighted sum of skills and effects.
   *
   * @param sum which
   * @return mean and SD in logits
   */
  public Estimate of(SkillSum sum) {
    return new Estimate(dot(sum, moments::mean), Math.sqrt(variance(sum)));
  }

  /**
   * How two sums vary together.
   *
   * @param sum one
   * @param other another, of the same or of another week
   * @return covariance in logits squared
   */
  public double covariance(SkillSum sum, SkillSum other) {
    return half(sum).dot(half(other)) + wander(sum, other);
  }

  /**
   * Two sums together, such as one skill of one player in two weeks.
   *
   * @param first one
   * @param second another
   * @return their means, SDs and covariance
   */
  public JointEstimate joint(SkillSum first, SkillSum second) {
    return new JointEstimate(of(first), of(second), covariance(first, second));
  }

  private double variance(SkillSum sum) {
    HalfSolve half = half(sum);
    return half.dot(half) + wander(sum, sum);
  }

  private HalfSolve half(SkillSum sum) {
    return HalfSolve.of(system.rows(sum), fit.curvature());
  }

  private double dot(SkillSum sum, IntFunction<double[]> values) {
    double total = 0;
    for (Map.Entry<Integer, SparseRow> row : system.rows(sum).entrySet()) {
      total += row.getValue().dot(values.apply(row.getKey()));
    }
    return total;
  }

  /**
   * By how much a skill rose.
   *
   * @param key the skill in the later week
   * @param since the earlier week
   * @return later minus earlier, mean and SD in logits
   */
  public Estimate rise(SkillSum.Key key, int since) {
    return of(SkillSum.rise(key, since));
  }

  /**
   * The chance that a skill is higher than it was.
   *
   * @param key the skill in the later week
   * @param since the earlier week
   * @return from 0 to 1
   */
  public double chanceOfRise(SkillSum.Key key, int since) {
    return rise(key, since).chanceAbove(0);
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
    HalfSolve halfOfTarget = half(target);
    List<HalfSolve> halves = planned.stream().map(rallies -> half(rallies.edge())).toList();
    for (int i = 0; i < count; i++) {
      SkillSum edge = planned.get(i).edge();
      shared[i] = halves.get(i).dot(halfOfTarget) + wander(edge, target);
      for (int j = 0; j <= i; j++) {
        SkillSum other = planned.get(j).edge();
        among[i][j] = halves.get(i).dot(halves.get(j)) + wander(edge, other);
        among[j][i] = among[i][j];
      }
    }
    double drop = 0;
    for (int i = 0; i < count; i++) {
      double edge = dot(planned.get(i).edge(), moments::mean);
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

  /** What the random walk adds to a covariance between nodes and after the last one. */
  private double wander(SkillSum sum, SkillSum other) {
    List<Weighted> free = offNodes(sum);
    if (free.isEmpty()) {
      return 0;
    }
    double added = 0;
    for (Weighted one : free) {
      for (Weighted two : offNodes(other)) {
        added += one.weight * two.weight * wander(one.key, two.key);
      }
    }
    return added;
  }

  private List<Weighted> offNodes(SkillSum sum) {
    List<Weighted> free = new ArrayList<>();
    sum.forEachSkill(
        (key, weight) -> {
          if (place(key).weekBefore() < key.week()) {
            free.add(new Weighted(key, weight));
          }
        });
    return free;
  }

  private double wander(SkillSum.Key one, SkillSum.Key two) {
    if (one.player() != two.player() || one.skill() != two.skill()) {
      return 0;
    }
    double weeks = place(one).freeWeeksWith(place(two));
    return weeks * prior.weeklySd() * prior.weeklySd();
  }
}
