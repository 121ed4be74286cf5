package rallywright.engine.point;

import rallywright.engine.drill.SkillWeights;

/**
 * What is contested in one stage of a point.
 *
 * <p>The odds that the rally ends here for the server's side, against going on, are e^(s + η/2);
 * those that it ends for the receiver's side e^(r − η/2), with η = weights·θ of the server's side −
 * weights·θ of the receiver's side. So a rally that ends here is a logistic contest with the logit
 * s − r + η, as in the skill model, and a stronger side also ends more rallies.
 *
 * @param serverLogit s, in logits, within ±12
 * @param receiverLogit r, in logits, within ±12
 * @param again where the rally goes on, the chance that it stays in this stage, 0 to 1
 * @param server how much each skill of the server's side counts
 * @param receiver how much each skill of the receiver's side counts
 */
public record StageContest(
    double serverLogit,
    double receiverLogit,
    double again,
    SkillWeights server,
    SkillWeights receiver) {

  /** Farther than this from 0 no base of a stage may lie, in logits. */
  public static final double LARGEST_LOGIT = 12;

  /** Checks the ranges; the checks are written so that NaN fails them. */
  public StageContest {
    if (!(Math.abs(serverLogit) <= LARGEST_LOGIT && Math.abs(receiverLogit) <= LARGEST_LOGIT)) {
      throw new IllegalArgumentException(
          "The odds of a stage (%s and %s, in logits) must lie from -12 to 12. Maybe a chance is 0."
              .formatted(serverLogit, receiverLogit));
    }
    if (!(again >= 0 && again <= 1)) {
      throw new IllegalArgumentException(
          "The chance to stay in a stage (%s) must lie from 0 to 1. Maybe 0.3.".formatted(again));
    }
  }

  /**
   * A stage given by its chances between equals.
   *
   * @param serverWins the chance that it ends here for the server's side, above 0
   * @param receiverWins the chance that it ends here for the receiver's side, above 0; both
   *     together below 1
   * @param again where the rally goes on, the chance that it stays in this stage
   * @param server how much each skill of the server's side counts
   * @param receiver how much each skill of the receiver's side counts
   * @return the stage
   * @throws IllegalArgumentException if the chances lie outside
   */
  public static StageContest betweenEquals(
      double serverWins,
      double receiverWins,
      double again,
      SkillWeights server,
      SkillWeights receiver) {
    double goesOn = 1 - serverWins - receiverWins;
    if (!(serverWins > 0 && receiverWins > 0 && goesOn > 0)) {
      throw new IllegalArgumentException(
          "The chances that a rally ends in a stage (%s and %s) must be above 0 and sum to less"
                  .formatted(serverWins, receiverWins)
              + " than 1. Maybe 0.01 in place of 0.");
    }
    return new StageContest(
        Math.log(serverWins / goesOn), Math.log(receiverWins / goesOn), again, server, receiver);
  }

  /**
   * The same stage with other odds.
   *
   * @param otherServer s, in logits
   * @param otherReceiver r, in logits
   * @return the changed stage
   */
  public StageContest withLogits(double otherServer, double otherReceiver) {
    return new StageContest(otherServer, otherReceiver, again, server, receiver);
  }

  /**
   * The edge of the server's side.
   *
   * @param serving the server's side
   * @param receiving the receiver's side
   * @return η in logits
   */
  public double edge(SkillProfile serving, SkillProfile receiving) {
    return serving.weighted(server) - receiving.weighted(receiver);
  }

  /**
   * The chances of the stage.
   *
   * @param edge η in logits
   * @return what may happen
   */
  public StageChances chances(double edge) {
    double serverOdds = Math.exp(serverLogit + edge / 2);
    double receiverOdds = Math.exp(receiverLogit - edge / 2);
    double sum = 1 + serverOdds + receiverOdds;
    return new StageChances(serverOdds / sum, receiverOdds / sum, again / sum, (1 - again) / sum);
  }

  /**
   * How the chances change with the logits of the two endings.
   *
   * @param edge η in logits
   * @param tilt by how much each logit moves
   * @return derivatives; they sum to 0
   */
  StageSlopes slopes(double edge, Tilt tilt) {
    StageChances now = chances(edge);
    double pull = tilt.server() * now.serverWins() + tilt.receiver() * now.receiverWins();
    return new StageSlopes(
        now.serverWins() * (tilt.server() - pull),
        now.receiverWins() * (tilt.receiver() - pull),
        -pull * now.again(),
        -pull * now.onward());
  }

  /** Derivatives of {@link StageChances}, in the same order. */
  record StageSlopes(double serverWins, double receiverWins, double again, double onward) {}

  /**
   * A direction in which the logits of a stage move.
   *
   * @param server by how much that of an end for the server's side moves
   * @param receiver by how much that of an end for the receiver's side moves
   */
  record Tilt(double server, double receiver) {
    /** The edge η: half for the one, half against the other. */
    static final Tilt EDGE = new Tilt(0.5, -0.5);

    /** The base s of the server's side. */
    static final Tilt SERVER = new Tilt(1, 0);

    /** The base r of the receiver's side. */
    static final Tilt RECEIVER = new Tilt(0, 1);
  }
}
