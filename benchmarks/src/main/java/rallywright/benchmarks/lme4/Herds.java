package rallywright.benchmarks.lme4;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.special.Gamma;
import rallywright.engine.skill.Club;
import rallywright.engine.skill.Entrant;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.SharedEffect;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillModel;
import rallywright.engine.skill.SkillPrior;
import rallywright.engine.skill.SkillSum;
import rallywright.engine.skill.YardstickResult;

/**
 * The data set cbpp of lme4 (Lesnoff and others, Preventive Veterinary Medicine 64, 2004) as
 * yardsticks: a herd is a player, a period a difficulty. Fixed effects are known difficulties whose
 * values are sought together with the spread, as lme4 does.
 *
 * @param results cases among the animals of a herd in a period
 */
record Herds(List<YardstickResult> results) {
  private static final int PERIODS = 4;
  private static final double FARTHEST = 6;

  Herds {
    results = List.copyOf(results);
  }

  static YardstickResult result(int herd, int period, int cases, int animals) {
    return new YardstickResult(0, new YardstickResult.Test(herd, 0, period), cases, animals);
  }

  /** The top of the Laplace likelihood over the logarithm of the spread and the four periods. */
  Answer fit() {
    double[] start = {Math.log(0.5), 0, 0, 0, 0};
    double[] low = new double[start.length];
    double[] high = new double[start.length];
    Arrays.fill(low, -FARTHEST);
    Arrays.fill(high, FARTHEST);
    double[] top =
        new BOBYQAOptimizer(2 * start.length + 1, 0.5, 1e-7)
            .optimize(
                GoalType.MAXIMIZE,
                new MaxEval(5000),
                new ObjectiveFunction(at -> posterior(at).logEvidence()),
                new SimpleBounds(low, high),
                new InitialGuess(start))
            .getPoint();
    Posterior posterior = posterior(top);
    List<Double> fixed = new ArrayList<>(List.of(-top[1]));
    for (int period = 1; period < PERIODS; period++) {
      fixed.add(top[1] - top[period + 1]);
    }
    List<Double> modes =
        IntStream.range(0, herds())
            .mapToObj(herd -> posterior.skillMode(new SkillSum.Key(herd, 0, 0)).mean())
            .toList();
    return new Answer(Math.exp(top[0]), posterior.logEvidence() + logCoefficients(), fixed, modes);
  }

  private int herds() {
    return 1 + results.stream().mapToInt(each -> each.test().player()).max().orElse(0);
  }

  private double logCoefficients() {
    return results.stream()
        .mapToDouble(
            each ->
                Gamma.logGamma(each.balls() + 1.0)
                    - Gamma.logGamma(each.hits() + 1.0)
                    - Gamma.logGamma(each.balls() - each.hits() + 1.0))
        .sum();
  }

  private Posterior posterior(double[] at) {
    List<SharedEffect> periods =
        IntStream.range(0, PERIODS)
            .mapToObj(period -> new SharedEffect("period", at[period + 1], 0))
            .toList();
    Club club =
        new Club(
            new SkillGroups(List.of(0)),
            Collections.nCopies(herds(), Entrant.atLevel(SkillPrior.MIDDLE_LEVEL)),
            periods);
    SkillPrior prior = new SkillPrior(0, 0, Math.exp(at[0]), 1, 0, 0);
    return SkillModel.of(club, prior).fit(results, Set.of());
  }
}
