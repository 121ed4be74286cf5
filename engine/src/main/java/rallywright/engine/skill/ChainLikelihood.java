package rallywright.engine.skill;

import java.util.Arrays;

/**
 * The exact chance of a score of which the rallies were not written down, by two predictors: the
 * logit that the server's side wins a rally when A serves, and the same when B serves.
 *
 * <p>Method: the mass of the game moves over the scores, each with A or with B to serve; side-outs
 * at one score, which may go on for ever, are summed in closed form. Value, gradient and Hessian
 * run through the recursion together as {@link Jet}s. Cost: one step for each score on the way. The
 * logarithm need not be concave: at 5-0 nobody knows whether one turn or many were needed.
 *
 * <p>Readings taken ("assumption of this project" where marked):
 *
 * <ul>
 *   <li>A finished game: the chance that the game ends at this score.
 *   <li>Time called: the horn does not wait for a point, and how many rallies it left time for is
 *       not known, every number alike (assumption of this project). The likelihood is then the sum
 *       over all numbers of rallies of the chance to stand at this score after them, that is the
 *       mean number of rallies that find the game at this score. The chance to pass through it is
 *       something else: it would forget that a game dwells where both sides lose their serves.
 *   <li>Nobody wrote down who served first: either side with one half (assumption of this project).
 * </ul>
 *
 * @param path the score and how it came about
 */
record ChainLikelihood(ScorePath path) implements Likelihood {
  @Override
  public int predictors() {
    return 2;
  }

  @Override
  public Curve at(double eta, double etaOther) {
    Jet log = chance(Jet.chanceOfFirst(eta), Jet.chanceOfSecond(etaOther)).log();
    return new Curve(log.value(), log.d1(), log.d2(), log.d11(), log.d12(), log.d22());
  }

  /** The chance itself, for the chances that the server wins when A and when B serves. */
  Jet chance(Jet serveA, Jet serveB) {
    int columns = path.pointsB() + 2;
    Jet[] enterA = new Jet[columns];
    Jet[] enterB = new Jet[columns];
    Arrays.fill(enterA, Jet.ZERO);
    Arrays.fill(enterB, Jet.ZERO);
    enterA[0] = Jet.constant(path.firstServer().chanceOfA());
    enterB[0] = Jet.constant(1 - path.firstServer().chanceOfA());
    Step step = new Step(path.counting(), serveA, serveB);
    for (int a = 0; a <= path.pointsA(); a++) {
      for (int b = 0; b <= path.pointsB(); b++) {
        boolean wanted = a == path.pointsA() && b == path.pointsB();
        if (wanted && path.ending() == ScorePath.Ending.FINISHED) {
          return enterA[b].plus(enterB[b]);
        }
        Jet visitsA = step.visitsA(enterA[b], enterB[b]);
        Jet visitsB = step.visitsB(enterA[b], enterB[b]);
        if (wanted) {
          return visitsA.plus(visitsB);
        }
        boolean goesOn = path.goesOnAfter(a, b);
        enterA[b] = goesOn ? step.pointToAThenAServes(visitsA, visitsB) : Jet.ZERO;
        enterB[b] = Jet.ZERO;
        if (goesOn) {
          enterB[b + 1] = enterB[b + 1].plus(step.pointToBThenBServes(visitsA, visitsB));
        }
      }
    }
    throw new IllegalStateException("The score was not reached: " + path);
  }

  /** What happens at one score; every point leaves its winner to serve. */
  private record Step(ScorePath.Counting counting, Jet serveA, Jet serveB, Jet dwell) {
    Step(ScorePath.Counting counting, Jet serveA, Jet serveB) {
      this(
          counting,
          serveA,
          serveB,
          serveA.complement().times(serveB.complement()).complement().reciprocal());
    }

    Jet visitsA(Jet enterA, Jet enterB) {
      return counting == ScorePath.Counting.EVERY_RALLY
          ? enterA
          : enterA.plus(enterB.times(serveB.complement())).times(dwell);
    }

    Jet visitsB(Jet enterA, Jet enterB) {
      return counting == ScorePath.Counting.EVERY_RALLY
          ? enterB
          : enterB.plus(enterA.times(serveA.complement())).times(dwell);
    }

    Jet pointToAThenAServes(Jet visitsA, Jet visitsB) {
      Jet onServe = visitsA.times(serveA);
      return counting == ScorePath.Counting.EVERY_RALLY
          ? onServe.plus(visitsB.times(serveB.complement()))
          : onServe;
    }

    Jet pointToBThenBServes(Jet visitsA, Jet visitsB) {
      Jet onServe = visitsB.times(serveB);
      return counting == ScorePath.Counting.EVERY_RALLY
          ? onServe.plus(visitsA.times(serveA.complement()))
          : onServe;
    }
  }
}
