package rallywright.engine.rotation;

/**
 * What each fault of a rotation costs, in whole thousandths of a point, so that sums are exact.
 *
 * <p>The weights are assumptions of this project: they put sit-outs before wishes, wishes before
 * new partners, new partners before new opponents, and an uneven match beside a few repeated
 * opponents.
 */
final class RotationCost {

  /** Thousandths in one point of the cost. */
  static final long POINT = 1000;

  /** Partners for the k-th time: k − 1 times this. */
  static final long PARTNER_AGAIN = 2000 * POINT;

  /** Mates of a lane or group for the k-th time: k − 1 times this. */
  static final long MATE_AGAIN = 1000 * POINT;

  /** Opponents for the k-th time: k − 1 times this. */
  static final long OPPONENT_AGAIN = 100 * POINT;

  /** Each meeting of two who keep apart. */
  static final long APART_MET = 40_000 * POINT;

  /** Each round in which two who keep together are there and are not partners. */
  static final long TOGETHER_MISSED = 3000 * POINT;

  /** Times the square of sit-outs beyond or below the fair share. */
  static final double UNEVEN_SIT_OUT = 20_000.0 * POINT;

  /** Each sit-out that follows another one of the same player. */
  static final long TWICE_RUNNING = 40_000 * POINT;

  /** Each thousandth of a logit by which one side is stronger: 100 points a logit. */
  static final long DIFFERENCE_PER_MILLILOGIT = 100;

  /** Beyond the limit a difference counts this many times more. */
  static final long BEYOND_LIMIT = 3;

  /** A match is clearly uneven beyond this: the weaker side wins about 3 rallies in 10. */
  static final double LIMIT_LOGITS = 0.8;

  private RotationCost() {}

  /** The cost of a difference, given in half millilogits so that means of two stay whole. */
  static long ofDifference(long halfMillilogits) {
    long limit = Math.round(2000 * LIMIT_LOGITS);
    long beyond = Math.max(0, halfMillilogits - limit);
    return DIFFERENCE_PER_MILLILOGIT / 2 * (halfMillilogits + BEYOND_LIMIT * beyond);
  }

  /** Two taken from k. */
  static long pairsOf(long k) {
    return k * (k - 1) / 2;
  }

  /** The least sum of pairs of repeats when so many meetings are spread over so many pairs. */
  static long leastRepeats(long meetings, long pairs) {
    long each = meetings / pairs;
    long more = meetings % pairs;
    return more * pairsOf(each + 1) + (pairs - more) * pairsOf(each);
  }
}
